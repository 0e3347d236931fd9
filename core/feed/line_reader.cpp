// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/feed/line_reader.h"

#include "core/base/timestamp.h"
#include "core/feed/line_pattern.h"
#include "core/quantities/number_text.h"
#include "core/quantities/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

namespace sealwalk::feed {

namespace {

constexpr std::string_view kBlanks = " \t";
constexpr double kMillisecondsPerSecond = 1000.0;

std::string_view trimmed(std::string_view text)
{
    const std::size_t first = text.find_first_not_of(kBlanks);
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(kBlanks) - first + 1);
}

char signOf(Separator separator)
{
    switch (separator) {
    case Separator::Comma:
        return ',';
    case Separator::Semicolon:
        return ';';
    case Separator::Tab:
        return '\t';
    case Separator::Blank:
        break;
    }
    return ' ';
}

/// The text of the 1-based column; none when the line has fewer.
std::optional<std::string_view> columnOf(std::string_view line, int column, Separator separator)
{
    if (separator == Separator::Blank) {
        line = trimmed(line);
        for (int i = 1; i < column; ++i) {
            const std::size_t end = line.find_first_of(kBlanks);
            if (end == std::string_view::npos)
                return std::nullopt;
            line = trimmed(line.substr(end));
        }
        if (line.empty())
            return std::nullopt;
        return line.substr(0, line.find_first_of(kBlanks));
    }
    const char sign = signOf(separator);
    for (int i = 1; i < column; ++i) {
        const std::size_t end = line.find(sign);
        if (end == std::string_view::npos)
            return std::nullopt;
        line.remove_prefix(end + 1);
    }
    return trimmed(line.substr(0, line.find(sign)));
}

Result<std::string_view> requireColumn(std::string_view line, int column, Separator separator)
{
    const auto text = columnOf(line, column, separator);
    if (!text)
        return fail(ErrorCode::BadInput, fmt::format("no column {}", column));
    return *text;
}

/// Whether what follows a number may be its unit, and not the rest of a number that was damaged on the way:
/// "1.2e?-9" is not 1.2. No unit of leak rate begins with an e.
bool mayBeUnit(std::string_view rest)
{
    const char first = rest.front();
    const bool isLetter = (first >= 'a' && first <= 'z') || (first >= 'A' && first <= 'Z') ||
                          static_cast<unsigned char>(first) >= 0x80;
    return isLetter && first != 'e' && first != 'E' && rest.find('?') == std::string_view::npos;
}

/// The unit of leak rate that a text begins with; none when it begins with something else.
std::optional<Unit> unitAtStart(std::string_view text)
{
    constexpr int kMostWords = 3; // "Pa m3 s-1"
    text = trimmed(text);
    std::vector<std::string_view> starts;
    std::size_t end = 0;
    for (int word = 0; word < kMostWords && end < text.size(); ++word) {
        end = text.find_first_not_of(kBlanks, end);
        end = std::min(text.find_first_of(kBlanks, end), text.size());
        starts.push_back(text.substr(0, end));
    }
    for (auto start = starts.rbegin(); start != starts.rend(); ++start)
        if (auto unit = readUnit(*start, UnitKind::LeakRates))
            return *unit;
    return std::nullopt;
}

Result<double> timeIn(std::string_view text)
{
    if (const auto seconds = parseNumber(text))
        return *seconds;
    if (const auto moment = Timestamp::parse(text))
        return static_cast<double>(moment->utcMilliseconds) / kMillisecondsPerSecond;
    return fail(ErrorCode::BadInput, fmt::format("\"{}\" is not a time", text));
}

} // namespace

LineReader::LineReader(LineFormat format, const FlowBasis& basis)
    : m_format(std::move(format))
    , m_basis(basis)
    , m_unit(leakRateUnit(m_format.unit))
    , m_fault(checkFormat(m_format))
{}

Result<LineValue> LineReader::read(std::string_view line) const
{
    if (!m_fault)
        return fail(m_fault.error());
    Result<double> value = fail(ErrorCode::BadInput, "");
    if (m_format.byPattern) {
        const auto text = numberIn(line, m_format.pattern);
        if (!text)
            return fail(ErrorCode::BadInput, "does not fit the pattern");
        const std::string_view rest(text->end(), static_cast<std::size_t>(line.end() - text->end()));
        if (!rest.empty() && (rest.front() == '?' || rest.front() == 'e' || rest.front() == 'E'))
            return fail(ErrorCode::BadInput, fmt::format("\"{}\" is damaged", line));
        if (const Status unit = checkUnit(rest); !unit)
            return fail(unit.error());
        value = parseNumber(*text);
    } else {
        const auto text = requireColumn(line, m_format.column, m_format.separator);
        if (!text)
            return fail(text.error());
        value = number(*text);
        if (value)
            if (const Status unit = checkUnit(afterColumn(*text, line)); !unit)
                return fail(unit.error());
    }
    if (!value)
        return fail(value.error());
    const auto rate = rateOf(*value);
    if (!rate)
        return fail(rate.error());
    LineValue result{*rate, std::nullopt};
    if (m_format.timeColumn) {
        const auto text = requireColumn(line, *m_format.timeColumn, m_format.separator);
        if (!text)
            return fail(text.error());
        const auto time = timeIn(*text);
        if (!time)
            return fail(time.error());
        result.time = *time;
    }
    return result;
}

/// What follows the number of a column: the rest of it, or the column after it.
std::string_view LineReader::afterColumn(std::string_view column, std::string_view line) const
{
    std::string_view after(column.begin() + numberLength(column), line.end());
    if (m_format.separator == Separator::Blank)
        return after;
    after = trimmed(after);
    const char sign = signOf(m_format.separator);
    if (!after.empty() && after.front() == sign)
        after.remove_prefix(1);
    return after.substr(0, after.find(sign));
}

/// The number a column starts with; a unit may follow.
Result<double> LineReader::number(std::string_view text) const
{
    const std::size_t length = numberLength(text);
    const std::string_view rest = trimmed(text.substr(length));
    if (length == 0)
        return fail(ErrorCode::BadInput, fmt::format("\"{}\" is not a number", text));
    if (!rest.empty() && !mayBeUnit(rest))
        return fail(ErrorCode::BadInput, fmt::format("\"{}\" is not one number", text));
    return parseNumber(text.substr(0, length));
}

/// Whether what follows a number in its line does not name another unit than the one set up: that would be
/// wrong by a factor and nobody would see it.
Status LineReader::checkUnit(std::string_view after) const
{
    const auto written = unitAtStart(after);
    if (!written)
        return {};
    if (m_format.meaning != Meaning::Rate)
        return fail(ErrorCode::BadInput, fmt::format("{} is written, volts are set up", written->id));
    if (written->id != idOf(*m_unit))
        return fail(ErrorCode::BadInput,
                    fmt::format("{} is written, {} is set up", written->id, idOf(*m_unit)));
    return {};
}

Result<LeakRate> LineReader::rateOf(double number) const
{
    double shown = number;
    if (m_format.meaning == Meaning::LinearVolts)
        shown = number * m_format.factor + m_format.offset;
    else if (m_format.meaning == Meaning::DecadeVolts)
        shown = std::pow(10.0, number * m_format.decadesPerVolt + m_format.exponentAtZero);
    auto rate = leakRate(shown, *m_unit, m_basis);
    // Traces keep single precision: what does not fit there is no leak rate either.
    if (rate && !std::isfinite(static_cast<float>(rate->si())))
        return fail(ErrorCode::BadInput, fmt::format("{} is too much for a leak rate", number));
    return rate;
}

} // namespace sealwalk::feed
