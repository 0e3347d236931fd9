// SPDX-License-Identifier: GPL-3.0-or-later
// The source search over growing surveys, and its inner solve beside scipy.optimize.nnls on the same system.
#include "core/analysis/nnls.h"
#include "core/analysis/random.h"
#include "core/analysis/sources.h"
#include "core/quantities/number_text.h"
#include "tests/support/process.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>
#include <sstream>
#include <string>
#include <vector>

namespace {

using namespace sealwalk;
using namespace sealwalk::analysis;

constexpr double kPitch = 0.09;     // m
constexpr double kRowGap = 0.4;     // m
constexpr double kLeakShare = 0.03; // of the points
constexpr std::size_t kPointsInRow = 25;

/// Rows of joints on four views, three points in a hundred leaking over four decades, sprayed twice over.
Survey wall(std::size_t points)
{
    Random random(1);
    Survey survey;
    survey.limit = millibarLitresPerSecond(1e-8);
    survey.response = seconds(2.0);
    std::vector<double> leaks(points, 0.0);
    for (std::size_t i = 0; i < points; ++i) {
        const std::size_t inView = i / 4;
        SurveyPoint point;
        point.number = static_cast<int>(i) + 1;
        point.view = "view " + std::to_string(i % 4);
        point.joint = "joint " + std::to_string(inView / kPointsInRow);
        point.x = metres(kPitch * static_cast<double>(inView % kPointsInRow));
        point.up = metres(kRowGap * static_cast<double>(inView / kPointsInRow));
        point.halfLength = metres(0.5 * kPitch);
        survey.points.push_back(point);
        if (random.uniform() < kLeakShare)
            leaks[i] = 5e-9 * std::pow(1e4, random.uniform());
    }
    for (std::size_t r = 0; r < 2 * points; ++r) {
        const std::size_t i = r % points;
        double net = 1e-11 * random.bell();
        for (std::size_t j = i % 4; j < points; j += 4) {
            const double dx = survey.points[i].x.si() - survey.points[j].x.si();
            const double dy = survey.points[j].up.si() - survey.points[i].up.si();
            if (leaks[j] > 0.0)
                net += leaks[j] * std::exp(-std::hypot(dx, dy > 0.0 ? 0.5 * dy : dy) / 0.03) *
                       std::exp(0.15 * random.bell());
        }
        SurveyReading reading;
        reading.point = survey.points[i].number;
        reading.start = seconds(16.0 * static_cast<double>(r));
        reading.dwell = seconds(6.0);
        reading.background = millibarLitresPerSecond(3e-10 + 1e-11 * random.bell());
        reading.peak = reading.background + millibarLitresPerSecond(net);
        survey.readings.push_back(reading);
    }
    return survey;
}

void findings(benchmark::State& state)
{
    const Survey survey = wall(static_cast<std::size_t>(state.range(0)));
    for (auto _ : state)
        benchmark::DoNotOptimize(findSources(survey));
    state.SetComplexityN(state.range(0));
    state.counters["readings"] = static_cast<double>(survey.readings.size());
}
BENCHMARK(findings)
    ->Name("sources, points (two readings each)")
    ->Arg(50)
    ->Arg(100)
    ->Arg(250)
    ->Arg(500)
    ->Arg(1000)
    ->Arg(2000)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime()
    ->Complexity();
BENCHMARK(findings)
    ->Name("sources, ten thousand points")
    ->Arg(10000)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime()
    ->Iterations(1);

constexpr std::size_t kSize = 300;

struct System
{
    std::vector<double> a; ///< column after column
    std::vector<double> b;
};

/// Sources along a line seen through a Gaussian cloud of two pitches.
System kernelSystem()
{
    Random random(2);
    System system;
    std::vector<double> truth(kSize, 0.0);
    for (std::size_t i = 5; i < kSize; i += 17)
        truth[i] = std::pow(10.0, 2.0 * random.uniform() - 1.0);
    system.b.assign(kSize, 0.0);
    for (std::size_t j = 0; j < kSize; ++j) {
        for (std::size_t i = 0; i < kSize; ++i) {
            const double away = (static_cast<double>(i) - static_cast<double>(j)) / 2.0;
            system.a.push_back(std::exp(-away * away));
            system.b[i] += system.a.back() * truth[j];
        }
    }
    for (double& value : system.b)
        value += 0.01 * random.bell();
    return system;
}

void ourSolve(benchmark::State& state)
{
    const System system = kernelSystem();
    for (auto _ : state)
        benchmark::DoNotOptimize(solveNnls(system.a, kSize, kSize, system.b));
}
BENCHMARK(ourSolve)->Name("non-negative least squares 300 x 300: ours")->Unit(benchmark::kMillisecond);

// The script answers seconds, residual norm, and then x.
void scipySolve(benchmark::State& state)
{
    const System system = kernelSystem();
    std::string input = std::to_string(kSize) + '\n';
    for (const std::vector<double>* part : {&system.a, &system.b}) {
        for (const double value : *part)
            input += exactText(value) + '\n';
    }
    const NnlsSummary ours = solveNnls(system.a, kSize, kSize, system.b);
    for (auto _ : state) {
        const auto ran = tests::runProcess({"/usr/bin/python3", SEALWALK_BENCH "/sources_nnls.py"}, input);
        std::istringstream out(ran.out);
        double seconds = 0.0;
        double residual = 0.0;
        if (ran.status != 0 || !(out >> seconds >> residual)) {
            state.SkipWithError("python3-scipy is needed for the reference");
            return;
        }
        double worst = 0.0;
        for (const double x : ours.x) {
            double theirs = 0.0;
            out >> theirs;
            worst = std::max(worst, std::abs(x - theirs));
        }
        state.SetIterationTime(seconds);
        state.counters["worst_difference"] = worst;
        state.counters["residual_difference"] = std::abs(residual - ours.residualNorm);
    }
}
BENCHMARK(scipySolve)
    ->Name("non-negative least squares 300 x 300: scipy.optimize.nnls")
    ->UseManualTime()
    ->Iterations(3)
    ->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
