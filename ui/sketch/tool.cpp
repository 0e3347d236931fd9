// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/tool.h"

#include "core/editing/laying.h"
#include "ui/sketch/sketch_desk.h"

#include <utility>

namespace sealwalk::ui {

double stepOf(Qt::KeyboardModifiers keys)
{
    return keys.testFlag(Qt::ControlModifier) ? 100.0 : keys.testFlag(Qt::ShiftModifier) ? 10.0 : 1.0;
}

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

Verdict Tool::layOn(const model::Joint* joint) const
{
    if (joint == nullptr)
        return {};
    if (!desk().sketch().pointsOn(joint->id).empty())
        return {VerdictKind::Done, std::nullopt, {}};
    return {VerdictKind::Commit,
            editing::layPoints(desk().sketch(), joint->id, desk().laying(), desk().withReadings()),
            {}};
}

} // namespace sealwalk::ui
