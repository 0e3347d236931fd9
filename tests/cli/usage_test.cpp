// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/process.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace sealwalk::tests {
namespace {

TEST(CommandLine, HelpNamesTheProgramAndSucceeds)
{
    const ProcessResult result = runCli({"--help"});
    EXPECT_EQ(result.status, 0);
    EXPECT_NE(result.out.find("sealwalk-cli"), std::string::npos);
}

TEST(CommandLine, RefusesWhatItDoesNotKnowInOneLineAndStatusTwo)
{
    for (const char* wrong : {"frobnicate", "--frobnicate"}) {
        const ProcessResult result = runCli({wrong});
        EXPECT_EQ(result.status, 2) << wrong;
        EXPECT_EQ(result.out, "");
        EXPECT_EQ(std::count(result.err.begin(), result.err.end(), '\n'), 1) << result.err;
    }
}

TEST(CommandLine, AsksForACommandWhenNoneIsGiven)
{
    const ProcessResult result = runCli({});
    EXPECT_EQ(result.status, 2);
    EXPECT_EQ(std::count(result.err.begin(), result.err.end(), '\n'), 1) << result.err;
}

// Regression: bytes in another encoding went into the history by --by, and nothing could take them out again.
TEST(CommandLine, RefusesArgumentsThatAreNotUtf8)
{
    const ProcessResult result = runCli({"log", "164", "1", "--stdin", "--by", "M\xfcller"}, "{}");
    EXPECT_EQ(result.status, 2);
    EXPECT_EQ(result.out, "");
    EXPECT_NE(result.err.find("is not UTF-8 text"), std::string::npos) << result.err;
}

// Regression: an answer cut by a full disk was "done".
TEST(CommandLine, SaysWhenStdoutDidNotTakeTheAnswer)
{
    const std::string program = std::string(SEALWALK_BIN) + "/sealwalk-cli";
    const ProcessResult result = runProcess(
        {"/bin/sh", "-c", "exec '" + program + "' convert '1 mbar l/s' 'Pa m3/s' --json > /dev/full"});
    EXPECT_EQ(result.status, 3);
    EXPECT_NE(result.err.find("stdout"), std::string::npos) << result.err;
}

} // namespace
} // namespace sealwalk::tests
