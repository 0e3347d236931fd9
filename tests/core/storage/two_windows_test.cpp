// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/storage/opened_history.h"
#include "tests/core/storage/scratch_folder.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Transaction.h>
#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <set>
#include <thread>

namespace sealwalk::tests {
namespace {

using storage::HistoryStore;
using Mode = HistoryStore::Mode;

/// Adds `count` readings through a connection of its own; @return how many were answered as stored
int addMany(const std::filesystem::path& file, const model::Job& job, model::RoundId round, int count)
{
    HistoryStore store = openAt(file, Mode::ReadWrite);
    int stored = 0;
    for (int i = 0; i < count; ++i)
        if (store.addReading(job.id, sampleReading(round, job.sketch.points[0].id)))
            ++stored;
    return stored;
}

void expectAll(const HistoryStore& store, const model::Job& job, std::size_t count)
{
    const auto readings = store.readingsAfter(job.id, 0);
    ASSERT_TRUE(readings);
    EXPECT_EQ(readings->size(), count);
    std::set<model::ReadingId> ids;
    std::int64_t expected = 1;
    for (const model::Reading& reading : *readings) {
        EXPECT_EQ(reading.sequence, expected++);
        ids.insert(reading.id);
    }
    EXPECT_EQ(ids.size(), count);
    EXPECT_EQ(store.check(), std::vector<std::string>{});
}

// Property
TEST(TwoWindows, InOneProgramLoseNothingOfEachOther)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    constexpr int kEach = 150;
    int stored[3] = {0, 0, 0};
    {
        std::vector<std::jthread> windows;
        for (int& mine : stored)
            windows.emplace_back(
                [&] { mine = addMany(folder / "a.sealwalk", opened.job, opened.round.id, kEach); });
    }
    EXPECT_EQ(stored[0] + stored[1] + stored[2], 3 * kEach);
    expectAll(opened.store, opened.job, 3 * kEach);
}

// Property
TEST(TwoWindows, InTwoProgramsLoseNothingOfEachOther)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    constexpr int kEach = 100;
    std::vector<pid_t> children;
    for (int i = 0; i < 2; ++i) {
        const pid_t child = ::fork();
        ASSERT_GE(child, 0);
        if (child == 0)
            ::_exit(addMany(folder / "a.sealwalk", opened.job, opened.round.id, kEach) == kEach ? 0 : 1);
        children.push_back(child);
    }
    for (const pid_t child : children) {
        int status = -1;
        ::waitpid(child, &status, 0);
        EXPECT_EQ(status, 0);
    }
    expectAll(opened.store, opened.job, 2 * kEach);
}

// Property
TEST(TwoWindows, ReportASketchThatWasChangedInTheOther)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    HistoryStore other = openAt(folder / "a.sealwalk", Mode::ReadWrite);
    model::Sketch mine = opened.job.sketch;
    model::Sketch theirs = opened.job.sketch;
    mine.points[0].along = 0.01;
    theirs.points[0].along = 0.02;
    EXPECT_EQ(opened.store.saveSketch(opened.job.id, mine, 2), 3);
    const auto late = other.saveSketch(opened.job.id, theirs, 2);
    ASSERT_FALSE(late);
    EXPECT_EQ(late.error().code, ErrorCode::Conflict);
    EXPECT_EQ(other.job(opened.job.id)->sketch.points[0].along, 0.01);
}

// Property
TEST(TwoWindows, SeeThatTheOtherHasStoredSomething)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    HistoryStore other = openAt(folder / "a.sealwalk", Mode::ReadWrite);
    const auto before = *other.changeMark();
    EXPECT_EQ(*other.changeMark(), before);
    opened.add();
    EXPECT_NE(*other.changeMark(), before);
    const auto own = *opened.store.changeMark();
    opened.add();
    EXPECT_NE(*opened.store.changeMark(), own);
}

// Property: nobody signs what changed since they looked.
TEST(TwoWindows, DoNotSignWhatTheOtherChangedMeanwhile)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    opened.add();
    EXPECT_TRUE(opened.store.addReview(opened.job.id, reviewEntry(model::ReviewStep::Submitted)));
    HistoryStore other = openAt(folder / "a.sealwalk", Mode::ReadWrite);
    const auto seen = *opened.store.changeMark();
    EXPECT_TRUE(other.addReview(opened.job.id, reviewEntry(model::ReviewStep::Remark)));
    const auto approval = reviewEntry(model::ReviewStep::Approved);
    const Status late = opened.store.sign(opened.job.id, approval, sampleSignature(), seen);
    ASSERT_FALSE(late);
    EXPECT_EQ(late.error().code, ErrorCode::Conflict);
    const auto now = *opened.store.changeMark();
    EXPECT_TRUE(opened.store.sign(opened.job.id, approval, sampleSignature(), now));
}

// Property: both correct the same reading; one of them has to look again.
TEST(TwoWindows, DoNotCorrectOneReadingTwice)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    const model::Reading first = opened.add();
    HistoryStore other = openAt(folder / "a.sealwalk", Mode::ReadWrite);
    model::Reading mine = sampleReading(opened.round.id, first.point);
    mine.corrects = first.id;
    model::Reading theirs = mine;
    theirs.id = model::ReadingId::create();
    EXPECT_TRUE(opened.store.addReading(opened.job.id, mine));
    const auto late = other.addReading(opened.job.id, theirs);
    ASSERT_FALSE(late);
    EXPECT_EQ(late.error().code, ErrorCode::Conflict);
}

// Property
TEST(TwoWindows, WaitForAnotherWriterOnlySoLong)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    auto impatient =
        HistoryStore::open(folder / "a.sealwalk", Mode::ReadWrite, std::chrono::milliseconds(60));
    ASSERT_TRUE(impatient);
    SQLite::Database writer((folder / "a.sealwalk").string(), SQLite::OPEN_READWRITE);
    {
        SQLite::Transaction busy(writer, SQLite::TransactionBehavior::IMMEDIATE);
        const Status late = impatient->putSetting("a", "b");
        ASSERT_FALSE(late);
        EXPECT_EQ(late.error().code, ErrorCode::Busy);
    }
    EXPECT_TRUE(impatient->putSetting("a", "b"));
}

// Regression: two open jobs on one object each counted on by themselves and gave one number to two points.
TEST(TwoWindows, GiveNoPointNumberOfAnObjectTwice)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    storage::HistoryStore& store = opened.store;
    const model::Job second = store.createJob(opened.job.object, "again", moment(900)).value();
    model::Job first = store.job(opened.job.id).value();
    ASSERT_EQ(second.sketch.lastNumber, first.sketch.lastNumber);
    model::TestPoint added = first.sketch.points.back();
    added.id = model::PointId::create();
    added.number = ++first.sketch.lastNumber;
    first.sketch.points.push_back(added);
    ASSERT_TRUE(store.saveSketch(first.id, first.sketch, first.sketch.revision));
    EXPECT_EQ(store.job(second.id)->sketch.lastNumber, added.number);
    // A new job counts on from the highest, whichever job gave it.
    EXPECT_EQ(store.createJob(opened.job.object, "third", moment(800))->sketch.lastNumber, added.number);
    EXPECT_EQ(store.job(second.id)->sketch.points.size(), second.sketch.points.size());
}

} // namespace
} // namespace sealwalk::tests
