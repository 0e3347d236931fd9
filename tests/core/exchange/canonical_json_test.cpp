// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/canonical_json.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <bit>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <limits>
#include <random>

namespace sealwalk::exchange {
namespace {

using nlohmann::json;

std::string bytesOf(const char* hex)
{
    std::string bytes;
    for (const char* c = hex; *c != '\0';) {
        if (*c == ' ') {
            ++c;
            continue;
        }
        unsigned value = 0;
        std::from_chars(c, c + 2, value, 16);
        bytes.push_back(static_cast<char>(value));
        c += 2;
    }
    return bytes;
}

struct NumberRow
{
    std::uint64_t bits;
    const char* text;
};

// Published: RFC 8785 appendix B, every finite row.
constexpr NumberRow kAppendixB[] = {
    {0x0000000000000000, "0"},
    {0x8000000000000000, "0"},
    {0x0000000000000001, "5e-324"},
    {0x8000000000000001, "-5e-324"},
    {0x7fefffffffffffff, "1.7976931348623157e+308"},
    {0xffefffffffffffff, "-1.7976931348623157e+308"},
    {0x4340000000000000, "9007199254740992"},
    {0xc340000000000000, "-9007199254740992"},
    {0x4430000000000000, "295147905179352830000"},
    {0x44b52d02c7e14af5, "9.999999999999997e+22"},
    {0x44b52d02c7e14af6, "1e+23"},
    {0x44b52d02c7e14af7, "1.0000000000000001e+23"},
    {0x444b1ae4d6e2ef4e, "999999999999999700000"},
    {0x444b1ae4d6e2ef4f, "999999999999999900000"},
    {0x444b1ae4d6e2ef50, "1e+21"},
    {0x3eb0c6f7a0b5ed8c, "9.999999999999997e-7"},
    {0x3eb0c6f7a0b5ed8d, "0.000001"},
    {0x41b3de4355555553, "333333333.3333332"},
    {0x41b3de4355555554, "333333333.33333325"},
    {0x41b3de4355555555, "333333333.3333333"},
    {0x41b3de4355555556, "333333333.3333334"},
    {0x41b3de4355555557, "333333333.33333343"},
    {0xbecbf647612f3696, "-0.0000033333333333333333"},
    {0x43143ff3c1cb0959, "1424953923781206.2"},
};

TEST(CanonicalJson, WritesThePublishedNumbers)
{
    for (const NumberRow& row : kAppendixB) {
        const double value = std::bit_cast<double>(row.bits);
        EXPECT_EQ(canonicalJson(json(value)).value(), row.text);
        EXPECT_EQ(ecmaScriptNumber(value), row.text);
    }
}

// Published: RFC 8785 appendix B, the rows "NaN" and "Infinity", which must end in an error.
TEST(CanonicalJson, RefusesTheNumbersThatAreNone)
{
    for (const std::uint64_t bits : {0x7fffffffffffffffULL, 0x7ff0000000000000ULL, 0xfff0000000000000ULL}) {
        const auto result = canonicalJson(json{{"readings", {1.0, std::bit_cast<double>(bits)}}});
        ASSERT_FALSE(result.has_value());
        EXPECT_NE(result.error().message.find("readings[1] is not a finite number"), std::string::npos)
            << result.error().message;
    }
}

// Published: RFC 8785 section 3.2.2 (the input) and 3.2.4 (the bytes).
TEST(CanonicalJson, WritesThePublishedSampleByteForByte)
{
    const auto value = parseJson(R"({
        "numbers": [333333333.33333329, 1E30, 4.50,
                    2e-3, 0.000000000000000000000000001],
        "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
        "literals": [null, true, false]
      })");
    ASSERT_TRUE(value.has_value()) << value.error().message;
    EXPECT_EQ(canonicalJson(*value).value(),
              bytesOf("7b 22 6c 69 74 65 72 61 6c 73 22 3a 5b 6e 75 6c 6c 2c 74 72 "
                      "75 65 2c 66 61 6c 73 65 5d 2c 22 6e 75 6d 62 65 72 73 22 3a "
                      "5b 33 33 33 33 33 33 33 33 33 2e 33 33 33 33 33 33 33 2c 31 "
                      "65 2b 33 30 2c 34 2e 35 2c 30 2e 30 30 32 2c 31 65 2d 32 37 "
                      "5d 2c 22 73 74 72 69 6e 67 22 3a 22 e2 82 ac 24 5c 75 30 30 "
                      "30 66 5c 6e 41 27 42 5c 22 5c 5c 5c 5c 5c 22 2f 22 7d"));
}

// Published: RFC 8785 section 3.2.3, where the order of UTF-16 units differs from that of code points.
TEST(CanonicalJson, SortsThePublishedNames)
{
    const auto value = parseJson(R"({
        "\u20ac": "Euro Sign",
        "\r": "Carriage Return",
        "\ufb33": "Hebrew Letter Dalet With Dagesh",
        "1": "One",
        "\ud83d\ude00": "Emoji: Grinning Face",
        "\u0080": "Control",
        "\u00f6": "Latin Small Letter O With Diaeresis"
      })");
    ASSERT_TRUE(value.has_value()) << value.error().message;
    const std::string text = canonicalJson(*value).value();
    std::size_t before = 0;
    for (const char* name : {"Carriage Return", "One", "Control", "Latin Small Letter O With Diaeresis",
                             "Euro Sign", "Emoji: Grinning Face", "Hebrew Letter Dalet With Dagesh"}) {
        const std::size_t place = text.find(name);
        ASSERT_NE(place, std::string::npos) << name;
        EXPECT_GT(place, before) << name;
        before = place;
    }
}

// Property: any finite double reads back as itself, and reads and writes settle after one turn.
TEST(CanonicalJson, NumbersReadBackAsTheSameDouble)
{
    std::mt19937_64 random(8785);
    int checked = 0;
    while (checked < 200'000) {
        const double value = std::bit_cast<double>(static_cast<std::uint64_t>(random()));
        if (!std::isfinite(value))
            continue;
        const std::string text = ecmaScriptNumber(value);
        double back = 0.0;
        std::from_chars(text.data(), text.data() + text.size(), back);
        ASSERT_EQ(back, value) << text;
        ++checked;
    }
}

TEST(CanonicalJson, RefusesWhatHasNoCanonicalForm)
{
    const std::string loneSurrogate = "\xed\xa0\x80";
    const std::string overlong = "\xc0\xaf";
    const std::string beyond = "\xf4\x90\x80\x80";
    for (const std::string& text :
         {loneSurrogate, overlong, beyond, std::string("\xff"), std::string("\xe2\x82")}) {
        EXPECT_FALSE(canonicalJson(json(text)).has_value());
        EXPECT_FALSE(canonicalJson(json{{text, 1}}).has_value());
    }
    EXPECT_FALSE(canonicalJson(json(std::uint64_t{1} << 60)).has_value());
    EXPECT_FALSE(canonicalJson(json(std::numeric_limits<std::int64_t>::min())).has_value());
    EXPECT_FALSE(canonicalJson(json::binary({1, 2})).has_value());
    json deep = 1;
    for (int i = 0; i < kDeepestJson; ++i)
        deep = json::array({deep});
    EXPECT_TRUE(canonicalJson(deep).has_value());
    EXPECT_FALSE(canonicalJson(json::array({deep})).has_value());
}

TEST(ParseJson, RefusesInOneSentenceThatNamesThePlace)
{
    struct Row
    {
        std::string text;
        const char* says;
    };
    const std::string tooDeep = std::string(kDeepestJson + 1, '[') + std::string(kDeepestJson + 1, ']');
    for (const Row& row : std::initializer_list<Row>{
             {"", "ends in the middle"},
             {"{\"a\":1", "ends in the middle"},
             {"{\"a\":1,\n \"b\":nan}", "line 2, column"},
             {"[1,]", "line 1, column"},
             {"{} {}", "line 1, column"},
             {"{\"a\":{\"b\":1,\"b\":2}}", "\"b\" stands twice"},
             {"{\"b\":1,\"\\u0062\":2}", "\"b\" stands twice"},
             {"\"\\ud800\"", "line 1, column"},
             {"\"\\udc00\"", "line 1, column"},
             {"\"\xed\xa0\x80\"", "line 1, column"},
             {"1e400", "too large"},
             {"[NaN]", "line 1, column"},
             {"[Infinity]", "line 1, column"},
             {"// comment\n{}", "line 1, column"},
             {tooDeep, "deeper than"},
             {std::string(50'000'000, '['), "deeper than"},
             {std::string(kLongestJson + 1, ' '), "bytes long"},
         }) {
        const auto result = parseJson(row.text);
        ASSERT_FALSE(result.has_value()) << row.says;
        EXPECT_EQ(result.error().code, ErrorCode::BadInput);
        EXPECT_NE(result.error().message.find(row.says), std::string::npos)
            << row.text.substr(0, 60) << " gave " << result.error().message;
        EXPECT_EQ(result.error().message.find('\n'), std::string::npos);
    }
    EXPECT_TRUE(parseJson("{\"a\":{\"b\":1},\"c\":{\"b\":1}}").has_value())
        << "same name in two objects is fine";
}

// Regression: a text of "[]" over and over filled some gigabytes before anything was refused.
TEST(ParseJson, RefusesMoreValuesThanAnyJobHas)
{
    std::string text = "[[]";
    text.reserve(3 * kMostJsonValues + 4);
    for (std::size_t i = 0; i < kMostJsonValues; ++i)
        text += ",[]";
    const auto parsed = parseJson(text + "]");
    ASSERT_FALSE(parsed);
    EXPECT_NE(parsed.error().message.find("more than"), std::string::npos) << parsed.error().message;
}

} // namespace
} // namespace sealwalk::exchange
