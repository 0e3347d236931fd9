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

} // namespace
} // namespace sealwalk::tests
