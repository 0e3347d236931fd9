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

std::string writeSurvey(const std::string& name, const json& survey)
{
    const std::string path = ::testing::TempDir() + name;
    std::ofstream(path) << survey;
    return path;
}

/// A door seal's left side from top to bottom, ten points; a leak of 2e-6 at point 4, its echoes below, and
/// point 9 leaking 4e-8.
json doorSurvey()
{
    json survey{{"format", "sealwalk-survey-1"}, {"unit", "mbar l/s"}, {"limit", 1e-8},
                {"helium_fraction", 1.0},        {"response_s", 2.0},  {"points", json::array()},
                {"readings", json::array()}};
    const double peaks[] = {3.2e-10, 3.1e-10, 4e-9, 1.9e-6, 6e-8, 4.1e-9, 1.1e-9, 6e-10, 3.8e-8, 3.3e-10};
    for (int i = 0; i < 10; ++i) {
        survey["points"].push_back({{"number", i + 1},
                                    {"joint", "door seal"},
                                    {"view", "front"},
                                    {"x_mm", 0.0},
                                    {"up_mm", 900.0 - 80.0 * i},
                                    {"half_length_mm", 40.0}});
        survey["readings"].push_back({{"point", i + 1},
                                      {"start_s", 40.0 * i},
                                      {"dwell_s", 6.0},
                                      {"background", 3e-10 + 1e-11 * (i % 3)},
                                      {"peak", peaks[i]}});
    }
    return survey;
}

json findingOf(const json& answer, int point)
{
    for (const json& finding : answer.at("findings")) {
        if (finding.at("point") == point)
            return finding;
    }
    return {};
}

// Property: the keys and words scripts rely on.
TEST(CommandSources, AnswersInTheStatedForm)
{
    const ProcessResult result = runCli({"sources", writeSurvey("door.json", doorSurvey()), "--json"});
    ASSERT_EQ(result.status, 0) << result.err;
    const json answer = json::parse(result.out);
    EXPECT_EQ(answer.at("unit"), "mbar l/s");
    ASSERT_EQ(answer.at("findings").size(), 10U);
    EXPECT_TRUE(answer.contains("spread"));
    const json leak = findingOf(answer, 4);
    EXPECT_EQ(leak.at("verdict"), "leak");
    EXPECT_GT(leak.at("leak_rate").get<double>(), 1e-6);
    EXPECT_LT(leak.at("leak_rate").get<double>(), 6e-6);
    EXPECT_LT(leak.at("low").get<double>(), leak.at("leak_rate").get<double>());
    EXPECT_GT(leak.at("high").get<double>(), leak.at("leak_rate").get<double>());
    EXPECT_FALSE(leak.at("because").empty());
    EXPECT_NE(findingOf(answer, 5).at("verdict"), "clear");
    EXPECT_NE(findingOf(answer, 5).at("verdict"), "leak");
    EXPECT_TRUE(findingOf(answer, 5).at("leak_rate").is_null());
    EXPECT_EQ(findingOf(answer, 9).at("verdict"), "leak");
    EXPECT_EQ(findingOf(answer, 1).at("verdict"), "clear");
}

// Property: rates follow the unit asked for; 1 mbar l/s is 0.1 Pa m3/s.
TEST(CommandSources, AnswersInTheUnitAskedFor)
{
    const std::string path = writeSurvey("door_unit.json", doorSurvey());
    const json usual = json::parse(runCli({"sources", path, "--json"}).out);
    const json other = json::parse(runCli({"sources", path, "--json", "--unit", "Pa m3/s"}).out);
    EXPECT_EQ(other.at("unit"), "Pa m3/s");
    EXPECT_NEAR(findingOf(other, 4).at("leak_rate").get<double>() * 10.0,
                findingOf(usual, 4).at("leak_rate").get<double>(), 1e-12);
}

TEST(CommandSources, RefusesInOneLineAndStatusTwo)
{
    json backwards = doorSurvey();
    backwards["readings"][3]["start_s"] = 0.0;
    json wrongUnit = doorSurvey();
    wrongUnit["unit"] = "mbar";
    const std::vector<std::vector<std::string>> wrongs{
        {"sources"},
        {"sources", "/nowhere/survey.json"},
        {"sources", writeSurvey("backwards.json", backwards)},
        {"sources", writeSurvey("wrong_unit.json", wrongUnit)},
        {"sources", writeSurvey("right.json", doorSurvey()), "--unit", "mm"},
    };
    for (const std::vector<std::string>& arguments : wrongs) {
        const ProcessResult result = runCli(arguments);
        EXPECT_EQ(result.status, 2) << arguments.back();
        EXPECT_EQ(result.out, "");
        EXPECT_EQ(std::count(result.err.begin(), result.err.end(), '\n'), 1) << result.err;
    }
    EXPECT_THAT(runCli(wrongs[2]).err, HasSubstr("order of time"));
}

// Property: the example of --help runs as printed.
TEST(CommandSources, ItsExampleRuns)
{
    const std::string help = runCli({"sources", "--help"}).out;
    const std::size_t from = help.find("  echo ");
    ASSERT_NE(from, std::string::npos);
    const std::string script =
        "cd '" + ::testing::TempDir() + "' && PATH=\"" SEALWALK_BIN ":$PATH\" && " + help.substr(from);
    const ProcessResult result = runProcess({"/bin/sh", "-c", script});
    EXPECT_EQ(result.status, 0) << result.err;
    EXPECT_THAT(result.out, HasSubstr("leak"));
}

} // namespace
} // namespace sealwalk::tests
