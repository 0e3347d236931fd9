// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/storage/opened_history.h"
#include "tests/core/storage/scratch_folder.h"

#include <gtest/gtest.h>

namespace sealwalk::tests {
namespace {

// Property: one row per thing a job can be found by, and some that must not find it.
TEST(Search, FindsAJobByEverythingPeopleType)
{
    const ScratchFolder folder;
    storage::HistoryStore store = openAt(folder / "a.sealwalk", storage::HistoryStore::Mode::Create);
    ASSERT_TRUE(store.importJob(sampleObject(), wholeJob(), {samplePicture()}));
    const std::pair<const char*, std::size_t> table[] = {
        {"", 1},
        {"ÄLTESTE", 1},
        {"älteste kam", 1},
        {"t-0042", 1},
        {"hall", 1},
        {"yearly", 1},
        {"2026-03", 1},
        {"118", 1},
        {"ada", 1},
        {"BROOK", 1},
        {"permeation", 1},
        {"nick", 1},
        {"door seal", 1},
        {"door zzz", 0},
        {"%", 0},
        {"_", 0},
        {"2025", 0},
        {"  hall\t3 ", 1},
        {"signed", 1},
        {"o'clock\"--", 0},
        {"concession", 1},
        {"next stop", 1},
        {"temporary", 1},
        {"epoxy", 1},
        {"within", 1},
        {"not accessible", 1},
        {"behind frame", 1},
        {"hose", 1},
        {"rises slowly", 1},
    };
    for (const auto& row : table) {
        const auto found = store.jobs(row.first);
        ASSERT_TRUE(found) << row.first;
        EXPECT_EQ(found->size(), row.second) << row.first;
    }
    EXPECT_EQ(store.objects("ältes")->size(), 1U);
    EXPECT_EQ(store.objects("nothing")->size(), 0U);
}

// Property
TEST(Search, KnowsWhoJoinedWhileTheJobWentOn)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    model::Reading reading = sampleReading(opened.round.id, opened.job.sketch.points[0].id);
    reading.by = "Zoë";
    EXPECT_EQ(opened.store.jobs("zoë")->size(), 0U);
    ASSERT_TRUE(opened.store.addReading(opened.job.id, reading));
    EXPECT_EQ(opened.store.jobs("ZOË")->size(), 1U);
    EXPECT_EQ(opened.store.jobs()->front().readings, 1);
}

// Property: newest first, each with its counts.
TEST(Search, ListsJobsNewestFirst)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    ASSERT_TRUE(opened.store.createJob(sampleObject().id, "older", moment(-9000)));
    ASSERT_TRUE(opened.store.createJob(sampleObject().id, "newer", moment(9000)));
    const auto rows = opened.store.jobs();
    ASSERT_TRUE(rows);
    ASSERT_EQ(rows->size(), 3U);
    EXPECT_EQ((*rows)[0].purpose, "newer");
    EXPECT_EQ((*rows)[2].purpose, "older");
    EXPECT_EQ((*rows)[1].points, 4);
    EXPECT_EQ(opened.store.objects()->front().jobs, 3);
    EXPECT_EQ(opened.store.objects()->front().lastOpened, moment(9000));
}

// Property: named while nothing was done: no later concession, no later permanent repair at the point.
TEST(Search, NamesConcessionsAtTheirEnd)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    const auto& points = opened.job.sketch.points;
    model::Concession first;
    first.id = model::ConcessionId::create();
    first.points = {points[0].id, points[1].id};
    first.grantedBy = "Cleo";
    first.until = moment(5000);
    first.reason = "spare part ordered";
    first.by = "Brook";
    first.at = moment(10);
    ASSERT_TRUE(opened.store.addConcession(opened.job.id, first));
    const auto ending = [&](int day) {
        return opened.store.concessionsEndingBy(moment(day), sampleObject().id).value();
    };
    EXPECT_TRUE(ending(4999).empty());
    ASSERT_EQ(ending(5000).size(), 1U);
    EXPECT_EQ(ending(5000).front().concession, first);
    EXPECT_EQ(ending(5000).front().jobNumber, opened.job.number);
    EXPECT_EQ(ending(5000).front().objectName, sampleObject().name);
    EXPECT_EQ(opened.store.concessionsEndingBy(moment(5000))->size(), 1U) << "of all objects";

    model::Concession again = first;
    again.id = model::ConcessionId::create();
    again.points = {points[0].id};
    again.until = moment(9000);
    again.at = moment(20);
    ASSERT_TRUE(opened.store.addConcession(opened.job.id, again));
    ASSERT_EQ(ending(5000).size(), 1U);
    EXPECT_EQ(ending(5000).front().concession.points, std::vector{points[1].id});
    model::Repair made;
    made.id = model::RepairId::create();
    made.points = {points[1].id};
    made.action = "new seal";
    made.at = moment(30);
    ASSERT_TRUE(opened.store.putRepair(opened.job.id, made));
    EXPECT_TRUE(ending(5000).empty());
    EXPECT_EQ(ending(9000).size(), 1U);
}

// Property: from an earlier job's temporary repair until a later one makes it good.
TEST(Search, CountsTemporaryRepairsUntilTheyAreMadeGood)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    model::Repair patch;
    patch.id = model::RepairId::create();
    patch.points = {opened.job.sketch.points[0].id};
    patch.action = "filler";
    patch.permanent = false;
    patch.owner = "Cleo";
    patch.due = moment(90000);
    ASSERT_TRUE(opened.store.putRepair(opened.job.id, patch));
    opened.sign();
    EXPECT_EQ(opened.store.objects()->front().openTemporaryRepairs, 1);
    const auto waiting = opened.store.openTemporaryRepairs(sampleObject().id);
    ASSERT_TRUE(waiting);
    ASSERT_EQ(waiting->size(), 1U);
    EXPECT_EQ(waiting->front().repair, patch);
    EXPECT_EQ(waiting->front().jobNumber, opened.job.number);
    const model::Job next = *opened.store.createJob(sampleObject().id, "again", moment(100000));
    model::Repair weld;
    weld.id = model::RepairId::create();
    weld.points = patch.points;
    weld.action = "re-weld";
    weld.makesGood = {patch.id};
    ASSERT_TRUE(opened.store.putRepair(next.id, weld));
    EXPECT_EQ(opened.store.objects()->front().openTemporaryRepairs, 0);
    EXPECT_EQ(opened.store.openTemporaryRepairs(sampleObject().id)->size(), 0U);
}

} // namespace
} // namespace sealwalk::tests
