// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/pressure_rise.h"
#include "tests/support/rise_sets.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace sealwalk::analysis {
namespace {

using tests::recordOf;
using tests::RiseSet;

RiseOptions hundredLitres()
{
    RiseOptions options;
    options.volume = litres(100.0);
    return options;
}

RiseSummary judged(const RiseSet& set)
{
    return analyseRise(recordOf(set), hundredLitres()).value();
}

// Verdicts of the four sets, settled by the laws they were made with: the identifiability of each is checked
// in rise_laws_test.cpp (R_26, R_27).
TEST(PressureRise, CallsALeakALeak)
{
    const RiseSummary summary = judged(tests::kD1);
    EXPECT_EQ(summary.verdict, RiseVerdict::Leak);
    EXPECT_TRUE(summary.separable);
    EXPECT_LE(summary.low.si(), 2.0e-4);
    EXPECT_GE(summary.high.si(), 2.0e-4);
    EXPECT_NEAR(summary.leakRate.si(), 2.0e-4, 2e-6);
}

// Regression: a straight record of one minute was called a leak without a word on what one minute can tell.
TEST(PressureRise, SaysHowFarTheWordOfAStraightLineReaches)
{
    std::vector<double> time;
    std::vector<double> pressure;
    for (int i = 0; i <= 30; ++i) {
        time.push_back(2.0 * i);
        pressure.push_back(0.1 + 2e-4 * i);
    }
    const auto summary = analyseRise({time, pressure, {}}, hundredLitres());
    ASSERT_TRUE(summary);
    EXPECT_EQ(summary->verdict, RiseVerdict::Leak);
    EXPECT_THAT(summary->advice, testing::Contains(testing::HasSubstr("for much longer than 10 min")));
}

TEST(PressureRise, TellsLeakFromOutgassingWhereTheRecordCarriesIt)
{
    const RiseSummary summary = judged(tests::kD2);
    EXPECT_EQ(summary.verdict, RiseVerdict::LeakAndOutgassing);
    EXPECT_LE(summary.low.si(), 5.0e-5);
    EXPECT_GE(summary.high.si(), 5.0e-5);
    EXPECT_LE(summary.high / summary.low, 1.5);
    // 0.8 Pa with 120 s: 6.67e-4 Pa m3/s at first.
    EXPECT_NEAR(summary.outgassingStart.si(), 0.1 * 0.8 / 120.0, 0.7e-4);
}

TEST(PressureRise, FindsNoLeakWhereATrappedVolumeEmpties)
{
    const RiseSummary summary = judged(tests::kD3);
    EXPECT_EQ(summary.verdict, RiseVerdict::NoLeakFound);
    EXPECT_EQ(summary.low.si(), 0.0);
    EXPECT_EQ(summary.leakRate.si(), 0.0);
    EXPECT_LE(summary.high.si(), 0.1 * 2.0e-4);
}

TEST(PressureRise, SaysNotSeparableAndHowMuchLongerWouldDo)
{
    const RiseSummary summary = judged(tests::kD4);
    EXPECT_EQ(summary.verdict, RiseVerdict::NotSeparable);
    EXPECT_FALSE(summary.separable);
    EXPECT_GE(summary.high.si(), 5.0e-5);
    // A source that only exhausts itself makes the first slope an upper bound.
    EXPECT_LE(summary.high.si(), 0.1 * tests::kD4.law().rate(0.0) * 1.05);
    ASSERT_TRUE(summary.runOnFor.has_value());
    EXPECT_GE(summary.runOnFor->si(), tests::kD4.length);
    EXPECT_THAT(summary.advice,
                testing::Contains(testing::MatchesRegex("Not separable: run on for [0-9]+ min.*")));
}

// Property: a record carried on for what the advice adds up to is separable in the end, and the leak is in
// its range.
TEST(PressureRise, FollowingTheAdviceLeadsToAnAnswer)
{
    RiseSet set = tests::kD4;
    RiseSummary summary = judged(set);
    for (int times = 0; times < 4 && !summary.separable; ++times) {
        EXPECT_GE(summary.high.si(), set.leak);
        EXPECT_EQ(summary.low.si(), 0.0);
        set.length += summary.runOnFor.value().si();
        summary = judged(set);
    }
    EXPECT_TRUE(summary.separable);
    EXPECT_FALSE(summary.runOnFor.has_value());
    EXPECT_LE(summary.low.si(), set.leak);
    EXPECT_GE(summary.high.si(), set.leak);
}

// Property: the curves are a split of the record, on its own clock.
TEST(PressureRise, TheCurvesAddUp)
{
    RiseRecord record = recordOf(tests::kD2);
    for (double& t : record.time)
        t += 5000.0;
    const RiseCurves curves = analyseRise(record, hundredLitres()).value().curves;
    ASSERT_FALSE(curves.time.empty());
    EXPECT_DOUBLE_EQ(curves.time.front(), 5000.0);
    EXPECT_DOUBLE_EQ(curves.time.back(), 5900.0);
    for (std::size_t i = 0; i < curves.time.size(); ++i) {
        EXPECT_NEAR(curves.start + curves.leak[i] + curves.outgassing[i], curves.fit[i], 1e-12);
        EXPECT_NEAR(curves.measured[i] - curves.fit[i], curves.residual[i], 1e-12);
        EXPECT_LT(std::abs(curves.residual[i]), 5 * tests::kD2.noise);
    }
}

struct Scaling
{
    double pressure; // factor
    double time;     // factor
    double volume;   // factor
    double offset;   // Pa
};

class PressureRiseScaling : public testing::TestWithParam<Scaling>
{};

// Property: rates go as volume and pressure and inversely as time; a gauge's zero makes no leak. The room's
// allowance goes with the absolute pressure and with hours, so the range is only compared where neither
// changes.
TEST_P(PressureRiseScaling, RatesFollowTheUnits)
{
    const Scaling& scaling = GetParam();
    const RiseSummary before = judged(tests::kD2);
    RiseRecord record = recordOf(tests::kD2);
    for (double& t : record.time)
        t *= scaling.time;
    for (double& p : record.pressure)
        p = scaling.pressure * p + scaling.offset;
    RiseOptions options;
    options.volume = litres(100.0 * scaling.volume);
    const RiseSummary after = analyseRise(record, options).value();
    const double factor = scaling.pressure * scaling.volume / scaling.time;
    constexpr double kQuantiles = 1e-5; // relative, of the bisection that finds them
    EXPECT_NEAR(after.leakRate.si(), factor * before.leakRate.si(),
                kQuantiles * factor * before.leakRate.si());
    EXPECT_NEAR(after.outgassingStart.si(), factor * before.outgassingStart.si(),
                1e-4 * factor * before.outgassingStart.si());
    if (scaling.time == 1.0 && scaling.offset == 0.0) {
        EXPECT_NEAR(after.low.si(), factor * before.low.si(), 1e-4 * factor * before.low.si());
        EXPECT_NEAR(after.high.si(), factor * before.high.si(), 1e-4 * factor * before.high.si());
    }
}

INSTANTIATE_TEST_SUITE_P(Factors, PressureRiseScaling,
                         testing::Values(Scaling{100.0, 1.0, 1.0, 0.0}, Scaling{1e-6, 1.0, 1.0, 0.0},
                                         Scaling{1.0, 60.0, 1.0, 0.0}, Scaling{1.0, 1.0, 25.0, 0.0},
                                         Scaling{1.0, 1.0, 1.0, 0.25}, Scaling{1.0, 1.0, 1.0, -0.5}));

// Property: more leak in the same record means a higher answer at both ends.
TEST(PressureRise, GrowsWithTheLeak)
{
    RiseSet set = tests::kD2;
    double low = 0.0;
    double high = 0.0;
    for (const double leak : {2e-5, 5e-5, 1e-4, 2e-4, 1e-3}) {
        set.leak = leak;
        const RiseSummary summary = judged(set);
        EXPECT_GT(summary.low.si(), low);
        EXPECT_GT(summary.high.si(), high);
        EXPECT_LE(summary.low.si(), leak);
        EXPECT_GE(summary.high.si(), leak);
        low = summary.low.si();
        high = summary.high.si();
    }
}

// Property: gas that warms in a tight chamber rises in pressure; the thermometer tells.
TEST(PressureRise, ALoggedTemperatureTakesTheWarmingOut)
{
    RiseRecord record;
    for (int i = 0; i <= 120; ++i) {
        record.time.push_back(30.0 * i);
        record.temperature.push_back(293.15 + 0.008 * i);
        const double amount = 100.0 + 1e-3 * i; // Pa at 293.15 K: a leak of 3.33e-5 Pa/s
        const double noise = 2e-4 * std::sin(12.9898 * i * i);
        record.pressure.push_back(amount * record.temperature.back() / 293.15 + noise);
    }
    RiseOptions options = hundredLitres();
    options.temperature = kelvins(293.15);
    const RiseSummary with = analyseRise(record, options).value();
    EXPECT_TRUE(with.temperatureUsed);
    EXPECT_LE(with.low.si(), 3.33e-6);
    EXPECT_GE(with.high.si(), 3.33e-6);
    EXPECT_NEAR(with.leakRate.si(), 3.33e-6, 0.3e-6);
    record.temperature.clear();
    const RiseSummary without = analyseRise(record, options).value();
    EXPECT_FALSE(without.temperatureUsed);
    EXPECT_GT(without.leakRate.si(), 3.0 * 3.33e-6); // 0.008 K per 30 s on 100 Pa looks like 9e-6 Pa m3/s
    EXPECT_LE(without.low.si(), 3.33e-6);            // and the range knows that a room may do that
}

// Property: the volume's uncertainty widens the range as its own share.
TEST(PressureRise, TheVolumesUncertaintyIsInTheRange)
{
    RiseOptions options = hundredLitres();
    const RiseSummary sharp = analyseRise(recordOf(tests::kD1), options).value();
    options.volumeUncertainty = 0.10;
    const RiseSummary wide = analyseRise(recordOf(tests::kD1), options).value();
    EXPECT_LT(wide.low.si(), sharp.low.si());
    EXPECT_NEAR((wide.high - wide.leakRate) / wide.leakRate, 1.96 * 0.10, 0.03);
}

struct Odd
{
    const char* name;
    RiseRecord record;
};

RiseRecord made(int n, double (*pressure)(double))
{
    RiseRecord record;
    for (int i = 0; i < n; ++i) {
        record.time.push_back(i);
        record.pressure.push_back(pressure(static_cast<double>(i) / (n - 1)));
    }
    return record;
}

class OddRecord : public testing::TestWithParam<Odd>
{};

// Property: whatever a gauge writes, the answer is a range of finite numbers in order, or a refusal in a
// sentence.
TEST_P(OddRecord, GetsAnOrderedAnswer)
{
    const auto summary = analyseRise(GetParam().record, hundredLitres());
    ASSERT_TRUE(summary.has_value()) << summary.error().message;
    EXPECT_GE(summary->low.si(), 0.0);
    EXPECT_TRUE(std::isfinite(summary->high.si()));
    EXPECT_LE(summary->low.si(), summary->leakRate.si());
    EXPECT_LE(summary->leakRate.si(), summary->high.si());
    EXPECT_FALSE(summary->model.empty());
    EXPECT_FALSE(summary->advice.empty());
}

INSTANTIATE_TEST_SUITE_P(
    Odd, OddRecord,
    testing::Values(Odd{"ThreeSamples", made(3, [](double x) { return 1.0 + x; })},
                    Odd{"FourSamples", made(4, [](double x) { return 1.0 + x * x; })},
                    Odd{"SevenSamples", made(7, [](double x) { return 1.0 + std::sqrt(x); })},
                    Odd{"BelowZero", made(100, [](double x) { return -2.0 + x; })},
                    Odd{"OneStep", made(100, [](double x) { return x < 0.5 ? 1.0 : 1.1; })},
                    Odd{"Exact", made(100, [](double x) { return 1.0 + x; })},
                    Odd{"Accelerating", made(100, [](double x) { return 1.0 + x * x * x; })},
                    Odd{"OneOutlier",
                        made(200, [](double x) { return x == 100.0 / 199.0 ? 50.0 : 1.0 + x; })},
                    Odd{"Tiny", made(100, [](double x) { return 1e-12 * (1.0 + x); })},
                    Odd{"Huge", made(100, [](double x) { return 1e12 * (1.0 + x); })},
                    Odd{"Swinging", made(500, [](double x) { return std::sin(40.0 * x); })}),
    [](const auto& row) { return std::string(row.param.name); });

TEST(PressureRise, AHugeGapIsNoObstacle)
{
    RiseRecord record = recordOf(tests::kD2);
    for (std::size_t i = record.time.size() / 2; i < record.time.size(); ++i)
        record.time[i] += 1e6;
    EXPECT_TRUE(analyseRise(record, hundredLitres()).has_value());
}

TEST(PressureRise, AMillionSamplesAreJudged)
{
    const auto record = made(1'000'000, [](double x) {
        return 1.0 + x - 0.5 * std::expm1(-8.0 * x) + 0.01 * std::sin(1e9 * x * x);
    });
    const auto summary = analyseRise(record, hundredLitres());
    ASSERT_TRUE(summary.has_value());
    EXPECT_LT(summary->curves.time.size(), 500u);
    EXPECT_LE(summary->low.si(), 1e-7 * 1.000001);
    EXPECT_GE(summary->high.si(), 1e-7);
}

struct Refusal
{
    const char* name;
    RiseRecord record;
    RiseOptions options;
    ErrorCode code;
    const char* says;
};

class RiseRefusal : public testing::TestWithParam<Refusal>
{};

TEST_P(RiseRefusal, SaysWhatIsWrongAndWhere)
{
    const auto result = analyseRise(GetParam().record, GetParam().options);
    ASSERT_FALSE(result.has_value());
    EXPECT_EQ(result.error().code, GetParam().code);
    EXPECT_THAT(result.error().message, testing::HasSubstr(GetParam().says));
}

RiseOptions with(Volume volume, double uncertainty = 0.0)
{
    RiseOptions options;
    options.volume = volume;
    options.volumeUncertainty = uncertainty;
    return options;
}

const double kNotANumber = std::numeric_limits<double>::quiet_NaN();
const RiseRecord kPlain = {{0, 1, 2}, {1, 2, 3}, {}};

INSTANTIATE_TEST_SUITE_P(
    Refused, RiseRefusal,
    testing::Values(
        Refusal{"NoVolume", kPlain, {}, ErrorCode::BadInput, "volume must be above 0"},
        Refusal{"NegativeVolume", kPlain, with(litres(-1)), ErrorCode::BadInput, "volume must be above 0"},
        Refusal{"VagueVolume", kPlain, with(litres(1), 0.9), ErrorCode::BadInput,
                "uncertainty of the volume"},
        Refusal{"Empty", {}, with(litres(1)), ErrorCode::BadInput, "at least 3 samples, this one has 0"},
        Refusal{
            "TwoSamples", {{0, 1}, {1, 2}, {}}, with(litres(1)), ErrorCode::BadInput, "at least 3 samples"},
        Refusal{
            "Backwards", {{0, 2, 1}, {1, 2, 3}, {}}, with(litres(1)), ErrorCode::BadInput, "sample 3: times"},
        Refusal{
            "SameTime", {{0, 1, 1}, {1, 2, 3}, {}}, with(litres(1)), ErrorCode::BadInput, "sample 3: times"},
        Refusal{"NotANumber",
                {{0, 1, 2}, {1, kNotANumber, 3}, {}},
                with(litres(1)),
                ErrorCode::BadInput,
                "sample 2"},
        Refusal{"Frozen",
                {{0, 1, 2}, {1, 2, 3}, {293, 20, 293}},
                with(litres(1)),
                ErrorCode::BadInput,
                "sample 2"},
        Refusal{"Uneven", {{0, 1, 2}, {1, 2}, {}}, with(litres(1)), ErrorCode::BadInput, "equally many"},
        Refusal{"Falling", made(100, [](double x) { return 2.0 - x; }), with(litres(1)), ErrorCode::NoAnswer,
                "the pressure falls"},
        Refusal{"Constant",
                {{0, 1, 2}, {1, 1, 1}, {}},
                with(litres(1)),
                ErrorCode::NoAnswer,
                "same in all samples"}),
    [](const auto& row) { return std::string(row.param.name); });

} // namespace
} // namespace sealwalk::analysis
