// SPDX-License-Identifier: GPL-3.0-or-later
// Solving a leak channel for its diameter, beside scipy.optimize.brentq on the same equation.
#include "core/flow/channel.h"
#include "core/quantities/number_text.h"
#include "tests/support/process.h"

#include <benchmark/benchmark.h>

#include <cmath>
#include <cstdio>
#include <sstream>
#include <string>
#include <vector>

namespace {

using namespace sealwalk;
using namespace sealwalk::flow;

std::vector<double> rates() // Pa·m³/s
{
    std::vector<double> all;
    for (int i = 0; i < 70; ++i)
        all.push_back(std::pow(10.0, -11.0 + 0.1 * i));
    return all;
}

void solve(benchmark::State& state, ChannelModel model)
{
    const auto all = rates();
    std::size_t i = 0;
    for (auto _ : state)
        benchmark::DoNotOptimize(
            channelDiameter(Gas::Helium, LeakRate::fromSi(all[i++ % all.size()]), {}, model));
    state.SetItemsProcessed(state.iterations());
}

// The script solves every rate and answers "seconds per solve" on its first line, the diameters on the next.
void reference(benchmark::State& state, ChannelModel model)
{
    std::string input = model == ChannelModel::LengthOnly ? "length\n" : "exit\n";
    for (const double rate : rates())
        input += exactText(rate) + '\n';
    for (auto _ : state) {
        const auto ran = tests::runProcess({"/usr/bin/python3", SEALWALK_BENCH "/channel_brentq.py"}, input);
        std::istringstream out(ran.out);
        double seconds = 0.0;
        if (ran.status != 0 || !(out >> seconds)) {
            state.SkipWithError("python3-scipy is needed for the reference");
            return;
        }
        double worst = 0.0;
        for (const double rate : rates()) {
            double theirs = 0.0;
            out >> theirs;
            const double ours = channelDiameter(Gas::Helium, LeakRate::fromSi(rate), {}, model).value().si();
            worst = std::max(worst, std::abs(ours / theirs - 1.0));
        }
        state.SetIterationTime(seconds);
        state.counters["worst_difference"] = worst;
    }
    state.SetItemsProcessed(state.iterations());
}

void ourLength(benchmark::State& state)
{
    solve(state, ChannelModel::LengthOnly);
}
void scipyLength(benchmark::State& state)
{
    reference(state, ChannelModel::LengthOnly);
}
void ourLengthAndExit(benchmark::State& state)
{
    solve(state, ChannelModel::LengthAndExit);
}
void scipyLengthAndExit(benchmark::State& state)
{
    reference(state, ChannelModel::LengthAndExit);
}

BENCHMARK(ourLength);
BENCHMARK(scipyLength)->UseManualTime()->Iterations(3);
BENCHMARK(ourLengthAndExit);
BENCHMARK(scipyLengthAndExit)->UseManualTime()->Iterations(3);

} // namespace

BENCHMARK_MAIN();
