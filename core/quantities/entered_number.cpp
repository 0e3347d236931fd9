// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantities/entered_number.h"

#include "core/quantities/number_text.h"

#include <charconv>
#include <cmath>
#include <cstdlib>

namespace sealwalk {

namespace {

using State = EnteredNumber::State;

bool takeAny(std::string_view& text, std::initializer_list<std::string_view> words)
{
    for (const std::string_view word : words) {
        if (text.starts_with(word)) {
            text.remove_prefix(word.size());
            return true;
        }
    }
    return false;
}

bool isDigit(char c)
{
    return c >= '0' && c <= '9';
}

std::string takeDigits(std::string_view& text)
{
    std::size_t count = 0;
    while (count < text.size() && isDigit(text[count]))
        ++count;
    std::string digits(text.substr(0, count));
    text.remove_prefix(count);
    return digits;
}

// Superscript digits of a pasted number, brought to plain ones.
std::string plainExponent(std::string_view text)
{
    constexpr std::string_view kSuperscripts[] = {"⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"};
    std::string plain;
    while (!text.empty()) {
        bool replaced = takeAny(text, {"⁻"});
        if (replaced)
            plain += '-';
        for (std::size_t i = 0; i < std::size(kSuperscripts) && !replaced; ++i) {
            replaced = takeAny(text, {kSuperscripts[i]});
            if (replaced)
                plain += static_cast<char>('0' + i);
        }
        if (!replaced) {
            plain += text.front();
            text.remove_prefix(1);
        }
    }
    return plain;
}

EnteredNumber complete(double mantissa, int exponent)
{
    EnteredNumber entered;
    entered.mantissa = mantissa;
    entered.exponent = exponent;
    // Through the decimal text, so that 3.2 and -7 give the very double of 3.2e-7.
    const auto value = parseNumber(exactText(mantissa) + "e" + std::to_string(exponent));
    if (std::abs(exponent) > kLargestEnteredExponent || !value || !(*value > 0.0)) {
        entered.state = State::Wrong;
        return entered;
    }
    entered.state = State::Complete;
    entered.value = *value;
    // Always as mantissa and exponent, so that the ear hears the decade.
    const std::string digits = exactText(mantissa);
    int significant = 0;
    bool leading = true;
    for (const char c : digits) {
        if (!isDigit(c) || (leading && c == '0'))
            continue;
        leading = false;
        ++significant;
    }
    char buffer[64];
    const auto end = std::to_chars(buffer, buffer + sizeof buffer, *value, std::chars_format::scientific,
                                   std::min(significant, 17) - 1);
    std::string text(buffer, end.ptr);
    const std::size_t e = text.find('e');
    int power = 0;
    const char* first = text.data() + e + 1;
    if (*first == '+')
        ++first;
    std::from_chars(first, text.data() + text.size(), power);
    entered.shownExponent = power;
    // With its plus: without one an exponent reads as negative, and this text is read again.
    entered.readBack = text.substr(0, e) + (power > 0 ? "e+" : "e") + std::to_string(power);
    return entered;
}

EnteredNumber wrong()
{
    EnteredNumber entered;
    entered.state = State::Wrong;
    return entered;
}

// What follows the mantissa: the opener, a swallowed 10, signs and digits. Empty result: not of this form.
struct Exponent
{
    bool wellFormed = false;
    bool positive = false;
    std::string digits;
};

Exponent readExponent(std::string_view rest)
{
    Exponent exponent;
    bool opened = false;
    bool minus = false;
    bool times = false;
    while (takeAny(rest, {" "}))
        opened = true;
    if (takeAny(rest, {"×", "x", "X", "*"})) {
        opened = true;
        times = true;
        while (takeAny(rest, {" "})) {
        }
        // "3.2×1" is on its way to "3.2×10^-7"; "3.2×7" is short for it.
        if (rest == "1" || takeAny(rest, {"10"})) {
            if (rest == "1")
                rest = {};
        }
    }
    const bool raised = takeAny(rest, {"^"});
    const bool letter = !raised && !times && takeAny(rest, {"e", "E"});
    opened = opened || raised || letter;
    while (opened && takeAny(rest, {" "})) {
    }
    if (takeAny(rest, {"-", "−", "–"}))
        minus = true;
    else if (takeAny(rest, {"+"}))
        exponent.positive = true;
    opened = opened || minus || exponent.positive;
    exponent.digits = takeDigits(rest);
    exponent.wellFormed = opened && rest.empty();
    return exponent;
}

} // namespace

EnteredNumber readEntered(std::string_view typed)
{
    while (takeAny(typed, {" "})) {
    }
    const std::string plain = plainExponent(typed);
    std::string_view rest = plain;
    EnteredNumber entered;
    if (rest.empty())
        return entered;
    std::string mantissa = takeDigits(rest);
    if (mantissa.empty())
        return wrong();
    if (takeAny(rest, {".", ","}))
        mantissa += '.' + takeDigits(rest);
    const auto number = parseNumber(mantissa);
    if (!number)
        return wrong();
    entered.mantissa = *number;
    entered.readBack = mantissa;
    entered.state = *number == 0.0 ? State::Zero : State::Mantissa;
    if (rest.empty())
        return entered;

    const Exponent exponent = readExponent(rest);
    if (!exponent.wellFormed || exponent.digits.size() > 3)
        return wrong();
    if (*number == 0.0)
        return entered;
    if (exponent.digits.empty()) {
        entered.state = State::Opened;
        return entered;
    }
    int power = 0;
    std::from_chars(exponent.digits.data(), exponent.digits.data() + exponent.digits.size(), power);
    return complete(*number, exponent.positive ? power : -power);
}

EnteredNumber withExponent(const EnteredNumber& entered, int exponent)
{
    if (entered.state != State::Mantissa && entered.state != State::Opened &&
        entered.state != State::Complete)
        return entered;
    return complete(entered.mantissa, exponent);
}

} // namespace sealwalk
