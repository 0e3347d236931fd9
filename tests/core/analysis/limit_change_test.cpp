// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/limit_change.h"

#include <gtest/gtest.h>

namespace sealwalk::analysis {
namespace {

model::Setup limited(LeakRate limit)
{
    model::Setup setup;
    setup.pointLimit = limit;
    return setup;
}

// Regression: 5e-6 mbar l/s and 5e-7 Pa m3/s are one limit, and their doubles are two numbers.
TEST(LimitChange, DoesNotTakeTheSameLimitInAnotherUnitForAnother)
{
    const model::Setup one = limited(millibarLitresPerSecond(5e-6));
    const model::Setup other = limited(LeakRate::fromSi(5e-7));
    ASSERT_NE(one.pointLimit->si(), other.pointLimit->si());
    EXPECT_TRUE(limitDifferences(one, other).empty());
    EXPECT_FALSE(limitDifferences(one, limited(millibarLitresPerSecond(5.1e-6))).empty());
}

// Property: each limit that differs is told, with what it was and is; one that is new has no value before.
TEST(LimitChange, TellsEachLimitThatDiffers)
{
    model::Setup before = limited(millibarLitresPerSecond(1e-6));
    model::Setup after = before;
    after.totalLimit = millibarLitresPerSecond(1e-5);
    before.kindLimits[model::JointKind::WeldSeam] = millibarLitresPerSecond(1e-8);
    after.kindLimits[model::JointKind::WeldSeam] = millibarLitresPerSecond(2e-8);
    const auto found = limitDifferences(before, after);
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].of, LimitDifference::Of::AllTogether);
    EXPECT_FALSE(found[0].before);
    EXPECT_EQ(found[0].after, after.totalLimit);
    EXPECT_EQ(found[1].kind, model::JointKind::WeldSeam);
}

} // namespace
} // namespace sealwalk::analysis
