// SPDX-License-Identifier: GPL-3.0-or-later
// The base pressure an owner asked for.
#include "core/analysis/job_balance.h"
#include "tests/core/analysis/reviewed_job.h"

#include <gmock/gmock.h>

namespace sealwalk::analysis {
namespace {

// Regression: a base pressure wanted and not reached was judged nowhere and asked about by no question.
TEST(MissedPressure, IsAskedAboutAndToldInAsManyDigitsAsItTakes)
{
    model::Job job = goodJob();
    model::TestObject object = analysis::object();
    model::RiseTest test;
    test.id = model::RiseTestId::create();
    test.at = job.readings.back().at;
    test.moment = model::TestMoment::AsLeft;
    test.basePressure = millibars(6e-6);
    job.riseTests.push_back(test);
    EXPECT_FALSE(missedPressure(job, object).has_value()) << "none is wanted";
    object.wantedPressure = millibars(5e-6);
    const auto asked = [&] {
        const auto checks = reviewChecks(job, object, summarise(job, object, Standing::AsLeft), options());
        std::string all;
        for (const ReviewCheck& check : checks)
            if (check.word == "balance")
                for (const ReviewMatter& matter : check.matters)
                    all += matter.says + '\n';
        return all;
    };
    EXPECT_THAT(asked(),
                ::testing::HasSubstr("The base pressure, 6.0e-06 mbar, is above the 5.0e-06 mbar wanted."));
    object.wantedPressure = millibars(5.97e-6);
    EXPECT_EQ(missedPressure(job, object)->digits, 3) << "6.00 and 5.97";
    object.wantedPressure = millibars(6e-6);
    EXPECT_FALSE(missedPressure(job, object).has_value());
    job.riseTests.front().basePressure.reset();
    EXPECT_FALSE(missedPressure(job, object).has_value());
}

} // namespace
} // namespace sealwalk::analysis
