// SPDX-License-Identifier: GPL-3.0-or-later
// Points: what needs a decision, all of them, what was not tested, what is void, every reading.
#include "core/analysis/blind_sprays.h"
#include "core/analysis/job_view.h"
#include "core/analysis/range_widening.h"
#include "core/base/calendar_day.h"
#include "core/model/point_numbers.h"
#include "core/quantities/number_text.h"
#include "core/report/map_builder.h"
#include "core/report/rate_text.h"
#include "core/report/report_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <unordered_map>

namespace sealwalk::report::detail {

namespace {

using analysis::Finding;
using analysis::PointFinding;
using analysis::Verdict;

bool needsDecision(const PointFinding& f)
{
    if (f.verdict != Verdict::Within || f.judgedByPerson || f.temporaryRepair || f.awaitsRetest ||
        f.concession)
        return true;
    return f.finding != Finding::Clear && f.finding != Finding::Leak;
}

int rank(const PointFinding& f)
{
    switch (f.verdict) {
    case Verdict::Over:
        return 0;
    case Verdict::CannotSay:
        return 1;
    case Verdict::Within:
        return 2;
    case Verdict::NoAnswer:
    case Verdict::NotCounted:
        return 3;
    }
    return 4;
}

Cell verdictCell(const PointFinding& f)
{
    Cell cell{std::string(model::name(f.verdict)), {}, {}, f.verdict, f.verdict == Verdict::Over};
    if (f.concession)
        cell.small =
            f.concededUntil ? "by concession until " + f.concededUntil->date() : "by concession, without end";
    if (f.overruled)
        cell.small += fmt::format("{}by {}; worked out: {}", cell.small.empty() ? "" : "; ",
                                  typed(f.overruled->by), model::name(f.overruled->verdict));
    return cell;
}

/// Beside a person's word what was worked out, and why it was not followed.
std::string overruledText(const PointFinding& f)
{
    return f.overruled ? fmt::format("judged by {}: {}; worked out: {}", typed(f.overruled->by),
                                     typed(f.overruled->reason), model::name(f.overruled->finding))
                       : std::string();
}

/// Why a bound is not the one of the reading itself: else what is signed could not be followed.
std::string boundText(const PointFinding& f)
{
    const auto late = std::ranges::find_if(f.because, [](const std::string& reason) {
        return reason.starts_with(analysis::kLateAnswerReason) ||
               reason.starts_with(analysis::kUntimedSprayReason) ||
               reason.starts_with(analysis::kUntimedValueReason);
    });
    return late == f.because.end() ? std::string() : inPrint(*late);
}

std::string besideFinding(const Ground& ground, const PointFinding& f)
{
    std::string text = f.overruled ? overruledText(f) : boundText(f);
    return text.empty() && ground.job.sketch.isOfSetup(f.point) ? "of the test set-up, not of the object"
                                                                : text;
}

bool hasOwnRate(const PointFinding& f)
{
    return f.rate && f.finding != Finding::Echo && f.finding != Finding::Masked;
}

/// Rate and range; below them the same as air where the job is shown so.
std::pair<Cell, Cell> rateCells(const Ground& ground, const PointFinding& f)
{
    Cell rate{hasOwnRate(f) ? ground.rate(f.rate) : "–", {}, {}, {}, true};
    Cell range{rangeText(ground, f)};
    if (!hasOwnRate(f) && f.asRead)
        rate.small = "as read " + ground.rate(*f.asRead);
    const ShownGas& gas = ground.unit.gas;
    if (!gas.isAir())
        return {rate, range};
    if (hasOwnRate(f)) {
        rate.small = "air " + ground.rate(gas.ofHelium(*f.rate));
        if (f.low && f.high) {
            const ShownGas::Range air = gas.range(*f.rate, *f.low, *f.high);
            range.small = "air " + ground.rate(air.low) + " … " + ground.rate(air.high);
        }
    } else if (f.bound) {
        range.small = "air, below " + ground.rate(gas.ofHelium(*f.bound));
    } else if (f.atLeast) {
        range.small = "air, at least " + ground.rate(gas.ofHelium(*f.atLeast));
    }
    return {rate, range};
}

std::vector<Cell> findingRow(const Ground& ground, const PointFinding& f)
{
    const auto [rate, range] = rateCells(ground, f);
    return {{std::to_string(f.number), {}, {}, {}, true},
            {ground.jointName(f.point), ground.place(f.point)},
            {findingText(ground, f), besideFinding(ground, f), plateMark(ground, f)},
            rate,
            range,
            verdictCell(f)};
}

/// What was found before the repairs.
Cell foundCell(const Ground& ground, const PointFinding& f)
{
    return {f.rate      ? ground.rate(f.rate)
            : f.atLeast ? "at least " + ground.rate(f.atLeast)
                        : std::string(model::name(f.finding)),
            !f.rate && f.asRead ? "as read " + ground.rate(*f.asRead) : ground.below(f.rate, f.low, f.high)};
}

std::vector<ReportColumn> findingColumns(const Ground& ground)
{
    const auto limit = ground.job.setup.pointLimit;
    return {{"Point", 0.7},       {"Joint, place", 2.6},
            {"Finding", 2.2},     {"Leak rate", 1.3, true},
            {"95 % range", 2.55}, {limit ? "Against " + ground.unit.print(*limit) : "Verdict", 1.9}};
}

} // namespace

std::string rangeText(const Ground& ground, const PointFinding& f)
{
    const bool hidden = f.finding == Finding::Echo || f.finding == Finding::Masked;
    if (f.low && f.high && !hidden)
        return ground.rate(f.low) + " … " + ground.rate(f.high);
    if (f.bound)
        return (hidden ? "own part below " : "below ") + ground.rate(f.bound);
    if (f.atLeast)
        return "at least " + ground.rate(f.atLeast);
    return "–";
}

std::string findingText(const Ground& ground, const PointFinding& f)
{
    std::string text(model::name(f.finding));
    if (f.finding == Finding::Clear)
        text = f.asRead ? "no clear response" : "no response";
    if (f.finding == Finding::BelowDetectable)
        text = "no response, too blind";
    const std::string others = ground.numbers(f.of);
    if (!others.empty())
        text += (f.finding == Finding::Masked   ? " by "
                 : f.finding == Finding::Shared ? " with "
                                                : " of ") +
                others;
    if (f.condition != model::Condition::AtRest)
        text += fmt::format(", {}", model::name(f.condition));
    if (f.temporaryRepair)
        text += ", held by a temporary repair";
    if (f.awaitsRetest)
        text += ", repaired, awaiting re-test";
    return text;
}

PlateMark plateMark(const Ground& ground, const PointFinding& f)
{
    PlateMark mark{stateOf(f), Teeth::None, f.temporaryRepair, false, f.concession};
    mark.teeth = f.verdict == Verdict::Over        ? Teeth::Full
                 : f.verdict == Verdict::CannotSay ? Teeth::Few
                                                   : Teeth::None;
    for (const std::vector<model::Repair>* repairs : {&ground.options.carried, &ground.job.repairs})
        for (const model::Repair& repair : *repairs)
            if (!repair.permanent && !repair.madeGoodBy && repair.due && ground.options.asOf.isSet() &&
                isPast(*repair.due, ground.options.asOf) &&
                std::find(repair.points.begin(), repair.points.end(), f.point) != repair.points.end())
                mark.overdue = mark.temporary = true;
    return mark;
}

Section decisionSection(const Ground& ground)
{
    std::vector<const PointFinding*> chosen;
    for (const PointFinding& f : ground.left)
        if (needsDecision(f))
            chosen.push_back(&f);
    std::stable_sort(chosen.begin(), chosen.end(), [](const PointFinding* a, const PointFinding* b) {
        if (rank(*a) != rank(*b))
            return rank(*a) < rank(*b);
        return a->rate.value_or(LeakRate()) > b->rate.value_or(LeakRate());
    });
    ReportTable table;
    table.columns = findingColumns(ground);
    table.empty = "No point needs a decision: every one was sprayed and is within the limit.";
    for (const PointFinding* f : chosen)
        table.rows.push_back(findingRow(ground, *f));
    Section section{
        "Findings that need a decision",
        fmt::format("{}all {} points further on", ground.repaired ? "as left; " : "", ground.left.size()),
        {std::move(table)}};
    std::vector<model::PointId> widened;
    for (const PointFinding* f : chosen)
        if (std::ranges::any_of(f->because, [](const std::string& reason) {
                return reason.starts_with(analysis::kWideningReason);
            }))
            widened.push_back(f->point);
    if (!widened.empty())
        section.blocks.emplace_back(Paragraph{
            fmt::format("The range ends above that of the reading alone at {}: a probe that passed too "
                        "fast or beside the leak shows less than there is.",
                        ground.numbers(widened)),
            Paragraph::Look::Soft});
    return section;
}

Section pointsSection(const Ground& ground)
{
    ReportTable table;
    table.columns = findingColumns(ground);
    table.empty = "The sketch has no points.";
    if (ground.repaired)
        table.columns.push_back({"As found", 1.25, true});
    std::unordered_map<model::PointId, const PointFinding*> found;
    for (const PointFinding& f : ground.found)
        found.emplace(f.point, &f);
    for (const PointFinding& f : ground.left) {
        std::vector<Cell> row = findingRow(ground, f);
        if (ground.repaired) {
            const auto before = found.find(f.point);
            const bool differs = before != found.end() && before->second->reading != f.reading;
            row.push_back(differs ? foundCell(ground, *before->second) : Cell{});
        }
        table.rows.push_back(std::move(row));
    }
    return {ground.repaired ? "All points, as left" : "All points",
            "below: what could have stayed unseen, with the uncertainty of check, factor and spray",
            {std::move(table)}};
}

Section untestedSection(const Ground& ground)
{
    ReportTable table;
    table.columns = {{"Point", 0.7}, {"Joint, place", 3.0}, {"State", 1.8}, {"Reason", 4.0}};
    table.empty = "Every point was sprayed.";
    for (const PointFinding& f : ground.left) {
        if (f.finding != Finding::NotAccessible && f.finding != Finding::NotSprayed &&
            f.finding != Finding::NotTested)
            continue;
        const model::Reading* reading = f.reading ? ground.job.reading(*f.reading) : nullptr;
        std::string reason = reading == nullptr ? std::string() : typed(reading->reason);
        if (reason.empty())
            reason = "no reason given";
        table.rows.push_back(
            {{std::to_string(f.number), {}, {}, {}, true},
             {ground.jointName(f.point), ground.place(f.point)},
             {std::string(model::name(f.finding)), {}, plateMark(ground, f)},
             {reason, reading == nullptr ? "" : typed(reading->by) + ", " + ground.when(reading->at)}});
    }
    return {"Not tested", "each with its reason; nothing is claimed for these", {std::move(table)}};
}

namespace {

void addVoidMeasurements(const Ground& ground, ReportTable& table)
{
    const model::Job& job = ground.job;
    const auto add = [&](const auto& measurement, Cell said) {
        if (const model::MeasurementVoid* mark = job.voidOf(measurement.id.uuid()))
            table.rows.push_back(
                {{"–"},
                 {ground.when(measurement.at), typed(measurement.by)},
                 std::move(said),
                 {"void: " + typed(mark->reason), typed(mark->by) + ", " + ground.when(mark->at)},
                 {"nothing"}});
    };
    for (const model::Calibration& check : job.calibrations)
        add(check,
            {std::string(model::name(check.kind)),
             fmt::format("shown {}, reference leak {}", ground.rate(check.shown), typed(check.leak.serial))});
    for (const model::BackgroundWatch& watch : job.backgrounds)
        add(watch, {"background watch"});
    for (const model::RiseTest& test : job.riseTests)
        add(test, {"pressure rise", std::string(model::name(test.moment))});
}

} // namespace

Section voidSection(const Ground& ground)
{
    const model::Job& job = ground.job;
    ReportTable table;
    table.columns = {{"Point", 0.7},
                     {"Entry", 1.5},
                     {"What it said", 1.8},
                     {"Void or corrected because", 3.4},
                     {"Now counts", 1.8}};
    const auto value = [&](const model::Reading& r) {
        return r.peak ? ground.rate(r.peak) : std::string(model::name(r.outcome));
    };
    for (const model::VoidMark& mark : job.voids) {
        const model::Reading* reading = job.reading(mark.reading);
        if (reading == nullptr)
            continue;
        std::string instead = "nothing";
        for (const model::Reading* later : job.standing(reading->round))
            if (later->point == reading->point && later->sequence > reading->sequence)
                instead = value(*later) + ", " + ground.when(later->at);
        table.rows.push_back({{ground.number(reading->point), {}, {}, {}, true},
                              {ground.when(reading->at), typed(reading->by)},
                              {value(*reading)},
                              {"void: " + typed(mark.reason), typed(mark.by) + ", " + ground.when(mark.at)},
                              {instead}});
    }
    addVoidMeasurements(ground, table);
    for (const model::Reading& later : job.readings) {
        const model::Reading* earlier = later.corrects ? job.reading(*later.corrects) : nullptr;
        if (earlier == nullptr)
            continue;
        table.rows.push_back(
            {{ground.number(earlier->point), {}, {}, {}, true},
             {ground.when(earlier->at), typed(earlier->by)},
             {value(*earlier), earlier->entered.empty() ? "" : "typed " + typed(earlier->entered)},
             {later.reason.empty() ? "corrected, no reason given" : "corrected: " + typed(later.reason),
              // A correction stands at the moment of the spray; that is not when it was made.
              later.at == earlier->at ? typed(later.by) : typed(later.by) + ", " + ground.when(later.at)},
             {value(later), later.entered.empty() ? "" : "typed " + typed(later.entered)}});
    }
    table.empty = "Nothing was voided or corrected.";
    return {"Void and corrected", "both stay in the record", {std::move(table)}};
}

/// What stands below the word: its own words, and what was taped off meanwhile.
std::string conditionDetail(const model::Job& job, const model::Reading& reading)
{
    const std::string own = typed(reading.conditionDetail);
    const std::string off = model::numbersOf(job.sketch, reading.shielded);
    return off.empty() ? own : fmt::format("{}{}taped off: {}", own, own.empty() ? "" : "; ", off);
}

Section readingsSection(const Ground& ground)
{
    ReportTable table;
    table.columns = {{"No.", 0.5, true},
                     {"Point", 0.6},
                     {"When, by", 2.05},
                     {"Condition", 1.35},
                     {"Background", 1.2, true},
                     {"Highest", 1.6, true},
                     {"Dwell, first rise", 0.95, true},
                     {"On the chamber", 1.75, true},
                     {"Remark", 2.0}};
    table.empty = "No reading was taken.";
    const std::unordered_map<model::RoundId, int> numbers = [&] {
        std::unordered_map<model::RoundId, int> all;
        for (const model::Round& round : ground.job.rounds)
            all.emplace(round.id, round.number);
        return all;
    }();
    std::unordered_map<model::ReadingId, analysis::CorrectedReading> corrected;
    for (const model::Round& round : ground.job.rounds)
        for (analysis::CorrectedReading& reading :
             analysis::correctedReadings(ground.job, ground.object, round.id))
            corrected.emplace(reading.reading, std::move(reading));
    for (const model::Reading& r : ground.job.readings) {
        std::string chamber = "–";
        std::string state;
        if (const auto known = corrected.find(r.id); known != corrected.end()) {
            const analysis::CorrectedReading& c = known->second;
            state = ground.below(c.rate, c.low, c.high);
            if (c.rate)
                chamber = ground.rate(c.rate);
            else if (c.below)
                chamber = "below " + ground.rate(c.below);
            else if (c.atLeast)
                chamber = "at least " + ground.rate(c.atLeast);
            if (c.isVoid)
                state = "void";
        } else {
            state = "corrected later";
        }
        const auto round = numbers.find(r.round);
        std::string remark = typed(r.remark.empty() ? r.reason : r.remark);
        if (r.outOfTurn)
            remark += remark.empty() ? "before the wait was over" : "; before the wait was over";
        table.rows.push_back(
            {{std::to_string(r.sequence)},
             {ground.number(r.point), {}, {}, {}, true},
             {ground.when(r.at),
              typed(r.by) + (round == numbers.end() ? "" : fmt::format(", round {}", round->second))},
             {std::string(model::name(r.condition)), conditionDetail(ground.job, r)},
             {ground.rate(r.background)},
             {r.outcome == model::Outcome::Value ? ground.rate(r.peak) : std::string(model::name(r.outcome))},
             {r.dwell ? trimmedText(r.dwell->si(), 3) + " s" : "–",
              r.delay ? trimmedText(r.delay->si(), 2) + " s" : ""},
             {chamber, state},
             {remark, std::string(model::name(r.entry))}});
    }
    return {
        "Every reading, as recorded",
        "as the detector showed it, and each by itself corrected to the chamber; below that its 95 % range",
        {std::move(table)}};
}

} // namespace sealwalk::report::detail
