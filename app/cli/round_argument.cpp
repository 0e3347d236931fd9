// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/round_argument.h"

#include "core/analysis/job_findings.h"

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

std::string Scope::word() const
{
    if (round != nullptr)
        return fmt::format("round {}", round->number);
    return standing == analysis::Standing::AsLeft ? "as left" : "as found";
}

std::vector<analysis::PointFinding> Scope::findings(const exchange::JobRecord& record) const
{
    return round != nullptr ? analysis::jobFindings(record.job, record.object, round->id)
                            : analysis::summarise(record.job, record.object, standing);
}

Result<Scope> findScope(const model::Job& job, const std::string& round, bool asFound)
{
    if (!round.empty() && asFound)
        return fail(ErrorCode::BadInput, "give --round or --as-found, not both");
    // Refused without any round also for the whole job: there is nothing to tell yet.
    const auto found = findRound(job, round);
    if (!found)
        return fail(found.error());
    Scope scope;
    scope.standing = asFound ? analysis::Standing::AsFound : analysis::Standing::AsLeft;
    if (!round.empty())
        scope.round = *found;
    return scope;
}

std::string shortTime(const Timestamp& at)
{
    constexpr std::size_t kHoursAndMinutes = 5;
    return at.date() + " " + at.timeOfDay().substr(0, kHoursAndMinutes);
}

} // namespace sealwalk::cli
