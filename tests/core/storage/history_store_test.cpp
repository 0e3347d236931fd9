// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/history_store.h"
#include "tests/core/storage/samples.h"
#include "tests/core/storage/scratch_folder.h"

#include <gtest/gtest.h>

namespace sealwalk::tests {
namespace {

using namespace model;
using storage::HistoryStore;
using Mode = HistoryStore::Mode;

HistoryStore created(const std::filesystem::path& file)
{
    Result<HistoryStore> store = HistoryStore::open(file, Mode::Create);
    EXPECT_TRUE(store) << store.error().message;
    return std::move(*store);
}

HistoryStore reopened(const std::filesystem::path& file)
{
    Result<HistoryStore> store = HistoryStore::open(file, Mode::ReadWrite);
    EXPECT_TRUE(store) << store.error().message;
    return std::move(*store);
}

/// A history with one job, its sketch of four points and one round.
struct Opened
{
    explicit Opened(const std::filesystem::path& file)
        : store(created(file))
    {
        EXPECT_TRUE(store.addObject(sampleObject()));
        job = *store.createJob(sampleObject().id, "yearly", moment(0));
        job.sketch = sampleSketch(4);
        EXPECT_EQ(store.saveSketch(job.id, job.sketch, 1), 2);
        Round wanted;
        wanted.points = {job.sketch.points[0].id, job.sketch.points[1].id};
        wanted.by = "Ada";
        wanted.opened = moment(5);
        round = *store.addRound(job.id, wanted);
    }

    Reading add() { return *store.addReading(job.id, sampleReading(round.id, job.sketch.points[0].id)); }

    HistoryStore store;
    Job job;
    Round round;
};

// Property: what goes in comes out, field by field, also after the file was closed.
TEST(HistoryStore, GivesTheWholeRecordBackAsItWas)
{
    const ScratchFolder folder;
    const auto file = folder / "a.sealwalk";
    const Job job = wholeJob();
    {
        HistoryStore store = created(file);
        const Status taken = store.importJob(sampleObject(), job, {samplePicture()});
        ASSERT_TRUE(taken) << taken.error().message;
        EXPECT_EQ(store.job(job.id), job);
    }
    const HistoryStore store = reopened(file);
    EXPECT_EQ(store.job(job.id), job);
    EXPECT_EQ(store.object(sampleObject().id), sampleObject());
    EXPECT_EQ(store.picture(samplePicture().sha256), samplePicture());
    EXPECT_EQ(store.check(), std::vector<std::string>{});
}

// Property
TEST(HistoryStore, BuildsAJobStepByStep)
{
    const ScratchFolder folder;
    Opened opened(folder / "a.sealwalk");
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
    Opened opened(folder / "a.sealwalk");
    const Job next = *opened.store.createJob(sampleObject().id, "again", moment(1000));
    EXPECT_EQ(next.number, 2);
    EXPECT_EQ(next.sketch.points, opened.job.sketch.points);
    EXPECT_EQ(next.sketch, opened.store.job(next.id)->sketch);
}

} // namespace
} // namespace sealwalk::tests
