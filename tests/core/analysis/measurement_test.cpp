// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/background_series.h"
#include "core/analysis/corrected_rate.h"
#include "core/analysis/decision.h"
#include "core/analysis/reference_leak.h"
#include "core/analysis/system_factor.h"
#include "core/analysis/uncertainty.h"
#include "core/flow/response.h"
#include "tests/support/check_row.h"

#include <algorithm>
#include <limits>
#include <random>

namespace sealwalk::analysis {
namespace {

using tests::CheckRow;

ReferenceLeakOptions membraneLeak()
{
    ReferenceLeakOptions options;
    options.certified = millibarLitresPerSecond(5.0e-8);
    options.room = degreesCelsius(23.0);
    return options;
}

double referenceAt28(bool exponential)
{
    ReferenceLeakOptions options = membraneLeak();
    options.room = degreesCelsius(28.0);
    options.exponential = exponential;
    return inMillibarLitresPerSecond(referenceLeakToday(options)->rate);
}

SystemFactor worked()
{
    SystemCheckOptions options;
    options.reference = millibarLitresPerSecond(4.8e-8);
    options.shown = millibarLitresPerSecond(3.1e-8);
    options.background = millibarLitresPerSecond(0.4e-8);
    return systemFactor(options).value();
}

double corrected(double peak, double background, std::vector<FactorUsed> factors)
{
    CorrectionOptions options;
    options.peak = millibarLitresPerSecond(peak);
    options.background = millibarLitresPerSecond(background);
    options.factors = std::move(factors);
    return inMillibarLitresPerSecond(correctRate(options)->rate);
}

Decision decision(double value, double uncertainty)
{
    return decide({millibarLitresPerSecond(value), millibarLitresPerSecond(uncertainty),
                   millibarLitresPerSecond(1e-6)})
        .value();
}

RepairProof repaired()
{
    return proveRepair(millibarLitresPerSecond(8.0e-6), 0.10, millibarLitresPerSecond(2.0e-8), 0.15, false);
}

class MeasurementRows : public testing::TestWithParam<CheckRow>
{};

TEST_P(MeasurementRows, Agrees)
{
    tests::expectRow(GetParam());
}

constexpr const char* kCertificate = "the certificate's law, worked out elsewhere";
constexpr const char* kReading = "the reading equation, worked out elsewhere";
constexpr const char* kGuard = "JCGM 106:2012, guarded acceptance; worked out elsewhere with scipy.stats";
constexpr const char* kProduct = "JCGM 100:2008, 5.1.6; worked out elsewhere";

// Published: each row names its source.
INSTANTIATE_TEST_SUITE_P(
    Published, MeasurementRows,
    testing::Values(
        CheckRow{"M_01", 5.8091712136e-08, 1e-9, kCertificate, [] { return referenceAt28(true); }},
        CheckRow{"M_02", 5.75e-08, 1e-9, kCertificate, [] { return referenceAt28(false); }},
        CheckRow{"M_03", 4.6586627192e-08, 1e-9, kCertificate,
                 [] {
                     ReferenceLeakOptions options = membraneLeak();
                     options.years = 3.5;
                     return inMillibarLitresPerSecond(referenceLeakToday(options)->rate);
                 }},
        CheckRow{"M_04", 0.031536, 1e-9, kCertificate,
                 [] { return lossPerYear(millibarLitresPerSecond(1e-7), pascals(1e5), cubicMetres(1e-4)); }},
        CheckRow{"M_05", 1.7777777778, 1e-9, kReading, [] { return worked().coefficient; }},
        CheckRow{"M_06", 1.066666667e-08, 1e-8, kReading,
                 [] {
                     return corrected(9.4e-9, 4.0e-9,
                                      {{"system factor", worked().coefficient, 0.0, true, ""},
                                       {"dwell", 1.0 / 0.9, 0.0, false, ""}});
                 }},
        CheckRow{"M_07", 1.422222222e-09, 1e-8, kReading,
                 [] {
                     DetectableOptions options;
                     options.factor = worked().factor;
                     options.noise = millibarLitresPerSecond(2.0e-10);
                     options.driftPerSecond = millibarLitresPerSecond(1.0e-11);
                     options.dwell = seconds(20.0);
                     return inMillibarLitresPerSecond(smallestDetectable(options).value());
                 }},
        CheckRow{"M_08", 2.488888889e-09, 1e-8,
                 "ASNT Nondestructive Testing Handbook, Leak Testing (1998): twice the sum",
                 [] {
                     return inMillibarLitresPerSecond(smallestDetectableByHandbook(
                         worked().factor, millibarLitresPerSecond(4e-10), millibarLitresPerSecond(2e-10),
                         millibarLitresPerSecond(1e-10)));
                 }},
        CheckRow{"M_09", 0.139664777, 1e-7, kProduct,
                 [] {
                     const double parts[] = {0.05, 0.0375, 0.02, 0.06, 0.10, 0.04};
                     return combined(parts);
                 }},
        CheckRow{"M_10", 7.53271956e-07, 1e-7, kGuard,
                 [] { return inMillibarLitresPerSecond(decision(7.0e-7, 1.5e-7).acceptBelow); }},
        CheckRow{"M_11", 0.977249868, 1e-7, kGuard, [] { return decision(7.0e-7, 1.5e-7).conformance; }},
        CheckRow{"M_12", 0.252492538, 1e-7, kGuard, [] { return decision(1.1e-6, 1.5e-7).conformance; }},
        CheckRow{"M_13", 1.24672804e-06, 1e-7, kGuard,
                 [] { return inMillibarLitresPerSecond(decision(1.1e-6, 1.5e-7).rejectAbove); }},
        CheckRow{"M_14", 0.860237144, 1e-7, kGuard, [] { return decision(6e-7, 3e-7).conformance; }},
        CheckRow{"M_15", 4.59784604e-07, 1e-7, kGuard,
                 [] { return inMillibarLitresPerSecond(decision(6e-7, 3e-7).acceptBelow); }},
        CheckRow{"M_16", 400.0, 1e-9, kProduct, [] { return repaired().factor; }},
        CheckRow{"M_17", 0.180277564, 1e-7, kProduct, [] { return repaired().relativeUncertainty; }},
        CheckRow{"M_18", 1.64485363, 1e-7, "tables of the normal distribution",
                 [] { return normalQuantile(0.95); }},
        CheckRow{"T_14", 2.033195266e-07, 1e-8, kReading,
                 [] {
                     const double rise = flow::riseFraction(seconds(10.0), seconds(20.0));
                     return corrected(4.0e-9, 0.0,
                                      {{"share", 1.0 / 0.2, 0.0, true, ""},
                                       {"dwell", 1.0 / rise, 0.0, false, ""},
                                       {"helium share", 1.0 / 0.25, 0.0, false, ""}});
                 }}),
    tests::rowName);

// Published: JCGM 100:2008 annex H.1, end-gauge calibration: u_c = 32 nm from 25, 9.7, 2.9 and 16.6 nm (the
// guide's rounding).
TEST(Uncertainty, CombinesTheEndGaugeOfTheGuide)
{
    const double parts[] = {25.0, 9.7, 2.9, 16.6};
    EXPECT_NEAR(combined(parts), 32.0, 0.5);
}

// Published: JCGM 100:2008 annex H.2, resistance, reactance and impedance from correlated voltage, current
// and phase: R 127.732 ± 0.071, X 219.847 ± 0.295, Z 254.260 ± 0.236 ohm.
TEST(Uncertainty, CombinesTheCorrelatedImpedanceOfTheGuide)
{
    const double v = 4.9990;
    const double i = 19.6610e-3;
    const double phi = 1.04446;
    const double uv = 0.0032093;
    const double ui = 0.0094711e-3;
    const double uphi = 0.0007521;
    const Correlation together[] = {{0, 1, -0.3553}, {0, 2, 0.8576}, {1, 2, -0.6451}};
    const double z = v / i;
    const double r = z * std::cos(phi);
    const double x = z * std::sin(phi);
    EXPECT_NEAR(r, 127.732, 5e-4);
    EXPECT_NEAR(x, 219.847, 5e-4);
    EXPECT_NEAR(z, 254.260, 5e-4);
    // Three digits are printed; the observations of the annex give 0.0711, 0.2956 and 0.2363.
    constexpr double kPrinted = 7e-4;
    const double forR[] = {r / v * uv, -r / i * ui, -x * uphi};
    const double forX[] = {x / v * uv, -x / i * ui, r * uphi};
    const double forZ[] = {z / v * uv, -z / i * ui, 0.0};
    EXPECT_NEAR(combined(forR, together), 0.071, kPrinted);
    EXPECT_NEAR(combined(forX, together), 0.295, kPrinted);
    EXPECT_NEAR(combined(forZ, together), 0.236, kPrinted);
}

// Published: JCGM 106:2012, section 7, breakdown voltage of a Zener diode: estimate -5.47 V, u 0.05 V, upper
// limit -5.40 V, probability of conformance 0.92 (from memory). Shifted by 6 V, as leak rates have no sign.
TEST(Decision, GivesTheConformanceProbabilityOfTheGuide)
{
    const auto zener = decide({LeakRate::fromSi(0.53), LeakRate::fromSi(0.05), LeakRate::fromSi(0.60)});
    EXPECT_NEAR(zener->conformance, 0.92, 0.005);
    EXPECT_EQ(zener->verdict, Verdict::CannotSay);
}

// Property: acceptance is a conformance of 95 % and rejection one of 5 %, in both shapes of distribution.
TEST(Decision, VerdictsAreConformanceProbabilities)
{
    for (const double share : {0.01, 0.1, 0.29, 0.31, 0.6, 1.5}) {
        for (double y = 1e-8; y < 1e-4; y *= 1.07) {
            const Decision d = decision(y, share * y);
            if (d.verdict == Verdict::Within) {
                EXPECT_GE(d.conformance, 0.95 - 1e-12);
            } else if (d.verdict == Verdict::Over) {
                EXPECT_LE(d.conformance, 0.05 + 1e-12);
            } else {
                EXPECT_GT(d.conformance, 0.05 - 1e-12);
                EXPECT_LT(d.conformance, 0.95 + 1e-12);
            }
            EXPECT_LT(d.acceptBelow, millibarLitresPerSecond(1e-6));
            EXPECT_GT(d.rejectAbove, millibarLitresPerSecond(1e-6));
        }
    }
}

TEST(Decision, RefusesNonsense)
{
    const LeakRate one = millibarLitresPerSecond(1.0);
    EXPECT_FALSE(decide({one, one, LeakRate{}}).has_value());
    EXPECT_FALSE(decide({one, -one, one}).has_value());
    EXPECT_FALSE(decide({one, one, one, 0.0}).has_value());
    EXPECT_FALSE(decide({LeakRate::fromSi(std::nan("")), one, one}).has_value());
    EXPECT_EQ(decide({one, LeakRate{}, one})->verdict, Verdict::Within);
    EXPECT_EQ(decide({one * 1.001, LeakRate{}, one})->verdict, Verdict::Over);
}

TEST(RepairProof, NeedsMoreThanTheNoiseOfBothReadings)
{
    EXPECT_TRUE(repaired().proven);
    EXPECT_FALSE(
        proveRepair(millibarLitresPerSecond(1.1e-6), 0.1, millibarLitresPerSecond(1.0e-6), 0.1, false)
            .proven);
    const RepairProof bound =
        proveRepair(millibarLitresPerSecond(1e-6), 0.1, millibarLitresPerSecond(1e-9), 0.1, true);
    EXPECT_TRUE(bound.atLeast);
    EXPECT_TRUE(bound.proven);
}

// Property: the quantile is the inverse of the distribution.
TEST(Uncertainty, QuantileAndProbabilityAreInverse)
{
    for (const double p : {1e-10, 1e-4, 0.05, 0.3, 0.5, 0.7, 0.95, 0.999, 1.0 - 1e-9})
        EXPECT_NEAR(normalProbability(normalQuantile(p)), p, 1e-13);
}

// Published: Monte Carlo after JCGM 101:2008, 200000 trials a case: the stated 95 % range holds between 93 %
// and 98 % of the true values that could have given the reading, from noise-bound to factor-bound readings.
TEST(CorrectedRate, RangeHoldsWhatMonteCarloSays)
{
    struct Case
    {
        double net;    ///< in units of the noise
        double spread; ///< of each of two factors
    };
    const Case cases[] = {{1000.0, 0.05}, {1000.0, 0.2}, {20.0, 0.1}, {6.0, 0.1}, {3.5, 0.05}, {10.0, 0.35}};
    std::mt19937_64 random(20081017);
    std::normal_distribution<double> normal;
    for (const Case& c : cases) {
        CorrectionOptions options;
        options.peak = LeakRate::fromSi(c.net + 50.0);
        options.background = LeakRate::fromSi(50.0);
        options.noise = LeakRate::fromSi(1.0);
        options.repeatability = 0.0;
        options.factors = {{"a", 2.0, c.spread, false, ""}, {"b", 0.7, c.spread, false, ""}};
        const CorrectedRate result = correctRate(options).value();
        const double s = logSpread(c.spread);
        int inside = 0;
        constexpr int kTrials = 200000;
        for (int i = 0; i < kTrials; ++i) {
            const double net = c.net + normal(random) - normal(random);
            const double y = net * 2.0 * std::exp(s * normal(random)) * 0.7 * std::exp(s * normal(random));
            inside += y >= result.low.si() && y <= result.high.si();
        }
        const double share = double(inside) / kTrials;
        EXPECT_GT(share, 0.93) << c.net << ' ' << c.spread;
        EXPECT_LT(share, 0.98) << c.net << ' ' << c.spread;
    }
}

// Property: corrected is net times every factor on the list, and nothing else.
TEST(CorrectedRate, IsTheProductOfItsList)
{
    CorrectionOptions options;
    options.peak = millibarLitresPerSecond(5e-9);
    options.background = millibarLitresPerSecond(1e-9);
    options.factors = {{"a", 2.0, 0.1, true, ""}, {"b", 1.5, 0.2, false, ""}};
    const CorrectedRate result = correctRate(options).value();
    double product = 1.0;
    for (const FactorUsed& factor : result.factors)
        product *= factor.multiplier;
    EXPECT_DOUBLE_EQ(result.rate.si(), result.net.si() * product);
    EXPECT_NEAR(result.sharedUncertainty, 0.1, 1e-15);
    EXPECT_NEAR(result.ownUncertainty, std::hypot(0.2, 0.06), 1e-15);
    EXPECT_LT(result.low, result.rate);
    EXPECT_GT(result.high, result.rate);
}

TEST(CorrectedRate, SmallerThanCanBeSeenIsNoResult)
{
    CorrectionOptions options;
    options.background = millibarLitresPerSecond(4e-10);
    options.noise = millibarLitresPerSecond(1e-10);
    options.factors = {{"system factor", 10.0, 0.05, true, ""}};
    options.peak = options.background + 2.9 * options.noise;
    EXPECT_FALSE(correctRate(options)->detected);
    options.peak = options.background + 3.1 * options.noise;
    EXPECT_TRUE(correctRate(options)->detected);
    EXPECT_NEAR(inMillibarLitresPerSecond(correctRate(options)->smallestDetectable), 3e-9, 1e-20);
    options.peak = options.background - 2.0 * options.noise;
    const CorrectedRate negative = correctRate(options).value();
    EXPECT_LT(negative.net.si(), 0.0);
    EXPECT_FALSE(negative.detected);
    EXPECT_EQ(negative.low.si(), 0.0);
}

TEST(CorrectedRate, RefusesNonsenseNamingTheFactor)
{
    CorrectionOptions options;
    options.peak = millibarLitresPerSecond(1e-9);
    options.factors = {{"helium share", 0.0, 0.1, false, ""}};
    EXPECT_EQ(correctRate(options).error().message,
              "the helium share must be above zero, with an uncertainty of zero or above");
    options.factors.clear();
    options.peak = LeakRate::fromSi(std::numeric_limits<double>::infinity());
    EXPECT_FALSE(correctRate(options).has_value());
}

TEST(ReferenceLeak, WarnsOfAgeAndTemperatureAndRefusesNonsense)
{
    ReferenceLeakOptions options = membraneLeak();
    EXPECT_TRUE(referenceLeakToday(options)->warnings.empty());
    EXPECT_NEAR(referenceLeakToday(options)->relativeUncertainty,
                std::sqrt(0.05 * 0.05 + 0.0375 * 0.0375 + 0.02 * 0.02), 1e-12);
    options.years = 3.0;
    options.room = degreesCelsius(30.0);
    EXPECT_EQ(referenceLeakToday(options)->warnings.size(), 2U);
    options.years = -0.1;
    EXPECT_FALSE(referenceLeakToday(options).has_value());
    options = membraneLeak();
    options.certified = LeakRate{};
    EXPECT_FALSE(referenceLeakToday(options).has_value());
    options = membraneLeak();
    options.lossPerYear = 1.0;
    EXPECT_FALSE(referenceLeakToday(options).has_value());
    options = membraneLeak();
    options.temperatureCoefficient = 0.1;
    options.exponential = false;
    options.room = degreesCelsius(5.0);
    EXPECT_FALSE(referenceLeakToday(options).has_value());
}

TEST(SystemFactor, SaysWhatToDoWhenItMoved)
{
    struct Row
    {
        double after;
        Steadiness steadiness;
    };
    const Row rows[] = {{1.05, Steadiness::Steady}, {0.95, Steadiness::Steady}, {0.8, Steadiness::Moved},
                        {1.3, Steadiness::Moved},   {0.6, Steadiness::Lost},    {1.8, Steadiness::Grown}};
    const SystemFactor before = worked();
    for (const Row& row : rows) {
        SystemFactor after = before;
        after.factor *= row.after;
        const FactorChange change = compareFactors(before, after);
        EXPECT_EQ(change.steadiness, row.steadiness) << row.after;
        EXPECT_NEAR(change.change, row.after - 1.0, 1e-12);
        EXPECT_NEAR(change.between.factor, before.factor * std::sqrt(row.after), 1e-12);
        EXPECT_FALSE(change.advice.empty());
    }
    SystemCheckOptions options;
    options.reference = millibarLitresPerSecond(1e-8);
    options.shown = options.background = millibarLitresPerSecond(1e-9);
    EXPECT_FALSE(systemFactor(options).has_value());
}

// Property: level, noise and drift come back from a series made of them.
TEST(BackgroundSeries, FindsLevelNoiseAndDrift)
{
    std::mt19937_64 random(7);
    std::normal_distribution<double> noise(0.0, 2e-11);
    std::vector<double> times;
    std::vector<LeakRate> values;
    for (int i = 0; i < 2000; ++i) {
        times.push_back(i * 0.5);
        values.push_back(LeakRate::fromSi(3e-10 + 1e-13 * i * 0.5 + noise(random)));
    }
    const BackgroundSummary summary = summariseBackground(times, values).value();
    EXPECT_NEAR(summary.noise.si(), 2e-11, 0.05 * 2e-11);
    EXPECT_NEAR(summary.driftPerSecond.si(), 1e-13, 4.0 * summary.driftUncertainty.si());
    EXPECT_NEAR(summary.level.si(), 3e-10 + 1e-13 * 499.75, 2e-12);
    EXPECT_EQ(summary.warnings.size(), 1U);
}

// Published: JCGM 100:2008, 4.3.7, equation (7): where only bounds are known, u = a / sqrt(3).
TEST(BackgroundSeries, ASwingReadByEyeIsARectangle)
{
    model::BackgroundWatch watch;
    watch.times = {0.0};
    watch.values = {millibarLitresPerSecond(1e-7)};
    watch.swing = millibarLitresPerSecond(2e-8);
    const BackgroundSummary summary = summariseBackground(watch).value();
    EXPECT_EQ(summary.level, watch.values.front());
    EXPECT_NEAR(summary.noise / *watch.swing, 0.57735, 1e-5);
    EXPECT_EQ(summary.variation, 2.0 * *watch.swing);
    EXPECT_EQ(summary.driftPerSecond, LeakRate());
    ASSERT_EQ(summary.warnings.size(), 1U);
    EXPECT_NE(summary.warnings.front().find("by eye"), std::string::npos);
    watch.swing = LeakRate();
    EXPECT_EQ(summariseBackground(watch).error().code, ErrorCode::BadInput);
    watch.swing = millibarLitresPerSecond(2e-8);
    watch.values.clear();
    EXPECT_EQ(summariseBackground(watch).error().code, ErrorCode::BadInput);
}

TEST(BackgroundSeries, RefusesShortAndDisorderedSeries)
{
    const std::vector<LeakRate> values(5, millibarLitresPerSecond(1e-10));
    EXPECT_TRUE(summariseBackground(std::vector<double>{0, 1, 2, 3, 4}, values).has_value());
    EXPECT_EQ(summariseBackground(std::vector<double>{0, 1, 2, 2, 4}, values).error().message,
              "background reading 4 is not later than the one before it");
    EXPECT_FALSE(summariseBackground(std::vector<double>{0, 1, 2, 3}, values).has_value());
    EXPECT_FALSE(summariseBackground(std::vector<double>{0, 1, 2, 3},
                                     std::vector<LeakRate>(4, millibarLitresPerSecond(1e-10)))
                     .has_value());
    EXPECT_FALSE(summariseBackground(std::vector<double>{0, 1, 2, 3, std::nan("")}, values).has_value());
}

// Regression: twenty values every three seconds, as the dialog advises, were called less than a minute; and
// values that are all alike drifted by what rounding leaves.
TEST(Background, TwentyAlikeAreAMinuteWithoutDrift)
{
    std::vector<double> times;
    for (int i = 0; i < 20; ++i)
        times.push_back(3.0 * i);
    const std::vector<LeakRate> alike(20, millibarLitresPerSecond(1.3e-8));
    const BackgroundSummary summary = summariseBackground(times, alike).value();
    EXPECT_TRUE(summary.warnings.empty());
    EXPECT_EQ(summary.driftPerSecond, LeakRate());
    times.resize(19);
    EXPECT_FALSE(summariseBackground(times, std::vector(19, alike.front())).value().warnings.empty());
}

} // namespace
} // namespace sealwalk::analysis
