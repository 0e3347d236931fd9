// SPDX-License-Identifier: GPL-3.0-or-later
// Does the stated range hold the true leak? Records from physics the analysis does not fit, see
// simulated_rise.h.
#include "core/analysis/pressure_rise.h"
#include "core/analysis/rise_compress.h"
#include "core/analysis/rise_ensemble.h"
#include "core/analysis/rise_range.h"
#include "tests/support/simulated_rise.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <vector>

namespace sealwalk::analysis {
namespace {

using tests::RisePhysics;

struct Tally
{
    int records = 0;
    int held = 0;
    int carried = 0;
    int called = 0;
    std::vector<double> widths;

    void add(const tests::SimulatedRise& simulated)
    {
        const RiseRecord record{simulated.time, simulated.pressure, simulated.temperature};
        RiseOptions options;
        options.volume = cubicMetres(simulated.volume);
        const auto summary = analyseRise(record, options);
        ASSERT_TRUE(summary.has_value()) << summary.error().message;
        ++records;
        held += summary->low.si() <= simulated.leak && simulated.leak <= summary->high.si() ? 1 : 0;
        if (!simulated.carried)
            return;
        ++carried;
        if (summary->separable) {
            ++called;
            widths.push_back(summary->low.si() > 0.0 ? summary->high / summary->low : 1e9);
        }
    }

    [[nodiscard]] double coverage() const { return static_cast<double>(held) / records; }
    [[nodiscard]] double share() const { return carried > 0 ? static_cast<double>(called) / carried : 0.0; }
    [[nodiscard]] double median()
    {
        std::sort(widths.begin(), widths.end());
        return widths.empty() ? 0.0 : widths[widths.size() / 2];
    }
    void print(const char* name)
    {
        std::printf("%-18s %4d records, range holds the leak in %.3f; %4d carry it, %.2f of them called, "
                    "median high/low %.2f\n",
                    name, records, coverage(), carried, share(), median());
    }
};

// Property: of records from physics other than the fitted shapes, with all faults of gauge and room, the
// range holds the true leak as often as it says, and separable records are called so, with a range that is of
// use.
TEST(PressureRiseCoverage, TheRangeHoldsTheTrueLeakAsOftenAsItSays)
{
    constexpr int kRecordsEach = 30;
    Tally all;
    for (int physics = 0; physics < tests::kRisePhysicsCount; ++physics) {
        Tally tally;
        for (int seed = 0; seed < kRecordsEach; ++seed) {
            const auto simulated =
                tests::simulateRise(static_cast<RisePhysics>(physics), static_cast<std::uint64_t>(seed));
            tally.add(simulated);
            all.add(simulated);
        }
        tally.print(tests::nameOf(static_cast<RisePhysics>(physics)));
        EXPECT_GE(tally.coverage(), 0.86) << tests::nameOf(static_cast<RisePhysics>(physics)); // 26 of 30
    }
    all.print("all");
    EXPECT_GE(all.coverage(), 0.95);
    EXPECT_GE(all.share(), 0.70);
    EXPECT_LE(all.median(), 1.5);
}

// Property: no single kind of source the analysis knows is needed for the range to hold; the others stand in
// for it. (Without the exponential, the one law that is exact, they do so less well: 0.91 to 0.96.)
TEST(PressureRiseCoverage, TheRangeHoldsWhenAKindOfSourceIsUnknown)
{
    constexpr int kRecordsEach = 5;
    for (const SourceKind unknown :
         {SourceKind::Hyperbolic, SourceKind::Logarithmic, SourceKind::PowerLaw, SourceKind::Stretched}) {
        EnsembleOptions options;
        options.without = {unknown};
        int held = 0;
        int records = 0;
        for (int physics = 0; physics < tests::kRisePhysicsCount; ++physics)
            for (int seed = 1000; seed < 1000 + kRecordsEach; ++seed) {
                const auto simulated =
                    tests::simulateRise(static_cast<RisePhysics>(physics), static_cast<std::uint64_t>(seed));
                const CompressedRise rise = compressRise(simulated.time, simulated.pressure);
                const LeakRange range = leakRange(rise, weighReadings(rise, options), {});
                const double leak = simulated.leak / simulated.volume * rise.length;
                held += range.low <= leak && leak <= range.high ? 1 : 0;
                ++records;
            }
        EXPECT_GE(held, 0.93 * records) << static_cast<int>(unknown);
    }
}

} // namespace
} // namespace sealwalk::analysis
