// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/answered.h"

namespace sealwalk::analysis {

bool isLeakWord(Finding finding)
{
    return finding == Finding::Leak || finding == Finding::Shared || finding == Finding::Permeation;
}

bool isOwedWord(Finding finding)
{
    return finding == Finding::Echo || finding == Finding::Masked;
}

bool hasAnswer(const PointFinding& finding)
{
    switch (finding.finding) {
    case Finding::NotSprayed:
    case Finding::NotAccessible:
    case Finding::NotTested:
    case Finding::Void:
        return false;
    default:
        return true;
    }
}

bool isAnswer(const PointFinding& finding)
{
    return hasAnswer(finding) && !finding.awaitsRetest;
}

} // namespace sealwalk::analysis
