// SPDX-License-Identifier: GPL-3.0-or-later
// Checks of what was decided and done.
#include "core/analysis/claim.h"
#include "core/analysis/job_balance.h"
#include "core/analysis/job_rise.h"
#include "core/analysis/job_view.h"
#include "core/analysis/repair_progress.h"
#include "core/analysis/review_ground.h"
#include "core/base/calendar_day.h"

#include <fmt/format.h>

#include <algorithm>

namespace sealwalk::analysis::detail {

namespace {

/// Points that some repair asks to be sprayed again, and that were not.
std::vector<model::PointId> notSprayedAgain(const ReviewGround& ground)
{
    std::vector<model::PointId> points;
    for (const model::Repair& repair : ground.job.repairs) {
        if (repair.madeGoodBy)
            continue;
        for (const model::PointId point :
             progressOf(ground.job, repair, ground.findings, ground.options.now).toSpray) {
            const model::TestPoint* drawn = ground.job.sketch.point(point);
            const bool isThere = drawn != nullptr && !drawn->retired;
            if (isThere && std::find(points.begin(), points.end(), point) == points.end())
                points.push_back(point);
        }
    }
    return points;
}

bool isTotalMeasuredSince(const model::Job& job)
{
    Timestamp last;
    for (const model::Repair& repair : job.repairs)
        last = std::max(last, repair.at);
    return std::any_of(job.riseTests.begin(), job.riseTests.end(),
                       [&](const model::RiseTest& test) { return test.at >= last; });
}

bool isRepaired(const model::Job& job, model::PointId point)
{
    return std::any_of(job.repairs.begin(), job.repairs.end(), [&](const model::Repair& repair) {
        return std::find(repair.points.begin(), repair.points.end(), point) != repair.points.end();
    });
}

} // namespace

Answer failuresRepaired(const ReviewGround& ground)
{
    const auto waiting = ground.pointsWhere([](const PointFinding& f) { return f.awaitsRetest; });
    if (!waiting.empty())
        return {CheckState::Stops, "Repaired and not sprayed again: " + ground.text(waiting) + ".", waiting};
    const auto disturbed = notSprayedAgain(ground);
    if (!disturbed.empty())
        return {CheckState::Stops,
                "Repaired, or disturbed by a repair, and not sprayed again: " + ground.text(disturbed) + ".",
                disturbed};
    const auto open = ground.pointsWhere([&](const PointFinding& f) {
        return f.verdict == Verdict::Over && !f.concession && !f.judgedByPerson &&
               !isRepaired(ground.job, f.point);
    });
    if (!open.empty())
        return {CheckState::NeedsWord,
                "Over the limit, with no repair and no concession: " + ground.text(open) + ".", open};
    const auto still = ground.pointsWhere([&](const PointFinding& f) {
        return f.verdict == Verdict::Over && !f.concession && isRepaired(ground.job, f.point);
    });
    if (!still.empty())
        return {CheckState::NeedsWord, "Still over the limit after repair: " + ground.text(still) + ".",
                still};
    if (!ground.job.repairs.empty() && !ground.job.riseTests.empty() && !isTotalMeasuredSince(ground.job))
        return {CheckState::NeedsWord, "No pressure rise since the last repair: the total is not proven."};
    return {CheckState::InOrder, "Every failed point was repaired and sprayed again, or conceded."};
}

Answer temporaryOwned(const ReviewGround& ground)
{
    int temporary = 0;
    for (const model::Repair& repair : ground.job.repairs) {
        if (repair.permanent || repair.madeGoodBy)
            continue;
        ++temporary;
        if (repair.owner.empty() || !repair.due)
            return {CheckState::Stops,
                    "A temporary repair at " + ground.text(repair.points) + " has no owner or date.",
                    repair.points};
        if (isPast(*repair.due, ground.options.now))
            return {CheckState::NeedsWord,
                    fmt::format("The temporary repair at {} was due on {}.", ground.text(repair.points),
                                repair.due->date()),
                    repair.points};
    }
    return {CheckState::InOrder, temporary == 0
                                     ? std::string("No temporary repairs.")
                                     : fmt::format("{} temporary, each with owner and date.", temporary)};
}

Answer balanceMet(const ReviewGround& ground)
{
    if (ground.job.riseTests.empty())
        return {CheckState::NeedsWord, "No pressure-rise test: whether everything was found is not known."};
    const auto volume = ground.job.setup.volume ? ground.job.setup.volume : ground.object.volume;
    if (!volume)
        return {CheckState::NeedsWord, "The volume is not known; the pressure rise says nothing without it."};
    const model::RiseTest* last = riseTestFor(ground.job, Standing::AsLeft);
    if (last == nullptr)
        return {CheckState::NeedsWord,
                "The last pressure rise is from before a repair: the total as left is not known."};
    const auto rise = judgeRise(*last, ground.job, ground.object);
    if (!rise)
        return {CheckState::NeedsWord,
                "The pressure-rise record gives no answer: " + rise.error().message + "."};
    const auto balance = jobBalance(ground.job, ground.object, ground.findings, totalOf(*rise));
    if (!balance)
        return {CheckState::NeedsWord, "The balance gives no answer: " + balance.error().message + "."};
    return {balance->verdict == BalanceVerdict::Explained ? CheckState::InOrder : CheckState::NeedsWord,
            balance->advice};
}

Answer comparedWithLast(const ReviewGround& ground)
{
    if (ground.options.isComparing)
        return {CheckState::Stops, "Still being compared."};
    if (!ground.options.lastJob)
        return {CheckState::InOrder, "There is no earlier job."};
    if (!ground.options.grownSinceLastJob)
        return {CheckState::NeedsWord,
                fmt::format("Not compared with job {}.", ground.options.lastJob->number)};
    if (*ground.options.grownSinceLastJob > 0)
        return {CheckState::NeedsWord,
                fmt::format("{} points leak more than in job {}.", *ground.options.grownSinceLastJob,
                            ground.options.lastJob->number)};
    return {CheckState::InOrder,
            fmt::format("Nothing has grown since job {}.", ground.options.lastJob->number)};
}

Answer claimsNoMore(const ReviewGround& ground)
{
    const Claim claim = claimOf(ground.job, ground.findings, ground.job.setup.unit);
    const auto masked =
        ground.pointsWhere([](const PointFinding& f) { return f.finding == Finding::Masked; });
    if (!masked.empty())
        return {CheckState::NeedsWord, "Masked by a larger leak and not judged: " + ground.text(masked) + ".",
                masked};
    if (claim.outcome == ClaimOutcome::NoResult)
        return {CheckState::NeedsWord, "Nothing can be claimed yet."};
    return {CheckState::InOrder, "The statement names what was tested and what was not."};
}

} // namespace sealwalk::analysis::detail
