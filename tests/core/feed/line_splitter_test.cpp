// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/feed/line_splitter.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace sealwalk::feed {
namespace {

std::vector<std::string> texts(const std::vector<FeedLine>& lines)
{
    std::vector<std::string> result;
    for (const FeedLine& line : lines)
        result.push_back(line.isWhole ? line.text : line.text + " (cut)");
    return result;
}

std::vector<std::string> split(std::string_view bytes)
{
    LineSplitter splitter;
    std::vector<std::string> lines = texts(splitter.take(bytes));
    for (const std::string& line : texts(splitter.finish()))
        lines.push_back(line);
    return lines;
}

using Lines = std::vector<std::string>;

// Property: every way to end a line does; an empty line is none; what is not ended is not whole.
TEST(LineSplitter, EndsLinesInEveryWay)
{
    EXPECT_EQ(split("a\nb\n"), (Lines{"a", "b"}));
    EXPECT_EQ(split("a\r\nb\r\n"), (Lines{"a", "b"}));
    EXPECT_EQ(split("a\rb\r"), (Lines{"a", "b"}));
    EXPECT_EQ(split("\n\r\n\ra\n\n"), (Lines{"a"}));
    EXPECT_EQ(split("a\n1.2"), (Lines{"a", "1.2 (cut)"}));
    EXPECT_EQ(split(""), Lines{});
}

// Property: the lines do not depend on where the bytes are cut.
TEST(LineSplitter, PiecesMakeNoDifference)
{
    std::string stream;
    for (int i = 0; i < 40; ++i)
        stream += std::to_string(i) + ";1.2e-9 mbar·l/s\xff" + std::string(1, '\0') +
                  (i % 3 == 0   ? "\r\n"
                   : i % 3 == 1 ? "\n"
                                : "\r");
    const Lines whole = split(stream);
    ASSERT_EQ(whole.size(), 40u);
    std::mt19937 random(11);
    for (int i = 0; i < 200; ++i) {
        LineSplitter splitter;
        Lines lines;
        for (std::size_t at = 0; at < stream.size();) {
            const std::size_t length = 1 + random() % 9;
            for (const std::string& line : texts(splitter.take(std::string_view(stream).substr(at, length))))
                lines.push_back(line);
            at += length;
        }
        ASSERT_EQ(lines, whole);
    }
}

// Property: a flood without an end of line is held to one line, and the line after it is read again.
TEST(LineSplitter, AnEndlessLineIsBounded)
{
    LineSplitter splitter;
    for (int i = 0; i < 1000; ++i)
        EXPECT_TRUE(splitter.take(std::string(4096, 'x')).empty());
    const auto lines = splitter.take("\n1e-9\n");
    ASSERT_EQ(lines.size(), 2u);
    EXPECT_FALSE(lines[0].isWhole);
    EXPECT_EQ(lines[0].text, std::string(kLongestLine, 'x'));
    EXPECT_EQ(lines[1], (FeedLine{"1e-9", true}));
    EXPECT_EQ(split(std::string(kLongestLine, 'y') + "\n"), (Lines{std::string(kLongestLine, 'y')}));
}

// Regression: after a connection in the middle of "1.3e-9" the rest "3e-9" would be a value.
TEST(LineSplitter, WhatBeganUnseenIsDropped)
{
    LineSplitter splitter;
    splitter.startInMiddle();
    EXPECT_EQ(texts(splitter.take("3e-9\r")), Lines{});
    EXPECT_EQ(texts(splitter.take("\n1.3e-9\r\n")), (Lines{"1.3e-9"}));
    splitter.startInMiddle();
    EXPECT_EQ(texts(splitter.take("\n1.4e-9\n")), (Lines{"1.4e-9"}));
}

// Published: RFC 3629, sections 3 and 4: which byte sequences are UTF-8.
TEST(LineSplitter, WhatIsNoTextIsShownAsSuch)
{
    EXPECT_EQ(printable("1.2e-9 mbar·l/s µ €\t"), "1.2e-9 mbar·l/s µ €\t");
    EXPECT_EQ(printable(std::string_view("a\0b", 3)), "a?b");
    EXPECT_EQ(printable("\x7f\x1b[0m"), "??[0m");
    EXPECT_EQ(printable("\xc0\xaf"), "??");           // over-long
    EXPECT_EQ(printable("\xed\xa0\x80"), "???");      // surrogate
    EXPECT_EQ(printable("\xf4\x90\x80\x80"), "????"); // above U+10FFFF
    EXPECT_EQ(printable("\xe2\x82"), "??");           // cut short
    EXPECT_EQ(printable("\xc2\x85"), "?");            // a control character of two bytes
    EXPECT_EQ(printable("\xf0\x9f\x92\xa7"), "\xf0\x9f\x92\xa7");
}

// Property: no bytes whatever break it, and what comes out is text of bounded length.
TEST(LineSplitter, TakesAnyBytes)
{
    std::mt19937 random(5);
    LineSplitter splitter;
    for (int i = 0; i < 2000; ++i) {
        std::string bytes(random() % 300, '\0');
        for (char& byte : bytes)
            byte = static_cast<char>(random());
        for (const FeedLine& line : splitter.take(bytes)) {
            EXPECT_LE(line.text.size(), kLongestLine);
            EXPECT_EQ(printable(line.text), line.text);
        }
    }
}

} // namespace
} // namespace sealwalk::feed
