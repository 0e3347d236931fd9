// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/storage/opened_history.h"
#include "tests/core/storage/scratch_folder.h"

#include <gtest/gtest.h>

#include <atomic>
#include <cstdlib>
#include <thread>

namespace sealwalk::tests {
namespace {

using storage::HistoryStore;
using Mode = HistoryStore::Mode;

// Property
TEST(Backup, OfALiveHistoryHoldsWhatWasStored)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    for (int i = 0; i < 20; ++i)
        opened.add();
    std::atomic<bool> stop = false;
    std::jthread writer([&] {
        HistoryStore other = openAt(folder / "a.sealwalk", Mode::ReadWrite);
        while (!stop)
            EXPECT_TRUE(other.addReading(opened.job.id,
                                         sampleReading(opened.round.id, opened.job.sketch.points[0].id)));
    });
    const HistoryStore reader = openAt(folder / "a.sealwalk", Mode::ReadOnly);
    const Status copied = reader.backup(folder / "copy.sealwalk");
    stop = true;
    writer.join();
    ASSERT_TRUE(copied) << copied.error().message;
    const HistoryStore copy = openAt(folder / "copy.sealwalk", Mode::ReadWrite);
    EXPECT_EQ(copy.check(), std::vector<std::string>{});
    EXPECT_GE(copy.readingsAfter(opened.job.id, 0)->size(), 20U);
}

// Regression: a file copied alone in the midst of a job had none of it; all of it stood in the -wal beside
// it.
TEST(Backup, AfterACheckpointTheFileAloneHasEverything)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    for (int i = 0; i < 20; ++i)
        opened.add();
    ASSERT_TRUE(opened.store.checkpoint());
    // By another program, as people do it: this process must not open the file past SQLite.
    const std::string from = (folder / "a.sealwalk").string();
    ASSERT_EQ(std::system(("cp '" + from + "' '" + (folder / "carried.sealwalk").string() + "'").c_str()), 0);
    const HistoryStore carried = openAt(folder / "carried.sealwalk", Mode::ReadWrite);
    EXPECT_EQ(carried.check(), std::vector<std::string>{});
    EXPECT_EQ(carried.readingsAfter(opened.job.id, 0)->size(), 20U);
}

// Property
TEST(Backup, NeverReplacesAFileAndLeavesNothingHalf)
{
    const ScratchFolder folder;
    const OpenedHistory opened(folder / "a.sealwalk");
    writeBytes(folder / "there", "mine");
    EXPECT_EQ(opened.store.backup(folder / "there").error().code, ErrorCode::BadInput);
    EXPECT_EQ(bytesOf(folder / "there"), "mine");
    EXPECT_EQ(opened.store.backup(folder / "no" / "where").error().code, ErrorCode::BadInput);
    EXPECT_FALSE(opened.store.backup(folder / "a.sealwalk"));
    for (const auto& entry : std::filesystem::directory_iterator(folder.path()))
        EXPECT_EQ(entry.path().string().find("partial"), std::string::npos);
}

} // namespace
} // namespace sealwalk::tests
