// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/utf8.h"

#include "core/base/contract.h"

#include <cstdint>
#include <optional>

namespace sealwalk {

namespace {

/// Takes one character off the front of `text`; none when the bytes are not UTF-8.
std::optional<char32_t> takeCharacter(std::string_view& text)
{
    const auto byte = [&](std::size_t i) { return static_cast<std::uint8_t>(text[i]); };
    const std::uint8_t first = byte(0);
    if (first < 0x80) {
        text.remove_prefix(1);
        return first;
    }
    std::size_t length = 0;
    char32_t smallest = 0;
    char32_t value = 0;
    if ((first & 0xe0) == 0xc0) {
        length = 2;
        smallest = 0x80;
        value = first & 0x1f;
    } else if ((first & 0xf0) == 0xe0) {
        length = 3;
        smallest = 0x800;
        value = first & 0x0f;
    } else if ((first & 0xf8) == 0xf0) {
        length = 4;
        smallest = 0x10000;
        value = first & 0x07;
    } else {
        return std::nullopt;
    }
    if (text.size() < length)
        return std::nullopt;
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(i) & 0xc0) != 0x80)
            return std::nullopt;
        value = (value << 6) | (byte(i) & 0x3fU);
    }
    const bool surrogate = value >= 0xd800 && value <= 0xdfff;
    if (value < smallest || surrogate || value > 0x10ffff)
        return std::nullopt;
    text.remove_prefix(length);
    return value;
}

} // namespace

bool isUtf8(std::string_view text)
{
    while (!text.empty())
        if (!takeCharacter(text))
            return false;
    return true;
}

std::u16string utf16Of(std::string_view text)
{
    std::u16string units;
    units.reserve(text.size());
    while (!text.empty()) {
        const std::optional<char32_t> character = takeCharacter(text);
        SEALWALK_EXPECT(character.has_value());
        if (*character < 0x10000) {
            units.push_back(static_cast<char16_t>(*character));
        } else {
            const char32_t rest = *character - 0x10000;
            units.push_back(static_cast<char16_t>(0xd800 + (rest >> 10)));
            units.push_back(static_cast<char16_t>(0xdc00 + (rest & 0x3ff)));
        }
    }
    return units;
}

} // namespace sealwalk
