// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/history.h"
#include "app/cli/round_argument.h"
#include "core/analysis/job_balance.h"
#include "core/analysis/job_findings.h"
#include "core/analysis/job_rise.h"
#include "core/flow/gas.h"
#include "core/quantities/quantity_text.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>

namespace sealwalk::cli {

namespace {

using nlohmann::ordered_json;

struct Arguments
{
    std::string job;
    std::string round;
    std::string unit = "mbar l/s";
    bool asFound = false;
    std::vector<int> repairs;
};

// Leak rates of air in the unit asked for.
class AirIn
{
public:
    AirIn(Unit unit, Temperature room)
        : m_unit(std::move(unit))
    {
        m_basis.gas = room;
        m_basis.molarMass = flow::propertiesOf(flow::Gas::Air).molarMass;
    }

    [[nodiscard]] const std::string& unit() const { return m_unit.id; }
    [[nodiscard]] double number(LeakRate rate) const { return numberIn(rate, m_unit, m_basis).value_or(0.0); }
    [[nodiscard]] std::string text(LeakRate rate) const
    {
        return trimmedText(number(rate), 2) + ' ' + m_unit.id;
    }
    [[nodiscard]] std::string range(LeakRate low, LeakRate high) const
    {
        return fmt::format("{} to {}", trimmedText(number(low), 2), text(high));
    }
    [[nodiscard]] ordered_json json(const std::optional<LeakRate>& rate) const
    {
        return rate ? ordered_json(number(*rate)) : ordered_json(nullptr);
    }

private:
    Unit m_unit;
    FlowBasis m_basis;
};

template <class T>
ordered_json orNull(const std::optional<T>& value)
{
    return value ? ordered_json(*value) : ordered_json(nullptr);
}

ordered_json orNull(const std::optional<Pressure>& pressure)
{
    return pressure ? ordered_json(pressure->si()) : ordered_json(nullptr);
}

ordered_json documentOf(const analysis::JobBalance& result, const AirIn& in)
{
    const analysis::LeakBalance& balance = result.balance;
    ordered_json document;
    document["unit"] = in.unit();
    document["located"] = in.number(balance.located);
    document["located_low"] = in.number(balance.locatedLow);
    document["located_high"] = in.number(balance.locatedHigh);
    const auto& total = balance.total;
    document["total"] = in.json(total ? total->rate : std::nullopt);
    document["total_low"] = in.json(total ? std::optional(total->low) : std::nullopt);
    document["total_high"] = in.json(total ? std::optional(total->high) : std::nullopt);
    document["unlocated"] = in.json(balance.unlocated);
    document["unlocated_low"] = in.json(total ? std::optional(balance.unlocatedLow) : std::nullopt);
    document["unlocated_high"] = in.json(total ? std::optional(balance.unlocatedHigh) : std::nullopt);
    document["unlocated_share"] = orNull(balance.unlocatedShare);
    document["unlocated_share_low"] = total ? ordered_json(balance.unlocatedShareLow) : ordered_json(nullptr);
    document["unlocated_share_high"] =
        total ? ordered_json(balance.unlocatedShareHigh) : ordered_json(nullptr);
    document["verdict"] = nameOf(balance.verdict);
    document["advice"] = balance.advice;
    document["leaks"] = ordered_json::array();
    for (const analysis::LeakAsAir& leak : balance.leaks)
        document["leaks"].push_back({{"leak", leak.label},
                                     {"leak_rate", in.number(leak.air)},
                                     {"low", in.number(leak.low)},
                                     {"high", in.number(leak.high)},
                                     {"ratio", leak.ratio},
                                     {"share", leak.share},
                                     {"in_sum", leak.inSum()}});
    const analysis::RepairEffect& effect = result.effect;
    document["effect"] = {{"leak_now", in.number(effect.leakNow)},
                          {"leak_after", in.number(effect.leakAfter)},
                          {"leak_after_low", in.number(effect.leakAfterLow)},
                          {"leak_after_high", in.number(effect.leakAfterHigh)},
                          {"rise_now_pa_per_s", orNull(effect.risePerSecondNow)},
                          {"rise_after_pa_per_s", orNull(effect.risePerSecondAfter)},
                          {"base_pressure_now_pa", orNull(effect.basePressureNow)},
                          {"base_pressure_after_pa", orNull(effect.basePressureAfter)},
                          {"meets_limit", orNull(effect.meetsLimit)},
                          {"shortest_list", effect.shortestList},
                          {"reachable", effect.reachable},
                          {"advice", effect.advice}};
    document["notes"] = result.notes;
    return document;
}

std::string pressureText(Pressure pressure)
{
    return trimmedText(inMillibars(pressure), 3) + " mbar";
}

std::string textOf(const analysis::JobBalance& result, const AirIn& in, bool ticked)
{
    const analysis::LeakBalance& balance = result.balance;
    std::string text = "leaks as air, largest first\n";
    for (const analysis::LeakAsAir& leak : balance.leaks)
        text +=
            fmt::format("  {:<10} {} ({}){}\n", leak.label, in.text(leak.air), in.range(leak.low, leak.high),
                        leak.inSum() ? fmt::format(", {:.0f} % of the located", leak.share * 100.0)
                                     : ", beside the sum: it " + leak.beside);
    text += fmt::format("located   {} ({})\n", in.text(balance.located),
                        in.range(balance.locatedLow, balance.locatedHigh));
    if (balance.total && balance.total->rate)
        text += fmt::format("total     {} ({}) by pressure rise\n", in.text(*balance.total->rate),
                            in.range(balance.total->low, balance.total->high));
    else if (balance.total)
        text += fmt::format("total     at most {} by pressure rise\n", in.text(balance.total->high));
    if (balance.unlocated)
        text += fmt::format("unlocated {} ({})\n", in.text(*balance.unlocated),
                            in.range(balance.unlocatedLow, balance.unlocatedHigh));
    text += fmt::format("{}: {}\n", nameOf(balance.verdict), balance.advice);
    const analysis::RepairEffect& effect = result.effect;
    if (ticked)
        text += fmt::format("after the repairs: leak {} ({})\n", in.text(effect.leakAfter),
                            in.range(effect.leakAfterLow, effect.leakAfterHigh));
    if (effect.basePressureNow)
        text +=
            "base pressure now " + pressureText(*effect.basePressureNow) +
            (ticked && effect.basePressureAfter ? ", after " + pressureText(*effect.basePressureAfter) : "") +
            '\n';
    text += effect.advice;
    for (const std::string& note : result.notes)
        text += "\n  " + note;
    return text;
}

Result<std::vector<model::PointId>> tickedPoints(const model::Job& job, const std::vector<int>& numbers)
{
    std::vector<model::PointId> points;
    for (const int number : numbers) {
        const model::TestPoint* point = job.sketch.pointNumbered(number);
        if (point == nullptr)
            return fail(ErrorCode::NotFound, fmt::format("--repair: the job has no point {}", number));
        points.push_back(point->id);
    }
    return points;
}

Result<Verdict> answerBalance(const Arguments& arguments, const Console& console)
{
    const auto unit = readUnit(arguments.unit, UnitKind::LeakRates);
    if (!unit)
        return fail(unit.error().in("--unit"));
    const auto store = openHistory(console, storage::HistoryStore::Mode::ReadOnly);
    if (!store)
        return fail(store.error());
    const auto opened = loadJob(*store, arguments.job);
    if (!opened)
        return fail(opened.error());
    const model::Job& job = opened->job;
    const auto scope = findScope(job, arguments.round, arguments.asFound);
    if (!scope)
        return fail(scope.error());
    const auto ticked = tickedPoints(job, arguments.repairs);
    if (!ticked)
        return fail(ticked.error());

    const auto findings = scope->findings(*opened);
    const model::RiseTest* test = scope->round != nullptr ? analysis::riseTestFor(job, scope->round->id)
                                                          : analysis::riseTestFor(job, scope->standing);
    std::optional<analysis::RiseSummary> rise;
    std::string unusable;
    if (test != nullptr) {
        if (auto judged = analysis::judgeRise(*test, job, opened->object))
            rise = *std::move(judged);
        else
            unusable = "the pressure-rise test is not usable: " + judged.error().message;
    }
    auto result = analysis::balanceOfJob(job, opened->object, findings, test, rise, *ticked);
    if (!result)
        return fail(result.error());
    if (!unusable.empty())
        result->notes.push_back(unusable);
    const AirIn in(*unit, job.setup.roomTemperature);
    ordered_json document;
    document["job"] = job.number;
    document["of"] = scope->word();
    document["round"] = scope->round != nullptr ? ordered_json(scope->round->number) : ordered_json(nullptr);
    document.update(documentOf(*result, in));
    console.answer(document, fmt::format("job {}, {}\n", job.number, scope->word()) +
                                 textOf(*result, in, !ticked->empty()));
    return Verdict::Yes;
}

} // namespace

void addBalance(CLI::App& root, Work& chosen)
{
    auto* command =
        root.add_subcommand("balance", "located leaks, as air, against the pressure rise, and what repairs "
                                       "would do");
    auto arguments = std::make_shared<Arguments>();
    command->add_option("job", arguments->job, "number or UUID")->required();
    command->add_option("--round", arguments->round,
                        "number or UUID: this round alone (default: the whole job)");
    command->add_flag("--as-found", arguments->asFound, "the whole job before repairs (default: as left)");
    command->add_option("--repair", arguments->repairs, "numbers of points to take as repaired");
    command->add_option("--unit", arguments->unit, "of the rates in the answer")->capture_default_str();
    command->footer("Example:\n  sealwalk-cli demo -o demo.sealwalk\n"
                    "  sealwalk-cli --history demo.sealwalk balance 164");
    command->callback([arguments, &chosen] {
        chosen = [arguments](const Console& console) { return answerBalance(*arguments, console); };
    });
}

} // namespace sealwalk::cli
