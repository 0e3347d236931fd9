// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/tool.h"

#include <utility>

namespace sealwalk::ui {

Verdict Tool::commitPending(std::vector<model::JointId> choose)
{
    Verdict verdict{VerdictKind::Commit, std::move(m_pending), std::move(choose)};
    m_pending.reset();
    m_guides.clear();
    return verdict;
}

Verdict Tool::revert()
{
    m_pending.reset();
    m_guides.clear();
    return {VerdictKind::Revert, std::nullopt, {}};
}

} // namespace sealwalk::ui
