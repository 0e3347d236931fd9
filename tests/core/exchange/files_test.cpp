// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/files.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

#include <filesystem>

namespace sealwalk::exchange {
namespace {

namespace fs = std::filesystem;

class Files : public testing::Test
{
protected:
    void SetUp() override
    {
        std::string pattern = (fs::temp_directory_path() / "sealwalk-files-XXXXXX").string();
        ASSERT_NE(mkdtemp(pattern.data()), nullptr);
        m_folder = pattern;
    }
    void TearDown() override { fs::remove_all(m_folder); }

    [[nodiscard]] std::string path(const char* name) const { return (m_folder / name).string(); }
    [[nodiscard]] std::ptrdiff_t entries() const
    {
        return std::distance(fs::directory_iterator(m_folder), fs::directory_iterator());
    }

    fs::path m_folder;
};

TEST_F(Files, ReadBackWhatWasWrittenAndNothingElseIsLeft)
{
    const std::string bytes("a\0b\r\n\xff", 6);
    ASSERT_TRUE(writeFile(path("x"), bytes).has_value());
    EXPECT_EQ(readFile(path("x")).value(), bytes);
    ASSERT_TRUE(writeFile(path("x"), "shorter").has_value());
    EXPECT_EQ(readFile(path("x")).value(), "shorter");
    EXPECT_EQ(entries(), 1);
}

TEST_F(Files, KeepTheirPermissionsWhenReplaced)
{
    ASSERT_TRUE(writeFile(path("x"), "1").has_value());
    fs::permissions(path("x"), fs::perms::owner_read | fs::perms::owner_write);
    ASSERT_TRUE(writeFile(path("x"), "2").has_value());
    EXPECT_EQ(fs::status(path("x")).permissions(), fs::perms::owner_read | fs::perms::owner_write);
}

TEST_F(Files, RefuseWhatIsNotThereOrNotAFile)
{
    EXPECT_EQ(readFile(path("none")).error().code, ErrorCode::NotFound);
    EXPECT_EQ(readFile(m_folder.string()).error().code, ErrorCode::BadInput);
    EXPECT_EQ(writeFile(m_folder.string(), "x").error().code, ErrorCode::BadInput);
    EXPECT_EQ(writeFile(path("no/such/folder"), "x").error().code, ErrorCode::BadInput);
    ASSERT_TRUE(writeFile(path("x"), "12345").has_value());
    EXPECT_EQ(readFile(path("x"), 4).error().code, ErrorCode::BadInput);
    EXPECT_EQ(readFile(path("x"), 5).value(), "12345");
}

TEST_F(Files, AFullDiskIsTheMachinesFailure)
{
    const Status status = writeFile("/dev/full", "x");
    ASSERT_FALSE(status.has_value());
    EXPECT_EQ(status.error().code, ErrorCode::MachineFailed);
    EXPECT_NE(status.error().message.find("No space left"), std::string::npos) << status.error().message;
}

} // namespace
} // namespace sealwalk::exchange
