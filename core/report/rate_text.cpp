// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/rate_text.h"

#include <fmt/format.h>

#include <charconv>
#include <cmath>
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

std::string plainRate(double number, int digits)
{
    const RateParts parts = rateParts(number, digits);
    return parts.isZero ? "0" : parts.mantissa + 'e' + std::to_string(parts.exponent);
}

} // namespace sealwalk::report
