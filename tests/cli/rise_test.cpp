// SPDX-License-Identifier: GPL-3.0-or-later
// The rise command as a process.
#include "tests/support/process.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <filesystem>
#include <fstream>

namespace sealwalk::tests {
namespace {

using nlohmann::json;

class RiseCommand : public testing::Test
{
protected:
    void SetUp() override
    {
        const auto* test = testing::UnitTest::GetInstance()->current_test_info();
        m_folder = std::filesystem::temp_directory_path() /
                   (std::string("sealwalk-rise-") + test->name() + "-" + std::to_string(::getpid()));
        std::filesystem::create_directories(m_folder);
    }
    void TearDown() override { std::filesystem::remove_all(m_folder); }

    std::string write(const std::string& text)
    {
        const auto path = m_folder / "rise.csv";
        std::ofstream(path) << text;
        return path.string();
    }

    /// 100 l, a leak of 2e-3 mbar l/s in a straight line with a little noise.
    std::string leakingRecord()
    {
        std::string text = "time_s,pressure_mbar\n";
        for (int i = 0; i <= 60; ++i)
            text += std::to_string(10 * i) + "," +
                    std::to_string(5e-3 + 2e-5 * 10 * i + 2e-5 * std::sin(1.7 * i * i)) + "\n";
        return write(text);
    }

    std::filesystem::path m_folder;
};

TEST_F(RiseCommand, AnswersOneJsonDocumentWithTheAgreedKeys)
{
    const ProcessResult result = runCli({"rise", leakingRecord(), "--volume", "100 l", "--json"});
    ASSERT_EQ(result.status, 0) << result.err;
    const json answer = json::parse(result.out);
    std::vector<std::string> keys;
    for (const auto& [key, value] : answer.items())
        keys.push_back(key);
    EXPECT_THAT(keys, testing::UnorderedElementsAre("leak_rate", "low", "high", "unit", "separable",
                                                    "outgassing_rate_start", "outgassing_rate_end", "model",
                                                    "advice"));
    EXPECT_EQ(answer["unit"], "mbar l/s");
    EXPECT_EQ(answer["separable"], true);
    EXPECT_LE(answer["low"], 2e-3);
    EXPECT_GE(answer["high"], 2e-3);
    EXPECT_NEAR(answer["leak_rate"], 2e-3, 1e-4);
}

TEST_F(RiseCommand, AnswersInTheUnitAskedFor)
{
    const std::string file = leakingRecord();
    const json plain = json::parse(runCli({"rise", file, "--volume", "100 l", "--json"}).out);
    const json si =
        json::parse(runCli({"--json", "rise", file, "--volume", "0.1 m3", "--unit", "Pa m3/s"}).out);
    EXPECT_NEAR(si["leak_rate"].get<double>(), 0.1 * plain["leak_rate"].get<double>(), 1e-12);
    EXPECT_EQ(si["unit"], "Pa m3/s");
}

// Regression: where leak and outgassing cannot be told apart, a middle of the range stood there as the leak.
TEST_F(RiseCommand, GivesNoLeakRateWhereNoneCanBeTold)
{
    std::string text = "time_s,pressure_mbar\n";
    for (int i = 0; i <= 60; ++i) // gas that comes off ever more slowly, a trace of noise
        text += std::to_string(10 * i) + "," +
                std::to_string(5e-3 + 2e-3 * std::log1p(2.0 * i) + 1e-6 * std::sin(1.7 * i * i)) + "\n";
    const json answer = json::parse(runCli({"rise", write(text), "--volume", "100 l", "--json"}).out);
    EXPECT_EQ(answer["separable"], false);
    EXPECT_TRUE(answer["leak_rate"].is_null());
    EXPECT_GT(answer["high"].get<double>(), 0.0);
}

TEST_F(RiseCommand, TellsPeopleInWords)
{
    const ProcessResult result = runCli({"rise", leakingRecord(), "--volume", "100 l"});
    EXPECT_EQ(result.status, 0);
    EXPECT_THAT(result.out, testing::HasSubstr("95 % range"));
    EXPECT_THAT(result.out, testing::HasSubstr("straight line"));
}

struct Bad
{
    const char* name;
    std::vector<std::string> options;
    const char* text;
    const char* says;
};

class RiseCommandRefuses : public RiseCommand, public testing::WithParamInterface<Bad>
{};

TEST_P(RiseCommandRefuses, InOneLineWithStatusTwo)
{
    std::vector<std::string> arguments = {"rise", write(GetParam().text), "--json"};
    arguments.insert(arguments.end(), GetParam().options.begin(), GetParam().options.end());
    const ProcessResult result = runCli(arguments);
    EXPECT_EQ(result.status, 2);
    EXPECT_EQ(result.out, "");
    EXPECT_EQ(std::count(result.err.begin(), result.err.end(), '\n'), 1) << result.err;
    EXPECT_THAT(result.err, testing::HasSubstr(GetParam().says));
}

constexpr const char* kGood = "time_s,pressure_Pa\n0,1\n10,2\n20,3\n";
INSTANTIATE_TEST_SUITE_P(
    Bad, RiseCommandRefuses,
    testing::Values(
        Bad{"NoVolume", {}, kGood, "--volume"}, Bad{"BareVolume", {"--volume", "100"}, kGood, "--volume"},
        Bad{"VolumeOfNothing", {"--volume", "0 l"}, kGood, "volume must be above 0"},
        Bad{"WrongKind", {"--volume", "5 mm"}, kGood, "--volume"},
        Bad{"UnknownUnit", {"--volume", "5 l", "--unit", "furlongs"}, kGood, "--unit"},
        Bad{"WrongTemperature", {"--volume", "5 l", "--temperature", "20 l"}, kGood, "--temperature"},
        Bad{"BadLine", {"--volume", "5 l"}, "time_s,pressure_Pa\n0,1\n5,x\n", "line 3"},
        Bad{"TwoSamples", {"--volume", "5 l"}, "time_s,pressure_Pa\n0,1\n5,2\n", "at least 3 samples"}),
    [](const auto& row) { return std::string(row.param.name); });

TEST_F(RiseCommand, NamesAFileThatIsNotThere)
{
    const ProcessResult result = runCli({"rise", "/nowhere/rise.csv", "--volume", "5 l"});
    EXPECT_EQ(result.status, 2);
    EXPECT_THAT(result.err, testing::HasSubstr("/nowhere/rise.csv"));
}

TEST_F(RiseCommand, TheExampleOfItsHelpRuns)
{
    const ProcessResult help = runCli({"rise", "--help"});
    ASSERT_EQ(help.status, 0);
    EXPECT_THAT(help.out, testing::HasSubstr("sealwalk-cli rise rise.csv --volume \"120 l\" --json"));
    const std::string file = write("time_s,pressure_Pa\n0,0.50\n60,0.62\n120,0.74\n180,0.86\n240,0.98\n");
    EXPECT_EQ(runCli({"rise", file, "--volume", "120 l", "--json"}).status, 0);
}

} // namespace
} // namespace sealwalk::tests
