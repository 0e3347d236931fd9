// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantities/number_text.h"

#include "core/base/contract.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <optional>

namespace sealwalk {

namespace {

bool isDigit(char c)
{
    return c >= '0' && c <= '9';
}

constexpr std::string_view kMinusSigns[] = {"-", "−", "–"};
constexpr std::string_view kTimesSigns[] = {"×", "x", "X", "*", "·", "⋅"};
constexpr std::string_view kSuperscripts[] = {"⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"};

// The parts of a number while it is cut off the front of a text.
class Scanner
{
public:
    explicit Scanner(std::string_view text)
        : m_text(text)
    {}

    [[nodiscard]] std::size_t position() const { return m_at; }
    [[nodiscard]] std::string_view rest() const { return m_text.substr(m_at); }

    bool take(std::string_view word)
    {
        if (!rest().starts_with(word))
            return false;
        m_at += word.size();
        return true;
    }

    template <std::size_t n>
    bool takeAny(const std::string_view (&words)[n])
    {
        for (const std::string_view word : words)
            if (take(word))
                return true;
        return false;
    }

    std::string digits()
    {
        std::string found;
        while (m_at < m_text.size() && isDigit(m_text[m_at]))
            found += m_text[m_at++];
        return found;
    }

    std::string superscriptDigits()
    {
        std::string found;
        for (bool more = true; more;) {
            more = false;
            for (std::size_t i = 0; i < std::size(kSuperscripts) && !more; ++i) {
                more = take(kSuperscripts[i]);
                if (more)
                    found += static_cast<char>('0' + i);
            }
        }
        return found;
    }

    void rewind(std::size_t position) { m_at = position; }

private:
    std::string_view m_text;
    std::size_t m_at = 0;
};

struct Parts
{
    bool negative = false;
    std::string whole;
    char mark = 0; // of decimals or of groups; 0: none
    int marks = 0;
    std::string decimals; // after the last mark
    std::string mantissa; // digits and points, ready for from_chars if there is at most one mark
    std::string exponent; // with sign; empty: none
    std::size_t length = 0;
};

// "e-7", "E-7", "×10^-7", "·10⁻⁷"; leaves the scanner where it was if it is none of these.
void scanExponent(Scanner& scanner, Parts& parts)
{
    const std::size_t before = scanner.position();
    const bool letter = scanner.take("e") || scanner.take("E");
    if (!letter) {
        while (scanner.take(" ")) {
        }
        if (!scanner.takeAny(kTimesSigns)) {
            scanner.rewind(before);
            return;
        }
        while (scanner.take(" ")) {
        }
        if (!scanner.take("10")) {
            scanner.rewind(before);
            return;
        }
        if (!scanner.take("^")) {
            const bool minus = scanner.take("⁻");
            const std::string digits = scanner.superscriptDigits();
            if (digits.empty())
                scanner.rewind(before);
            else
                parts.exponent = (minus ? "-" : "") + digits;
            return;
        }
    }
    const bool minus = scanner.takeAny(kMinusSigns);
    if (!minus)
        scanner.take("+");
    const std::string digits = scanner.digits();
    if (digits.empty())
        scanner.rewind(before);
    else
        parts.exponent = (minus ? "-" : "") + digits;
}

std::optional<Parts> scan(std::string_view text)
{
    Scanner scanner(text);
    Parts parts;
    parts.negative = scanner.takeAny(kMinusSigns);
    if (!parts.negative)
        scanner.take("+");
    parts.whole = scanner.digits();
    parts.mantissa = parts.whole;
    while (scanner.rest().starts_with(".") || scanner.rest().starts_with(",")) {
        const char mark = scanner.rest().front();
        const bool digitFollows = scanner.rest().size() > 1 && isDigit(scanner.rest()[1]);
        if (!digitFollows && (parts.marks > 0 || parts.whole.empty()))
            break;
        scanner.take(std::string_view(&mark, 1));
        parts.mark = mark;
        ++parts.marks;
        parts.decimals = scanner.digits();
        parts.mantissa += '.' + parts.decimals;
    }
    if (parts.whole.empty() && parts.decimals.empty())
        return std::nullopt;
    scanExponent(scanner, parts);
    parts.length = scanner.position();
    return parts;
}

std::string shortenExponent(std::string text)
{
    const std::size_t e = text.find('e');
    if (e == std::string::npos)
        return text;
    std::string mantissa = text.substr(0, e);
    std::string sign = text[e + 1] == '-' ? "-" : "";
    std::size_t digit = e + 2;
    while (digit + 1 < text.size() && text[digit] == '0')
        ++digit;
    return mantissa + 'e' + sign + text.substr(digit);
}

} // namespace

std::size_t numberLength(std::string_view text)
{
    const auto parts = scan(text);
    return parts ? parts->length : 0;
}

Result<double> parseNumber(std::string_view text, DecimalMark mark)
{
    const auto parts = scan(text);
    if (!parts || parts->length != text.size())
        return fail(ErrorCode::BadInput,
                    fmt::format("\"{}\" is not a number; right would be for instance 2.5e-7 or 120", text));
    const char own = mark == DecimalMark::Point ? '.' : ',';
    if (parts->marks > 1)
        return fail(ErrorCode::BadInput,
                    fmt::format("\"{}\" has more than one decimal mark; write it without thousands "
                                "separators",
                                text));
    // 0,234 cannot be grouped and 1,234e-7 never is.
    const bool maybeGrouped = parts->mark != 0 && parts->mark != own && parts->decimals.size() == 3 &&
                              !parts->whole.empty() && parts->whole.size() <= 3 && parts->whole[0] != '0' &&
                              parts->exponent.empty();
    if (maybeGrouped)
        return fail(ErrorCode::BadInput,
                    fmt::format("\"{0}\" can be read as {1}{2} or as {1}{3}{2}; write {1}{2} or {1}{3}{2}0",
                                text, parts->whole, parts->decimals, own));
    std::string ready = (parts->negative ? "-" : "") + parts->mantissa;
    if (!parts->exponent.empty())
        ready += 'e' + parts->exponent;
    double value = 0.0;
    const auto [end, error] = std::from_chars(ready.data(), ready.data() + ready.size(), value);
    if (error != std::errc{} || end != ready.data() + ready.size() || !std::isfinite(value))
        return fail(ErrorCode::BadInput,
                    fmt::format("\"{}\" is outside the numbers a computer can hold; about 1e-300 to 1e300 is "
                                "right",
                                text));
    return value;
}

std::string exactText(double number)
{
    SEALWALK_EXPECT(std::isfinite(number));
    std::array<char, 40> buffer{};
    const double size = std::abs(number);
    const bool plainDigits = size == 0.0 || (size >= 1e-3 && size < 1e15);
    const auto [end, error] =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), number,
                      plainDigits ? std::chars_format::fixed : std::chars_format::scientific);
    SEALWALK_EXPECT(error == std::errc{});
    return shortenExponent(std::string(buffer.data(), end));
}

std::string powerText(double number, int digits)
{
    SEALWALK_EXPECT(std::isfinite(number) && digits >= 1 && digits <= 17);
    std::array<char, 64> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), number,
                                   std::chars_format::scientific, digits - 1)
                         .ptr;
    return shortenExponent(std::string(buffer.data(), end));
}

std::string roundedText(double number, int digits)
{
    SEALWALK_EXPECT(std::isfinite(number) && digits >= 1 && digits <= 17);
    if (number == 0.0)
        return "0";
    std::array<char, 64> buffer{};
    std::string text = powerText(number, digits);
    int exponent = 0;
    std::from_chars(text.data() + text.find('e') + 1, text.data() + text.size(), exponent);
    // One digit more than asked for reads better than a power of ten.
    if (exponent < -3 || exponent > digits)
        return text;
    const int decimals = std::max(0, digits - 1 - exponent);
    const auto fixed = std::to_chars(buffer.data(), buffer.data() + buffer.size(), number,
                                     std::chars_format::fixed, decimals);
    return std::string(buffer.data(), fixed.ptr);
}

std::string trimmedText(double number, int digits)
{
    std::string text = roundedText(number, digits);
    const std::size_t mark = text.find('.');
    if (mark == std::string::npos)
        return text;
    const std::size_t end = std::min(text.find('e'), text.size());
    std::size_t last = end;
    while (text[last - 1] == '0')
        --last;
    if (text[last - 1] == '.')
        --last;
    return text.erase(last, end - last);
}

} // namespace sealwalk
