// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/leak_balance.h"
#include "core/analysis/repair_effect.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace sealwalk::analysis {
namespace {

LocatedLeak leak(const char* label, double helium, double own = 0.1, double shared = 0.08)
{
    return {label, millibarLitresPerSecond(helium), shared, own, std::nullopt, {}};
}

RiseTotal total(double rate, double low, double high)
{
    return {millibarLitresPerSecond(rate), millibarLitresPerSecond(low), millibarLitresPerSecond(high)};
}

// Property: the shares add to one and the list sums to the total used in the budget.
TEST(LeakBalance, ListSumsToTheTotalUsed)
{
    const LocatedLeak leaks[] = {leak("a", 1e-4), leak("b", 3e-3), leak("c", 2e-6)};
    const LeakBalance balance = balanceLeaks(leaks, std::nullopt).value();
    double sum = 0.0;
    double shares = 0.0;
    for (const LeakAsAir& each : balance.leaks) {
        sum += each.air.si();
        shares += each.share;
        EXPECT_LT(each.low, each.air);
        EXPECT_GT(each.high, each.air);
        EXPECT_NEAR(each.air.si(),
                    each.ratio * (each.label == "a"   ? 1e-5
                                  : each.label == "b" ? 3e-4
                                                      : 2e-7),
                    1e-15);
    }
    EXPECT_NEAR(sum, balance.located.si(), 1e-15 * sum);
    EXPECT_NEAR(shares, 1.0, 1e-12);
    EXPECT_EQ(balance.leaks.front().label, "b");
    EXPECT_EQ(balance.verdict, BalanceVerdict::NoTotal);
    EXPECT_FALSE(balance.unlocated.has_value());
}

// Property: what all leaks share does not average out; what each has for itself does.
TEST(LeakBalance, SharedUncertaintyDoesNotAverageOut)
{
    std::vector<LocatedLeak> shared;
    std::vector<LocatedLeak> own;
    for (int i = 0; i < 100; ++i) {
        shared.push_back(leak("x", 1e-5, 0.0, 0.2));
        own.push_back(leak("x", 1e-5, 0.2, 0.0));
    }
    const auto width = [](const LeakBalance& b) { return std::log(b.locatedHigh / b.locatedLow) / 4.0; };
    EXPECT_NEAR(width(balanceLeaks(shared, std::nullopt).value()), 0.2, 0.02);
    EXPECT_LT(width(balanceLeaks(own, std::nullopt).value()), 0.04);
}

TEST(LeakBalance, TellsMissingFromExplainedFromTooMuch)
{
    const LocatedLeak leaks[] = {leak("a", 1e-3)};
    const double air = inMillibarLitresPerSecond(balanceLeaks(leaks, std::nullopt)->located);
    const auto verdict = [&](double times) {
        return balanceLeaks(leaks, total(times * air, 0.9 * times * air, 1.1 * times * air)).value();
    };
    EXPECT_EQ(verdict(1.0).verdict, BalanceVerdict::Explained);
    EXPECT_EQ(verdict(5.0).verdict, BalanceVerdict::Missing);
    EXPECT_EQ(verdict(0.3).verdict, BalanceVerdict::MoreThanTotal);
    EXPECT_NEAR(*verdict(5.0).unlocatedShare, 0.8, 1e-9);
    EXPECT_LT(verdict(5.0).unlocatedShareLow, 0.8);
    EXPECT_GT(verdict(5.0).unlocatedShareHigh, 0.8);
    EXPECT_EQ(*verdict(0.3).unlocatedShare, 0.0);
}

TEST(LeakBalance, CannotSayWhereTheRangesAllowForNothingMissing)
{
    LocatedLeak wide = leak("a", 1e-3);
    wide.ownAbove = 0.6;
    const LocatedLeak leaks[] = {wide};
    const double air = inMillibarLitresPerSecond(balanceLeaks(leaks, std::nullopt)->located);
    const LeakBalance balance = balanceLeaks(leaks, total(1.8 * air, 1.7 * air, 1.9 * air)).value();
    EXPECT_EQ(balance.verdict, BalanceVerdict::CannotSay);
    EXPECT_GT(balance.locatedHigh / balance.located, balance.located / balance.locatedLow);
}

TEST(LeakBalance, ARecordThatDoesNotPartGivesAnUpperBoundOnly)
{
    const LocatedLeak leaks[] = {leak("a", 1e-3)};
    const RiseTotal bound{std::nullopt, LeakRate{}, millibarLitresPerSecond(5e-3)};
    const LeakBalance balance = balanceLeaks(leaks, bound).value();
    EXPECT_FALSE(balance.unlocated.has_value());
    EXPECT_EQ(balance.verdict, BalanceVerdict::NoTotal);
    EXPECT_GT(balance.unlocatedHigh.si(), 0.0);
    EXPECT_EQ(balance.unlocatedShareLow, 0.0);
}

TEST(LeakBalance, LeaksOfAnotherConditionStandBesideTheSum)
{
    LocatedLeak flexed = leak("hose", 1e-2);
    flexed.beside = "was found only in another condition";
    const LocatedLeak leaks[] = {leak("a", 1e-3), flexed};
    const LeakBalance balance = balanceLeaks(leaks, std::nullopt).value();
    EXPECT_EQ(balance.leaks.front().label, "hose");
    EXPECT_EQ(balance.leaks.front().share, 0.0);
    EXPECT_EQ(balance.located, balance.leaks.back().air);
}

// Property: the unlocated range holds the truth in about 95 of 100 simulated jobs.
TEST(LeakBalance, UnlocatedRangeHoldsTheTruth)
{
    std::mt19937_64 random(42);
    std::normal_distribution<double> normal;
    int inside = 0;
    constexpr int kJobs = 2000;
    const LocatedLeak trueLeaks[] = {leak("a", 1e-3, 0.0, 0.0), leak("b", 4e-3, 0.0, 0.0)};
    const LeakBalance truth = balanceLeaks(trueLeaks, std::nullopt).value();
    const double missing = 0.4 * truth.located.si();
    for (int job = 0; job < kJobs; ++job) {
        const double common = std::exp(0.1 * normal(random));
        std::vector<LocatedLeak> seen;
        double air = 0.0;
        for (const LeakAsAir& each : truth.leaks) {
            // The geometry is unknown too: the true air leak strays from the model by the ratio's own
            // uncertainty.
            air += each.air.si() * std::exp(each.relativeUncertainty * normal(random));
            const double helium = each.air.si() / each.ratio;
            seen.push_back({each.label,
                            LeakRate::fromSi(helium * common * std::exp(0.12 * normal(random))),
                            0.1,
                            0.12,
                            std::nullopt,
                            {}});
        }
        const double all = air + missing;
        const double measured = all * (1.0 + 0.05 * normal(random));
        const RiseTotal rise{LeakRate::fromSi(measured), LeakRate::fromSi(0.9 * measured),
                             LeakRate::fromSi(1.1 * measured)};
        const LeakBalance balance = balanceLeaks(seen, rise).value();
        inside += balance.unlocatedLow.si() <= missing && missing <= balance.unlocatedHigh.si();
    }
    EXPECT_GT(double(inside) / kJobs, 0.93);
    EXPECT_LT(double(inside) / kJobs, 0.995);
}

TEST(LeakBalance, RefusesNonsenseNamingTheLeak)
{
    const LocatedLeak zero[] = {leak("point 7", 0.0)};
    EXPECT_EQ(balanceLeaks(zero, std::nullopt).error().message.substr(0, 9), "point 7: ");
    const LocatedLeak good[] = {leak("a", 1e-6)};
    EXPECT_FALSE(balanceLeaks(good, total(1.0, 2.0, 3.0)).has_value());
    EXPECT_FALSE(balanceLeaks(good, total(1.0, -1.0, 3.0)).has_value());
    EXPECT_FALSE(balanceLeaks(good, total(4.0, 2.0, 3.0)).has_value());
}

RepairEffectOptions effectOptions()
{
    const LocatedLeak leaks[] = {leak("a", 1e-3), leak("b", 4e-3), leak("c", 1e-4)};
    RepairEffectOptions options;
    options.balance = balanceLeaks(leaks, total(6e-3, 5e-3, 7e-3)).value();
    options.volume = litres(100.0);
    options.airSpeed = litresPerSecond(10.0);
    options.blankOff = millibars(1e-5);
    return options;
}

TEST(RepairEffect, TakesTheRepairedLeaksOffRiseAndBasePressure)
{
    RepairEffectOptions options = effectOptions();
    options.repaired = {"b"};
    const RepairEffect effect = repairEffect(options).value();
    const LeakRate b = options.balance.leaks.front().air;
    EXPECT_EQ(effect.removed, b);
    EXPECT_NEAR(effect.leakAfter.si(), 6e-4 - b.si(), 1e-12);
    EXPECT_NEAR(*effect.risePerSecondNow, 6e-4 / 0.1, 1e-12);
    EXPECT_NEAR(*effect.risePerSecondAfter, effect.leakAfter.si() / 0.1, 1e-12);
    EXPECT_NEAR(effect.basePressureNow->si(), 6e-4 / 0.01 + 1e-3, 1e-12);
    EXPECT_NEAR((*effect.basePressureNow - *effect.basePressureAfter).si(), b.si() / 0.01, 1e-12);
    EXPECT_LE(effect.leakAfterLow, effect.leakAfter);
    EXPECT_GE(effect.leakAfterHigh, effect.leakAfter);
    EXPECT_FALSE(effect.meetsLimit.has_value());
}

// Property: no shorter choice of repairs meets the limit; all subsets are tried.
TEST(RepairEffect, ShortestListIsTheShortest)
{
    RepairEffectOptions options = effectOptions();
    for (double limit = 1e-5; limit < 8e-3; limit *= 1.3) {
        options.totalLimit = millibarLitresPerSecond(limit);
        const RepairEffect effect = repairEffect(options).value();
        int fewest = 99;
        for (int subset = 0; subset < 8; ++subset) {
            double left = 6e-4;
            int count = 0;
            for (int i = 0; i < 3; ++i)
                if ((subset >> i) & 1) {
                    left -= options.balance.leaks[static_cast<std::size_t>(i)].air.si();
                    ++count;
                }
            if (left <= options.totalLimit->si())
                fewest = std::min(fewest, count);
        }
        EXPECT_EQ(effect.reachable, fewest != 99) << limit;
        if (fewest != 99) {
            EXPECT_EQ(int(effect.shortestList.size()), fewest) << limit;
        }
    }
}

TEST(RepairEffect, NeedsNothingWhereTheLimitIsMetAndSaysWhenRepairsCannotReachIt)
{
    RepairEffectOptions options = effectOptions();
    options.totalLimit = millibarLitresPerSecond(1.0);
    EXPECT_TRUE(repairEffect(options)->shortestList.empty());
    EXPECT_TRUE(*repairEffect(options)->meetsLimit);
    options.totalLimit = std::nullopt;
    options.wantedPressure = millibars(0.9e-5);
    EXPECT_FALSE(repairEffect(options)->reachable);
    options.wantedPressure = millibars(5e-4);
    EXPECT_EQ(repairEffect(options)->shortestList, std::vector<std::string>{"b"});
}

TEST(RepairEffect, StartsFromAMeasuredBasePressure)
{
    RepairEffectOptions options = effectOptions();
    options.basePressureNow = pascals(0.1);
    options.repaired = {"b"};
    const RepairEffect effect = repairEffect(options).value();
    EXPECT_EQ(effect.basePressureNow->si(), 0.1);
    EXPECT_NEAR(effect.basePressureAfter->si(), 0.1 - options.balance.leaks.front().air.si() / 0.01, 1e-12);
}

// Regression: without a pressure rise the leaks were called small enough, of a job without any reading too.
TEST(RepairEffect, ClaimsNothingWithoutATotal)
{
    const LocatedLeak leaks[] = {leak("a", 1e-3), leak("b", 4e-3), leak("c", 1e-4)};
    RepairEffectOptions options = effectOptions();
    const auto nothing = std::span<const LocatedLeak>();
    struct Case
    {
        const char* what;
        std::span<const LocatedLeak> leaks;
        std::optional<RiseTotal> total;
        double limit;
        std::size_t needed;
        const char* advice;
    };
    RiseTotal bound;
    bound.high = millibarLitresPerSecond(6e-3);
    for (const Case& each : {Case{"nothing",
                                  nothing,
                                  {},
                                  1e-3,
                                  0,
                                  "cannot say whether the leaks together are as small as asked: "
                                  "there is no leak with a rate and no pressure rise of this state"},
                             Case{"located and small",
                                  leaks,
                                  {},
                                  1.0,
                                  0,
                                  "cannot say whether the leaks together are as small as asked: "
                                  "there is no pressure rise of this state"},
                             Case{"located and large",
                                  leaks,
                                  {},
                                  2e-3,
                                  1,
                                  "repairing b is needed, and cannot say whether it is enough: "
                                  "there is no pressure rise of this state"},
                             Case{"not parted", leaks, bound, 5.5e-3, 0,
                                  "cannot say whether the leaks together are as small as asked: "
                                  "the pressure rise does not part leak from outgassing"}}) {
        SCOPED_TRACE(each.what);
        options.balance = balanceLeaks(each.leaks, each.total).value();
        options.totalLimit = millibarLitresPerSecond(each.limit);
        options.wantedPressure = millibars(1.0);
        const RepairEffect effect = repairEffect(options).value();
        EXPECT_EQ(effect.advice, each.advice);
        EXPECT_EQ(effect.shortestList.size(), each.needed);
        EXPECT_FALSE(effect.totalKnown);
        EXPECT_FALSE(effect.basePressureNow.has_value());
        EXPECT_FALSE(effect.risePerSecondNow.has_value());
        EXPECT_EQ(effect.meetsLimit, each.needed > 0 ? std::optional(false) : std::nullopt);
    }
    // An upper bound within the limit settles it all the same.
    options.wantedPressure.reset();
    options.totalLimit = millibarLitresPerSecond(6.5e-3);
    EXPECT_EQ(repairEffect(options)->meetsLimit, true);
    EXPECT_EQ(repairEffect(options)->advice, "the leaks together are already as small as asked");
}

TEST(RepairEffect, RefusesAnUnknownLeak)
{
    RepairEffectOptions options = effectOptions();
    options.repaired = {"z"};
    EXPECT_EQ(repairEffect(options).error().message, "\"z\" is not one of the located leaks");
}

// Regression: a pressure rise in which no leak was found has a total of zero, and no share of it.
TEST(LeakBalance, StandsATotalOfNothing)
{
    RiseTotal total;
    total.rate = LeakRate();
    total.high = millibarLitresPerSecond(1e-7);
    const auto balance = balanceLeaks(std::vector<LocatedLeak>{}, total);
    ASSERT_TRUE(balance.has_value());
    EXPECT_EQ(balance->verdict, BalanceVerdict::Explained);
    EXPECT_FALSE(balance->unlocatedShare.has_value());
}

} // namespace
} // namespace sealwalk::analysis
