// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/round_argument.h"

#include <fmt/format.h>

#include <algorithm>

namespace sealwalk::cli {

Result<const model::Round*> findRound(const model::Job& job, const std::string& round)
{
    if (job.rounds.empty())
        return fail(ErrorCode::NotFound, fmt::format("job {} has no round yet", job.number));
    if (round.empty())
        return &job.rounds.back();
    const auto found = std::find_if(job.rounds.begin(), job.rounds.end(), [&](const model::Round& r) {
        return std::to_string(r.number) == round || r.id.text() == round;
    });
    if (found != job.rounds.end())
        return &*found;
    const std::string known =
        job.rounds.size() == 1 ? "round 1" : fmt::format("rounds 1 to {}", job.rounds.size());
    return fail(ErrorCode::NotFound,
                fmt::format("job {} has no round \"{}\"; it has {}", job.number, round, known));
}

std::string shortTime(const Timestamp& at)
{
    constexpr std::size_t kHoursAndMinutes = 5;
    return at.date() + " " + at.timeOfDay().substr(0, kHoursAndMinutes);
}

} // namespace sealwalk::cli
