// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/job_tables.h"
#include "core/exchange/table_csv.h"
#include "tests/support/jobs.h"
#include "tests/support/random_job.h"

#include <gtest/gtest.h>

namespace sealwalk::exchange {
namespace {

JobRecord ringRecord()
{
    JobRecord record;
    record.object.id = model::ObjectId::create();
    record.object.name = "Box";
    record.job = tests::ringJob(4);
    record.job.object = record.object.id;
    record.job.setup.pointLimit = millibarLitresPerSecond(1e-8);
    return record;
}

const TableCell& cell(const Table& table, std::size_t row, const std::string& title)
{
    for (std::size_t c = 0; c < table.columns.size(); ++c)
        if (table.columns[c].title == title)
            return table.rows.at(row).cells[c];
    ADD_FAILURE() << "no column " << title;
    return table.rows.at(row).cells.front();
}

// Property: every reading has its row, a corrected or void one says so, and the rate is in the unit asked
// for.
TEST(JobTables, ReadingsSayWhatBecameOfThem)
{
    JobRecord record = ringRecord();
    const model::ReadingId first = tests::addValue(record.job, 1, 5e-9);
    const model::ReadingId wrong = tests::addValue(record.job, 2, 5e-6);
    tests::addValue(record.job, 2, 5e-9);
    record.job.readings[2].corrects = wrong;
    record.job.voids.push_back({first, "door was open", "Tess", {}});
    const auto tables = jobTables(record, LeakRateUnit::PascalCubicMetrePerSecond);
    ASSERT_TRUE(tables.has_value()) << tables.error().message;
    ASSERT_EQ(tables->readings.rows.size(), 3U);
    EXPECT_EQ(std::get<std::string>(cell(tables->readings, 0, "standing")), "void: door was open");
    EXPECT_EQ(std::get<std::string>(cell(tables->readings, 1, "standing")).substr(0, 21),
              "corrected by reading ");
    EXPECT_EQ(std::get<std::string>(cell(tables->readings, 2, "standing")), "stands");
    EXPECT_DOUBLE_EQ(std::get<double>(cell(tables->readings, 1, "highest")), 5e-7);
    EXPECT_EQ(tables->readings.columns[10].unit, unitOf(LeakRateUnit::PascalCubicMetrePerSecond).symbol);
}

// Regression: what people did and decided stood in no table.
TEST(JobTables, HoldWhatPeopleDidAndDecided)
{
    JobRecord record = ringRecord();
    model::Job& job = record.job;
    const model::ReadingId first = tests::addValue(job, 1, 5e-6);
    job.voids.push_back({tests::addValue(job, 2, 5e-9), "door was open", "Tess", {1'770'000'000'000, 60}});
    const model::PointId point = job.reading(first)->point;
    job.judgements.push_back({model::JudgementId::create(),
                              point,
                              job.reading(first)->round,
                              "other source",
                              "within",
                              "hose clamp",
                              "Brook",
                              {1'770'000'000'000, 60},
                              {}});
    job.concessions.push_back({model::ConcessionId::create(),
                               {point},
                               "Cleo",
                               Timestamp::parseDate("2026-12-01").value(),
                               "until the stop",
                               "Brook",
                               {}});
    model::Repair repair;
    repair.id = model::RepairId::create();
    repair.points = {point};
    repair.action = "fill with epoxy";
    repair.permanent = false;
    repair.owner = "Cleo";
    repair.due = Timestamp::parseDate("2026-12-01").value();
    repair.at = {1'770'000'000'000, -90};
    job.repairs.push_back(repair);
    const auto tables = jobTables(record, LeakRateUnit::MillibarLitrePerSecond);
    ASSERT_TRUE(tables.has_value()) << tables.error().message;
    ASSERT_EQ(tables->all().size(), 8U);
    for (const Table& table : tables->all())
        EXPECT_TRUE(checkTable(table).has_value()) << table.title;
    EXPECT_EQ(std::get<std::string>(cell(tables->verdicts, 0, "finding")), "other source");
    EXPECT_EQ(std::get<std::string>(cell(tables->verdicts, 0, "worked out")), "leak");
    EXPECT_EQ(std::get<std::string>(cell(tables->concessions, 0, "until")), "2026-12-01");
    EXPECT_EQ(std::get<std::string>(cell(tables->repairs, 0, "owner")), "Cleo");
    EXPECT_EQ(std::get<std::string>(cell(tables->repairs, 0, "zone")), "UTC-01:30");
    EXPECT_EQ(std::get<std::string>(cell(tables->voids, 0, "reason")), "door was open");
    EXPECT_EQ(std::get<Timestamp>(cell(tables->voids, 0, "at")), (Timestamp{1'770'000'000'000, 60}));
    EXPECT_EQ(tables->untested.rows.size(), 2U);
}

// Property: one row per point and round, and one per point as left; what was not sprayed is there and says
// so.
TEST(JobTables, FindingsLeaveNoPointOut)
{
    JobRecord record = ringRecord();
    tests::addValue(record.job, 1, 5e-6);
    const auto tables = jobTables(record, LeakRateUnit::MillibarLitrePerSecond);
    ASSERT_TRUE(tables.has_value());
    EXPECT_EQ(tables->findings.rows.size(), 4U);
    EXPECT_EQ(tables->asLeft.rows.size(), 4U);
    EXPECT_EQ(std::get<std::string>(cell(tables->asLeft, 3, "finding")), "not sprayed");
    EXPECT_TRUE(std::holds_alternative<std::monostate>(cell(tables->asLeft, 3, "leak rate"))) << "never 0";
}

TEST(JobTables, AMassUnitIsRefusedAndEveryJobHasTables)
{
    EXPECT_FALSE(jobTables(ringRecord(), LeakRateUnit::GramPerYear).has_value());
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        const tests::RandomJob random = tests::randomJob(seed);
        const auto tables = jobTables({random.object, random.job}, LeakRateUnit::TorrLitrePerSecond);
        ASSERT_TRUE(tables.has_value()) << seed;
        for (const Table* table : {&tables->asLeft, &tables->findings, &tables->readings})
            EXPECT_TRUE(csvOf(*table).has_value()) << seed << ": " << csvOf(*table).error().message;
    }
}

} // namespace
} // namespace sealwalk::exchange
