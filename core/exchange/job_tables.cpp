// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/job_tables.h"

#include "core/analysis/round_summary.h"
#include "core/base/clock_zone.h"
#include "core/exchange/job_tables_parts.h"

#include <fmt/format.h>

#include <cstdlib>
#include <optional>

namespace sealwalk::exchange {

using model::Job;
using model::Reading;

namespace detail {

TableCell rateCell(const std::optional<LeakRate>& rate, LeakRateUnit unit)
{
    if (!rate)
        return std::monostate{};
    const Result<double> number = numberIn(*rate, unit);
    return number ? TableCell{*number} : TableCell{std::monostate{}};
}

std::string joined(const std::vector<std::string>& words, const char* between)
{
    return fmt::format("{}", fmt::join(words, between));
}

/// What a point is, in the words every row shares: number, joint, kind, place.
void addPlace(TableRow& row, const model::Sketch& sketch, model::PointId id)
{
    const model::TestPoint* point = sketch.point(id);
    const model::Joint* joint = point == nullptr ? nullptr : sketch.joint(point->joint);
    row.cells.push_back(point == nullptr ? TableCell{} : TableCell{static_cast<double>(point->number)});
    row.cells.push_back(joint == nullptr ? std::string() : joint->name);
    row.cells.push_back(joint == nullptr ? std::string() : std::string(model::name(joint->kind)));
    row.cells.push_back(point == nullptr ? std::string() : placeText(sketch, *point));
}

std::vector<std::string> headNotes(const JobRecord& record, LeakRateUnit unit)
{
    const Job& job = record.job;
    std::vector<std::string> notes;
    notes.push_back(
        record.object.name + (record.object.tag.empty() ? "" : " (" + record.object.tag + ")") +
        fmt::format(", job {}, opened {}, {}", job.number, job.opened.date(), model::name(job.state)));
    if (job.setup.pointLimit)
        if (const Result<double> limit = numberIn(*job.setup.pointLimit, unit))
            notes.push_back(fmt::format("limit of one point: {} {}", tableNumber(*limit, CellKind::Rate),
                                        unitOf(unit).symbol));
    if (record.object.invented)
        notes.emplace_back("invented data, for demonstration");
    return notes;
}

void addMoment(TableRow& row, const std::optional<Timestamp>& at)
{
    const bool isKnown = at && at->isSet();
    row.cells.push_back(isKnown ? TableCell{*at} : TableCell{});
    row.cells.emplace_back(isKnown ? zoneText(*at) : std::string());
}

} // namespace detail

namespace {

using detail::addPlace;
using detail::headNotes;
using detail::joined;
using detail::rateCell;
using model::numbersOf;

TableCell secondsCell(const std::optional<Duration>& time)
{
    return time ? TableCell{inSeconds(*time)} : TableCell{std::monostate{}};
}

std::string yes(bool value)
{
    return value ? "yes" : "";
}

Status checkUnit(LeakRateUnit unit)
{
    return numberIn(LeakRate{}, unit).map([](double) {});
}

std::string standing(const Job& job, const Reading& reading)
{
    if (const Reading* later = job.correctionOf(reading.id))
        return fmt::format("corrected by reading {}", later->sequence);
    for (const model::VoidMark& mark : job.voids)
        if (mark.reading == reading.id)
            return "void: " + mark.reason;
    return "stands";
}

std::string flagsOf(const analysis::PointFinding& finding)
{
    std::vector<std::string> flags;
    if (finding.judgedByPerson)
        flags.emplace_back("judged by a person");
    if (finding.temporaryRepair)
        flags.emplace_back("temporary repair");
    if (finding.concession)
        flags.emplace_back("concession");
    if (finding.awaitsRetest)
        flags.emplace_back("awaits re-test");
    return joined(flags, ", ");
}

constexpr std::size_t kVerdictColumn = 6; ///< behind the columns of addPlace(), condition and finding

std::vector<TableColumn> findingColumns(const std::string& symbol)
{
    return {{"point", "", CellKind::Whole, 7},         {"joint", "", CellKind::Text, 20},
            {"kind", "", CellKind::Text, 18},          {"place", "", CellKind::Text, 24},
            {"condition", "", CellKind::Text, 11},     {"finding", "", CellKind::Text, 15},
            {"verdict", "", CellKind::Text, 12},       {"as read", symbol, CellKind::Rate, 14},
            {"leak rate", symbol, CellKind::Rate, 14}, {"low", symbol, CellKind::Rate, 14},
            {"high", symbol, CellKind::Rate, 14},      {"below", symbol, CellKind::Rate, 14},
            {"at least", symbol, CellKind::Rate, 14},  {"of points", "", CellKind::Text, 10},
            {"marks", "", CellKind::Text, 18},         {"because", "", CellKind::Text, 60}};
}

std::vector<Highlight> verdictHighlights(std::size_t column)
{
    return {{column, "over", Shade::Alarm},
            {column, "cannot say", Shade::Caution},
            {column, "within", Shade::Good},
            {column, "no answer", Shade::Quiet},
            {column, std::string(model::kVerdictNotCounted), Shade::Quiet}};
}

/// Sentences and phrases one behind the other, none running into the next.
std::string sentences(const std::vector<std::string>& told)
{
    std::string all;
    for (const std::string& each : told) {
        if (!all.empty())
            all += all.back() == '.' ? " " : "; ";
        all += each;
    }
    return all;
}

void addFinding(TableRow& row, const model::Sketch& sketch, const analysis::PointFinding& f,
                LeakRateUnit unit)
{
    addPlace(row, sketch, f.point);
    row.cells.emplace_back(std::string(model::name(f.condition)));
    row.cells.emplace_back(std::string(model::name(f.finding)));
    row.cells.emplace_back(std::string(model::name(f.verdict)));
    for (const auto& rate : {f.asRead, f.rate, f.low, f.high, f.bound, f.atLeast})
        row.cells.push_back(rateCell(rate, unit));
    row.cells.emplace_back(numbersOf(sketch, f.of));
    row.cells.emplace_back(flagsOf(f));
    row.cells.emplace_back(sentences(f.because));
}

std::vector<std::string> findingNotes(const JobRecord& record, LeakRateUnit unit, const char* what)
{
    std::vector<std::string> notes = headNotes(record, unit);
    notes.emplace_back(what);
    notes.emplace_back("helium leak rates on the chamber with their 95 % range; \"below\" and \"at least\" "
                       "are bounds, not values");
    return notes;
}

using ByRound = std::vector<std::vector<analysis::PointFinding>>;

Table asLeftTable(const JobRecord& record, const ByRound& byRound, LeakRateUnit unit)
{
    Table table;
    table.title = "As left";
    table.notes = findingNotes(record, unit, "the latest answer of each point");
    table.columns = findingColumns(std::string(unitOf(unit).symbol));
    table.highlights = verdictHighlights(kVerdictColumn);
    for (const analysis::PointFinding& f :
         analysis::summarise(record.job, byRound, analysis::Standing::AsLeft)) {
        TableRow row;
        addFinding(row, record.job.sketch, f, unit);
        table.rows.push_back(std::move(row));
    }
    return table;
}

Table findingsTable(const JobRecord& record, const ByRound& byRound, LeakRateUnit unit)
{
    Table table;
    table.title = "Findings";
    table.notes = findingNotes(record, unit, "every point of every round");
    table.columns = findingColumns(std::string(unitOf(unit).symbol));
    table.columns.insert(table.columns.begin(), {"round", "", CellKind::Whole, 7});
    table.highlights = verdictHighlights(kVerdictColumn + 1);
    for (std::size_t i = 0; i < byRound.size() && i < record.job.rounds.size(); ++i) {
        for (const analysis::PointFinding& f : byRound[i]) {
            TableRow row;
            row.cells.emplace_back(static_cast<double>(record.job.rounds[i].number));
            addFinding(row, record.job.sketch, f, unit);
            table.rows.push_back(std::move(row));
        }
    }
    return table;
}

Table readingsTable(const JobRecord& record, LeakRateUnit unit)
{
    const Job& job = record.job;
    const std::string symbol(unitOf(unit).symbol);
    Table table;
    table.title = "Readings";
    table.notes = headNotes(record, unit);
    table.notes.emplace_back("every reading as recorded; rates as the detector showed them");
    table.columns = {{"reading", "", CellKind::Whole, 8},
                     {"round", "", CellKind::Whole, 7},
                     {"point", "", CellKind::Whole, 7},
                     {"joint", "", CellKind::Text, 20},
                     {"kind", "", CellKind::Text, 18},
                     {"place", "", CellKind::Text, 24},
                     {"at", "", CellKind::Moment, 19},
                     {"zone", "", CellKind::Text, 8},
                     {"outcome", "", CellKind::Text, 14},
                     {"condition", "", CellKind::Text, 14},
                     {"background", symbol, CellKind::Rate, 14},
                     {"highest", symbol, CellKind::Rate, 14},
                     {"entered", "", CellKind::Text, 16},
                     {"dwell", "s", CellKind::Plain, 9},
                     {"delay", "s", CellKind::Plain, 9},
                     {"clean-up", "s", CellKind::Plain, 10},
                     {"gentle", "", CellKind::Text, 7},
                     {"confirmed", "", CellKind::Text, 10},
                     {"out of turn", "", CellKind::Text, 11},
                     {"entry", "", CellKind::Text, 12},
                     {"by", "", CellKind::Text, 14},
                     {"reason", "", CellKind::Text, 24},
                     {"remark", "", CellKind::Text, 24},
                     {"standing", "", CellKind::Text, 24},
                     {"taped off", "", CellKind::Text, 11}};
    for (const Reading& reading : job.readings) {
        const model::Round* round = job.round(reading.round);
        TableRow row;
        row.cells.emplace_back(static_cast<double>(reading.sequence));
        row.cells.push_back(round == nullptr ? TableCell{} : TableCell{static_cast<double>(round->number)});
        addPlace(row, job.sketch, reading.point);
        detail::addMoment(row, reading.at);
        row.cells.emplace_back(std::string(model::name(reading.outcome)));
        row.cells.emplace_back(std::string(model::name(reading.condition)) +
                               (reading.conditionDetail.empty() ? "" : ", " + reading.conditionDetail));
        row.cells.push_back(rateCell(reading.background, unit));
        row.cells.push_back(rateCell(reading.peak, unit));
        row.cells.emplace_back(reading.entered);
        row.cells.push_back(secondsCell(reading.dwell));
        row.cells.push_back(secondsCell(reading.delay));
        row.cells.push_back(secondsCell(reading.cleanUp));
        row.cells.emplace_back(yes(reading.gentle));
        row.cells.emplace_back(yes(reading.confirmed));
        row.cells.emplace_back(yes(reading.outOfTurn));
        row.cells.emplace_back(std::string(model::name(reading.entry)));
        row.cells.emplace_back(reading.by);
        row.cells.emplace_back(reading.reason);
        row.cells.emplace_back(reading.remark);
        row.cells.emplace_back(standing(job, reading));
        row.cells.emplace_back(numbersOf(job.sketch, reading.shielded));
        table.rows.push_back(std::move(row));
    }
    return table;
}

} // namespace

Result<JobTables> jobTables(const JobRecord& record, LeakRateUnit unit)
{
    if (const Status right = checkUnit(unit); !right)
        return fail(right.error());
    const ByRound byRound = analysis::findingsByRound(record.job, record.object);
    const auto left = analysis::summarise(record.job, byRound, analysis::Standing::AsLeft);
    return JobTables{asLeftTable(record, byRound, unit),
                     findingsTable(record, byRound, unit),
                     readingsTable(record, unit),
                     detail::repairsTable(record, left, unit),
                     detail::verdictsTable(record, byRound, unit),
                     detail::concessionsTable(record, unit),
                     detail::voidsTable(record, unit),
                     detail::untestedTable(record, left, unit)};
}

} // namespace sealwalk::exchange
