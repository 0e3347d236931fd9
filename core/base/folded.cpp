// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/folded.h"

#include <cstddef>
#include <cstdint>

namespace sealwalk {

namespace {

struct Decoded
{
    std::uint32_t code = 0;
    std::size_t length = 1;
    bool valid = false;
};

/// The character at the front; what is not UTF-8 is taken byte by byte and left alone.
Decoded decode(std::string_view text)
{
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const auto continues = [&](std::size_t i) { return i < text.size() && (byte(i) & 0xC0U) == 0x80U; };
    if (byte(0) < 0x80U)
        return {byte(0), 1, true};
    if ((byte(0) & 0xE0U) == 0xC0U && continues(1))
        return {((byte(0) & 0x1FU) << 6U) | (byte(1) & 0x3FU), 2, true};
    return {};
}

bool within(std::uint32_t code, std::uint32_t first, std::uint32_t last)
{
    return code >= first && code <= last;
}

/// Lower case of the letters below U+0460, by the ranges of the Unicode charts.
std::uint32_t lower(std::uint32_t c)
{
    if (within(c, 'A', 'Z') || (within(c, 0xC0, 0xDE) && c != 0xD7))
        return c + 32;
    if (c == 0x178)
        return 0xFF;
    if (within(c, 0x139, 0x148) || within(c, 0x179, 0x17E))
        return c % 2 == 1 ? c + 1 : c;
    if ((within(c, 0x100, 0x137) && !within(c, 0x130, 0x131)) || within(c, 0x14A, 0x177))
        return c % 2 == 0 ? c + 1 : c;
    if (within(c, 0x391, 0x3AB) || within(c, 0x410, 0x42F))
        return c + 32;
    if (c == 0x386)
        return 0x3AC;
    if (within(c, 0x388, 0x38A))
        return c + 37;
    if (c == 0x38C)
        return 0x3CC;
    if (within(c, 0x38E, 0x38F))
        return c + 63;
    if (within(c, 0x400, 0x40F))
        return c + 80;
    return c;
}

} // namespace

std::string folded(std::string_view text)
{
    std::string result;
    result.reserve(text.size());
    while (!text.empty()) {
        const Decoded d = decode(text);
        if (!d.valid) {
            result += text.front();
        } else if (const std::uint32_t c = lower(d.code); c < 0x80U) {
            result += static_cast<char>(c);
        } else {
            result += static_cast<char>(0xC0U | (c >> 6U));
            result += static_cast<char>(0x80U | (c & 0x3FU));
        }
        text.remove_prefix(d.length);
    }
    return result;
}

} // namespace sealwalk
