// SPDX-License-Identifier: GPL-3.0-or-later
// Job files as released versions wrote them, read for ever. A new format adds its file; none is ever changed.
#include "core/exchange/files.h"
#include "core/exchange/job_file.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace sealwalk::exchange {
namespace {

// Regression: format 1, the signed job of the demonstration history (invented data).
TEST(ReleasedJobFiles, FormatOneReadsAndItsSignatureHolds)
{
    const auto bytes = readFile(SEALWALK_TEST_DATA "/job_file_1.sealjob");
    ASSERT_TRUE(bytes.has_value()) << bytes.error().message;
    const auto file = readJobFile(*bytes);
    ASSERT_TRUE(file.has_value()) << file.error().message;
    EXPECT_EQ(file->record.object.name, "Box coater 2 (demo)");
    EXPECT_EQ(file->record.job.number, 118);
    EXPECT_EQ(file->record.job.state, model::JobState::Signed);
    EXPECT_EQ(file->record.job.readings.size(), 70U);
    EXPECT_EQ(file->record.job.sketch.points.size(), 62U);
    const auto verified = verifyJobFile(*bytes);
    ASSERT_TRUE(verified.has_value()) << verified.error().message;
    EXPECT_TRUE(verified->ok());
    ASSERT_EQ(verified->signatures.size(), 1U);
    EXPECT_EQ(verified->signatures[0].signature.name, "Reviewer B");
    EXPECT_EQ(packJobFile(*file).value(), *bytes) << "one content, one file, in every version";
}

// Regression: format 2, the same with the customer named.
TEST(ReleasedJobFiles, FormatTwoReadsAndItsSignatureHolds)
{
    const auto bytes = readFile(SEALWALK_TEST_DATA "/job_file_2.sealjob");
    ASSERT_TRUE(bytes.has_value()) << bytes.error().message;
    const auto file = readJobFile(*bytes);
    ASSERT_TRUE(file.has_value()) << file.error().message;
    EXPECT_EQ(file->record.job.setup.customer, "the coating workshop (invented)");
    EXPECT_EQ(file->record.job.state, model::JobState::Signed);
    const auto verified = verifyJobFile(*bytes);
    ASSERT_TRUE(verified.has_value()) << verified.error().message;
    EXPECT_TRUE(verified->ok());
    EXPECT_EQ(packJobFile(*file).value(), *bytes);
}

// Regression: format 3, with points taped off and an echo whose leak a person named.
TEST(ReleasedJobFiles, FormatThreeReadsAndItsSignatureHolds)
{
    const auto bytes = readFile(SEALWALK_TEST_DATA "/job_file_3.sealjob");
    ASSERT_TRUE(bytes.has_value()) << bytes.error().message;
    const auto file = readJobFile(*bytes);
    ASSERT_TRUE(file.has_value()) << file.error().message;
    const model::Job& job = file->record.job;
    EXPECT_EQ(
        std::ranges::count_if(job.readings, [](const auto& reading) { return !reading.shielded.empty(); }),
        5);
    ASSERT_FALSE(job.judgements.empty());
    EXPECT_FALSE(job.judgements.front().of.empty());
    const auto verified = verifyJobFile(*bytes);
    ASSERT_TRUE(verified.has_value()) << verified.error().message;
    EXPECT_TRUE(verified->ok());
    EXPECT_EQ(packJobFile(*file).value(), *bytes);
}

// Regression: format 4, with a measurement of each kind that is void.
TEST(ReleasedJobFiles, FormatFourReadsAndItsSignatureHolds)
{
    const auto bytes = readFile(SEALWALK_TEST_DATA "/job_file_4.sealjob");
    ASSERT_TRUE(bytes.has_value()) << bytes.error().message;
    const auto file = readJobFile(*bytes);
    ASSERT_TRUE(file.has_value()) << file.error().message;
    const model::Job& job = file->record.job;
    EXPECT_LT(job.standingCalibrations().size(), job.calibrations.size());
    EXPECT_LT(job.standingBackgrounds().size(), job.backgrounds.size());
    EXPECT_LT(job.standingRiseTests().size(), job.riseTests.size());
    const auto verified = verifyJobFile(*bytes);
    ASSERT_TRUE(verified.has_value()) << verified.error().message;
    EXPECT_TRUE(verified->ok());
    EXPECT_EQ(packJobFile(*file).value(), *bytes);
}

} // namespace
} // namespace sealwalk::exchange
