// SPDX-License-Identifier: GPL-3.0-or-later
// What every source file keeps to.
#include "tests/architecture/source_tree.h"

#include <gtest/gtest.h>

#include <fstream>
#include <regex>
#include <set>
#include <string>

namespace sealwalk::tests {
namespace {

constexpr std::size_t kLongestFile = 600;

TEST(Sources, NoFileIsLongerThanSixHundredLines)
{
    for (const SourceFile& file : sourceTree())
        EXPECT_LE(file.lines.size(), kLongestFile) << file.path;
}

TEST(Sources, EveryFileStatesItsLicence)
{
    for (const SourceFile& file : sourceTree()) {
        ASSERT_FALSE(file.lines.empty()) << file.path;
        const bool first =
            file.lines[0].find("SPDX-License-Identifier: GPL-3.0-or-later") != std::string::npos;
        const bool second =
            file.lines.size() > 1 &&
            file.lines[1].find("SPDX-License-Identifier: GPL-3.0-or-later") != std::string::npos;
        EXPECT_TRUE(first || second) << file.path;
    }
}

// These macros return from the function and GoogleTest sees no failure: a false green.
TEST(Sources, TestsUseNoQtCheckMacros)
{
    const std::regex macro(R"(\bQ(VERIFY2?|COMPARE|TRY_VERIFY|TRY_COMPARE)\s*\()");
    for (const SourceFile& file : sourceTree())
        for (const std::string& line : file.lines)
            EXPECT_FALSE(std::regex_search(line, macro)) << file.path << ": " << line;
}

TEST(Sources, NothingIsSwitchedOff)
{
    const std::regex off(std::string("DISABLED") + "_|GTEST" + "_SKIP");
    for (const SourceFile& file : sourceTree())
        for (const std::string& line : file.lines)
            EXPECT_FALSE(std::regex_search(line, off)) << file.path << ": " << line;
}

TEST(Sources, HeadersAreIncludedOnce)
{
    for (const SourceFile& file : sourceTree()) {
        if (file.path.size() < 2 || file.path.substr(file.path.size() - 2) != ".h")
            continue;
        bool found = false;
        for (const std::string& line : file.lines)
            found = found || line == "#pragma once";
        EXPECT_TRUE(found) << file.path;
    }
}

// Regression: "1 photo(s)". English has its plurals in a catalogue of its own, kept by hand.
TEST(Sources, EveryPluralIsInEnglishToo)
{
    const auto plurals = [](const char* catalogue) {
        std::ifstream in(std::string(SEALWALK_SOURCE_DIR) + "/resources/translations/" + catalogue);
        std::set<std::string> found;
        std::string context;
        bool isPlural = false;
        for (std::string line; std::getline(in, line);) {
            std::smatch part;
            if (std::regex_search(line, part, std::regex("<name>(.*)</name>")))
                context = part[1];
            else if (line.find("<message") != std::string::npos)
                isPlural = line.find("numerus=\"yes\"") != std::string::npos;
            else if (isPlural && std::regex_search(line, part, std::regex("<source>(.*)</source>")))
                found.insert(context + ": " + part[1].str());
        }
        return found;
    };
    const auto german = plurals("sealwalk_de.ts");
    EXPECT_GT(german.size(), 10u);
    EXPECT_EQ(plurals("sealwalk_en.ts"), german);
}

} // namespace
} // namespace sealwalk::tests
