// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/timestamp.h"

#include <fmt/format.h>

#include <charconv>
#include <chrono>
#include <ctime>
#include <optional>

namespace sealwalk {

namespace {

using namespace std::chrono;

constexpr std::int64_t kMillisecondsPerMinute = 60'000;

std::optional<int> digits(std::string_view text, std::size_t from, std::size_t count)
{
    if (text.size() < from + count)
        return std::nullopt;
    int value = 0;
    for (std::size_t i = from; i < from + count; ++i) {
        if (text[i] < '0' || text[i] > '9')
            return std::nullopt;
        value = value * 10 + (text[i] - '0');
    }
    return value;
}

bool isAt(std::string_view text, std::size_t place, char wanted)
{
    return place < text.size() && text[place] == wanted;
}

std::optional<sys_days> dateOf(std::string_view text)
{
    const auto y = digits(text, 0, 4);
    const auto m = digits(text, 5, 2);
    const auto d = digits(text, 8, 2);
    if (!y || !m || !d || !isAt(text, 4, '-') || !isAt(text, 7, '-'))
        return std::nullopt;
    const year_month_day date{year{*y}, month{static_cast<unsigned>(*m)}, day{static_cast<unsigned>(*d)}};
    if (!date.ok())
        return std::nullopt;
    return sys_days{date};
}

/// Minutes of "+hh:mm", "-hh:mm" or "Z"; none when the text is anything else.
std::optional<int> offsetOf(std::string_view text)
{
    if (text == "Z" || text == "z")
        return 0;
    if (text.size() != 6 || (text[0] != '+' && text[0] != '-') || text[3] != ':')
        return std::nullopt;
    const auto hours = digits(text, 1, 2);
    const auto minutes = digits(text, 4, 2);
    if (!hours || !minutes || *hours > 18 || *minutes > 59)
        return std::nullopt;
    const int total = *hours * 60 + *minutes;
    return text[0] == '-' ? -total : total;
}

struct LocalParts
{
    year_month_day date;
    hh_mm_ss<milliseconds> time;
};

LocalParts localParts(const Timestamp& at)
{
    const sys_time<milliseconds> local{
        milliseconds{at.utcMilliseconds + at.offsetMinutes * kMillisecondsPerMinute}};
    const auto midnight = floor<days>(local);
    return {year_month_day{midnight}, hh_mm_ss<milliseconds>{local - midnight}};
}

} // namespace

Timestamp Timestamp::now()
{
    const auto moment = time_point_cast<milliseconds>(system_clock::now());
    const std::time_t seconds = system_clock::to_time_t(moment);
    std::tm local{};
    localtime_r(&seconds, &local);
    return {moment.time_since_epoch().count(), static_cast<int>(local.tm_gmtoff / 60)};
}

Result<Timestamp> Timestamp::parse(std::string_view text)
{
    const auto refuse = [&] {
        return fail(ErrorCode::BadInput,
                    "\"" + std::string(text.substr(0, 60)) +
                        "\" is not a time with its offset; write 2026-03-01T14:05:09+01:00");
    };
    const auto date = dateOf(text);
    const auto hour = digits(text, 11, 2);
    const auto minute = digits(text, 14, 2);
    const auto second = digits(text, 17, 2);
    if (!date || !hour || !minute || !second || !(isAt(text, 10, 'T') || isAt(text, 10, ' ')) ||
        !isAt(text, 13, ':') || !isAt(text, 16, ':') || *hour > 23 || *minute > 59 || *second > 59)
        return refuse();

    std::size_t rest = 19;
    int thousandths = 0;
    if (isAt(text, rest, '.') || isAt(text, rest, ',')) {
        ++rest;
        int scale = 100;
        const std::size_t first = rest;
        while (rest < text.size() && text[rest] >= '0' && text[rest] <= '9') {
            thousandths += (text[rest] - '0') * scale; // digits beyond the third fall away
            scale /= 10;
            ++rest;
        }
        if (rest == first)
            return refuse();
    }
    const auto offset = offsetOf(text.substr(rest));
    if (!offset)
        return refuse();

    const milliseconds local = duration_cast<milliseconds>(date->time_since_epoch()) + hours{*hour} +
                               minutes{*minute} + seconds{*second} + milliseconds{thousandths};
    return Timestamp{local.count() - *offset * kMillisecondsPerMinute, *offset};
}

Result<Timestamp> Timestamp::parseDate(std::string_view text)
{
    const auto date = text.size() == 10 ? dateOf(text) : std::nullopt;
    if (!date)
        return fail(ErrorCode::BadInput, "\"" + std::string(text.substr(0, 60)) +
                                             "\" is not a date; write year-month-day, such as 2026-03-01");
    return Timestamp{duration_cast<milliseconds>(date->time_since_epoch()).count(), 0};
}

std::string Timestamp::text() const
{
    const LocalParts parts = localParts(*this);
    const int offset = offsetMinutes < 0 ? -offsetMinutes : offsetMinutes;
    return fmt::format("{}T{:02}:{:02}:{:02}.{:03}{}{:02}:{:02}", date(), parts.time.hours().count(),
                       parts.time.minutes().count(), parts.time.seconds().count(),
                       parts.time.subseconds().count(), offsetMinutes < 0 ? '-' : '+', offset / 60,
                       offset % 60);
}

std::string Timestamp::date() const
{
    const LocalParts parts = localParts(*this);
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(parts.date.year()),
                       static_cast<unsigned>(parts.date.month()), static_cast<unsigned>(parts.date.day()));
}

std::string Timestamp::timeOfDay() const
{
    const LocalParts parts = localParts(*this);
    return fmt::format("{:02}:{:02}:{:02}", parts.time.hours().count(), parts.time.minutes().count(),
                       parts.time.seconds().count());
}

double Timestamp::secondsSince(const Timestamp& earlier) const
{
    return static_cast<double>(utcMilliseconds - earlier.utcMilliseconds) / 1000.0;
}

} // namespace sealwalk
