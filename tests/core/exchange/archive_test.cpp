// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/archive.h"

#include <gtest/gtest.h>
#include <zip.h>

#include <random>

namespace sealwalk::exchange {
namespace {

std::vector<ArchiveMember> someMembers()
{
    std::string noise(5000, '\0');
    std::mt19937 random(7);
    for (char& c : noise)
        c = static_cast<char>(random());
    return {{"job.json", "{}"}, {"pictures/ab12.png", noise}, {"signatures.json", ""}};
}

/// A zip made by the library rather than by us, compressed.
std::string foreignZip(const std::vector<ArchiveMember>& members, const char* password = nullptr)
{
    zip_error_t error;
    zip_error_init(&error);
    zip_source_t* out = zip_source_buffer_create(nullptr, 0, 0, &error);
    zip_source_keep(out);
    zip_t* archive = zip_open_from_source(out, ZIP_TRUNCATE, &error);
    for (const ArchiveMember& member : members) {
        zip_source_t* in = zip_source_buffer(archive, member.bytes.data(), member.bytes.size(), 0);
        const zip_int64_t index = zip_file_add(archive, member.name.c_str(), in, 0);
        if (password != nullptr)
            zip_file_set_encryption(archive, static_cast<zip_uint64_t>(index), ZIP_EM_AES_256, password);
    }
    zip_close(archive);
    zip_source_open(out);
    zip_source_seek(out, 0, SEEK_END);
    std::string bytes(static_cast<std::size_t>(zip_source_tell(out)), '\0');
    zip_source_seek(out, 0, SEEK_SET);
    zip_source_read(out, bytes.data(), bytes.size());
    zip_source_close(out);
    zip_source_free(out);
    return bytes;
}

// Property: what is packed is read back, here by a zip reader that is not ours.
TEST(Archive, ReadsBackWhatItPacked)
{
    const auto members = someMembers();
    const auto zip = packArchive(members);
    ASSERT_TRUE(zip.has_value()) << zip.error().message;
    EXPECT_EQ(readArchive(*zip).value(), members);
    EXPECT_EQ(packArchive(members).value(), *zip) << "one packing only";
    EXPECT_EQ(readArchive(packArchive({}).value()).value(), std::vector<ArchiveMember>{});
}

TEST(Archive, ReadsZipsPackedByOthers)
{
    const auto members = someMembers();
    const std::string zip = foreignZip(members);
    EXPECT_EQ(readArchive(zip).value(), members);
    EXPECT_NE(packArchive(members).value(), zip);
}

TEST(Archive, RefusesNamesThatCouldLeaveAFolder)
{
    for (const char* name : {"", "/etc/passwd", "../up", "a/../b", "a/./b", "a//b", "a/", ".hidden", "a/.b",
                             "A", "a b", "a\\b", "c:x", "\xc3\xa4"}) {
        EXPECT_FALSE(isMemberName(name)) << name;
        EXPECT_FALSE(packArchive({{name, "x"}}).has_value()) << name;
    }
    EXPECT_FALSE(isMemberName(std::string(121, 'a')));
    for (const char* name : {"../up", "/etc/passwd", "a\\b", "a/"}) {
        const auto result = readArchive(foreignZip({{name, "x"}}));
        ASSERT_FALSE(result.has_value()) << name;
        EXPECT_NE(result.error().message.find(name), std::string::npos) << result.error().message;
    }
    EXPECT_FALSE(packArchive({{"a", "1"}, {"a", "2"}}).has_value());
}

TEST(Archive, RefusesTheSameNameTwice)
{
    std::string zip = packArchive({{"aa", "1"}, {"ab", "2"}}).value();
    for (std::size_t place = zip.find("ab"); place != std::string::npos; place = zip.find("ab"))
        zip[place + 1] = 'a';
    const auto result = readArchive(zip);
    ASSERT_FALSE(result.has_value());
    EXPECT_NE(result.error().message.find("two members named"), std::string::npos) << result.error().message;
}

TEST(Archive, RefusesWhatIsTooLargeBeforeUnpackingIt)
{
    const std::string bomb = foreignZip({{"zeros", std::string(3'000'000, '\0')}});
    ASSERT_LT(bomb.size(), 10'000U);
    EXPECT_NE(readArchive(bomb, {10, 1'000'000, 9'000'000}).error().message.find("at most 1000000"),
              std::string::npos);
    EXPECT_NE(readArchive(bomb, {10, 9'000'000, 1'000'000}).error().message.find("together"),
              std::string::npos);
    EXPECT_NE(readArchive(packArchive(someMembers()).value(), {2, 9'000'000, 9'000'000})
                  .error()
                  .message.find("3 members"),
              std::string::npos);
}

TEST(Archive, RefusesEncryptedMembers)
{
    const auto result = readArchive(foreignZip({{"job.json", "{}"}}, "secret"));
    ASSERT_FALSE(result.has_value());
    EXPECT_NE(result.error().message.find("encrypted"), std::string::npos) << result.error().message;
}

TEST(Archive, TellsForeignFromDamagedFiles)
{
    EXPECT_EQ(readArchive("").error().code, ErrorCode::ForeignFile);
    EXPECT_EQ(readArchive("hello, world, this is no zip at all").error().code, ErrorCode::ForeignFile);
    const std::string zip = packArchive(someMembers()).value();
    EXPECT_EQ(readArchive(zip.substr(0, zip.size() - 30)).error().code, ErrorCode::DamagedFile);

    std::string changed = zip;
    changed[zip.find("ab12.png") + 100] ^= 1;
    const auto result = readArchive(changed);
    ASSERT_FALSE(result.has_value());
    EXPECT_EQ(result.error().code, ErrorCode::DamagedFile);
    EXPECT_NE(result.error().message.find("pictures/ab12.png"), std::string::npos) << result.error().message;
}

// Property: any one flipped bit is refused, or gives other members, or shows against the one packing.
TEST(Archive, NoFlippedBitGoesUnnoticed)
{
    const auto members = someMembers();
    const std::string zip = packArchive(members).value();
    int harmless = 0;
    for (std::size_t byte = 0; byte < zip.size(); ++byte) {
        for (int bit = 0; bit < 8; ++bit) {
            std::string changed = zip;
            changed[byte] = static_cast<char>(changed[byte] ^ (1 << bit));
            const auto read = readArchive(changed);
            if (read && *read == members) {
                ++harmless; // content intact: then the packing is what tells
                EXPECT_NE(packArchive(*read).value(), changed);
            } else if (read) {
                EXPECT_NE(packArchive(*read).value(), zip);
            }
        }
    }
    EXPECT_GT(harmless, 0);
}

} // namespace
} // namespace sealwalk::exchange
