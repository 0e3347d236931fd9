// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/background_file.h"

#include "core/quantities/entered_number.h"

#include <algorithm>
#include <optional>
#include <string>
#include <utility>

namespace sealwalk::exchange {

namespace {

constexpr std::size_t kFewest = 5; // as many as the summary needs

std::vector<std::string_view> cells(std::string_view line, DecimalMark mark)
{
    // A comma between two numbers separates only where it cannot be a decimal mark.
    const bool commaSeparates = mark == DecimalMark::Point && line.find(';') == std::string_view::npos;
    std::vector<std::string_view> found;
    std::size_t from = 0;
    const auto separates = [&](char c) {
        return c == ' ' || c == '\t' || c == ';' || c == '\r' || (c == ',' && commaSeparates);
    };
    for (std::size_t i = 0; i <= line.size(); ++i) {
        if (i < line.size() && !separates(line[i]))
            continue;
        if (i > from)
            found.push_back(line.substr(from, i - from));
        from = i + 1;
    }
    return found;
}

/// A plain number, or the short form of the trade: "3.2-10".
Result<double> number(std::string_view text, DecimalMark mark)
{
    Result<double> plain = parseNumber(text, mark);
    if (plain)
        return plain;
    const EnteredNumber entered = readEntered(text);
    if (entered.state == EnteredNumber::State::Complete && entered.value)
        return *entered.value;
    return plain;
}

/// The two sides of "1e-7 +- 2e-8", where that line is all there is but blanks and remarks.
std::optional<std::pair<std::string_view, std::string_view>> levelAndSwing(std::string_view text)
{
    std::string_view only;
    for (std::size_t from = 0; from < text.size();) {
        const std::size_t end = std::min(text.find('\n', from), text.size());
        const std::string_view line = text.substr(from, end - from);
        from = end + 1;
        const std::size_t first = line.find_first_not_of(" \t\r");
        if (first == std::string_view::npos || line[first] == '#')
            continue;
        if (!only.empty())
            return std::nullopt;
        only = line;
    }
    for (const std::string_view sign : {"\u00B1", "+/-", "+-"})
        if (const std::size_t at = only.find(sign); at != std::string_view::npos)
            return std::pair(only.substr(0, at), only.substr(at + sign.size()));
    return std::nullopt;
}

Result<LeakRate> rateIn(std::string_view text, const BackgroundOptions& options)
{
    const auto found = cells(text, options.mark);
    if (found.size() != 1)
        return fail(ErrorCode::BadInput,
                    "level and swing are one number each, as 1e-7 +- 2e-8, and all there is");
    const auto typed = number(found.front(), options.mark);
    return typed ? leakRate(*typed, options.unit) : Result<LeakRate>(fail(typed.error()));
}

Result<BackgroundSeries> byEye(std::string_view level, std::string_view swing,
                               const BackgroundOptions& options)
{
    const auto middle = rateIn(level, options);
    if (!middle)
        return fail(middle.error());
    const auto half = rateIn(swing, options);
    if (!half)
        return fail(half.error());
    if (!(half->si() > 0.0))
        return fail(ErrorCode::BadInput, "the swing of the background must be above zero");
    return BackgroundSeries{{0.0}, {*middle}, *half};
}

class Reader
{
public:
    explicit Reader(const BackgroundOptions& options)
        : m_options(options)
    {}

    Status takeLine(std::string_view line, std::size_t lineNumber)
    {
        const auto found = cells(line, m_options.mark);
        if (found.empty() || found.front().front() == '#')
            return {};
        if (m_series.values.empty() && !m_headerSeen && numberLength(found.front()) == 0) {
            m_headerSeen = true;
            return {};
        }
        const std::string where = "line " + std::to_string(lineNumber);
        if (found.size() > 2)
            return fail(ErrorCode::BadInput, where + " has " + std::to_string(found.size()) +
                                                 " numbers; right is a value, or seconds and a value");
        if (m_withTimes && *m_withTimes != (found.size() == 2))
            return fail(ErrorCode::BadInput, where + ": every line needs a time, or none");
        m_withTimes = found.size() == 2;
        return takeNumbers(found, where);
    }

    [[nodiscard]] const BackgroundSeries& series() const { return m_series; }

private:
    Status takeNumbers(const std::vector<std::string_view>& found, const std::string& where)
    {
        double time = static_cast<double>(m_series.values.size()) * m_options.interval;
        if (found.size() == 2) {
            const auto typed = number(found.front(), m_options.mark);
            if (!typed)
                return fail(typed.error().in(where));
            if (!m_first)
                m_first = *typed;
            time = *typed - *m_first;
        }
        if (!m_series.times.empty() && time <= m_series.times.back())
            return fail(ErrorCode::BadInput, where + ": times must increase");
        const auto value = number(found.back(), m_options.mark);
        if (!value)
            return fail(value.error().in(where));
        const auto rate = leakRate(*value, m_options.unit);
        if (!rate)
            return fail(rate.error().in(where));
        m_series.times.push_back(time);
        m_series.values.push_back(*rate);
        return {};
    }

    const BackgroundOptions& m_options;
    BackgroundSeries m_series;
    std::optional<bool> m_withTimes;
    std::optional<double> m_first;
    bool m_headerSeen = false;
};

} // namespace

Result<BackgroundSeries> parseBackground(std::string_view text, const BackgroundOptions& options)
{
    if (!(options.interval > 0.0))
        return fail(ErrorCode::BadInput, "the time between two values must be above 0 s");
    if (const auto parts = levelAndSwing(text))
        return byEye(parts->first, parts->second, options);
    Reader reader(options);
    std::size_t lineNumber = 0;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        if (const Status taken = reader.takeLine(text.substr(0, end), ++lineNumber); !taken)
            return fail(taken.error());
        text = end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
    }
    if (reader.series().values.size() < kFewest)
        return fail(ErrorCode::BadInput,
                    "a background needs at least 5 values, better 20 over a minute; there are " +
                        std::to_string(reader.series().values.size()));
    return reader.series();
}

} // namespace sealwalk::exchange
