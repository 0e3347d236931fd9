// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/history.h"
#include "core/analysis/comparison.h"
#include "core/analysis/limit_change.h"
#include "core/analysis/round_summary.h"
#include "core/exchange/survey_unit.h"
#include "core/transfer/known_pairs.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <memory>
#include <thread>

namespace sealwalk::cli {
namespace {

using analysis::Change;
using analysis::ComparedPoint;

struct Arguments
{
    std::string then;
    std::string now;
    std::string standing = "as found";
    std::string unit = "mbar l/s";
};

/// A job with what was found, so that both live as long as the comparison.
struct Side
{
    exchange::JobRecord record;
    std::vector<analysis::PointFinding> findings;
};

Result<Side> loadSide(const storage::HistoryStore& store, const std::string& job)
{
    auto record = loadJob(store, job);
    if (!record)
        return fail(record.error());
    return Side{std::move(*record), {}};
}

void summarise(Side& side, analysis::Standing standing)
{
    side.findings = analysis::summarise(side.record.job, side.record.object, standing);
}

nlohmann::ordered_json numberOrNull(const std::optional<double>& number)
{
    return number ? nlohmann::ordered_json(*number) : nlohmann::ordered_json(nullptr);
}

nlohmann::ordered_json sideDocument(const std::optional<analysis::PointFinding>& finding, LeakRate one)
{
    if (!finding)
        return nullptr;
    const auto rate = [&](const std::optional<LeakRate>& value) {
        return value ? nlohmann::ordered_json(*value / one) : nlohmann::ordered_json(nullptr);
    };
    nlohmann::ordered_json document;
    document["point"] = finding->number;
    document["finding"] = model::name(finding->finding);
    document["condition"] = model::name(finding->condition);
    document["leak_rate"] = rate(finding->rate);
    document["low"] = rate(finding->low);
    document["high"] = rate(finding->high);
    document["bound"] = rate(finding->bound);
    document["at_least"] = rate(finding->atLeast);
    return document;
}

nlohmann::ordered_json pointDocument(const ComparedPoint& point, LeakRate one)
{
    nlohmann::ordered_json document;
    document["point"] = point.after ? point.after->number : point.before->number;
    document["change"] = model::name(point.change);
    document["decades"] = numberOrNull(point.decades);
    document["low"] = numberOrNull(point.low);
    document["high"] = numberOrNull(point.high);
    document["at_least"] = point.atLeast;
    document["matched_by"] = model::name(point.match.by);
    document["then"] = sideDocument(point.before, one);
    document["now"] = sideDocument(point.after, one);
    document["because"] = point.because;
    return document;
}

std::string decadesText(const ComparedPoint& point)
{
    if (!point.decades)
        return {};
    std::string text = fmt::format("{}{:+.1f} decades", point.atLeast ? "at least " : "", *point.decades);
    if (point.low && point.high)
        text += fmt::format(" ({:+.1f} to {:+.1f})", *point.low, *point.high);
    return text;
}

std::string pointText(const ComparedPoint& point)
{
    const int number = point.after ? point.after->number : point.before->number;
    return fmt::format("{:>5}  {:<14} {:<36} {}\n", number, model::name(point.change), decadesText(point),
                       point.because);
}

/// What changed first, the largest change on top; what stayed is only counted.
std::string textOf(const analysis::Comparison& comparison)
{
    std::vector<const ComparedPoint*> rows;
    for (const ComparedPoint& point : comparison.points)
        if (point.change != Change::Same)
            rows.push_back(&point);
    std::stable_sort(rows.begin(), rows.end(), [](const ComparedPoint* a, const ComparedPoint* b) {
        return std::abs(a->decades.value_or(0.0)) > std::abs(b->decades.value_or(0.0));
    });
    std::string text;
    for (const ComparedPoint* row : rows)
        text += pointText(*row);
    text += fmt::format("{} new, {} gone, {} grown, {} shrunk, {} the same, {} not comparable",
                        comparison.count(Change::New), comparison.count(Change::Gone),
                        comparison.count(Change::Grown), comparison.count(Change::Shrunk),
                        comparison.count(Change::Same), comparison.count(Change::NotComparable));
    return text;
}

Result<Verdict> answerCompare(const Arguments& arguments, const Console& console)
{
    const Result<LeakRate> one = exchange::oneOfUnit(arguments.unit);
    if (!one)
        return fail(one.error().in("--unit"));
    const auto standing =
        arguments.standing == "as left" ? analysis::Standing::AsLeft : analysis::Standing::AsFound;
    const auto store = openHistory(console, storage::HistoryStore::Mode::ReadOnly);
    if (!store)
        return fail(store.error());
    auto then = loadSide(*store, arguments.then);
    if (!then)
        return fail(then.error());
    auto now = loadSide(*store, arguments.now);
    if (!now)
        return fail(now.error());
    const auto known = transfer::knownPairs(*store);
    if (!known)
        return fail(known.error());
    {
        // The two jobs know nothing of each other, and finding the sources is what takes the time.
        const std::jthread helper([&] { summarise(*then, standing); });
        summarise(*now, standing);
    }
    const auto comparison = analysis::compare({&then->record.job.sketch, then->findings},
                                              {&now->record.job.sketch, now->findings}, *known);
    nlohmann::ordered_json document;
    document["then"] = then->record.job.number;
    document["now"] = now->record.job.number;
    const auto isOne = store->areOneObject(then->record.object.id, now->record.object.id);
    if (!isOne)
        return fail(isOne.error());
    document["same_object"] = *isOne;
    document["standing"] = arguments.standing;
    document["unit"] = arguments.unit;
    document["points"] = nlohmann::ordered_json::array();
    for (const ComparedPoint& point : comparison.points)
        document["points"].push_back(pointDocument(point, *one));
    std::string text = fmt::format("job {} ({}) to job {} ({}), {}\n", then->record.job.number,
                                   then->record.job.opened.date(), now->record.job.number,
                                   now->record.job.opened.date(), arguments.standing);
    if (!*isOne)
        text += "These jobs are on different objects; points are matched by number and place only.\n";
    const auto limits = analysis::otherLimitWords(then->record.job, now->record.job);
    if (limits)
        text += *limits + '\n';
    document["limits"] = limits ? nlohmann::ordered_json(*limits) : nlohmann::ordered_json(nullptr);
    console.answer(document, text + textOf(comparison));
    return Verdict::Yes;
}

} // namespace

void addCompare(CLI::App& root, Work& chosen)
{
    auto* command =
        root.add_subcommand("compare", "two jobs of one object: new, gone, grown, shrunk, in decades");
    auto arguments = std::make_shared<Arguments>();
    command->add_option("then", arguments->then, "the earlier job, number or UUID")->required();
    command->add_option("now", arguments->now, "the later job, number or UUID")->required();
    command->add_option("--standing", arguments->standing, "\"as found\" or \"as left\"")
        ->check(CLI::IsMember({"as found", "as left"}))
        ->capture_default_str();
    command->add_option("--unit", arguments->unit, "of the rates in the answer")->capture_default_str();
    command->footer("Example:\n  sealwalk-cli demo -o demo.sealwalk\n"
                    "  sealwalk-cli --history demo.sealwalk compare 118 164");
    command->callback([arguments, &chosen] {
        chosen = [arguments](const Console& console) { return answerCompare(*arguments, console); };
    });
}

} // namespace sealwalk::cli
