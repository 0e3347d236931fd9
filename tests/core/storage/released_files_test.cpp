// SPDX-License-Identifier: GPL-3.0-or-later
// Files of every released version, opened for ever. A new version adds its file and row; none is ever
// changed.
#include "tests/core/storage/opened_history.h"
#include "tests/core/storage/scratch_folder.h"

#include <gtest/gtest.h>

namespace sealwalk::tests {
namespace {

// Regression: the files hold wholeJob() and sampleObject() as they were written then.
TEST(ReleasedFiles, OpenWithEverythingInThem)
{
    for (const char* name : {"history_version_1.sealwalk", "history_version_2.sealwalk"}) {
        const ScratchFolder folder;
        const std::filesystem::path file = folder / name;
        writeBytes(file, bytesOf(std::filesystem::path(SEALWALK_TEST_DATA) / name));
        const storage::HistoryStore store = openAt(file, storage::HistoryStore::Mode::ReadWrite);
        EXPECT_EQ(store.job(wholeJob().id), wholeJob()) << name;
        EXPECT_EQ(store.object(sampleObject().id), sampleObject()) << name;
        EXPECT_EQ(store.picture(samplePicture().sha256), samplePicture()) << name;
        EXPECT_EQ(store.setting("language"), "en") << name;
        EXPECT_EQ(store.check(), std::vector<std::string>{}) << name;
    }
}

// Regression: the file of version 3 has the parties and who added the person besides.
TEST(ReleasedFiles, VersionThreeKeepsPartiesAndPeople)
{
    const ScratchFolder folder;
    const std::filesystem::path file = folder / "three.sealwalk";
    writeBytes(file, bytesOf(std::filesystem::path(SEALWALK_TEST_DATA) / "history_version_3.sealwalk"));
    const storage::HistoryStore store = openAt(file, storage::HistoryStore::Mode::ReadWrite);
    EXPECT_EQ(store.job(wholeJob().id), wholeJobWithParties());
    EXPECT_EQ(store.people(), std::vector<model::Person>{samplePerson()});
    EXPECT_EQ(store.personEntries(),
              (std::vector<model::PersonEntry>{{samplePerson().id, "added", "Ada", samplePerson().since}}));
    EXPECT_EQ(store.check(), std::vector<std::string>{});
}

// Regression: the file of version 4 has what was taped off, whose echo a point was, and a background by eye.
TEST(ReleasedFiles, VersionFourKeepsWhatWasSaid)
{
    const ScratchFolder folder;
    const std::filesystem::path file = folder / "four.sealwalk";
    writeBytes(file, bytesOf(std::filesystem::path(SEALWALK_TEST_DATA) / "history_version_4.sealwalk"));
    const storage::HistoryStore store = openAt(file, storage::HistoryStore::Mode::ReadWrite);
    EXPECT_EQ(store.job(wholeJob().id), wholeJobWithSaid());
    EXPECT_EQ(store.check(), std::vector<std::string>{});
}

// Regression: the file of version 5 has a pressure rise that is void.
TEST(ReleasedFiles, VersionFiveKeepsWhatIsVoid)
{
    const ScratchFolder folder;
    const std::filesystem::path file = folder / "five.sealwalk";
    writeBytes(file, bytesOf(std::filesystem::path(SEALWALK_TEST_DATA) / "history_version_5.sealwalk"));
    const storage::HistoryStore store = openAt(file, storage::HistoryStore::Mode::ReadWrite);
    EXPECT_EQ(store.job(wholeJob().id), wholeJobWithVoidMeasurement());
    EXPECT_EQ(store.check(), std::vector<std::string>{});
}

// Regression: later versions changed rules, or added places an older file is read without; it is looked at
// where it may not be written, and stays byte for byte as it is.
TEST(ReleasedFiles, OlderVersionsAreReadAsTheyAre)
{
    for (const char* name : {"history_version_1.sealwalk", "history_version_2.sealwalk"}) {
        const ScratchFolder folder;
        const std::filesystem::path file = folder / name;
        writeBytes(file, bytesOf(std::filesystem::path(SEALWALK_TEST_DATA) / name));
        const std::string before = bytesOf(file);
        {
            const storage::HistoryStore store = openAt(file, storage::HistoryStore::Mode::ReadOnly);
            EXPECT_EQ(store.job(wholeJob().id), wholeJob()) << name;
            EXPECT_EQ(store.personEntries(), std::vector<model::PersonEntry>{}) << name;
            // Regression: it was said to have been tampered with, for want of the rules of version 2.
            EXPECT_EQ(store.check(), std::vector<std::string>{}) << name;
        }
        EXPECT_EQ(bytesOf(file), before) << name;
    }
    const ScratchFolder folder;
    const std::filesystem::path file = folder / "three.sealwalk";
    writeBytes(file, bytesOf(std::filesystem::path(SEALWALK_TEST_DATA) / "history_version_3.sealwalk"));
    const std::string before = bytesOf(file);
    {
        const storage::HistoryStore store = openAt(file, storage::HistoryStore::Mode::ReadOnly);
        EXPECT_EQ(store.job(wholeJob().id), wholeJobWithParties());
        EXPECT_EQ(store.check(), std::vector<std::string>{});
    }
    EXPECT_EQ(bytesOf(file), before);
}

// Regression: a copy of an older history that is only looked at failed, "views may not be indexed".
TEST(ReleasedFiles, OlderVersionsAreCopiedAsTheyAre)
{
    for (const char* name : {"history_version_1.sealwalk", "history_version_2.sealwalk",
                             "history_version_3.sealwalk", "history_version_4.sealwalk"}) {
        const ScratchFolder folder;
        const std::filesystem::path file = folder / name;
        writeBytes(file, bytesOf(std::filesystem::path(SEALWALK_TEST_DATA) / name));
        const storage::HistoryStore store = openAt(file, storage::HistoryStore::Mode::ReadOnly);
        const std::filesystem::path copy = folder / "copy.sealwalk";
        const Status copied = store.backup(copy);
        ASSERT_TRUE(copied) << name << ": " << copied.error().message;
        const auto before = store.job(wholeJob().id);
        ASSERT_TRUE(before) << "looked at as before";
        EXPECT_EQ(openAt(copy, storage::HistoryStore::Mode::ReadOnly).job(wholeJob().id), before) << name;
    }
}

} // namespace
} // namespace sealwalk::tests
