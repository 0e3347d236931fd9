// SPDX-License-Identifier: GPL-3.0-or-later
// Tables of what people did and decided: repairs, verdicts, concessions, voids, points left out.
#include "core/analysis/approval.h"
#include "core/analysis/repair_progress.h"
#include "core/exchange/job_tables_parts.h"

#include <fmt/format.h>

#include <algorithm>

namespace sealwalk::exchange::detail {

namespace {

using analysis::PointFinding;

Table tableOf(const char* title, const char* says, const JobRecord& record, LeakRateUnit unit)
{
    Table table;
    table.title = title;
    table.notes = headNotes(record, unit);
    table.notes.emplace_back(says);
    return table;
}

const PointFinding* findingOf(const std::vector<PointFinding>& all, model::PointId point)
{
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const PointFinding& f) { return f.point == point; });
    return found == all.end() ? nullptr : &*found;
}

TableCell roundCell(const model::Job& job, model::RoundId id)
{
    const model::Round* round = job.round(id);
    return round == nullptr ? TableCell{} : TableCell{static_cast<double>(round->number)};
}

std::string progressText(const model::Job& job, const model::Repair& repair,
                         const std::vector<PointFinding>& left)
{
    // Of a signed job as it stood at its approval, whenever the table is written.
    const Timestamp asOf = analysis::approvalOf(job).value_or(Timestamp::now());
    const auto progress = analysis::progressOf(job, repair, left, asOf);
    std::string text = analysis::progressWords(progress, repair);
    if (progress.step == analysis::RepairStep::AwaitsRetest)
        text += ": " + model::numbersOf(job.sketch, progress.toSpray);
    return text;
}

} // namespace

Table repairsTable(const JobRecord& record, const std::vector<PointFinding>& left, LeakRateUnit unit)
{
    Table table = tableOf("Repairs", "what was done, by whom, and whether it is proven", record, unit);
    table.columns = {{"points", "", CellKind::Text, 10},        {"defect", "", CellKind::Text, 18},
                     {"done", "", CellKind::Text, 24},          {"material", "", CellKind::Text, 18},
                     {"lasting", "", CellKind::Text, 11},       {"owner", "", CellKind::Text, 14},
                     {"due", "", CellKind::Text, 11},           {"sprayable from", "", CellKind::Moment, 19},
                     {"zone of that", "", CellKind::Text, 8},   {"by", "", CellKind::Text, 14},
                     {"at", "", CellKind::Moment, 19},          {"zone", "", CellKind::Text, 8},
                     {"sprayed again", "", CellKind::Text, 12}, {"state", "", CellKind::Text, 30},
                     {"note", "", CellKind::Text, 30}};
    for (const model::Repair& repair : record.job.repairs) {
        TableRow row;
        row.cells = {model::numbersOf(record.job.sketch, repair.points),
                     repair.defect,
                     repair.action,
                     repair.material,
                     std::string(repair.permanent ? "permanent" : "temporary"),
                     repair.owner,
                     repair.due ? repair.due->date() : std::string()};
        addMoment(row, repair.sprayableFrom);
        row.cells.emplace_back(repair.by);
        addMoment(row, repair.at);
        const model::Round* round = analysis::provingRound(record.job, repair);
        row.cells.emplace_back(round == nullptr ? std::string() : fmt::format("round {}", round->number));
        row.cells.emplace_back(progressText(record.job, repair, left));
        row.cells.emplace_back(repair.note);
        table.rows.push_back(std::move(row));
    }
    return table;
}

Table verdictsTable(const JobRecord& record, const std::vector<std::vector<PointFinding>>& byRound,
                    LeakRateUnit unit)
{
    const model::Job& job = record.job;
    Table table = tableOf("Verdicts", "verdicts by people, each beside what was worked out", record, unit);
    table.columns = {
        {"round", "", CellKind::Whole, 7},          {"point", "", CellKind::Whole, 7},
        {"joint", "", CellKind::Text, 20},          {"kind", "", CellKind::Text, 18},
        {"place", "", CellKind::Text, 24},          {"finding", "", CellKind::Text, 15},
        {"of the leak at", "", CellKind::Text, 14}, {"verdict", "", CellKind::Text, 12},
        {"worked out", "", CellKind::Text, 15},     {"verdict worked out", "", CellKind::Text, 12},
        {"reason", "", CellKind::Text, 40},         {"by", "", CellKind::Text, 14},
        {"at", "", CellKind::Moment, 19},           {"zone", "", CellKind::Text, 8}};
    for (const model::Judgement& judgement : job.judgements) {
        TableRow row;
        row.cells.push_back(roundCell(job, judgement.round));
        addPlace(row, job.sketch, judgement.point);
        row.cells.emplace_back(judgement.finding);
        row.cells.emplace_back(model::numbersOf(job.sketch, judgement.of));
        row.cells.emplace_back(judgement.verdict);
        const PointFinding* found = nullptr;
        for (std::size_t i = 0; i < byRound.size() && i < job.rounds.size(); ++i)
            if (job.rounds[i].id == judgement.round)
                found = findingOf(byRound[i], judgement.point);
        const bool isKnown = found != nullptr && found->overruled;
        row.cells.emplace_back(isKnown ? std::string(model::name(found->overruled->finding)) : std::string());
        row.cells.emplace_back(isKnown ? std::string(model::name(found->overruled->verdict)) : std::string());
        row.cells.emplace_back(judgement.reason);
        row.cells.emplace_back(judgement.by);
        addMoment(row, judgement.at);
        table.rows.push_back(std::move(row));
    }
    return table;
}

Table concessionsTable(const JobRecord& record, LeakRateUnit unit)
{
    Table table = tableOf("Concessions", "points accepted above their limit, by whose leave", record, unit);
    table.columns = {{"points", "", CellKind::Text, 10},     {"granted by", "", CellKind::Text, 18},
                     {"until", "", CellKind::Text, 11},      {"reason", "", CellKind::Text, 40},
                     {"entered by", "", CellKind::Text, 14}, {"at", "", CellKind::Moment, 19},
                     {"zone", "", CellKind::Text, 8}};
    for (const model::Concession& concession : record.job.concessions) {
        TableRow row;
        row.cells = {model::numbersOf(record.job.sketch, concession.points), concession.grantedBy,
                     concession.until ? concession.until->date() : std::string("without end"),
                     concession.reason, concession.by};
        addMoment(row, concession.at);
        table.rows.push_back(std::move(row));
    }
    return table;
}

Table voidsTable(const JobRecord& record, LeakRateUnit unit)
{
    const model::Job& job = record.job;
    Table table =
        tableOf("Void", "what proves nothing, each with its reason; it stays on record", record, unit);
    const std::string symbol(unitOf(unit).symbol);
    table.columns = {{"reading", "", CellKind::Whole, 8},     {"round", "", CellKind::Whole, 7},
                     {"point", "", CellKind::Whole, 7},       {"joint", "", CellKind::Text, 20},
                     {"kind", "", CellKind::Text, 18},        {"place", "", CellKind::Text, 24},
                     {"highest", symbol, CellKind::Rate, 14}, {"reason", "", CellKind::Text, 40},
                     {"by", "", CellKind::Text, 14},          {"at", "", CellKind::Moment, 19},
                     {"zone", "", CellKind::Text, 8}};
    for (const model::VoidMark& mark : job.voids) {
        const model::Reading* reading = job.reading(mark.reading);
        if (reading == nullptr)
            continue;
        TableRow row;
        row.cells.emplace_back(static_cast<double>(reading->sequence));
        row.cells.push_back(roundCell(job, reading->round));
        addPlace(row, job.sketch, reading->point);
        row.cells.push_back(rateCell(reading->peak, unit));
        row.cells.emplace_back(mark.reason);
        row.cells.emplace_back(mark.by);
        addMoment(row, mark.at);
        table.rows.push_back(std::move(row));
    }
    const auto add = [&](const auto& measurement, const std::string& what) {
        const model::MeasurementVoid* mark = job.voidOf(measurement.id.uuid());
        if (mark == nullptr)
            return;
        TableRow row;
        row.cells.resize(3); // of no reading, round or point
        row.cells.insert(row.cells.end(), {std::string(), what + ", " + measurement.at.text(), std::string(),
                                           TableCell{}, mark->reason, mark->by});
        addMoment(row, mark->at);
        table.rows.push_back(std::move(row));
    };
    for (const model::Calibration& check : job.calibrations)
        add(check, std::string(model::name(check.kind)));
    for (const model::BackgroundWatch& watch : job.backgrounds)
        add(watch, "background watch");
    for (const model::RiseTest& test : job.riseTests)
        add(test, "pressure rise, " + std::string(model::name(test.moment)));
    return table;
}

Table untestedTable(const JobRecord& record, const std::vector<PointFinding>& left, LeakRateUnit unit)
{
    const model::Job& job = record.job;
    Table table = tableOf("Not tested", "nothing is claimed for these points", record, unit);
    table.columns = {{"point", "", CellKind::Whole, 7}, {"joint", "", CellKind::Text, 20},
                     {"kind", "", CellKind::Text, 18},  {"place", "", CellKind::Text, 24},
                     {"state", "", CellKind::Text, 15}, {"reason", "", CellKind::Text, 40},
                     {"by", "", CellKind::Text, 14},    {"at", "", CellKind::Moment, 19},
                     {"zone", "", CellKind::Text, 8}};
    for (const PointFinding& finding : left) {
        if (finding.finding != analysis::Finding::NotAccessible &&
            finding.finding != analysis::Finding::NotTested &&
            finding.finding != analysis::Finding::NotSprayed)
            continue;
        const model::Reading* reading = finding.reading ? job.reading(*finding.reading) : nullptr;
        TableRow row;
        addPlace(row, job.sketch, finding.point);
        row.cells.emplace_back(std::string(model::name(finding.finding)));
        row.cells.emplace_back(reading == nullptr ? std::string("no reason given") : reading->reason);
        row.cells.emplace_back(reading == nullptr ? std::string() : reading->by);
        addMoment(row, reading == nullptr ? std::nullopt : std::optional(reading->at));
        table.rows.push_back(std::move(row));
    }
    return table;
}

} // namespace sealwalk::exchange::detail
