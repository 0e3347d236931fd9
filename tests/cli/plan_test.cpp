// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/process.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>

namespace sealwalk::tests {
namespace {

using nlohmann::json;
using ::testing::HasSubstr;

std::string writeWalk()
{
    json survey{{"format", "sealwalk-survey-1"},
                {"unit", "mbar l/s"},
                {"limit", 1e-8},
                {"response_s", 2.0},
                {"points", json::array()}};
    for (int i = 0; i < 4; ++i)
        survey["points"].push_back({{"number", i + 1},
                                    {"joint", i == 3 ? "set-up hose" : "seal"},
                                    {"view", "front"},
                                    {"x_mm", 0.0},
                                    {"up_mm", 300.0 * i},
                                    {"half_length_mm", 40.0}});
    const std::string path = ::testing::TempDir() + "walk_plan.json";
    std::ofstream(path) << survey;
    return path;
}

// Property: the keys scripts rely on; the set-up first, then top down; times of tau 2 s worked by hand.
TEST(CommandPlan, AnswersInTheStatedForm)
{
    const ProcessResult result = runCli({"plan", writeWalk(), "--json"});
    ASSERT_EQ(result.status, 0) << result.err;
    const json answer = json::parse(result.out);
    std::vector<int> order;
    for (const json& spray : answer.at("order")) {
        order.push_back(spray.at("point"));
        EXPECT_NEAR(spray.at("dwell_s").get<double>(), 6.0, 1e-9);
        EXPECT_NEAR(spray.at("wait_s").get<double>(), 9.210340372, 1e-8);
        EXPECT_FALSE(spray.at("because").get<std::string>().empty());
    }
    EXPECT_EQ(order, (std::vector<int>{4, 3, 2, 1}));
    EXPECT_NEAR(answer.at("total_s").get<double>(), 4 * 15.210340372, 1e-7);
    EXPECT_NEAR(answer.at("helium_l").get<double>(), 4 * 6.0 * 0.004 / 60.0, 1e-12);
}

TEST(CommandPlan, TakesAFlowAndRefusesNonsense)
{
    const std::string path = writeWalk();
    const json answer = json::parse(runCli({"plan", path, "--flow", "30 ml/min", "--json"}).out);
    EXPECT_NEAR(answer.at("helium_l").get<double>(), 4 * 6.0 * 0.030 / 60.0, 1e-12);
    for (const char* wrong : {"0 ml/min", "30", "30 mbar"}) {
        const ProcessResult result = runCli({"plan", path, "--flow", wrong});
        EXPECT_EQ(result.status, 2) << wrong;
        EXPECT_EQ(std::count(result.err.begin(), result.err.end(), '\n'), 1) << result.err;
        EXPECT_THAT(result.err, HasSubstr("--flow"));
    }
}

// Property: the example of --help runs as printed.
TEST(CommandPlan, ItsExampleRuns)
{
    const std::string help = runCli({"plan", "--help"}).out;
    const std::size_t from = help.find("  echo ");
    ASSERT_NE(from, std::string::npos);
    const std::string script =
        "cd '" + ::testing::TempDir() + "' && PATH=\"" SEALWALK_BIN ":$PATH\" && " + help.substr(from);
    const ProcessResult result = runProcess({"/bin/sh", "-c", script});
    EXPECT_EQ(result.status, 0) << result.err;
    EXPECT_THAT(result.out, HasSubstr("helium"));
}

} // namespace
} // namespace sealwalk::tests
