// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/survey_file.h"

#include "core/exchange/canonical_json.h"
#include "core/exchange/survey_unit.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <initializer_list>
#include <sstream>
#include <unordered_set>

namespace sealwalk::exchange {

namespace {

using analysis::Survey;
using analysis::SurveyPoint;
using analysis::SurveyReading;
using nlohmann::json;

constexpr std::string_view kFormat = "sealwalk-survey-1";
constexpr std::string_view kFormatFamily = "sealwalk-survey-";

// Beyond these a number is a slip of the keyboard, not a measurement.
constexpr double kLargestRate = 1e6;     // in the file's unit
constexpr double kLargestPlace = 1e7;    // mm: 10 km
constexpr double kLargestStretch = 1e6;  // mm
constexpr double kLargestTime = 1e8;     // s: three years
constexpr double kLongestResponse = 1e5; // s

struct Range
{
    double low;
    double high;
    bool openLow = false;
    const char* says;
};

constexpr Range kPlace{-kLargestPlace, kLargestPlace, false, "a place in mm within 10 km"};
constexpr Range kStretch{0.0, kLargestStretch, false, "0 or more mm, at most 1 km"};
constexpr Range kStart{-kLargestTime, kLargestTime, false, "seconds, at most 1e8"};
constexpr Range kSpan{0.0, kLargestTime, true, "more than 0 s, at most 1e8"};
constexpr Range kDelay{0.0, kLargestTime, false, "0 or more seconds, at most 1e8"};
constexpr Range kResponse{0.0, kLongestResponse, false, "0 or more seconds, at most 1e5"};
constexpr Range kShare{0.0, 1.0, true, "more than 0, at most 1"};
constexpr Range kShown{-kLargestRate, kLargestRate, false, "a leak rate of at most 1e6 in the file's unit"};
constexpr Range kLimit{0.0, kLargestRate, true, "a leak rate above 0, at most 1e6 in the file's unit"};

tl::unexpected<Error> bad(const std::string& where, const std::string& what)
{
    return fail(ErrorCode::BadInput, fmt::format("{}: {}", where, what));
}

Status onlyKnownKeys(const json& object, const std::string& where,
                     std::initializer_list<std::string_view> known)
{
    for (const auto& item : object.items()) {
        if (std::ranges::find(known, item.key()) == known.end())
            return bad(where,
                       fmt::format("unknown key \"{}\"; known are {}", item.key(), fmt::join(known, ", ")));
    }
    return {};
}

Result<const json*> member(const json& object, const std::string& where, const char* key)
{
    const auto found = object.find(key);
    if (found == object.end())
        return bad(where, fmt::format("\"{}\" is missing", key));
    return &*found;
}

Result<double> number(const json& object, const std::string& where, const char* key, const Range& range)
{
    const Result<const json*> value = member(object, where, key);
    if (!value)
        return fail(value.error());
    if (!(*value)->is_number())
        return bad(where, fmt::format("\"{}\" must be a number, {}", key, range.says));
    const double result = (*value)->get<double>();
    const bool tooLow = range.openLow ? result <= range.low : result < range.low;
    if (!std::isfinite(result) || tooLow || result > range.high)
        return bad(where, fmt::format("\"{}\" is {}, but must be {}", key, result, range.says));
    return result;
}

Result<std::string> word(const json& object, const std::string& where, const char* key)
{
    const Result<const json*> value = member(object, where, key);
    if (!value)
        return fail(value.error());
    if (!(*value)->is_string())
        return bad(where, fmt::format("\"{}\" must be text in quotes", key));
    return (*value)->get<std::string>();
}

Result<int> pointNumber(const json& object, const std::string& where, const char* key)
{
    const Result<const json*> value = member(object, where, key);
    if (!value)
        return fail(value.error());
    constexpr std::int64_t kLargest = 1000000000;
    if (!(*value)->is_number_integer() || (*value)->get<std::int64_t>() < 1 ||
        (*value)->get<std::int64_t>() > kLargest)
        return bad(where, fmt::format("\"{}\" must be a whole number from 1 to {}", key, kLargest));
    return (*value)->get<int>();
}

Result<SurveyPoint> readPoint(const json& object, const std::string& where)
{
    if (!object.is_object())
        return bad(where, "must be an object in braces");
    if (const Status known =
            onlyKnownKeys(object, where, {"number", "joint", "view", "x_mm", "up_mm", "half_length_mm"});
        !known)
        return fail(known.error());
    const auto ordinal = pointNumber(object, where, "number");
    const auto joint = word(object, where, "joint");
    const auto view = word(object, where, "view");
    const auto x = number(object, where, "x_mm", kPlace);
    const auto up = number(object, where, "up_mm", kPlace);
    const auto half = number(object, where, "half_length_mm", kStretch);
    for (const Error* error : {ordinal ? nullptr : &ordinal.error(), joint ? nullptr : &joint.error(),
                               view ? nullptr : &view.error(), x ? nullptr : &x.error(),
                               up ? nullptr : &up.error(), half ? nullptr : &half.error()}) {
        if (error != nullptr)
            return fail(*error);
    }
    SurveyPoint point{*ordinal, *joint, *view, millimetres(*x), millimetres(*up), millimetres(*half)};
    point.isSetup = joint->starts_with("set-up") || joint->starts_with("setup");
    return point;
}

Status readOptional(const json& object, const std::string& where, SurveyReading& into)
{
    if (object.contains("delay_s")) {
        const auto delay = number(object, where, "delay_s", kDelay);
        if (!delay)
            return fail(delay.error());
        into.delay = seconds(*delay);
    }
    if (object.contains("condition")) {
        const auto condition = word(object, where, "condition");
        if (!condition)
            return fail(condition.error());
        into.condition = *condition;
    }
    if (object.contains("void")) {
        if (!object["void"].is_boolean())
            return bad(where, "\"void\" must be true or false");
        into.isVoid = object["void"].get<bool>();
    }
    return {};
}

Result<SurveyReading> readReading(const json& object, const std::string& where, LeakRate one)
{
    if (!object.is_object())
        return bad(where, "must be an object in braces");
    if (const Status known = onlyKnownKeys(
            object, where,
            {"point", "start_s", "dwell_s", "background", "peak", "delay_s", "condition", "void"});
        !known)
        return fail(known.error());
    const auto point = pointNumber(object, where, "point");
    const auto start = number(object, where, "start_s", kStart);
    const auto dwell = number(object, where, "dwell_s", kSpan);
    const auto background = number(object, where, "background", kShown);
    const auto peak = number(object, where, "peak", kShown);
    for (const Error* error : {point ? nullptr : &point.error(), start ? nullptr : &start.error(),
                               dwell ? nullptr : &dwell.error(), background ? nullptr : &background.error(),
                               peak ? nullptr : &peak.error()}) {
        if (error != nullptr)
            return fail(*error);
    }
    SurveyReading reading{*point, seconds(*start), seconds(*dwell), *background * one, *peak * one};
    if (const Status rest = readOptional(object, where, reading); !rest)
        return fail(rest.error());
    return reading;
}

Result<const json*> list(const json& root, const char* key)
{
    const Result<const json*> value = member(root, "survey", key);
    if (value && !(*value)->is_array())
        return bad("survey", fmt::format("\"{}\" must be a list in square brackets", key));
    return value;
}

Status readPoints(const json& array, Survey& survey, std::unordered_set<int>& numbers)
{
    for (std::size_t i = 0; i < array.size(); ++i) {
        const std::string where = fmt::format("points[{}]", i);
        const Result<SurveyPoint> point = readPoint(array[i], where);
        if (!point)
            return fail(point.error());
        if (!numbers.insert(point->number).second)
            return bad(where, fmt::format("point {} is there twice; numbers must be unique", point->number));
        survey.points.push_back(*point);
    }
    return {};
}

Status readReadings(const json& array, LeakRate one, const std::unordered_set<int>& numbers, Survey& survey)
{
    for (std::size_t i = 0; i < array.size(); ++i) {
        const std::string where = fmt::format("readings[{}]", i);
        const Result<SurveyReading> reading = readReading(array[i], where, one);
        if (!reading)
            return fail(reading.error());
        if (!numbers.contains(reading->point))
            return bad(where, fmt::format("there is no point {} in \"points\"", reading->point));
        if (!survey.readings.empty() && reading->start < survey.readings.back().start)
            return bad(where, fmt::format(
                                  "start_s {} is before the reading above it ({}); readings must be in order "
                                  "of time",
                                  inSeconds(reading->start), inSeconds(survey.readings.back().start)));
        survey.readings.push_back(*reading);
    }
    return {};
}

Status readHead(const json& root, Survey& survey, LeakRate& one)
{
    const auto unit = word(root, "survey", "unit");
    if (!unit)
        return fail(unit.error());
    const auto size = oneOfUnit(*unit);
    if (!size)
        return fail(size.error().in("unit"));
    one = *size;
    survey.unit = *unit;
    const auto limit = number(root, "survey", "limit", kLimit);
    const auto response = number(root, "survey", "response_s", kResponse);
    const auto share = root.contains("helium_fraction") ? number(root, "survey", "helium_fraction", kShare)
                                                        : Result<double>(1.0);
    for (const Error* error : {limit ? nullptr : &limit.error(), response ? nullptr : &response.error(),
                               share ? nullptr : &share.error()}) {
        if (error != nullptr)
            return fail(*error);
    }
    survey.limit = *limit * one;
    survey.response = seconds(*response);
    survey.heliumFraction = fraction(*share);
    return {};
}

Status checkFormat(const json& root)
{
    const auto format = word(root, "survey", "format");
    if (!format)
        return fail(format.error());
    if (*format == kFormat)
        return {};
    if (format->starts_with(kFormatFamily))
        return fail(ErrorCode::NewerVersion,
                    fmt::format("survey: format \"{}\" is not known here; this version reads \"{}\"", *format,
                                kFormat));
    return bad("survey", fmt::format("\"format\" is \"{}\", but must be \"{}\"", *format, kFormat));
}

Result<Survey> readSurvey(const json& root)
{
    if (!root.is_object())
        return bad("survey", "must be one JSON object in braces");
    if (const Status format = checkFormat(root); !format)
        return fail(format.error());
    if (const Status known =
            onlyKnownKeys(root, "survey",
                          {"format", "unit", "limit", "helium_fraction", "response_s", "points", "readings"});
        !known)
        return fail(known.error());
    Survey survey;
    LeakRate one;
    if (const Status head = readHead(root, survey, one); !head)
        return fail(head.error());
    const auto points = list(root, "points");
    if (!points)
        return fail(points.error());
    std::unordered_set<int> numbers;
    if (const Status status = readPoints(**points, survey, numbers); !status)
        return fail(status.error());
    // A plan is made before there are any readings.
    if (!root.contains("readings"))
        return survey;
    const auto readings = list(root, "readings");
    if (!readings)
        return fail(readings.error());
    if (const Status status = readReadings(**readings, one, numbers, survey); !status)
        return fail(status.error());
    return survey;
}

} // namespace

Result<Survey> parseSurvey(std::string_view text)
{
    const Result<json> root = parseJson(text);
    if (!root)
        return fail(root.error());
    return readSurvey(*root);
}

Result<Survey> readSurveyFile(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    if (!file)
        return fail(ErrorCode::NotFound, fmt::format("{}: there is no such file that can be read", path));
    std::ostringstream text;
    text << file.rdbuf();
    if (file.bad())
        return fail(ErrorCode::MachineFailed, fmt::format("{}: reading failed half way", path));
    Result<Survey> survey = parseSurvey(std::move(text).str());
    if (!survey)
        return fail(survey.error().in(path));
    return survey;
}

} // namespace sealwalk::exchange
