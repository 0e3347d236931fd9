// SPDX-License-Identifier: GPL-3.0-or-later
// Reading "value unit" and converting it, beside GNU units fed the same conversions in one go.
#include "core/quantities/conversion.h"
#include "core/quantities/quantity_text.h"
#include "tests/support/process.h"

#include <benchmark/benchmark.h>

#include <chrono>
#include <string>

namespace {

using namespace sealwalk;

// Units read before, numbers only.
void convertNumber(benchmark::State& state)
{
    const Unit from = readUnit("std cm3/s").value();
    const Unit to = readUnit("mbar l/s").value();
    double number = 1e-9;
    for (auto _ : state) {
        benchmark::DoNotOptimize(numberIn(leakRate(number, from).value(), to));
        number += 1e-12;
    }
    state.SetItemsProcessed(state.iterations());
}

// Text in, text out, as a field does.
void convertText(benchmark::State& state)
{
    for (auto _ : state) {
        const LeakRate rate = parseLeakRate("2.5e-7 std cm3/s").value();
        benchmark::DoNotOptimize(text(rate, LeakRateUnit::MillibarLitrePerSecond, 4));
    }
    state.SetItemsProcessed(state.iterations());
}

void unitsProgram(benchmark::State& state)
{
    constexpr int kConversions = 2000;
    std::string input;
    for (int i = 0; i < kConversions; ++i)
        input += "2.5e-7 atm cm^3/s\nmbar liter/s\n";
    for (auto _ : state) {
        const auto start = std::chrono::steady_clock::now();
        const auto ran = tests::runProcess({"/usr/bin/units", "-q", "-t"}, input);
        const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
        if (ran.status != 0 || ran.out.empty()) {
            state.SkipWithError("the program units is needed for the reference");
            return;
        }
        state.SetIterationTime(took.count() / kConversions);
    }
    state.SetItemsProcessed(state.iterations());
}

BENCHMARK(convertNumber);
BENCHMARK(convertText);
BENCHMARK(unitsProgram)->UseManualTime()->Iterations(3);

} // namespace

BENCHMARK_MAIN();
