// SPDX-License-Identifier: GPL-3.0-or-later
// Maps, balance and pressure rise of a report.
#include "core/analysis/job_balance.h"
#include "core/analysis/job_rise.h"
#include "core/analysis/job_view.h"
#include "core/report/map_builder.h"
#include "core/report/rate_text.h"
#include "core/report/report_parts.h"
#include "core/report/rise_figure.h"

#include <fmt/format.h>

#include <algorithm>

namespace sealwalk::report::detail {

namespace {

void addMaps(const Ground& ground, const std::vector<analysis::PointFinding>& findings,
             const MapOptions& options, Section& section)
{
    for (const model::Sheet& sheet : ground.job.sketch.sheets)
        section.blocks.emplace_back(MapBlock{std::make_shared<const MapContent>(
            mapOf(ground.job, ground.object, sheet.id, findings, options))});
}

MapOptions optionsOf(const Ground& ground)
{
    MapOptions options = mapOptions(ground.unit);
    options.gas = {}; // readings and limits of a report are helium throughout
    options.smallestDetectable = ground.detectable;
    options.now = ground.options.asOf;
    options.carried = ground.options.carried;
    return options;
}

MapScale scaleOf(const Ground& ground)
{
    MapScale scale;
    scale.lowestDecade = std::clamp(ground.object.scale.lowestDecade, -20, 10);
    scale.decades = std::clamp(ground.object.scale.decades, 1, 20);
    scale.limit = ground.job.setup.pointLimit;
    scale.smallestDetectable = ground.detectable;
    scale.shownPerSi = ground.unit.perSi;
    scale.unit = ground.unit.symbol;
    scale.spokenUnit = ground.unit.spoken;
    return scale;
}

const model::Round* lastRound(const Ground& ground)
{
    return ground.job.rounds.empty() ? nullptr : &ground.job.rounds.back();
}

/// Against the total limit, with the range.
/// Zero without a width would claim more than was tested: what the points could hide together is said
/// instead.
std::string nothingLocated(const Ground& ground)
{
    LeakRate hidden;
    int bounded = 0;
    int points = 0;
    for (analysis::PointFinding finding : ground.left) {
        const model::Joint* joint = ground.job.sketch.jointOf(finding.point);
        if (joint == nullptr || joint->isSetup)
            continue;
        ++points;
        finding.rate = finding.bound;
        if (const auto leak = analysis::asAir(ground.job, ground.object, finding)) {
            hidden += leak->air;
            ++bounded;
        }
    }
    if (bounded == 0)
        return "No leak located.";
    const std::string below = ground.rate(hidden);
    return bounded == points
               ? fmt::format("No leak located; the bounds of the points, each as air, add up to {}: together they "
                             "can hide no more.",
                             below)
               : fmt::format("No leak located; the bounds of {} of {} points, each as air, add up to {}; the "
                             "others have no bound.",
                             bounded, points, below);
}

std::string totalSentence(const Ground& ground, const analysis::RiseTotal& total)
{
    if (!ground.job.setup.totalLimit)
        return "No total limit was set.";
    const LeakRate limit = *ground.job.setup.totalLimit;
    const std::string said = ground.unit.print(limit) + " air";
    if (total.low > limit)
        return "The total is over its limit of " + said + '.';
    if (total.high <= limit)
        return "The total is within its limit of " + said + '.';
    return "The total cannot be told from its limit of " + said + ": its range crosses it.";
}

} // namespace

std::vector<Section> mapSections(const Ground& ground)
{
    std::vector<Section> sections;
    if (ground.job.sketch.sheets.empty())
        return sections;
    MapOptions options = optionsOf(ground);
    Section found{ground.repaired ? "Leak map, as found, as read" : "Leak map, as read", {}, {}};
    addMaps(ground, ground.repaired ? ground.found : ground.left, options, found);
    if (ground.repaired) {
        sections.push_back(std::move(found));
        found = Section{"Leak map, as left, as read", {}, {}};
        addMaps(ground, ground.left, options, found);
    }
    sections.push_back(std::move(found));
    Section scale{"Scale, the same for every job on this object", {}, {}};
    scale.blocks.emplace_back(ScaleBlock{scaleOf(ground)});
    scale.blocks.emplace_back(Paragraph{"The band swells by 0.5 mm for each decade above the smallest "
                                        "detectable leak. Teeth: over the limit; few "
                                        "teeth: cannot say; no teeth: within. One flat colour for each "
                                        "stretch sprayed; nothing is drawn between joints.",
                                        Paragraph::Look::Plain});
    scale.blocks.emplace_back(LegendBlock{});
    sections.push_back(std::move(scale));
    return sections;
}

Section balanceSection(const Ground& ground)
{
    Section section{"Balance, as air", {}, {}};
    if (lastRound(ground) == nullptr)
        return section;
    const model::RiseTest* test = analysis::riseTestFor(ground.job, analysis::Standing::AsLeft);
    std::optional<analysis::RiseSummary> rise;
    if (test != nullptr)
        if (Result<analysis::RiseSummary> judged = analysis::judgeRise(*test, ground.job, ground.object))
            rise = std::move(*judged);
    const Result<analysis::JobBalance> balance =
        analysis::balanceOfJob(ground.job, ground.object, ground.left, test, rise);
    if (!balance) {
        section.blocks.emplace_back(
            Paragraph{"No balance: " + inPrint(balance.error().message), Paragraph::Look::Plain});
        return section;
    }
    const analysis::LeakBalance& b = balance->balance;
    BarBlock bars{balanceBars(b, scaleOf(ground), ground.job.setup.totalLimit), {}};
    if (b.unlocated && b.verdict == analysis::BalanceVerdict::Missing)
        bars.words.push_back(
            {fmt::format("Something is still missing: {} ({} … {})", ground.rate(b.unlocated),
                         ground.rate(b.unlocatedLow), ground.rate(b.unlocatedHigh)),
             Paragraph::Look::Strong});
    const bool isAnyInSum = std::any_of(b.leaks.begin(), b.leaks.end(),
                                        [](const analysis::LeakAsAir& leak) { return leak.inSum(); });
    std::string sums = isAnyInSum ? fmt::format("Located: {} ({} … {}).", ground.rate(b.located),
                                                ground.rate(b.locatedLow), ground.rate(b.locatedHigh))
                                  : nothingLocated(ground);
    if (b.total) {
        sums += b.total->rate
                    ? fmt::format(" Pressure rise: {} ({} … {}).", ground.rate(b.total->rate),
                                  ground.rate(b.total->low), ground.rate(b.total->high))
                    : fmt::format(" Pressure rise: not separable, at most {}.", ground.rate(b.total->high));
        sums += ' ' + totalSentence(ground, *b.total);
    } else {
        sums += test == nullptr && !ground.job.standingRiseTests().empty()
                    ? " No pressure-rise test since the last repair: the total as left is not known."
                    : " No pressure-rise test that says a total.";
    }
    bars.words.push_back({sums, Paragraph::Look::Plain});
    if (!b.advice.empty())
        bars.words.push_back({asSentence(b.advice), Paragraph::Look::Plain});
    for (const analysis::LeakAsAir& leak : b.leaks)
        if (!leak.inSum())
            bars.words.push_back({asSentence(leak.whyNotInSum()), Paragraph::Look::Plain});
    section.blocks.emplace_back(std::move(bars));
    return section;
}

std::vector<Section> riseSections(const Ground& ground)
{
    std::vector<Section> sections;
    for (const model::RiseTest* standing : ground.job.standingRiseTests()) {
        const model::RiseTest& test = *standing;
        Section section{
            fmt::format("Pressure rise, {}", model::name(test.moment)),
            fmt::format("{}, {}", ground.when(test.at),
                        test.gauge.empty() ? std::string("gauge not named") : withWord("gauge", test.gauge)),
            {}};
        const Result<analysis::RiseSummary> rise = analysis::judgeRise(test, ground.job, ground.object);
        if (!rise) {
            section.blocks.emplace_back(
                Paragraph{"Not judged: " + inPrint(rise.error().message), Paragraph::Look::Plain});
            sections.push_back(std::move(section));
            continue;
        }
        FigureBlock block{riseFigure(*rise, ground.unit), {}};
        block.words.push_back({riseHeadline(*rise, ground.unit), Paragraph::Look::Strong});
        block.words.push_back(
            {fmt::format("Reading: {}. Outgassing {} at the start, {} at the end. {} values over {:.0f} min.",
                         rise->model, ground.rate(rise->outgassingStart),
                         ground.unit.printWithUnit(rise->outgassingEnd),
                         test.times.size(), (test.times.back() - test.times.front()) / 60.0),
             Paragraph::Look::Plain});
        for (const std::string& advice : rise->advice)
            block.words.push_back({asSentence(advice), Paragraph::Look::Plain});
        if (test.basePressure)
            block.words.push_back({"Base pressure before the gas was shut in: " +
                                       printRate(inMillibars(*test.basePressure)) + " mbar.",
                                   Paragraph::Look::Plain});
        if (!test.note.empty())
            block.words.push_back({typed(test.note), Paragraph::Look::Plain});
        section.blocks.emplace_back(std::move(block));
        sections.push_back(std::move(section));
    }
    return sections;
}

} // namespace sealwalk::report::detail
