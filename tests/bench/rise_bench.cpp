// SPDX-License-Identifier: GPL-3.0-or-later
// 100,000 samples of a pressure rise: our whole judgement beside one fit of one law by
// scipy.optimize.curve_fit, on the same numbers. The second row's counter says how many times as long the fit
// took.
#include "core/analysis/pressure_rise.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <random>
#include <string>
#include <vector>

namespace {

using namespace sealwalk;

constexpr int kSamples = 100'000;
constexpr int kJudgementsTimed = 10; // at once: the clock ticks in microseconds

const analysis::RiseRecord& record()
{
    static const analysis::RiseRecord made = [] {
        analysis::RiseRecord r;
        std::mt19937_64 engine(1);
        std::normal_distribution<double> noise(0.0, 3e-3);
        for (int i = 0; i < kSamples; ++i) {
            const double t = 0.1 * i;
            r.time.push_back(t);
            r.pressure.push_back(0.3 + 5e-4 * t - 0.8 * std::expm1(-t / 1200.0) + noise(engine));
        }
        return r;
    }();
    return made;
}

analysis::RiseOptions options()
{
    analysis::RiseOptions o;
    o.volume = litres(100.0);
    return o;
}

double median(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

void judge(benchmark::State& state)
{
    for (auto _ : state) {
        auto summary = analysis::analyseRise(record(), options());
        benchmark::DoNotOptimize(summary);
        if (!summary || !summary->separable)
            state.SkipWithError("the record was not judged");
    }
}
BENCHMARK(judge)->Name("rise, 100000 samples: sealwalk")->Unit(benchmark::kMillisecond);

std::vector<double> curveFitSeconds(int runs)
{
    const auto file =
        std::filesystem::temp_directory_path() / ("rise_bench_" + std::to_string(std::random_device{}()));
    std::ofstream out(file, std::ios::binary);
    for (const auto* values : {&record().time, &record().pressure})
        out.write(reinterpret_cast<const char*>(values->data()),
                  static_cast<std::streamsize>(values->size() * sizeof(double)));
    out.close();
    const std::string command = "OPENBLAS_NUM_THREADS=1 OMP_NUM_THREADS=1 /usr/bin/python3 " SEALWALK_BENCH
                                "/rise_curve_fit.py " +
                                file.string() + " " + std::to_string(runs);
    std::vector<double> seconds;
    if (FILE* pipe = ::popen(command.c_str(), "r")) {
        double value = 0.0;
        while (std::fscanf(pipe, "%lf", &value) == 1)
            seconds.push_back(value);
        ::pclose(pipe);
    }
    std::filesystem::remove(file);
    return seconds;
}

void curveFit(benchmark::State& state)
{
    constexpr int kRuns = 21;
    const std::vector<double> seconds = curveFitSeconds(kRuns);
    if (seconds.size() != kRuns) {
        state.SkipWithError("python3-scipy is not here");
        return;
    }
    std::vector<double> ours;
    for (int i = 0; i < kRuns; ++i) {
        const std::clock_t begin = std::clock();
        for (int k = 0; k < kJudgementsTimed; ++k) {
            auto summary = analysis::analyseRise(record(), options());
            benchmark::DoNotOptimize(summary);
        }
        ours.push_back(static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC / kJudgementsTimed);
    }
    std::size_t next = 0;
    for (auto _ : state)
        state.SetIterationTime(seconds[next++ % seconds.size()]);
    state.counters["times as long"] = median(seconds) / median(ours);
}
BENCHMARK(curveFit)
    ->Name("rise, 100000 samples: scipy.optimize.curve_fit")
    ->UseManualTime()
    ->Iterations(21)
    ->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
