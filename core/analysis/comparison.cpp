// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/comparison.h"

#include "core/quantities/number_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <unordered_map>

namespace sealwalk::analysis {

namespace {

/// Two bounds farther apart say nothing together: in between a leak may have come or gone. Common practice,
/// no source: a decade is what nobody would call the same.
constexpr double kBoundsApart = 1.0;

std::string rateText(LeakRate rate)
{
    return powerText(inMillibarLitresPerSecond(rate), 2) + " mbar l/s";
}

bool isSized(const PointFinding& finding)
{
    return finding.rate && *finding.rate > LeakRate();
}

/// Nothing was seen, and it is known what would have been.
bool isQuiet(const PointFinding& finding)
{
    return (finding.finding == Finding::Clear || finding.finding == Finding::BelowDetectable) &&
           finding.bound;
}

/// Why a finding is neither a size nor a bound that can be compared; empty when it is.
std::string obstacle(const PointFinding& finding, const char* when)
{
    if (isSized(finding) || isQuiet(finding))
        return {};
    switch (finding.finding) {
    case Finding::Masked:
    case Finding::Echo: {
        const std::string word(model::name(finding.finding));
        const std::string bound = finding.bound ? ", its own part below " + rateText(*finding.bound) : "";
        return fmt::format("{} {}{}", word, when, bound);
    }
    case Finding::Void:
    case Finding::NotAccessible:
    case Finding::NotTested:
    case Finding::NotSprayed:
        return fmt::format("{} {}", model::name(finding.finding), when);
    default:
        return fmt::format("{} {}", finding.atLeast ? "beyond the detector's range" : "without a size", when);
    }
}

double decadesBetween(LeakRate from, LeakRate to)
{
    return std::log10(to / from);
}

/// What a leak is at the least: the lower end of its range, and beyond the detector's range what that says.
std::optional<LeakRate> surelyOf(const PointFinding& finding)
{
    return isSized(finding) ? finding.low.value_or(*finding.rate) : finding.atLeast;
}

/// With its range, which goes with a rate wherever it is said.
std::string sizedText(const PointFinding& sized)
{
    if (!isSized(sized))
        return "at least " + rateText(*sized.atLeast);
    const std::string text = rateText(*sized.rate);
    return sized.low && sized.high
               ? fmt::format("{} ({:.1e} to {:.1e})", text, inMillibarLitresPerSecond(*sized.low),
                             inMillibarLitresPerSecond(*sized.high))
               : text;
}

/// Distance in decades from the rate to one end of its range; 0 when there is no range.
double reach(const std::optional<LeakRate>& end, LeakRate rate)
{
    if (!end || *end <= LeakRate())
        return 0.0;
    return std::abs(decadesBetween(rate, *end));
}

void compareSizes(ComparedPoint& row)
{
    const PointFinding& before = *row.before;
    const PointFinding& after = *row.after;
    const double change = decadesBetween(*before.rate, *after.rate);
    const double down = std::hypot(reach(after.low, *after.rate), reach(before.high, *before.rate));
    const double up = std::hypot(reach(after.high, *after.rate), reach(before.low, *before.rate));
    row.decades = change;
    row.low = change - down;
    row.high = change + up;
    if (*row.low > 0.0)
        row.change = Change::Grown;
    else if (*row.high < 0.0)
        row.change = Change::Shrunk;
    else
        row.change = Change::Same;
    row.because = fmt::format("{} then, {} now", sizedText(before), sizedText(after));
}

/// One side is sized or beyond range, the other quiet below its bound.
void compareWithQuiet(ComparedPoint& row, const PointFinding& sized, LeakRate bound, bool sizedNow)
{
    const LeakRate surely = *surelyOf(sized);
    const char* sizedWhen = sizedNow ? "now" : "then";
    const char* quietWhen = sizedNow ? "then" : "now";
    if (surely <= bound) {
        row.change = Change::NotComparable;
        row.because = fmt::format("{} {}, which need not have shown {}: seen was only what is above {}",
                                  sizedText(sized), sizedWhen, quietWhen, rateText(bound));
        return;
    }
    row.change = sizedNow ? Change::New : Change::Gone;
    row.atLeast = true;
    const double sign = sizedNow ? 1.0 : -1.0;
    row.decades = sign * decadesBetween(bound, isSized(sized) ? *sized.rate : surely);
    // The other end is open: how far below its bound the quiet side lies is not known.
    const double least = sign * decadesBetween(bound, surely);
    (sizedNow ? row.low : row.high) = least;
    row.because = fmt::format("{} {}; below {} {}", sizedText(sized), sizedWhen, rateText(bound), quietWhen);
}

/// Echoes and masked points say no more than a bound; it may still be enough to call a leak new or gone.
std::optional<LeakRate> boundOf(const PointFinding& finding)
{
    return isSized(finding) ? std::nullopt : finding.bound;
}

bool decides(const PointFinding& sized, const PointFinding& other)
{
    const auto surely = surelyOf(sized);
    return surely && boundOf(other) && *surely > *other.bound;
}

/// Why the two findings of a row say nothing together; empty when they do.
std::string whyNot(const PointFinding& before, const PointFinding& after)
{
    const bool decided = decides(after, before) || decides(before, after);
    if (!decided)
        for (const auto& side : {std::pair{&after, "now"}, std::pair{&before, "then"}})
            if (std::string why = obstacle(*side.first, side.second); !why.empty())
                return why;
    if (before.condition != after.condition)
        return fmt::format("another condition: {} then, {} now", model::name(before.condition),
                           model::name(after.condition));
    return {};
}

void compareRow(ComparedPoint& row)
{
    if (!row.before || !row.after) {
        row.because = row.after ? "there was no such point then" : "the point is no longer there";
        return;
    }
    const PointFinding& before = *row.before;
    const PointFinding& after = *row.after;
    row.because = whyNot(before, after);
    if (!row.because.empty())
        return;
    if (isSized(before) && isSized(after)) {
        compareSizes(row);
    } else if (surelyOf(after)) {
        compareWithQuiet(row, after, *before.bound, true);
    } else if (surelyOf(before)) {
        compareWithQuiet(row, before, *after.bound, false);
    } else if (const double apart = decadesBetween(*before.bound, *after.bound);
               std::abs(apart) > kBoundsApart) {
        row.because =
            fmt::format("no response both times, but {} only what is above {} would have shown, {} "
                        "what is above {}",
                        apart < 0.0 ? "then" : "now", rateText(std::max(*before.bound, *after.bound)),
                        apart < 0.0 ? "now" : "then", rateText(std::min(*before.bound, *after.bound)));
    } else {
        row.change = Change::Same;
        row.because = fmt::format("no response both times, below {} then and {} now", rateText(*before.bound),
                                  rateText(*after.bound));
    }
}

using ById = std::unordered_map<model::PointId, const PointFinding*>;

ById byId(std::span<const PointFinding> findings)
{
    ById result;
    for (const PointFinding& finding : findings)
        result[finding.point] = &finding;
    return result;
}

/// The finding of a point; a point no round called has one that says so.
std::optional<PointFinding> findingOf(const ById& findings, const std::optional<model::PointId>& point,
                                      const model::Sketch& sketch)
{
    if (!point)
        return std::nullopt;
    if (const auto found = findings.find(*point); found != findings.end())
        return *found->second;
    PointFinding finding;
    finding.point = *point;
    if (const model::TestPoint* drawn = sketch.point(*point))
        finding.number = drawn->number;
    return finding;
}

} // namespace

int Comparison::count(Change change) const
{
    return static_cast<int>(std::count_if(points.begin(), points.end(),
                                          [&](const ComparedPoint& p) { return p.change == change; }));
}

int Comparison::matched(MatchedBy by) const
{
    return static_cast<int>(std::count_if(points.begin(), points.end(),
                                          [&](const ComparedPoint& p) { return p.match.by == by; }));
}

Comparison compare(const ComparedSide& before, const ComparedSide& after, const KnownPairs& known)
{
    const ById then = byId(before.findings);
    const ById now = byId(after.findings);
    Comparison comparison;
    for (const PointMatch& match : matchPoints(*before.sketch, *after.sketch, known)) {
        ComparedPoint row;
        row.match = match;
        row.before = findingOf(then, match.before, *before.sketch);
        row.after = findingOf(now, match.after, *after.sketch);
        compareRow(row);
        comparison.points.push_back(std::move(row));
    }
    return comparison;
}

} // namespace sealwalk::analysis
