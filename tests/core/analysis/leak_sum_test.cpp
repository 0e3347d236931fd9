// SPDX-License-Identifier: GPL-3.0-or-later
// Sums of leaks of whole jobs: beyond range, judged, open only when moved, of the set-up; and their spread.
#include "core/analysis/job_findings.h"
#include "core/analysis/leak_rank.h"
#include "core/analysis/leak_sum.h"
#include "core/analysis/uncertainty.h"
#include "tests/support/jobs.h"

#include <gtest/gtest.h>

#include <cmath>

namespace sealwalk::analysis {
namespace {

using tests::addValue;

/// Six points on a ring, all quiet but point 3.
model::Job quietBut3(double peak, model::Outcome outcome = model::Outcome::Value,
                     model::Condition condition = model::Condition::AtRest)
{
    model::Job job = tests::ringJob(6);
    for (int point = 1; point <= 6; ++point) {
        addValue(job, point, peak);
        model::Reading& reading = job.readings.back();
        reading.outcome = point == 3 ? outcome : model::Outcome::NoResponse;
        reading.condition = point == 3 ? condition : model::Condition::AtRest;
        if (point != 3)
            reading.peak.reset();
    }
    return job;
}

LeakSum sumOf(const model::Job& job)
{
    return leakSum(job, model::TestObject(), jobFindings(job, model::TestObject(), job.rounds.front().id));
}

// Regression: the only leak of a job was beyond the detector's range, and the sum said "no leak located".
TEST(LeakSum, HoldsALeakBeyondRangeWithTheLeastItIs)
{
    model::Job job = quietBut3(1e-5, model::Outcome::AboveRange);
    tests::calibrate(job);
    const LeakSum sum = sumOf(job);
    EXPECT_EQ(sum.state(), SumState::Sum);
    EXPECT_TRUE(sum.isAtLeast);
    ASSERT_TRUE(sum.helium && sum.air && sum.worst);
    EXPECT_FALSE(sum.below);
    EXPECT_EQ(sum.worst->number, 3);
    ASSERT_TRUE(sum.worst->atLeast);
    EXPECT_FALSE(sum.worst->rate);
    EXPECT_EQ(sum.helium->rate, *sum.worst->atLeast);
    EXPECT_LT(*sum.worst->atLeast, millibarLitresPerSecond(1.2e-5)) << "the top of the range, corrected";
    EXPECT_GT(*sum.worst->atLeast, millibarLitresPerSecond(5e-6));
    EXPECT_FALSE(sum.helium->hasRange());

    auto findings = jobFindings(job, model::TestObject(), job.rounds.front().id);
    findings[5].finding = Finding::Leak; // and one that has a size
    findings[5].rate = millibarLitresPerSecond(2e-6);
    findings[5].bound.reset();
    const LeakSum both = leakSum(job, model::TestObject(), findings);
    ASSERT_TRUE(both.helium);
    EXPECT_GT(both.helium->rate, sum.helium->rate + millibarLitresPerSecond(1.5e-6));
    EXPECT_GT(both.air->rate, sum.air->rate);
    EXPECT_TRUE(both.isAtLeast);
    EXPECT_FALSE(both.helium->hasRange()) << "nobody knows how much more it is";
}

// Regression: beside a value of the same point that the detector could show, one beyond its range was left
// out.
TEST(LeakSum, AReadingBeyondRangeCountsBeforeOneThatIsNot)
{
    model::Job job = quietBut3(1e-5, model::Outcome::AboveRange);
    tests::calibrate(job);
    addValue(job, 3, 9.5e-6);
    const LeakSum sum = sumOf(job);
    ASSERT_TRUE(sum.worst);
    EXPECT_TRUE(sum.worst->atLeast);
    EXPECT_TRUE(sum.isAtLeast);
}

// Regression: without a check no leak has a size, and the sum said that there was none.
TEST(LeakSum, KnowsALeakThatHasNoSize)
{
    for (const model::Outcome outcome : {model::Outcome::Value, model::Outcome::AboveRange}) {
        const LeakSum sum = sumOf(quietBut3(1e-5, outcome));
        EXPECT_EQ(sum.state(), SumState::Unsized) << model::name(outcome);
        EXPECT_EQ(sum.unsized, 1);
        EXPECT_FALSE(sum.helium || sum.below);
        ASSERT_TRUE(sum.worst);
        EXPECT_EQ(sum.worst->number, 3);
        EXPECT_TRUE(sum.isAtLeast);
    }
}

// Regression: a leak beside the sum was said to be none.
TEST(LeakSum, KnowsLeaksThatStandBesideIt)
{
    for (const model::Outcome outcome : {model::Outcome::Value, model::Outcome::AboveRange}) {
        model::Job flexed = quietBut3(1e-6, outcome, model::Condition::Flexed);
        tests::calibrate(flexed);
        LeakSum sum = sumOf(flexed);
        EXPECT_EQ(sum.state(), SumState::OtherCondition);
        EXPECT_EQ(sum.otherCondition, 1);
        EXPECT_FALSE(sum.isAtLeast) << "at rest nothing is hidden by it";
        model::Job setup = quietBut3(1e-6, outcome);
        tests::calibrate(setup);
        setup.sketch.joints.front().isSetup = true;
        sum = sumOf(setup);
        EXPECT_EQ(sum.state(), SumState::SetupOnly);
        EXPECT_EQ(sum.ofSetup, 1);
        EXPECT_FALSE(sum.helium || sum.isAtLeast);
    }
}

// Property: nothing found, and every point bounded: all that could have hidden, also as air.
TEST(LeakSum, OfNothingIsBelowWhatCouldHaveHidden)
{
    model::Job job = quietBut3(1e-10, model::Outcome::NoResponse);
    tests::calibrate(job);
    LeakSum sum = sumOf(job);
    EXPECT_EQ(sum.state(), SumState::Below);
    ASSERT_TRUE(sum.below && sum.belowAir);
    EXPECT_GT(*sum.belowAir, LeakRate());
    EXPECT_LT(*sum.belowAir, *sum.below) << "leaks this small pass more helium than air";
    job.readings.pop_back(); // of one point nothing is known
    sum = sumOf(job);
    EXPECT_EQ(sum.state(), SumState::NoLeak);
    EXPECT_FALSE(sum.below || sum.belowAir);
}

// Property: what a person says is elsewhere is in no sum, and nothing bounds what else may be there.
TEST(LeakSum, LeavesOutWhatAPersonSaysIsElsewhere)
{
    for (const char* word : {"echo", "masked", "other source", "virtual leak", "clear"}) {
        model::Job job = quietBut3(1e-6);
        tests::calibrate(job);
        ASSERT_EQ(sumOf(job).state(), SumState::Sum);
        model::Judgement judgement;
        judgement.point = tests::pointNumbered(job, 3);
        judgement.round = job.rounds.front().id;
        judgement.finding = word;
        judgement.verdict = "within";
        job.judgements.push_back(judgement);
        const LeakSum sum = sumOf(job);
        EXPECT_EQ(sum.state(), SumState::NoLeak) << word;
        ASSERT_TRUE(sum.worst) << word;
        EXPECT_NE(sum.worst->number, 3) << word;
    }
}

// Property: one leak between two points is in the sum once, also when one of them was beyond range.
TEST(LeakSum, CountsALeakBetweenNeighboursOnce)
{
    const model::Job job = tests::ringJob(2);
    PointFinding one;
    one.point = job.sketch.points[0].id;
    one.finding = Finding::Shared;
    one.rate = millibarLitresPerSecond(2e-6);
    one.of = {job.sketch.points[1].id};
    PointFinding other = one;
    std::swap(other.point, other.of.front());
    const model::TestObject object;
    EXPECT_EQ(leakSum(job, object, std::vector{one, other}).helium->rate, *one.rate);
    other.finding = Finding::Leak;
    other.of.clear();
    other.rate.reset();
    other.atLeast = millibarLitresPerSecond(1e-6);
    EXPECT_EQ(leakSum(job, object, std::vector{one, other}).helium->rate, *one.rate);
}

// Property: sized before unsized, any leak before a bound, a bound before nothing.
TEST(LeakRank, PutsLeaksBeforeBounds)
{
    const auto made = [](Finding word, std::optional<double> rate, std::optional<double> least,
                         std::optional<double> bound) {
        PointFinding finding;
        finding.finding = word;
        const auto of = [](std::optional<double> number) {
            return number ? std::optional(millibarLitresPerSecond(*number)) : std::nullopt;
        };
        finding.rate = of(rate);
        finding.atLeast = of(least);
        finding.bound = of(bound);
        return finding;
    };
    const PointFinding ordered[] = {
        made(Finding::Leak, {}, 3e-6, {}),  made(Finding::Leak, 2e-6, {}, {}),
        made(Finding::Leak, 1e-9, {}, {}),  made(Finding::Leak, {}, {}, {}),
        made(Finding::Clear, {}, {}, 1e-4), made(Finding::Clear, {}, {}, 1e-10),
        made(Finding::Echo, {}, {}, {}),
    };
    for (std::size_t i = 0; i < std::size(ordered); ++i)
        for (std::size_t j = 0; j < std::size(ordered); ++j)
            EXPECT_EQ(outweighs(ordered[i], ordered[j]), i < j) << i << ' ' << j;
    EXPECT_FALSE(isRanked(ordered[6]));
}

// Published: JCGM 100:2008 (GUM), 5.2.2, example: ten resistors of 1000 ohm compared with one standard of
// 100 milliohm uncertainty make a reference of 10 kilohm of 1 ohm, where adding in squares would say 0.32
// ohm.
TEST(SpreadOfSum, TenResistorsOfOneStandard)
{
    const std::vector<SumTerm> correlated(10, SumTerm{1000.0, 0.1 / 1000.0, 0.0});
    const std::vector<SumTerm> independent(10, SumTerm{1000.0, 0.0, 0.1 / 1000.0});
    EXPECT_NEAR(10'000.0 * spreadOfSum(correlated), 1.0, 1e-6);
    EXPECT_NEAR(10'000.0 * spreadOfSum(independent), 0.32, 0.005);
    EXPECT_EQ(spreadOfSum({}), 0.0);
}

// Published: 2.28 and 97.72 % (two standard deviations) of 2·10⁷ draws of numpy 1.24 (default_rng(1)) of two
// log-normal leaks of medians 2 and 1: of spread ln(1.5)/2 each, 2.2423 to 4.1093; of 10 % each and 8 %
// together, 2.4174 to 3.7410.
TEST(SpreadOfSum, TwoLogNormalLeaksByMonteCarlo)
{
    struct Row
    {
        double shared;
        double own;
        double low;
        double high;
    };
    const double spread = 0.5 * std::log(1.5);
    for (const Row& row : {Row{0.0, std::sqrt(std::expm1(spread * spread)), 2.2423, 4.1093},
                           Row{0.08, 0.10, 2.4174, 3.7410}}) {
        const std::vector<SumTerm> terms{{2.0, row.shared, row.own}, {1.0, row.shared, row.own}};
        EXPECT_NEAR(3.0 * std::exp(-2.0 * spreadOfSum(terms)) / row.low, 1.0, 0.02);
        EXPECT_NEAR(3.0 * std::exp(2.0 * spreadOfSum(terms)) / row.high, 1.0, 0.02);
    }
}

// Property: the sum of a job and its balance have the same range, by the way that was checked above.
TEST(SpreadOfSum, IsTheRangeOfASum)
{
    const model::Job job = tests::ringJob(2);
    std::vector<PointFinding> leaks(2);
    for (std::size_t i = 0; i < leaks.size(); ++i) {
        leaks[i].point = job.sketch.points[i].id;
        leaks[i].finding = Finding::Leak;
        const double rate = i == 0 ? 2e-6 : 1e-6;
        leaks[i].rate = millibarLitresPerSecond(rate);
        leaks[i].low = millibarLitresPerSecond(rate / 1.5);
        leaks[i].high = millibarLitresPerSecond(rate * 1.5);
    }
    const LeakSum sum = leakSum(job, model::TestObject(), leaks);
    ASSERT_TRUE(sum.helium && sum.helium->hasRange());
    EXPECT_NEAR(inMillibarLitresPerSecond(sum.helium->low), 2.2423e-6, 0.02 * 2.2423e-6);
    EXPECT_NEAR(inMillibarLitresPerSecond(sum.helium->high), 4.1093e-6, 0.02 * 4.1093e-6);
}

} // namespace
} // namespace sealwalk::analysis
