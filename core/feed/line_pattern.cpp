// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/feed/line_pattern.h"

#include "core/quantities/number_text.h"

#include <fmt/format.h>

#include <algorithm>

namespace sealwalk::feed {

namespace {

bool isBlank(char c)
{
    return c == ' ' || c == '\t';
}

bool belongsToNumber(char c)
{
    return (c >= '0' && c <= '9') || c == '.' || c == ',' || c == '-' || c == '+';
}

std::string_view trimmed(std::string_view text)
{
    while (!text.empty() && isBlank(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && isBlank(text.back()))
        text.remove_suffix(1);
    return text;
}

/// Whether the whole of `text` fits. The usual walk with one place to come back to: at most the product of
/// both lengths in steps. A run of blanks counts as one.
bool fits(std::string_view text, std::string_view pattern)
{
    std::size_t t = 0;
    std::size_t p = 0;
    std::optional<std::size_t> star; // pattern behind the last '*'
    std::size_t starText = 0;
    while (t < text.size()) {
        if (p < pattern.size() && pattern[p] == kAnyTextSign) {
            star = ++p;
            starText = t;
        } else if (p < pattern.size() && isBlank(pattern[p]) && isBlank(text[t])) {
            while (p < pattern.size() && isBlank(pattern[p]))
                ++p;
            while (t < text.size() && isBlank(text[t]))
                ++t;
        } else if (p < pattern.size() && pattern[p] == text[t]) {
            ++p;
            ++t;
        } else if (star) {
            p = *star;
            t = ++starText;
        } else {
            return false;
        }
    }
    while (p < pattern.size() && pattern[p] == kAnyTextSign)
        ++p;
    return p == pattern.size();
}

} // namespace

Status checkPattern(std::string_view pattern)
{
    if (pattern.size() > kLongestPattern)
        return fail(ErrorCode::BadInput, fmt::format("the pattern has {} characters; right is at most {}",
                                                     pattern.size(), kLongestPattern));
    if (std::count(pattern.begin(), pattern.end(), kNumberSign) != 1)
        return fail(ErrorCode::BadInput,
                    fmt::format("the pattern \"{}\" must hold one # where the number stands, as in \"now # "
                                "mbar*\"",
                                pattern));
    return {};
}

std::optional<std::string_view> numberIn(std::string_view line, std::string_view pattern)
{
    const std::string_view text = trimmed(line);
    const std::string_view wanted = trimmed(pattern);
    const std::size_t hole = wanted.find(kNumberSign);
    const std::string_view before = wanted.substr(0, hole);
    const std::string_view after = wanted.substr(hole + 1);
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (at > 0 && belongsToNumber(text[at - 1]))
            continue; // a number is never begun in its middle
        const std::size_t length = sealwalk::numberLength(text.substr(at));
        if (length > 0 && fits(text.substr(0, at), before) && fits(text.substr(at + length), after))
            return text.substr(at, length);
    }
    return std::nullopt;
}

} // namespace sealwalk::feed
