// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/rise_file.h"

#include "core/exchange/files.h"
#include "core/quantities/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <optional>
#include <vector>

namespace sealwalk::exchange {

namespace {

using analysis::RiseRecord;

constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";
constexpr std::uint64_t kLargestFile = std::uint64_t{512} << 20; // some ten million lines
constexpr double kColdest = 150.0;                               // K
constexpr double kHottest = 600.0;                               // K
constexpr std::size_t kLongestQuote = 30;                        // of a wrong value, in a sentence

enum Column : std::size_t
{
    Time,
    PressureColumn,
    TemperatureColumn,
    ColumnCount
};

struct Header
{
    bool isWritten = true; ///< false: made for bare numbers
    char separator = ',';
    std::size_t fields = 0;
    std::array<std::optional<std::size_t>, ColumnCount> place;
    std::array<Unit, ColumnCount> unit;
};

tl::unexpected<Error> bad(std::size_t line, const std::string& what)
{
    return fail(ErrorCode::BadInput, fmt::format("line {}: {}", line, what));
}

std::string_view trimmed(std::string_view text)
{
    const auto blank = [](char c) { return c == ' ' || c == '\t' || c == '\r'; };
    while (!text.empty() && blank(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && blank(text.back()))
        text.remove_suffix(1);
    return text;
}

/// A field without the blanks around it and the quotes RFC 4180 allows.
std::string_view field(std::string_view text)
{
    text = trimmed(text);
    if (text.size() >= 2 && text.front() == '"' && text.back() == '"')
        text = trimmed(text.substr(1, text.size() - 2));
    return text;
}

std::string quoted(std::string_view text)
{
    const bool cut = text.size() > kLongestQuote;
    std::string shown;
    for (const char c : text.substr(0, kLongestQuote))
        shown += static_cast<unsigned char>(c) < 0x20 ? '?' : c;
    return fmt::format("\"{}{}\"", shown, cut ? "..." : "");
}

/// Cuts the next field off the front of `rest`; false when nothing is left.
bool nextField(std::string_view& rest, bool& more, char separator, std::string_view& value)
{
    if (!more)
        return false;
    const std::size_t end = rest.find(separator);
    more = end != std::string_view::npos;
    value = field(rest.substr(0, end));
    rest = more ? rest.substr(end + 1) : std::string_view{};
    return true;
}

Result<Header> readHeader(std::string_view line, std::size_t number)
{
    constexpr const char* kRight = "the first line must name the columns, as in \"time_s,pressure_mbar\"";
    Header header;
    header.separator = line.find(';') != std::string_view::npos ? ';' : ',';
    std::string_view rest = line;
    std::string_view name;
    for (bool more = true; nextField(rest, more, header.separator, name); ++header.fields) {
        const std::size_t cut = name.find('_');
        const std::string_view what = name.substr(0, cut);
        constexpr std::array<std::string_view, ColumnCount> kNames = {"time", "pressure", "temperature"};
        constexpr std::array<UnitKind, ColumnCount> kKinds = {UnitKind::Times, UnitKind::Pressures,
                                                              UnitKind::Temperatures};
        const auto known = std::find(kNames.begin(), kNames.end(), what);
        if (known == kNames.end() || cut == std::string_view::npos)
            return bad(number, fmt::format("{} is no column known here; {}", quoted(name), kRight));
        const auto column = static_cast<std::size_t>(known - kNames.begin());
        if (header.place[column])
            return bad(number, fmt::format("the column {} comes twice", what));
        const auto unit = readUnit(name.substr(cut + 1), kKinds[column]);
        if (!unit)
            return bad(number, fmt::format("column {}: {}", quoted(name), unit.error().message));
        header.unit[column] = *unit;
        header.place[column] = header.fields;
    }
    if (!header.place[Time] || !header.place[PressureColumn])
        return bad(number, fmt::format("a column for time or pressure is missing; {}", kRight));
    return header;
}

std::optional<double> readNumber(std::string_view text, bool commaAllowed)
{
    std::array<char, 64> copy{};
    if (commaAllowed && text.find(',') != std::string_view::npos) {
        // One comma and no point: anything else could as well be groups of thousands.
        if (text.size() >= copy.size() || text.find('.') != std::string_view::npos)
            return std::nullopt;
        std::copy(text.begin(), text.end(), copy.begin());
        const std::size_t comma = text.find(',');
        copy[comma] = '.';
        text = {copy.data(), text.size()};
    }
    if (text.starts_with('+'))
        text.remove_prefix(1);
    double value = 0.0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(value))
        return std::nullopt;
    return value;
}

Status readSample(std::string_view line, std::size_t number, const Header& header, RiseRecord& record)
{
    std::array<double, ColumnCount> values = {};
    std::string_view rest = line;
    std::string_view text;
    std::size_t place = 0;
    for (bool more = true; nextField(rest, more, header.separator, text); ++place) {
        for (std::size_t column = 0; column < ColumnCount; ++column) {
            if (header.place[column] != place)
                continue;
            const auto value = readNumber(text, header.separator == ';');
            if (!value)
                return bad(number, fmt::format("{} is not a number such as {}", quoted(text),
                                               header.separator == ';' ? "0.25 or 0,25" : "0.25"));
            values[column] = toSi(*value, header.unit[column]);
        }
    }
    if (place != header.fields && !header.isWritten)
        return bad(number, fmt::format("{} numbers where a time and a pressure are wanted", place));
    if (place != header.fields)
        return bad(number, fmt::format("{} values where the header names {} columns{}", place, header.fields,
                                       header.separator == ',' && place > header.fields
                                           ? "; decimal commas need semicolons between the columns"
                                           : ""));
    if (!record.time.empty() && !(values[Time] > record.time.back()))
        return bad(number, "the time does not lie after that of the line before; times must increase");
    record.time.push_back(values[Time]);
    record.pressure.push_back(values[PressureColumn]);
    if (header.place[TemperatureColumn]) {
        const double kelvin = values[TemperatureColumn];
        if (!(kelvin >= kColdest && kelvin <= kHottest))
            return bad(number, "the temperature must be from -123 to 327 degC");
        record.temperature.push_back(kelvin);
    }
    return {};
}

constexpr std::string_view kBlanks = " \t\r\n";

/// How the two numbers of a line without a header are parted.
struct Parting
{
    char separator = ',';
    bool byBlanks = false; ///< runs of them stand for the separator
};

Parting partingOf(std::string_view line)
{
    if (line.find(';') != std::string_view::npos)
        return {';', false};
    const std::size_t blank = line.find_first_of(kBlanks);
    if (blank == std::string_view::npos)
        return {};
    // "0, 1e-5" and "0 ,1e-5" are parted by the comma, "0 1,0e-5" is not.
    const std::size_t next = line.find_first_not_of(kBlanks, blank);
    const bool byComma = line[blank - 1] == ',' || line[next] == ',';
    return byComma ? Parting{} : Parting{';', true};
}

std::string parted(std::string_view line, const Parting& parting)
{
    std::string made;
    for (const char c : line) {
        const bool isBlank = parting.byBlanks && kBlanks.find(c) != std::string_view::npos;
        if (!isBlank)
            made += c;
        else if (!made.ends_with(parting.separator))
            made += parting.separator;
    }
    return made;
}

Header headerOf(const RiseUnits& units, const Parting& parting)
{
    Header header;
    header.isWritten = false;
    header.separator = parting.separator;
    header.fields = 2;
    header.place[Time] = 0;
    header.place[PressureColumn] = 1;
    header.unit[Time] = units.time;
    header.unit[PressureColumn] = units.pressure;
    return header;
}

} // namespace

bool isBareRise(std::string_view text)
{
    if (text.starts_with(kByteOrderMark))
        text.remove_prefix(kByteOrderMark.size());
    constexpr std::string_view kOfNumbers = "+-.0123456789";
    const std::size_t first = text.find_first_not_of(kBlanks);
    return first != std::string_view::npos && kOfNumbers.find(text[first]) != std::string_view::npos;
}

Result<RiseRecord> parseRise(std::string_view text, const std::optional<RiseUnits>& bare)
{
    if (text.starts_with(kByteOrderMark))
        text.remove_prefix(kByteOrderMark.size());
    const bool isBare = bare && isBareRise(text);
    RiseRecord record;
    std::optional<Header> header;
    Parting parting;
    for (std::size_t number = 1; !text.empty(); ++number) {
        const std::size_t end = text.find('\n');
        const std::string_view line = trimmed(text.substr(0, end));
        text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 1);
        if (line.empty() || line.front() == '#')
            continue;
        if (isBare && !header) {
            parting = partingOf(line);
            header = headerOf(*bare, parting);
        } else if (!header) {
            auto read = readHeader(line, number);
            if (!read)
                return fail(read.error());
            header = *std::move(read);
            continue;
        }
        const Status status = isBare ? readSample(parted(line, parting), number, *header, record)
                                     : readSample(line, number, *header, record);
        if (!status)
            return fail(status.error());
    }
    if (!header)
        return fail(
            ErrorCode::BadInput,
            "the record is empty; its first line must name the columns, as in \"time_s,pressure_mbar\"");
    if (record.time.empty())
        return fail(ErrorCode::BadInput,
                    "the record has a header but no samples; at least 3 lines of numbers must follow");
    return record;
}

Result<RiseRecord> readRiseFile(const std::string& path)
{
    const auto text = readFile(path, kLargestFile);
    if (!text)
        return fail(text.error());
    auto record = parseRise(*text);
    if (!record)
        return fail(record.error().in(path));
    return record;
}

} // namespace sealwalk::exchange
