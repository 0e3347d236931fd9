// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/reading_line.h"

#include "core/base/utf8.h"
#include "core/exchange/canonical_json.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>
#include <pwd.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace sealwalk::cli {
namespace {

using model::Outcome;
using nlohmann::json;

/// Somebody made a reading, and does not approve it: where nobody is named, it is who runs the program.
std::string loginName()
{
    constexpr std::size_t kRoom = 4096;
    std::array<char, kRoom> room{};
    passwd entry{};
    passwd* found = nullptr;
    if (::getpwuid_r(::getuid(), &entry, room.data(), room.size(), &found) == 0 && found != nullptr &&
        isUtf8(found->pw_name) && *found->pw_name != '\0')
        return found->pw_name;
    return "command line";
}

/// Takes keys out of the line's object; what is left over is unknown.
class Keys
{
public:
    explicit Keys(json object)
        : m_object(std::move(object))
    {}

    std::optional<json> take(const char* key)
    {
        const auto found = m_object.find(key);
        if (found == m_object.end())
            return std::nullopt;
        json value = *found;
        m_object.erase(found);
        return value;
    }

    Status text(const char* key, std::string& into)
    {
        const auto value = take(key);
        if (!value)
            return {};
        if (!value->is_string())
            return fail(ErrorCode::BadInput, fmt::format("\"{}\" must be a text", key));
        into = value->get<std::string>();
        return {};
    }

    Status flag(const char* key, bool& into)
    {
        const auto value = take(key);
        if (!value)
            return {};
        if (!value->is_boolean())
            return fail(ErrorCode::BadInput, fmt::format("\"{}\" must be true or false", key));
        into = value->get<bool>();
        return {};
    }

    /// A finite number, not below 0 unless `signedAllowed`.
    Status number(const char* key, std::optional<double>& into, bool signedAllowed = false)
    {
        const auto value = take(key);
        if (!value)
            return {};
        if (!value->is_number() || !std::isfinite(value->get<double>()))
            return fail(ErrorCode::BadInput, fmt::format("\"{}\" must be a finite number", key));
        const double got = value->get<double>();
        if (got < 0.0 && !signedAllowed)
            return fail(ErrorCode::BadInput, fmt::format("\"{}\" is {}; it must not be below 0", key, got));
        into = got;
        return {};
    }

    Status whole(const char* key, std::optional<std::int64_t>& into)
    {
        const auto value = take(key);
        if (!value)
            return {};
        if (!value->is_number_integer())
            return fail(ErrorCode::BadInput, fmt::format("\"{}\" must be a whole number", key));
        into = value->get<std::int64_t>();
        return {};
    }

    template <class E>
    Status word(const char* key, std::optional<E>& into)
    {
        std::string text;
        const bool isThere = m_object.contains(key);
        if (Status ok = this->text(key, text); !ok || !isThere)
            return ok;
        const Result<E> known = model::fromName<E>(text);
        if (!known)
            return fail(known.error().in(fmt::format("\"{}\"", key)));
        into = *known;
        return {};
    }

    [[nodiscard]] Status nothingLeft() const
    {
        if (m_object.empty())
            return {};
        return fail(ErrorCode::BadInput,
                    fmt::format("\"{}\" is not a key of a reading", m_object.begin().key()));
    }

private:
    json m_object;
};

Status readPoint(Keys& keys, const LineFrame& frame, model::Reading& reading)
{
    std::optional<std::int64_t> number;
    if (Status ok = keys.whole("point", number); !ok)
        return ok;
    if (!number)
        return fail(ErrorCode::BadInput, "\"point\" is missing; give the point's number");
    const auto& points = frame.job->sketch.points;
    const auto found = std::find_if(points.begin(), points.end(),
                                    [&](const model::TestPoint& p) { return p.number == *number; });
    if (found == points.end())
        return fail(ErrorCode::NotFound, fmt::format("job {} has no point {}", frame.job->number, *number));
    if (found->retired)
        return fail(ErrorCode::NotAllowed, fmt::format("point {} of job {} is retired and is read no more",
                                                       *number, frame.job->number));
    const model::Round* round = frame.job->round(frame.round);
    if (round != nullptr &&
        std::find(round->points.begin(), round->points.end(), found->id) == round->points.end())
        return fail(ErrorCode::NotAllowed, fmt::format("round {} of job {} does not call point {}",
                                                       round->number, frame.job->number, *number));
    reading.point = found->id;
    return {};
}

/// [38, 40]: numbers of points that were taped or bagged off meanwhile.
Status readShielded(Keys& keys, const LineFrame& frame, model::Reading& reading)
{
    const auto numbers = keys.take("taped_off");
    if (!numbers)
        return {};
    if (!numbers->is_array())
        return fail(ErrorCode::BadInput, "\"taped_off\" must be a list of point numbers, such as [38, 40]");
    for (const json& number : *numbers) {
        const model::TestPoint* point =
            number.is_number_integer() && number > 0 && number < std::numeric_limits<int>::max()
                ? frame.job->sketch.pointNumbered(number.get<int>())
                : nullptr;
        if (point == nullptr)
            return fail(ErrorCode::NotFound, fmt::format("job {} has no point {} to be taped off",
                                                         frame.job->number, number.dump()));
        if (point->id == reading.point)
            return fail(ErrorCode::BadInput,
                        fmt::format("point {} cannot be sprayed and taped off at once", point->number));
        if (std::ranges::find(reading.shielded, point->id) == reading.shielded.end())
            reading.shielded.push_back(point->id);
    }
    return {};
}

Status readTime(Keys& keys, model::Reading& reading)
{
    std::string at;
    if (Status ok = keys.text("at", at); !ok)
        return ok;
    if (at.empty()) {
        reading.at = Timestamp::now();
        return {};
    }
    const auto parsed = Timestamp::parse(at);
    if (!parsed)
        return fail(parsed.error().in("\"at\""));
    reading.at = *parsed;
    return {};
}

Status readRates(Keys& keys, const LineFrame& frame, model::Reading& reading)
{
    std::optional<double> peak;
    std::optional<double> background;
    if (Status ok = keys.number("peak", peak, true); !ok)
        return ok;
    if (Status ok = keys.number("background", background, true); !ok)
        return ok;
    if (background)
        reading.background = *background * frame.one;
    if (peak) {
        reading.peak = *peak * frame.one;
        reading.entered = fmt::format("{} {}", *peak, frame.unit);
    }
    return {};
}

Status readTimes(Keys& keys, model::Reading& reading)
{
    const std::pair<const char*, std::optional<Duration>*> spans[] = {
        {"dwell_s", &reading.dwell}, {"delay_s", &reading.delay}, {"clean_up_s", &reading.cleanUp}};
    for (const auto& span : spans) {
        std::optional<double> value;
        if (Status ok = keys.number(span.first, value); !ok)
            return ok;
        if (value)
            *span.second = seconds(*value);
    }
    return {};
}

Status readOutcome(Keys& keys, model::Reading& reading)
{
    std::optional<Outcome> outcome;
    std::optional<model::Condition> condition;
    if (Status ok = keys.word("outcome", outcome); !ok)
        return ok;
    if (Status ok = keys.word("condition", condition); !ok)
        return ok;
    reading.condition = condition.value_or(model::Condition::AtRest);
    if (!outcome && !reading.peak)
        return fail(ErrorCode::BadInput,
                    "\"peak\" is missing; give it, or an \"outcome\" such as \"no response\"");
    reading.outcome = outcome.value_or(Outcome::Value);
    const bool needsPeak = reading.outcome == Outcome::Value || reading.outcome == Outcome::AboveRange;
    if (needsPeak && !reading.peak)
        return fail(ErrorCode::BadInput, "\"peak\" is missing for this outcome");
    const bool needsReason =
        reading.outcome == Outcome::NotAccessible || reading.outcome == Outcome::NotTested;
    if (needsReason && reading.reason.empty())
        return fail(ErrorCode::BadInput, "\"reason\" is missing: say why there is no reading");
    return {};
}

Status readCorrection(Keys& keys, const LineFrame& frame, model::Reading& reading)
{
    std::optional<std::int64_t> corrects;
    if (Status ok = keys.whole("corrects", corrects); !ok || !corrects)
        return ok;
    const auto& readings = frame.job->readings;
    const auto found = std::find_if(readings.begin(), readings.end(),
                                    [&](const model::Reading& r) { return r.sequence == *corrects; });
    if (found == readings.end())
        return fail(ErrorCode::NotFound,
                    fmt::format("job {} had no reading {} when this began; only those can be "
                                "corrected",
                                frame.job->number, *corrects));
    reading.corrects = found->id;
    return {};
}

} // namespace

Result<model::Reading> readingFromLine(std::string_view line, const LineFrame& frame)
{
    auto document = exchange::parseJson(line);
    if (!document)
        return fail(document.error());
    if (!document->is_object())
        return fail(ErrorCode::BadInput, "a reading is a JSON object, {\"point\": 7, …}");
    Keys keys(std::move(*document));
    model::Reading reading;
    reading.id = model::ReadingId::create();
    reading.round = frame.round;
    reading.entry = model::Entry::CommandLine;
    reading.by = frame.by;
    const auto readAll = [&]() -> Status {
        const std::pair<const char*, std::string*> texts[] = {{"by", &reading.by},
                                                              {"reason", &reading.reason},
                                                              {"remark", &reading.remark},
                                                              {"condition_detail", &reading.conditionDetail}};
        for (const auto& text : texts)
            if (Status ok = keys.text(text.first, *text.second); !ok)
                return ok;
        for (const Status& ok :
             {readPoint(keys, frame, reading), readShielded(keys, frame, reading), readTime(keys, reading),
              readRates(keys, frame, reading), readTimes(keys, reading), keys.flag("gentle", reading.gentle),
              keys.flag("confirmed", reading.confirmed), readOutcome(keys, reading),
              readCorrection(keys, frame, reading)})
            if (!ok)
                return ok;
        return keys.nothingLeft();
    };
    if (const Status ok = readAll(); !ok)
        return fail(ok.error());
    if (reading.by.find_first_not_of(' ') == std::string::npos)
        reading.by = loginName();
    return reading;
}

} // namespace sealwalk::cli
