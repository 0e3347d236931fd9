// SPDX-License-Identifier: GPL-3.0-or-later
// Checks of what was decided and done.
#include "core/analysis/claim.h"
#include "core/analysis/finding_words.h"
#include "core/analysis/job_balance.h"
#include "core/analysis/job_rise.h"
#include "core/analysis/job_view.h"
#include "core/analysis/repair_progress.h"
#include "core/analysis/review_ground.h"
#include "core/base/calendar_day.h"

#include <fmt/format.h>

#include <algorithm>
#include <unordered_set>
#include <utility>

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
        if (!isOfSetup(job, repair))
            last = std::max(last, repair.at);
    const auto standing = job.standingRiseTests();
    return std::any_of(standing.begin(), standing.end(),
                       [&](const model::RiseTest* test) { return test->at >= last; });
}

bool isRepaired(const model::Job& job, model::PointId point)
{
    return std::any_of(job.repairs.begin(), job.repairs.end(), [&](const model::Repair& repair) {
        return std::find(repair.points.begin(), repair.points.end(), point) != repair.points.end();
    });
}

/// Where the repairs are, in order of number. Points of earlier jobs may not be on this sketch any more.
std::vector<model::PointId> drawnOf(const ReviewGround& ground,
                                    const std::vector<const model::Repair*>& repairs)
{
    std::vector<model::PointId> points;
    for (const model::TestPoint& point : ground.job.sketch.points)
        if (std::any_of(repairs.begin(), repairs.end(), [&](const model::Repair* repair) {
                return std::find(repair->points.begin(), repair->points.end(), point.id) !=
                       repair->points.end();
            }))
            points.push_back(point.id);
    std::sort(points.begin(), points.end(), [&](model::PointId a, model::PointId b) {
        return ground.job.sketch.point(a)->number < ground.job.sketch.point(b)->number;
    });
    return points;
}

std::string heldText(const ReviewGround& ground, const std::vector<model::PointId>& points)
{
    return points.empty() ? "points no longer drawn" : ground.text(points);
}

/// @param areCarried  all of them are of earlier jobs
Answer overdueAnswer(const ReviewGround& ground, const std::vector<const model::Repair*>& overdue,
                     bool areCarried)
{
    const std::vector<model::PointId> points = drawnOf(ground, overdue);
    const auto first = std::min_element(overdue.begin(), overdue.end(),
                                        [](const auto* a, const auto* b) { return *a->due < *b->due; });
    const char* sentence =
        overdue.size() > 1 ? "Temporary repairs are overdue at {}; the first was due on {}."
        : areCarried       ? "The temporary repair of an earlier job at {} was due on {}: it is overdue."
                           : "The temporary repair at {} was due on {}.";
    return {CheckState::NeedsWord,
            fmt::format(fmt::runtime(sentence), heldText(ground, points), (*first)->due->date()), points};
}

} // namespace

Answer failuresRepaired(const ReviewGround& ground)
{
    std::vector<Answer> found;
    const auto note = [&](CheckState state, const char* says, const std::vector<model::PointId>& points) {
        if (!points.empty())
            found.push_back({state, says + ground.text(points) + ".", points});
    };
    const auto waiting = ground.pointsWhere([](const PointFinding& f) { return f.awaitsRetest; });
    note(CheckState::Stops, "Repaired and not sprayed again: ", waiting);
    auto disturbed = notSprayedAgain(ground);
    std::erase_if(disturbed, [&](model::PointId point) {
        return std::find(waiting.begin(), waiting.end(), point) != waiting.end();
    });
    note(CheckState::Stops, "Repaired, or disturbed by a repair, and not sprayed again: ", disturbed);
    note(CheckState::NeedsWord,
         "Over the limit, with no repair and no concession: ", ground.pointsWhere([&](const PointFinding& f) {
             return f.verdict == Verdict::Over && !f.concession && !f.judgedByPerson &&
                    !isRepaired(ground.job, f.point);
         }));
    note(CheckState::NeedsWord,
         "Still over the limit after repair: ", ground.pointsWhere([&](const PointFinding& f) {
             return f.verdict == Verdict::Over && !f.concession && !f.awaitsRetest &&
                    isRepaired(ground.job, f.point);
         }));
    if (!ground.job.repairs.empty() && !ground.job.standingRiseTests().empty() &&
        !isTotalMeasuredSince(ground.job))
        found.push_back(
            {CheckState::NeedsWord, "No pressure rise since the last repair: the total is not proven."});
    const bool anything =
        !ground.job.repairs.empty() ||
        !ground.pointsWhere([](const PointFinding& f) { return f.verdict == Verdict::Over || f.concession; })
             .empty();
    return answerOf(
        std::move(found),
        {CheckState::InOrder, anything ? "Every failed point was repaired and sprayed again, or conceded."
                                       : "No point is over its limit, and nothing was repaired."});
}

Answer temporaryOwned(const ReviewGround& ground)
{
    std::vector<const model::Repair*> overdue;
    const auto note = [&](const model::Repair& repair) {
        if (repair.due && isPast(*repair.due, ground.options.now))
            overdue.push_back(&repair);
    };
    const auto hasNoOwner = [](const model::Repair& repair) { return repair.owner.empty() || !repair.due; };
    std::size_t temporary = ground.options.carried.size();
    for (const model::Repair& repair : ground.job.repairs) {
        if (repair.permanent || repair.madeGoodBy)
            continue;
        ++temporary;
        if (hasNoOwner(repair))
            return {CheckState::Stops,
                    "A temporary repair at " + ground.text(repair.points) + " has no owner or date.",
                    repair.points};
        note(repair);
    }
    const std::size_t ownOverdue = overdue.size();
    for (const model::Repair& repair : ground.options.carried)
        note(repair);
    if (!overdue.empty())
        return overdueAnswer(ground, overdue, ownOverdue == 0);
    for (const model::Repair& repair : ground.options.carried)
        if (hasNoOwner(repair)) // its own job may be signed: a word, since it cannot be mended there
            return {CheckState::NeedsWord,
                    "A temporary repair of an earlier job at " +
                        heldText(ground, drawnOf(ground, {&repair})) + " has no owner or date.",
                    drawnOf(ground, {&repair})};
    if (temporary == 0)
        return {CheckState::InOrder, "No temporary repairs."};
    if (ground.options.carried.empty())
        return {CheckState::InOrder, fmt::format("{} temporary, each with owner and date.", temporary)};
    return {CheckState::InOrder,
            fmt::format("{} temporary, each with owner and date; {} of them of earlier jobs.", temporary,
                        ground.options.carried.size())};
}

namespace {

Answer totalAddsUp(const ReviewGround& ground)
{
    if (ground.job.standingRiseTests().empty())
        return {CheckState::NeedsWord,
                "No pressure-rise test stands: whether everything was found is not known."};
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
    // A record that only bounds the leaks proves nothing of limits far below its bound.
    constexpr double kFarAbove = 10.0;
    const auto total = totalOf(*rise);
    const model::Setup& setup = ground.job.setup;
    const bool saysLittle =
        total && !total->rate &&
        (setup.totalLimit ? total->high > *setup.totalLimit
                          : setup.pointLimit && total->high > kFarAbove * *setup.pointLimit);
    if (saysLittle && balance->verdict == BalanceVerdict::Explained)
        return {CheckState::NeedsWord,
                fmt::format(
                    "The pressure rise says only that leaks are below {} as air, far more than the limit: "
                    "it cannot show that all were found.",
                    rateWords(total->high, setup.unit))};
    return {balance->verdict == BalanceVerdict::Explained ? CheckState::InOrder : CheckState::NeedsWord,
            balance->advice};
}

/// The record of a rise knows how long it lasted; typed in one go it may claim a time at which helium flowed.
void doubtTimes(const ReviewGround& ground, const model::RiseTest& test, std::vector<Answer>& found)
{
    if (test.times.empty())
        return;
    constexpr double kMinute = 60.0;
    const auto moment = [&](double after) {
        return Timestamp{test.at.utcMilliseconds + static_cast<std::int64_t>(after * 1000.0),
                         test.at.offsetMinutes};
    };
    const Timestamp from = moment(test.times.front());
    const Timestamp to = moment(test.times.back());
    const std::string of = test.at.timeOfDay().substr(0, 5);
    const std::string lasted = fmt::format("{:.0f}", (test.times.back() - test.times.front()) / kMinute);
    if (ground.options.now.isSet() && ground.options.now < to)
        found.push_back({CheckState::NeedsWord,
                         fmt::format("The pressure rise of {} lasted {} min and would have ended after now: "
                                     "its time is not right.",
                                     of, lasted)});
    if (from < ground.job.opened)
        found.push_back(
            {CheckState::NeedsWord,
             fmt::format("The pressure rise of {} began before the job was opened: is it of this state?",
                         of)});
    std::unordered_set<model::PointId> meanwhile;
    for (const model::Reading& reading : ground.job.readings) {
        const bool helium = reading.outcome == model::Outcome::Value ||
                            reading.outcome == model::Outcome::NoResponse ||
                            reading.outcome == model::Outcome::AboveRange;
        if (helium && from <= reading.at && reading.at < to && !ground.job.isVoid(reading.id))
            meanwhile.insert(reading.point);
    }
    const auto sprayed =
        ground.pointsWhere([&](const PointFinding& finding) { return meanwhile.contains(finding.point); });
    if (!sprayed.empty())
        found.push_back({CheckState::NeedsWord,
                         fmt::format("Helium was sprayed during the pressure rise of {}, which lasted {} "
                                     "min: {}.",
                                     of, lasted, ground.text(sprayed)),
                         sprayed});
}

/// What the owner asked for beside the leaks.
void missPressure(const ReviewGround& ground, std::vector<Answer>& found)
{
    if (const auto missed = missedPressure(ground.job, ground.object))
        found.push_back({CheckState::NeedsWord,
                         fmt::format("The base pressure, {:.{}e} mbar, is above the {:.{}e} mbar wanted.",
                                     inMillibars(missed->reached), missed->digits - 1,
                                     inMillibars(missed->wanted), missed->digits - 1)});
}

} // namespace

Answer balanceMet(const ReviewGround& ground)
{
    Answer adds = totalAddsUp(ground);
    std::vector<Answer> found;
    for (const model::RiseTest* test : ground.job.standingRiseTests())
        doubtTimes(ground, *test, found);
    missPressure(ground, found);
    if (found.empty())
        return adds;
    if (adds.state != CheckState::InOrder)
        found.push_back(std::move(adds));
    return answerOf(std::move(found), {});
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
    if (*ground.options.grownSinceLastJob == 1)
        return {CheckState::NeedsWord,
                fmt::format("One point leaks more than in job {}.", ground.options.lastJob->number)};
    if (*ground.options.grownSinceLastJob > 0)
        return {CheckState::NeedsWord,
                fmt::format("{} points leak more than in job {}.", *ground.options.grownSinceLastJob,
                            ground.options.lastJob->number)};
    const auto compared = ground.options.comparedWithLastJob;
    const int number = ground.options.lastJob->number;
    if (compared == 0)
        return {CheckState::NeedsWord,
                fmt::format("No point can be compared with job {}: whether anything has grown is not known.",
                            number)};
    if (compared && *compared < std::ssize(ground.findings))
        return {CheckState::InOrder,
                fmt::format("Nothing has grown since job {} at the {} of {} points that can be compared.",
                            number, *compared, ground.findings.size())};
    return {CheckState::InOrder, fmt::format("Nothing has grown since job {}.", number)};
}

Answer claimsNoMore(const ReviewGround& ground)
{
    const Claim claim = claimOf(ground.job, ground.findings, ground.job.setup.unit);
    std::vector<Answer> found;
    const auto masked =
        ground.pointsWhere([](const PointFinding& f) { return f.finding == Finding::Masked; });
    if (!masked.empty())
        found.push_back({CheckState::NeedsWord,
                         "Masked by a larger leak and not judged: " + ground.text(masked) + ".", masked});
    const auto unsure = ground.pointsWhere([](const PointFinding& f) {
        return f.verdict == Verdict::CannotSay && f.finding != Finding::Masked && !f.concession;
    });
    if (!unsure.empty())
        found.push_back({CheckState::NeedsWord,
                         "Cannot say whether within the limit: " + ground.text(unsure) + ".", unsure});
    const auto uncounted =
        ground.pointsWhere([](const PointFinding& f) { return f.verdict == Verdict::NotCounted; });
    if (!uncounted.empty())
        found.push_back({CheckState::NeedsWord,
                         "Leaking in the test set-up and not counted: " + ground.text(uncounted) + ".",
                         uncounted});
    if (claim.outcome == ClaimOutcome::NoResult)
        found.push_back({CheckState::NeedsWord, "Nothing can be claimed yet."});
    return answerOf(std::move(found),
                    {CheckState::InOrder, "The statement names what was tested and what was not."});
}

} // namespace sealwalk::analysis::detail
