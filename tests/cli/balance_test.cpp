// SPDX-License-Identifier: GPL-3.0-or-later
// The balance command on the demonstration history.
#include "tests/support/process.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>
#include <unistd.h>

#include <algorithm>
#include <cmath>
#include <filesystem>

namespace sealwalk::tests {
namespace {

using nlohmann::json;
using ::testing::HasSubstr;

class BalanceCommand : public testing::Test
{
protected:
    void SetUp() override
    {
        const auto* test = testing::UnitTest::GetInstance()->current_test_info();
        m_folder = std::filesystem::temp_directory_path() /
                   (std::string("sealwalk-balance-") + test->name() + "-" + std::to_string(::getpid()));
        std::filesystem::create_directories(m_folder);
        ASSERT_EQ(runCli({"demo", "-o", history()}).status, 0);
    }
    void TearDown() override { std::filesystem::remove_all(m_folder); }

    [[nodiscard]] std::string history() const { return (m_folder / "demo.sealwalk").string(); }

    [[nodiscard]] json balance(std::vector<std::string> more = {}) const
    {
        std::vector<std::string> arguments = {"--json", "--history", history(), "balance", "164"};
        arguments.insert(arguments.end(), more.begin(), more.end());
        const ProcessResult result = runCli(arguments);
        EXPECT_EQ(result.status, 0) << result.err;
        return json::parse(result.out);
    }

    std::filesystem::path m_folder;
};

// Property: the leaks in the sum make up the located figure, and located and unlocated the total.
TEST_F(BalanceCommand, AddsUp)
{
    const json answer = balance();
    double sum = 0.0;
    double shares = 0.0;
    for (const json& leak : answer["leaks"]) {
        EXPECT_LE(leak["low"].get<double>(), leak["leak_rate"].get<double>());
        EXPECT_GE(leak["high"].get<double>(), leak["leak_rate"].get<double>());
        if (leak["in_sum"].get<bool>())
            sum += leak["leak_rate"].get<double>();
        shares += leak["share"].get<double>();
    }
    const double located = answer["located"].get<double>();
    EXPECT_NEAR(sum, located, 1e-12 * located);
    EXPECT_NEAR(shares, 1.0, 1e-9);
    EXPECT_NEAR(located + answer["unlocated"].get<double>(), answer["total"].get<double>(), 1e-12 * located);
    EXPECT_GT(answer["unlocated_share"].get<double>(), 0.0);
    EXPECT_EQ(answer["unit"], "mbar l/s");
}

TEST_F(BalanceCommand, TakesTickedRepairsOffAndSwitchesTheUnit)
{
    const json before = balance();
    const json after = balance({"--repair", "17"});
    EXPECT_EQ(before["effect"]["leak_after"], before["effect"]["leak_now"]);
    EXPECT_LT(after["effect"]["leak_after"].get<double>(), before["effect"]["leak_now"].get<double>());
    EXPECT_LT(after["effect"]["base_pressure_after_pa"].get<double>(),
              after["effect"]["base_pressure_now_pa"].get<double>());
    const json pascal = balance({"--unit", "Pa m3/s"});
    EXPECT_NEAR(pascal["located"].get<double>() * 10.0, before["located"].get<double>(),
                1e-12 * before["located"].get<double>());
}

TEST_F(BalanceCommand, RefusesInOneLine)
{
    struct Row
    {
        std::vector<std::string> arguments;
        const char* says;
    };
    const Row rows[] = {
        {{"balance", "9999"}, "9999"},
        {{"balance", "164", "--round", "77"}, "77"},
        {{"balance", "164", "--repair", "999"}, "no point 999"},
        {{"balance", "164", "--unit", "mbar"}, "--unit"},
    };
    for (const Row& row : rows) {
        std::vector<std::string> arguments = {"--history", history()};
        arguments.insert(arguments.end(), row.arguments.begin(), row.arguments.end());
        const ProcessResult result = runCli(arguments);
        EXPECT_EQ(result.status, 2) << row.says;
        EXPECT_EQ(result.out, "");
        EXPECT_EQ(std::count(result.err.begin(), result.err.end(), '\n'), 1) << result.err;
        EXPECT_THAT(result.err, HasSubstr(row.says));
    }
}

} // namespace
} // namespace sealwalk::tests
