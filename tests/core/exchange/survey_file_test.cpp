// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/survey_file.h"

#include <gmock/gmock.h>

#include <cstdio>
#include <fstream>

namespace sealwalk::exchange {
namespace {

using ::testing::HasSubstr;

std::string surveyWith(const std::string& points, const std::string& readings, const std::string& head = {})
{
    const std::string usualHead =
        R"("unit": "mbar l/s", "limit": 1e-8, "helium_fraction": 0.5, "response_s": 2.0)";
    return R"({"format": "sealwalk-survey-1", )" + (head.empty() ? usualHead : head) + R"(, "points": [)" +
           points + R"(], "readings": [)" + readings + "]}";
}

const std::string kPointOne =
    R"({"number": 1, "joint": "door seal", "view": "front", "x_mm": 0.5, "up_mm": 310.0, "half_length_mm": 40.0})";
const std::string kPointTwo =
    R"({"number": 2, "joint": "door seal", "view": "front", "x_mm": 80, "up_mm": 310, "half_length_mm": 40})";
const std::string kReading =
    R"({"point": 1, "start_s": 12.5, "dwell_s": 6.0, "background": 3.1e-10, "peak": 5.2e-9})";

// Property: every field of the format arrives in SI.
TEST(SurveyFile, ReadsEveryField)
{
    const auto survey = parseSurvey(surveyWith(
        kPointOne, R"({"point": 1, "start_s": 12.5, "dwell_s": 6.0, "background": 3.1e-10, "peak": 5.2e-9,
                       "delay_s": 90, "condition": "flexed", "void": true})"));
    ASSERT_TRUE(survey) << survey.error().message;
    ASSERT_EQ(survey->points.size(), 1U);
    ASSERT_EQ(survey->readings.size(), 1U);
    EXPECT_DOUBLE_EQ(survey->limit.si(), 1e-9);
    EXPECT_DOUBLE_EQ(survey->heliumFraction.si(), 0.5);
    EXPECT_DOUBLE_EQ(survey->response.si(), 2.0);
    EXPECT_EQ(survey->points[0].joint, "door seal");
    EXPECT_EQ(survey->points[0].view, "front");
    EXPECT_DOUBLE_EQ(survey->points[0].x.si(), 0.5e-3);
    EXPECT_DOUBLE_EQ(survey->points[0].up.si(), 0.31);
    EXPECT_DOUBLE_EQ(survey->points[0].halfLength.si(), 0.04);
    const analysis::SurveyReading& reading = survey->readings[0];
    EXPECT_EQ(reading.point, 1);
    EXPECT_DOUBLE_EQ(reading.start.si(), 12.5);
    EXPECT_DOUBLE_EQ(reading.end().si(), 18.5);
    EXPECT_DOUBLE_EQ(reading.net().si(), 4.89e-10);
    ASSERT_TRUE(reading.delay.has_value());
    EXPECT_DOUBLE_EQ(reading.delay->si(), 90.0);
    EXPECT_EQ(reading.condition, "flexed");
    EXPECT_TRUE(reading.isVoid);
}

// Property: what may be left out has its stated default; odd but legal surveys are read.
TEST(SurveyFile, TakesLegalOddities)
{
    const std::string noShare = R"("unit": "mbar l/s", "limit": 1e-8, "response_s": 0)";
    const auto bare = parseSurvey(surveyWith("", "", noShare));
    ASSERT_TRUE(bare) << bare.error().message;
    EXPECT_DOUBLE_EQ(bare->heliumFraction.si(), 1.0);
    const auto beforeTheWalk =
        parseSurvey(R"({"format": "sealwalk-survey-1", "unit": "mbar l/s", "limit": 1e-8,
                                               "response_s": 1, "points": []})");
    EXPECT_TRUE(beforeTheWalk) << beforeTheWalk.error().message;
    const auto negativeNet = parseSurvey(surveyWith(
        kPointOne, R"({"point": 1, "start_s": -3, "dwell_s": 6, "background": 3e-10, "peak": -2e-10})"));
    EXPECT_TRUE(negativeNet) << negativeNet.error().message;
    const auto twice = parseSurvey(surveyWith(kPointOne, kReading + "," + kReading));
    EXPECT_TRUE(twice) << twice.error().message;
}

struct Refusal
{
    std::string text;
    std::string says;
    ErrorCode code = ErrorCode::BadInput;
};

// Property: what is refused, and that the sentence names the place and what would be right.
TEST(SurveyFile, RefusesWithOneSentence)
{
    const std::string head = R"("unit": "mbar l/s", "limit": 1e-8, "response_s": 2.0)";
    const Refusal refusals[] = {
        {"", "line 1"},
        {"[]", "one JSON object"},
        {"{\"format\": ", "line 1"},
        {R"({"format": "sealwalk-survey-2"})", "sealwalk-survey-1", ErrorCode::NewerVersion},
        {R"({"format": "grocery-list"})", "must be \"sealwalk-survey-1\""},
        {R"({"points": []})", "\"format\" is missing"},
        {surveyWith("", "", head + R"(, "colour": "red")"), "unknown key \"colour\""},
        {surveyWith("", "", head + R"(, "limit": 2e-8)"), "\"limit\" stands twice"},
        {surveyWith("", "", R"("unit": "mbar", "limit": 1e-8, "response_s": 2.0)"), "mbar"},
        {surveyWith("", "", R"("unit": "furlong", "limit": 1e-8, "response_s": 2.0)"), "furlong"},
        {surveyWith("", "", R"("unit": 5, "limit": 1e-8, "response_s": 2.0)"), "\"unit\" must be text"},
        {surveyWith("", "", R"("unit": "mbar l/s", "limit": 0, "response_s": 2.0)"), "\"limit\" is 0"},
        {surveyWith("", "", R"("unit": "mbar l/s", "limit": 1e-8, "response_s": -1)"),
         "\"response_s\" is -1"},
        {surveyWith("", "", R"("unit": "mbar l/s", "limit": 1e-8)"), "\"response_s\" is missing"},
        {surveyWith("", "", head + R"(, "helium_fraction": 0)"), "\"helium_fraction\" is 0"},
        {surveyWith("", "", head + R"(, "helium_fraction": 1.5)"), "\"helium_fraction\" is 1.5"},
        {surveyWith(kPointOne + "," + kPointOne, ""), "point 1 is there twice"},
        {surveyWith("7", ""), "points[0]: must be an object"},
        {surveyWith(R"({"number": 0, "joint": "a", "view": "b", "x_mm": 0, "up_mm": 0, "half_length_mm": 0})",
                    ""),
         "whole number"},
        {surveyWith(
             R"({"number": 1.5, "joint": "a", "view": "b", "x_mm": 0, "up_mm": 0, "half_length_mm": 0})", ""),
         "whole number"},
        {surveyWith(
             R"({"number": 1, "joint": "a", "view": "b", "x_mm": "0", "up_mm": 0, "half_length_mm": 0})", ""),
         "\"x_mm\" must be a number"},
        {surveyWith(
             R"({"number": 1, "joint": "a", "view": "b", "x_mm": 0, "up_mm": 0, "half_length_mm": -1})", ""),
         "\"half_length_mm\" is -1"},
        {surveyWith(R"({"number": 1, "joint": "a", "view": "b", "x_mm": 0, "up_mm": 0, "half_length": 1})",
                    ""),
         "unknown key \"half_length\""},
        {surveyWith(kPointTwo, kReading), "readings[0]: there is no point 1"},
        {surveyWith(kPointOne, R"({"point": 1, "start_s": 0, "dwell_s": 0, "background": 0, "peak": 0})"),
         "\"dwell_s\" is 0"},
        {surveyWith(kPointOne, R"({"point": 1, "start_s": 0, "dwell_s": 1, "background": 0, "peak": null})"),
         "\"peak\" must be a number"},
        {surveyWith(kPointOne, R"({"point": 1, "start_s": 0, "dwell_s": 1, "background": 0, "peak": 1e999})"),
         "too large"},
        {surveyWith(kPointOne, R"({"point": 1, "start_s": 0, "dwell_s": 1, "background": 0, "peak": NaN})"),
         "line 1"},
        {surveyWith(kPointOne, R"({"point": 1, "start_s": 0, "dwell_s": 1, "background": 0, "peak": 1e9})"),
         "\"peak\" is 1000000000"},
        {surveyWith(kPointOne,
                    R"({"point": 1, "start_s": 0, "dwell_s": 1, "background": 0, "peak": 1, "void": "yes"})"),
         "\"void\" must be true or false"},
        {surveyWith(kPointOne,
                    R"({"point": 1, "start_s": 0, "dwell_s": 1, "background": 0, "peak": 1, "delay_s": -1})"),
         "\"delay_s\" is -1"},
        {surveyWith(kPointOne,
                    kReading + R"(,{"point": 1, "start_s": 3, "dwell_s": 1, "background": 0, "peak": 0})"),
         "in order of time"},
    };
    for (const Refusal& refusal : refusals) {
        const auto survey = parseSurvey(refusal.text);
        ASSERT_FALSE(survey) << refusal.text;
        EXPECT_EQ(survey.error().code, refusal.code) << refusal.text;
        EXPECT_THAT(survey.error().message, HasSubstr(refusal.says)) << refusal.text;
        EXPECT_EQ(survey.error().message.find('\n'), std::string::npos);
    }
}

TEST(SurveyFile, NamesTheFileThatCannotBeRead)
{
    const auto missing = readSurveyFile("/nowhere/survey.json");
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().code, ErrorCode::NotFound);
    EXPECT_THAT(missing.error().message, HasSubstr("/nowhere/survey.json"));

    const std::string path = ::testing::TempDir() + "broken_survey.json";
    std::ofstream(path) << "{\n\"format\" 1}";
    const auto broken = readSurveyFile(path);
    std::remove(path.c_str());
    ASSERT_FALSE(broken);
    EXPECT_THAT(broken.error().message, HasSubstr(path));
    EXPECT_THAT(broken.error().message, HasSubstr("line 2"));
}

} // namespace
} // namespace sealwalk::exchange
