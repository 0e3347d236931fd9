// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/approval.h"

namespace sealwalk::analysis {

std::optional<Timestamp> approvalOf(const model::Job& job)
{
    if (job.state == model::JobState::Signed)
        for (const model::ReviewEntry& turn : job.review)
            if (turn.step == model::ReviewStep::Approved)
                return turn.at;
    return std::nullopt;
}

} // namespace sealwalk::analysis
