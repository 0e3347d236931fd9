// SPDX-License-Identifier: GPL-3.0-or-later
// Against the last job of the object, in decades.
#include "core/analysis/comparison.h"
#include "core/analysis/limit_change.h"
#include "core/analysis/round_summary.h"
#include "core/report/rate_text.h"
#include "core/report/report_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace sealwalk::report::detail {

namespace {

constexpr std::size_t kSeveral = 3; // fewer are told one by one

std::string sideText(const Ground& ground, const std::optional<analysis::PointFinding>& side)
{
    if (!side)
        return "no such point";
    if (side->rate)
        return ground.rate(side->rate);
    if (side->atLeast)
        return "at least " + ground.rate(side->atLeast);
    if (side->bound)
        return "below " + ground.rate(side->bound);
    return std::string(model::name(side->finding));
}

Cell sideCell(const Ground& ground, const std::optional<analysis::PointFinding>& side)
{
    return {sideText(ground, side), side ? ground.below(side->rate, side->low, side->high) : std::string()};
}

std::string decadesText(const analysis::ComparedPoint& point)
{
    if (!point.decades)
        return "–";
    std::string text = fmt::format("{:+.1f}", *point.decades);
    if (text.front() == '-')
        text.replace(0, 1, "\u2212");
    return point.atLeast ? "at least " + text : text;
}

/// Both figures with their ranges stand in the row: why they differ needs words only where they decide
/// nothing. The unit stands at the foot of every page.
std::string whyText(const Ground& ground, const analysis::ComparedPoint& point)
{
    if (point.decades && point.change != analysis::Change::NotComparable)
        return {};
    std::string text = inPrint(point.because);
    const std::string unit =
        ' ' + ShownUnit().symbol; // as the analysis writes it; another has to be told apart
    if (unit.substr(1) == ground.unit.symbol)
        for (std::size_t at = text.find(unit); at != std::string::npos; at = text.find(unit))
            text.erase(at, unit.size());
    return text;
}

/// What a row tells beside its point.
std::string tellingOf(const Ground& ground, const analysis::ComparedPoint& point)
{
    return fmt::format("{}|{}|{}|{}", model::name(point.change), sideText(ground, point.before),
                       sideText(ground, point.after), point.because);
}

/// Points that cannot be compared and of which the same is to be said, where there are several: page upon
/// page of one sentence hides the rows that say something.
std::map<std::string, std::vector<model::PointId>>
toldAlike(const Ground& ground, const std::vector<const analysis::ComparedPoint*>& points)
{
    std::map<std::string, std::vector<model::PointId>> alike;
    for (const analysis::ComparedPoint* point : points)
        if (point->change == analysis::Change::NotComparable && point->after)
            alike[tellingOf(ground, *point)].push_back(point->after->point);
    std::erase_if(alike, [](const auto& group) { return group.second.size() < kSeveral; });
    return alike;
}

} // namespace

Section comparisonSection(const Ground& ground)
{
    Section section{"Compared with the last job", {}, {}};
    if (!ground.options.lastJob) {
        section.blocks.emplace_back(
            Paragraph{"There is no earlier job of this object to compare with.", Paragraph::Look::Plain});
        return section;
    }
    const model::Job& last = *ground.options.lastJob;
    section.note =
        fmt::format("job {} of {}, as left, against this one as found; below a rate its 95 % range",
                    last.number, last.opened.date());
    if (const auto words = analysis::otherLimitWords(last, ground.job))
        section.blocks.emplace_back(Paragraph{inPrint(*words), Paragraph::Look::Strong});
    const std::vector<analysis::PointFinding> then =
        analysis::summarise(last, ground.object, analysis::Standing::AsLeft);
    const analysis::Comparison comparison =
        analysis::compare({&last.sketch, then}, {&ground.job.sketch, ground.found}, ground.options.known);
    ReportTable table;
    table.columns = {{"Point", 0.6},      {"Joint, place", 2.4},  {"Then", 1.75, true},
                     {"Now", 1.75, true}, {"Decades", 1.3, true}, {"Change, why", 3.4}};
    table.empty = "No point changed by more than the ranges of both jobs.";
    std::vector<const analysis::ComparedPoint*> changed;
    for (const analysis::ComparedPoint& point : comparison.points)
        if (point.change != analysis::Change::Same)
            changed.push_back(&point);
    const auto size = [](const analysis::ComparedPoint* p) {
        return p->decades ? std::abs(*p->decades) : -1.0;
    };
    std::stable_sort(changed.begin(), changed.end(),
                     [&](const analysis::ComparedPoint* a, const analysis::ComparedPoint* b) {
                         return size(a) > size(b);
                     });
    const auto alike = toldAlike(ground, changed);
    for (const analysis::ComparedPoint* point : changed) {
        const auto& side = point->after ? point->after : point->before;
        if (!side)
            continue;
        if (const auto group = alike.find(tellingOf(ground, *point)); group != alike.end()) {
            if (group->second.front() != side->point)
                continue;
            table.rows.push_back({{},
                                  {fmt::format("{} points", group->second.size()),
                                   ground.numbers(group->second),
                                   {},
                                   {},
                                   true},
                                  sideCell(ground, point->before),
                                  sideCell(ground, point->after),
                                  {decadesText(*point)},
                                  {std::string(model::name(point->change)), whyText(ground, *point)}});
            continue;
        }
        table.rows.push_back({{std::to_string(side->number), {}, {}, {}, true},
                              {ground.jointName(side->point), ground.place(side->point)},
                              sideCell(ground, point->before),
                              sideCell(ground, point->after),
                              {decadesText(*point)},
                              {std::string(model::name(point->change)), whyText(ground, *point)}});
    }
    section.blocks.emplace_back(std::move(table));
    // What a person said of points changes what is compared, and may be said after the job was signed.
    if (ground.job.state == model::JobState::Signed)
        section.blocks.emplace_back(Paragraph{
            "Worked out from both jobs when this was printed, with what is known of their points now; "
            "the signature does not cover this section.",
            Paragraph::Look::Plain});
    std::string said;
    for (const analysis::ComparedPoint& point : comparison.points)
        if (point.match.by == analysis::MatchedBy::Person && point.before && point.after)
            said += fmt::format("{}{} as {}", said.empty() ? "" : ", ", point.before->number,
                                point.after->number);
    if (!said.empty())
        section.blocks.emplace_back(
            Paragraph{fmt::format("Said by a person to be the same point, then and now: {}.", said),
                      Paragraph::Look::Plain});
    section.blocks.emplace_back(
        Paragraph{fmt::format("{} points are the same within the ranges of both jobs, {} cannot be compared.",
                              comparison.count(analysis::Change::Same),
                              comparison.count(analysis::Change::NotComparable)),
                  Paragraph::Look::Plain});
    return section;
}

} // namespace sealwalk::report::detail
