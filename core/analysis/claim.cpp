// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/claim.h"

#include "core/quantities/leak_rate_unit.h"
#include "core/quantities/number_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <map>

namespace sealwalk::analysis {

namespace {

std::string rateText(LeakRate rate, const std::string& unitId)
{
    const auto wanted = leakRateUnit(unitId);
    const LeakRateUnit unit = wanted.value_or(LeakRateUnit::MillibarLitrePerSecond);
    const auto number = numberIn(rate, unit);
    return fmt::format("{} {}", roundedText(number.value_or(0.0), 2), idOf(unit));
}

std::string numbersText(const std::vector<int>& numbers)
{
    std::string text;
    for (std::size_t i = 0; i < numbers.size(); ++i)
        text += (i == 0 ? "" : i + 1 == numbers.size() ? " and " : ", ") + std::to_string(numbers[i]);
    return text;
}

std::string pointsText(const std::vector<int>& numbers)
{
    return (numbers.size() == 1 ? "point " : "points ") + numbersText(numbers);
}

/// Whether the point showed nothing by what was worked out. What a person passed stands under no bound of the
/// detector's.
bool showedNothing(const PointFinding& finding)
{
    return finding.finding == Finding::Clear && !finding.judgedByPerson;
}

/// The highest bound of the points that showed nothing.
std::optional<LeakRate> highestBound(std::span<const PointFinding> findings)
{
    std::optional<LeakRate> bound;
    for (const PointFinding& finding : findings)
        if (showedNothing(finding) && finding.bound)
            bound = std::max(bound.value_or(LeakRate()), *finding.bound);
    return bound;
}

/// The few points that the highest bound is of, where the others could have shown clearly less; else none.
std::vector<int> leastSensitive(std::span<const PointFinding> findings, LeakRate highest)
{
    constexpr double kClearly = 1.5; // Engineering rule, no source.
    std::vector<int> worst;
    std::size_t others = 0;
    for (const PointFinding& finding : findings) {
        if (!showedNothing(finding) || !finding.bound)
            continue;
        if (*finding.bound * kClearly > highest)
            worst.push_back(finding.number);
        else
            ++others;
    }
    return worst.size() <= others ? worst : std::vector<int>();
}

/// "point 3 (echo, within), point 5 (leak, over)": each with the words of whoever judged it.
std::string judgedText(std::span<const PointFinding> findings)
{
    std::string text;
    for (const PointFinding& finding : findings)
        if (finding.judgedByPerson)
            text += fmt::format("{}point {} ({}, {})", text.empty() ? "" : ", ", finding.number,
                                model::name(finding.finding), model::name(finding.verdict));
    return text;
}

std::vector<int> numbersWhere(std::span<const PointFinding> findings,
                              const std::function<bool(const PointFinding&)>& wanted)
{
    std::vector<int> numbers;
    for (const PointFinding& finding : findings)
        if (wanted(finding))
            numbers.push_back(finding.number);
    return numbers;
}

} // namespace

std::string Claim::text() const
{
    std::string all;
    for (const std::string& sentence : sentences)
        all += (all.empty() ? "" : " ") + sentence;
    return all;
}

Claim claimOf(const model::Job& job, std::span<const PointFinding> asLeft, const std::string& unit)
{
    Claim claim;
    const auto is = [](Finding word) { return [word](const PointFinding& f) { return f.finding == word; }; };
    const auto clear = numbersWhere(asLeft, showedNothing);
    if (const auto bound = highestBound(asLeft); bound && !clear.empty()) {
        claim.sentences.push_back(
            fmt::format("No response above {} at {} of {} points, {}under the conditions recorded.",
                        rateText(*bound, unit), clear.size(), asLeft.size(),
                        job.repairs.empty() ? "" : "as left after the repairs, "));
        if (const auto worst = leastSensitive(asLeft, *bound); !worst.empty())
            claim.sentences.push_back(
                fmt::format("That figure is of the least sensitive: {}.", pointsText(worst)));
    }

    const auto excused = [](const PointFinding& f) { return f.concession; };
    const auto over = numbersWhere(
        asLeft, [&](const PointFinding& f) { return f.verdict == Verdict::Over && !excused(f); });
    // Why nothing can be said, and what is within the limit, is known of what was worked out alone.
    const auto isOpen = [&](const PointFinding& f) { return f.verdict == Verdict::CannotSay && !excused(f); };
    const auto isUnsized = [](const PointFinding& f) { return !f.rate && !f.bound && !f.atLeast; };
    const auto isBlind = [](const PointFinding& f) { return f.finding == Finding::BelowDetectable; };
    const auto unsure = numbersWhere(asLeft, [&](const PointFinding& f) {
        return isOpen(f) && !f.judgedByPerson && !isUnsized(f) && !isBlind(f);
    });
    const auto blind = numbersWhere(asLeft, [&](const PointFinding& f) {
        return isOpen(f) && !f.judgedByPerson && !isUnsized(f) && isBlind(f);
    });
    const auto unsized = numbersWhere(
        asLeft, [&](const PointFinding& f) { return isOpen(f) && !f.judgedByPerson && isUnsized(f); });
    const auto judgedOpen =
        numbersWhere(asLeft, [&](const PointFinding& f) { return isOpen(f) && f.judgedByPerson; });
    const auto conceded = numbersWhere(asLeft, excused);
    const auto held = numbersWhere(asLeft, [](const PointFinding& f) { return f.temporaryRepair; });
    const auto isPassed = [](const PointFinding& f) {
        return f.verdict == Verdict::Within && !f.judgedByPerson;
    };
    const auto seen =
        numbersWhere(asLeft, [&](const PointFinding& f) { return f.rate.has_value() && isPassed(f); });
    const auto bounded = numbersWhere(asLeft, [&](const PointFinding& f) {
        return !f.rate && f.finding != Finding::Clear && isPassed(f) && !excused(f);
    });
    const auto open = numbersWhere(asLeft, is(Finding::NotSprayed));
    const auto voided = numbersWhere(asLeft, is(Finding::Void));
    const auto leftOut = numbersWhere(asLeft, [](const PointFinding& f) {
        return f.finding == Finding::NotAccessible || f.finding == Finding::NotTested;
    });
    const auto add = [&](const char* sentence, const std::vector<int>& numbers) {
        if (!numbers.empty())
            claim.sentences.push_back(fmt::format(fmt::runtime(sentence), pointsText(numbers)));
    };
    add("Leaks within the limit at {}.", seen);
    add("A response, but no leak there above the limit: {}.", bounded);
    add("Over the limit: {}.", over);
    add("Cannot say at {}: the range crosses the limit, or a larger leak hides it.", unsure);
    add("Cannot say at {}: no response, but a leak above the limit could have stayed unseen.", blind);
    add("Not sized at {}: the spray was too short, or a check or the background is missing.", unsized);
    if (const std::string judged = judgedText(asLeft); !judged.empty())
        claim.sentences.push_back("Judged by a person, with the reason on record: " + judged + ".");
    add("Accepted above the limit by concession: {}.", conceded);
    add("Held by a temporary repair: {}.", held);
    add("Left out, each with its reason: {}.", leftOut);
    add("Without a valid reading: {}.", voided);
    add("Not sprayed: {}.", open);

    // With nothing that could be said of the limit at any point there is no acceptance, on conditions or
    // without.
    const bool nothingSaid = std::ranges::none_of(asLeft, [&](const PointFinding& f) {
        return f.verdict == Verdict::Within || f.verdict == Verdict::Over || excused(f);
    });
    if (!job.setup.pointLimit || nothingSaid || !open.empty() || !voided.empty())
        claim.outcome = ClaimOutcome::NoResult;
    else if (!over.empty())
        claim.outcome = ClaimOutcome::Reject;
    else if (!unsure.empty() || !blind.empty() || !unsized.empty() || !judgedOpen.empty() ||
             !conceded.empty() || !held.empty() || !leftOut.empty())
        claim.outcome = ClaimOutcome::AcceptWithConditions;
    else
        claim.outcome = ClaimOutcome::Accept;
    return claim;
}

void markHeld(std::vector<PointFinding>& findings, std::span<const model::Repair> carried)
{
    for (PointFinding& finding : findings)
        for (const model::Repair& repair : carried)
            if (std::find(repair.points.begin(), repair.points.end(), finding.point) != repair.points.end())
                finding.temporaryRepair = true;
}

std::string approvalStatement(const model::Job& job, std::vector<PointFinding> asLeft,
                              std::span<const model::Repair> carried, bool onePersonHistory)
{
    markHeld(asLeft, carried);
    std::string text = claimOf(job, asLeft, job.setup.unit).text();
    if (onePersonHistory)
        text += " Who tested may approve: this history is set to one person.";
    return text;
}

} // namespace sealwalk::analysis
