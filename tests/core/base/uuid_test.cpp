// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/uuid.h"

#include <gtest/gtest.h>

#include <set>

namespace sealwalk {
namespace {

// Property: text and value are one.
TEST(Uuid, TextReadsBackAsTheSameValue)
{
    for (int i = 0; i < 1000; ++i) {
        const Uuid uuid = Uuid::random();
        EXPECT_EQ(Uuid::parse(uuid.text()).value(), uuid);
    }
}

// Published: RFC 4122 section 4.4 fixes four version bits to 0100 and two variant bits to 10.
TEST(Uuid, RandomOnesCarryVersionFourAndTheStandardVariant)
{
    for (int i = 0; i < 1000; ++i) {
        const Uuid uuid = Uuid::random();
        EXPECT_EQ(uuid.bytes()[6] >> 4, 4);
        EXPECT_EQ(uuid.bytes()[8] >> 6, 2);
    }
}

TEST(Uuid, RandomOnesDiffer)
{
    std::set<Uuid> seen;
    for (int i = 0; i < 1000; ++i)
        EXPECT_TRUE(seen.insert(Uuid::random()).second);
}

// Published: the name-space UUID for DNS of RFC 4122 appendix C.
TEST(Uuid, ReadsThePublishedDnsNameSpace)
{
    const auto uuid = Uuid::parse("6ba7b810-9dad-11d1-80b4-00c04fd430c8");
    ASSERT_TRUE(uuid.has_value());
    EXPECT_EQ(uuid->bytes()[0], 0x6b);
    EXPECT_EQ(uuid->bytes()[15], 0xc8);
    EXPECT_EQ(Uuid::parse("6BA7B810-9DAD-11D1-80B4-00C04FD430C8").value(), *uuid);
}

TEST(Uuid, RefusesAnythingElseInOneSentence)
{
    for (const char* bad :
         {"", "6ba7b810", "6ba7b810-9dad-11d1-80b4-00c04fd430c", "6ba7b810-9dad-11d1-80b4-00c04fd430c88",
          "6ba7b8109dad-11d1-80b4-00c04fd430c8-", "6ba7b810-9dad-11d1-80b4-00c04fd430cg"}) {
        const auto result = Uuid::parse(bad);
        ASSERT_FALSE(result.has_value()) << bad;
        EXPECT_EQ(result.error().code, ErrorCode::BadInput);
        EXPECT_NE(result.error().message.find("is not a UUID"), std::string::npos);
    }
}

} // namespace
} // namespace sealwalk
