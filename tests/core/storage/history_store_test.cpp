// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/history_store.h"
#include "tests/core/storage/opened_history.h"
#include "tests/core/storage/scratch_folder.h"

#include <gtest/gtest.h>

namespace sealwalk::tests {
namespace {

using namespace model;
using storage::HistoryStore;
using Mode = HistoryStore::Mode;

// Property: what goes in comes out, field by field, also after the file was closed.
TEST(HistoryStore, GivesTheWholeRecordBackAsItWas)
{
    const ScratchFolder folder;
    const auto file = folder / "a.sealwalk";
    const Job job = wholeJobWithVoidMeasurement();
    {
        HistoryStore store = openAt(file, Mode::Create);
        const Status taken = store.importJob(sampleObject(), job, {samplePicture()});
        ASSERT_TRUE(taken) << taken.error().message;
        EXPECT_EQ(store.job(job.id), job);
    }
    const HistoryStore store = openAt(file, Mode::ReadWrite);
    EXPECT_EQ(store.job(job.id), job);
    EXPECT_EQ(store.object(sampleObject().id), sampleObject());
    EXPECT_EQ(store.picture(samplePicture().sha256), samplePicture());
    EXPECT_EQ(store.check(), std::vector<std::string>{});
}

// Property
TEST(HistoryStore, BuildsAJobStepByStep)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    EXPECT_EQ(opened.job.number, 1);
    EXPECT_EQ(opened.job.setup.pointLimit, sampleObject().pointLimit);
    EXPECT_EQ(opened.round.number, 1);
    const Reading first = opened.add();
    const Reading second = opened.add();
    EXPECT_EQ(first.sequence, 1);
    EXPECT_EQ(second.sequence, 2);
    EXPECT_EQ(opened.store.readingsAfter(opened.job.id, 1), std::vector<Reading>{second});
    model::Setup setup = opened.job.setup;
    setup.detector = "detector 4";
    EXPECT_TRUE(opened.store.saveSetup(opened.job.id, setup));
    const Job stored = *opened.store.job(opened.job.id);
    EXPECT_EQ(stored.setup, setup);
    EXPECT_EQ(stored.sketch.revision, 2);
    EXPECT_EQ(stored.readings, (std::vector<Reading>{first, second}));
    EXPECT_EQ(opened.store.check(), std::vector<std::string>{});
}

// Property
TEST(HistoryStore, StartsANewJobWithTheLatestSketchOfItsObject)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    const Job next = *opened.store.createJob(sampleObject().id, "again", moment(1000));
    EXPECT_EQ(next.number, 2);
    EXPECT_EQ(next.sketch.points, opened.job.sketch.points);
    EXPECT_EQ(next.sketch, opened.store.job(next.id)->sketch);
}

} // namespace
} // namespace sealwalk::tests
