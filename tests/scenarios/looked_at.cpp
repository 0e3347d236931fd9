// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/scenarios/looked_at.h"

#include "core/analysis/job_view.h"
#include "core/analysis/round_summary.h"
#include "core/base/contract.h"
#include "tests/core/storage/scratch_folder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>

namespace sealwalk::scenarios {

using analysis::PointFinding;

namespace {

constexpr double kTwoDigits = 0.05; // the tables round corrected values to two digits, or to one

exchange::JobFile opened(const std::string& bytes)
{
    auto file = exchange::readJobFile(bytes);
    SEALWALK_EXPECT(file.has_value());
    return std::move(*file);
}

} // namespace

LookedAt::LookedAt(const std::string& bytes)
    : m_bytes(bytes)
    , m_file(opened(bytes))
    , m_byRound(analysis::findingsByRound(job(), object()))
    , m_found(analysis::summarise(job(), m_byRound, analysis::Standing::AsFound))
    , m_left(analysis::summarise(job(), m_byRound, analysis::Standing::AsLeft))
{}

const PointFinding& LookedAt::of(const std::vector<PointFinding>& all, int point) const
{
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const PointFinding& f) { return f.number == point; });
    SEALWALK_EXPECT(found != all.end());
    return *found;
}

const PointFinding& LookedAt::in(int round, int point) const
{
    return of(m_byRound.at(static_cast<std::size_t>(round - 1)), point);
}

void LookedAt::expectRows(const std::vector<Row>& rows) const
{
    for (const Row& row : rows) {
        SCOPED_TRACE("round " + std::to_string(row.round) + ", point " + std::to_string(row.point) + ", " +
                     std::string(model::name(row.condition)) + ' ' + row.detail);
        const model::Reading* reading = nullptr;
        for (const model::Reading* standing :
             job().standing(job().rounds.at(static_cast<std::size_t>(row.round - 1)).id))
            if (job().sketch.point(standing->point)->number == row.point &&
                standing->condition == row.condition && standing->conditionDetail == row.detail)
                reading = standing;
        ASSERT_NE(reading, nullptr);
        const analysis::CorrectedReading corrected = analysis::correctedReading(job(), object(), *reading);
        EXPECT_EQ(model::name(corrected.verdict), model::name(row.verdict));
        if (!row.corrected) {
            EXPECT_FALSE(corrected.rate);
            EXPECT_TRUE(corrected.below);
            continue;
        }
        ASSERT_TRUE(corrected.rate && corrected.low && corrected.high);
        EXPECT_NEAR(inMillibarLitresPerSecond(*corrected.rate), *row.corrected, kTwoDigits * *row.corrected);
        EXPECT_LT(*corrected.low, *corrected.rate);
        EXPECT_GT(*corrected.high, *corrected.rate);
    }
}

void LookedAt::expectSigned() const
{
    const auto verification = exchange::verifyJobFile(m_bytes);
    ASSERT_TRUE(verification.has_value());
    EXPECT_TRUE(verification->ok());
    EXPECT_EQ(job().signatures.size(), 1U);
    EXPECT_EQ(job().state, model::JobState::Signed);
}

void LookedAt::expectClearExcept(const std::vector<int>& points) const
{
    for (const PointFinding& finding : m_left) {
        const bool excepted = std::find(points.begin(), points.end(), finding.number) != points.end();
        if (excepted)
            continue;
        EXPECT_EQ(model::name(finding.finding), model::name(analysis::Finding::Clear))
            << "point " << finding.number;
        EXPECT_EQ(model::name(finding.verdict), model::name(analysis::Verdict::Within))
            << "point " << finding.number;
    }
}

std::string keptFile(const std::string& name, const std::string& bytes)
{
    const std::filesystem::path file =
        std::filesystem::path(SEALWALK_TEST_DATA) / "scenarios" / (name + ".sealjob");
    if (std::getenv("SEALWALK_KEEP_SCENARIOS") != nullptr) {
        std::filesystem::create_directories(file.parent_path());
        tests::writeBytes(file, bytes);
    }
    return tests::bytesOf(file);
}

} // namespace sealwalk::scenarios
