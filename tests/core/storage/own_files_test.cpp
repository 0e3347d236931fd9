// SPDX-License-Identifier: GPL-3.0-or-later
// The locks of an open history, asked for from another process, as another program would.
// Source: sqlite.org/howtocorrupt.html, section 2.2; the lock bytes: sqlite.org/fileformat2.html,
// section 1.3.1
#include "core/storage/own_files.h"
#include "tests/core/storage/opened_history.h"
#include "tests/core/storage/scratch_folder.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

namespace sealwalk::storage {
namespace {

using tests::OpenedHistory;
using tests::ScratchFolder;

/// Whether somebody else holds SQLite's shared lock on the file.
bool isHeld(const std::filesystem::path& file)
{
    const pid_t child = ::fork();
    if (child == 0) {
        constexpr ::off_t kSharedFirst = 0x40000002;
        constexpr ::off_t kSharedSize = 510;
        const int handle = ::open(file.c_str(), O_RDWR);
        struct ::flock lock = {};
        lock.l_type = F_WRLCK;
        lock.l_whence = SEEK_SET;
        lock.l_start = kSharedFirst;
        lock.l_len = kSharedSize;
        const bool asked = handle >= 0 && ::fcntl(handle, F_GETLK, &lock) == 0;
        ::_exit(asked && lock.l_type != F_UNLCK ? 0 : 1);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

// Regression: a second look at an open history, as for a report, dropped the locks of the first; the next
// program that came took its log away, and what was stored after that was lost.
TEST(OwnFiles, ASecondLookKeepsTheLocksOfTheFirst)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    ASSERT_TRUE(isHeld(folder / "a.sealwalk"));
    for (const auto mode : {HistoryStore::Mode::ReadOnly, HistoryStore::Mode::ReadWrite}) {
        const auto second = HistoryStore::open(folder / "a.sealwalk", mode);
        ASSERT_TRUE(second) << second.error().message;
        EXPECT_TRUE(isHeld(folder / "a.sealwalk"));
    }
    EXPECT_TRUE(isHeld(folder / "a.sealwalk"));
}

TEST(OwnFiles, AreKnownAsLongAsTheyAreOpen)
{
    const ScratchFolder folder;
    const auto file = folder / "a.sealwalk";
    EXPECT_FALSE(isOwnFile(file));
    {
        const OpenedHistory opened(file);
        EXPECT_TRUE(isOwnFile(file));
        {
            const auto second = HistoryStore::open(file, HistoryStore::Mode::ReadOnly);
            EXPECT_TRUE(isOwnFile(file));
        }
        EXPECT_TRUE(isOwnFile(file));
    }
    EXPECT_FALSE(isOwnFile(file));
    EXPECT_FALSE(isOwnFile(folder / "none.sealwalk"));
}

} // namespace
} // namespace sealwalk::storage
