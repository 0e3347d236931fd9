// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/merge.h"
#include "tests/core/storage/opened_history.h"
#include "tests/core/storage/scratch_folder.h"

#include <gtest/gtest.h>

namespace sealwalk::tests {
namespace {

using storage::HistoryStore;
using Mode = HistoryStore::Mode;

// Property: everything of the second laptop is here afterwards, nothing of ours is changed, and twice is
// once.
TEST(Merge, TakesWhatIsNewAndLeavesTheRest)
{
    const ScratchFolder folder;
    OpenedHistory here(folder / "here.sealwalk");
    const model::Reading ours = here.add();
    HistoryStore there = openAt(folder / "there.sealwalk", Mode::Create);
    model::Job job = wholeJob();
    job.number = 1; // taken here
    job.openedAs = 0;
    ASSERT_TRUE(
        there.importJob(sampleObject(), job, {samplePicture()}, {{"t-1", {{0.0, 1.0}, {1e-9F, 2e-9F}}}}));
    model::Person person;
    person.id = fixedId<model::PersonId>(9);
    person.name = "Brook";
    person.publicKey = std::string(64, 'a');
    person.sealedKey = "sealed";
    ASSERT_TRUE(there.putPerson(person));

    const auto merged = storage::mergeHistory(here.store, there);
    ASSERT_TRUE(merged) << merged.error().message;
    EXPECT_EQ(merged->taken, std::vector<model::JobId>{job.id});
    EXPECT_EQ(merged->people, 1);
    const model::Job taken = *here.store.job(job.id);
    EXPECT_EQ(taken.number, 2);
    EXPECT_EQ(taken.openedAs, 1);
    EXPECT_EQ(taken.readings, job.readings);
    EXPECT_EQ(here.store.picture(samplePicture().sha256), samplePicture());
    EXPECT_EQ(here.store.trace(job.id, "t-1")->times.size(), 2U);
    EXPECT_EQ(here.store.people()->front().sealedKey, "") << "a sealed key never leaves its history";
    EXPECT_EQ(here.store.readingsAfter(here.job.id, 0), std::vector<model::Reading>{ours});
    EXPECT_EQ(here.store.check(), std::vector<std::string>{});

    const auto again = storage::mergeHistory(here.store, there);
    ASSERT_TRUE(again);
    EXPECT_TRUE(again->taken.empty());
    EXPECT_EQ(again->same, std::vector<model::JobId>{job.id});
    EXPECT_EQ(again->people, 0);
}

// Property: a job that went on in both histories is named, and stays as it is here.
TEST(Merge, NamesAJobThatWentOnInBoth)
{
    const ScratchFolder folder;
    {
        const OpenedHistory both(folder / "here.sealwalk");
        ASSERT_TRUE(both.store.backup(folder / "there.sealwalk"));
    }
    HistoryStore here = openAt(folder / "here.sealwalk", Mode::ReadWrite);
    HistoryStore there = openAt(folder / "there.sealwalk", Mode::ReadWrite);
    const model::Job job = *here.job(here.jobs()->front().id);
    ASSERT_TRUE(there.addReading(job.id, sampleReading(job.rounds[0].id, job.sketch.points[0].id)));
    const auto merged = storage::mergeHistory(here, there);
    ASSERT_TRUE(merged);
    EXPECT_EQ(merged->different, std::vector<model::JobId>{job.id});
    EXPECT_EQ(here.job(job.id), job);
}

} // namespace
} // namespace sealwalk::tests
