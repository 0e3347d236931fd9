// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/rate_text.h"

#include <fmt/format.h>

#include <cctype>
#include <charconv>
#include <cmath>
#include <regex>
#include <string_view>

namespace sealwalk::report {

namespace {

constexpr std::string_view kMinus = "\u2212";

std::string superscript(int number)
{
    static constexpr std::string_view kDigits[] = {"\u2070", "\u00B9", "\u00B2", "\u00B3", "\u2074",
                                                   "\u2075", "\u2076", "\u2077", "\u2078", "\u2079"};
    std::string result;
    for (const char c : std::to_string(number))
        result += c == '-' ? std::string_view("\u207B") : kDigits[c - '0'];
    return result;
}

/// Two significant digits without exponent: 0.081, 0.26, 2.6, 26, 260.
std::string inDecade(double number)
{
    if (number < 0.0)
        return std::string(kMinus) + inDecade(-number);
    constexpr double kRoundsUp = 0.995; // 9.95 is 10 in two digits
    int decimals = 3;
    for (const double least : {0.1, 1.0, 10.0})
        decimals -= number >= least * kRoundsUp ? 1 : 0;
    if (number >= 100.0 * kRoundsUp)
        return fmt::format("{:.0f}", std::round(number / 10.0) * 10.0);
    return fmt::format("{:.{}f}", number, decimals);
}

/// Whether a range is close enough to its number to be told in its decade.
bool isInDecade(double number, double low, double high)
{
    constexpr double kLeast = 0.0095; // of the decade
    constexpr double kMost = 995.0;
    const double decade = std::pow(10.0, rateParts(number).exponent);
    return number != 0.0 && std::isfinite(number) && high < kMost * decade &&
           (low == 0.0 || std::abs(low) >= kLeast * decade);
}

/// "2.6\u201311" of 3.5e-4.
std::string endsInDecade(double number, double low, double high)
{
    const double decade = std::pow(10.0, rateParts(number).exponent);
    return (low == 0.0 ? "0" : inDecade(low / decade)) + "\u2013" + inDecade(high / decade);
}

bool isWordCharacter(char c)
{
    return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_' || c == '.';
}

/// A number that stands by itself: "4e07" in "RL-4e07" is part of somebody's name for a thing.
bool standsAlone(const std::string& sentence, std::size_t at, std::size_t end)
{
    const bool joined =
        at > 1 && (sentence[at - 1] == '-' || sentence[at - 1] == '/') && isWordCharacter(sentence[at - 2]);
    const bool runsOn = end < sentence.size() && sentence[end] != '.' && isWordCharacter(sentence[end]);
    return !joined && !runsOn && (at == 0 || !isWordCharacter(sentence[at - 1]));
}

/// `power` writes what follows the mantissa of a number with this exponent.
template <class Power>
std::string respelt(const std::string& sentence, Power power)
{
    // A double has at most three digits in its exponent; more is no number.
    static const std::regex number("([0-9]+(?:\\.[0-9]+)?)e([-+]?)0*([0-9]{1,3})");
    std::string result;
    auto from = sentence.cbegin();
    std::smatch hit;
    while (std::regex_search(from, sentence.cend(), hit, number)) {
        result.append(from, hit[0].first);
        const auto at = static_cast<std::size_t>(hit[0].first - sentence.cbegin());
        const auto end = static_cast<std::size_t>(hit[0].second - sentence.cbegin());
        if (standsAlone(sentence, at, end))
            result += hit[1].str() + power(std::stoi(hit[3].str()) * (hit[2].str() == "-" ? -1 : 1));
        else
            result += hit[0].str();
        from = hit[0].second;
    }
    result.append(from, sentence.cend());
    constexpr std::string_view kAscii = "mbar l/s";
    for (std::size_t at = result.find(kAscii); at != std::string::npos; at = result.find(kAscii, at))
        result.replace(at, kAscii.size(), "mbar\u00B7l/s");
    return result;
}

} // namespace

RateParts rateParts(double number, int digits)
{
    if (number == 0.0 || !std::isfinite(number))
        return {"0", 0, true};
    const std::string text = fmt::format("{:.{}e}", number, digits - 1);
    const std::size_t e = text.find('e');
    int exponent = 0;
    const char* begin = text.data() + e + 1;
    std::from_chars(*begin == '+' ? begin + 1 : begin, text.data() + text.size(), exponent);
    return {text.substr(0, e), exponent, false};
}

std::string screenRate(double number, int digits)
{
    const RateParts parts = rateParts(number, digits);
    if (parts.isZero)
        return "0";
    std::string text =
        parts.mantissa.front() == '-' ? std::string(kMinus) + parts.mantissa.substr(1) : parts.mantissa;
    text += 'e';
    if (parts.exponent < 0)
        text += kMinus;
    return text + std::to_string(std::abs(parts.exponent));
}

std::string printRate(double number, int digits)
{
    const RateParts parts = rateParts(number, digits);
    if (parts.isZero)
        return "0";
    std::string text =
        parts.mantissa.front() == '-' ? std::string(kMinus) + parts.mantissa.substr(1) : parts.mantissa;
    return text + " \u00D7 10" + superscript(parts.exponent);
}

std::string onScreen(const std::string& sentence)
{
    return respelt(sentence, [](int exponent) { return screenRate(std::pow(10.0, exponent), 1).substr(1); });
}

std::string inPrint(const std::string& sentence)
{
    return respelt(sentence, [](int exponent) { return printRate(std::pow(10.0, exponent), 1).substr(1); });
}

std::string plainRate(double number, int digits)
{
    const RateParts parts = rateParts(number, digits);
    return parts.isZero ? "0" : parts.mantissa + 'e' + std::to_string(parts.exponent);
}

std::string rangeBeside(double number, double low, double high)
{
    if (!isInDecade(number, low, high))
        return screenRate(low) + " \u2026 " + screenRate(high);
    const std::string ends = endsInDecade(number, low, high);
    const int exponent = rateParts(number).exponent;
    return exponent == 0 ? ends : '(' + ends + ')' + screenRate(std::pow(10.0, exponent), 1).substr(1);
}

std::string printRange(double number, double low, double high)
{
    if (!isInDecade(number, low, high))
        return printRate(low) + " \u2026 " + printRate(high);
    return '(' + endsInDecade(number, low, high) + ") \u00D7 10" + superscript(rateParts(number).exponent);
}

std::string plainRange(double low, double high)
{
    return plainRate(low) + " to " + plainRate(high);
}

} // namespace sealwalk::report
