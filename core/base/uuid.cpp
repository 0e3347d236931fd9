// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/uuid.h"

#include <cstring>
#include <random>

namespace sealwalk {

namespace {

constexpr std::size_t kTextLength = 36;

bool isDashPlace(std::size_t index)
{
    return index == 8 || index == 13 || index == 18 || index == 23;
}

int hexValue(char c)
{
    if (c >= '0' && c <= '9')
        return c - '0';
    if (c >= 'a' && c <= 'f')
        return c - 'a' + 10;
    if (c >= 'A' && c <= 'F')
        return c - 'A' + 10;
    return -1;
}

} // namespace

Uuid Uuid::random()
{
    // random_device reads the kernel's generator in libstdc++: no seeding, no shared state between threads.
    thread_local std::random_device source;
    Bytes bytes{};
    for (std::size_t i = 0; i < bytes.size(); i += sizeof(std::uint32_t)) {
        const std::uint32_t word = source();
        std::memcpy(bytes.data() + i, &word, sizeof word);
    }
    bytes[6] = static_cast<std::uint8_t>((bytes[6] & 0x0f) | 0x40);
    bytes[8] = static_cast<std::uint8_t>((bytes[8] & 0x3f) | 0x80);
    return Uuid(bytes);
}

Result<Uuid> Uuid::parse(std::string_view text)
{
    const auto refuse = [&] {
        return fail(ErrorCode::BadInput, "\"" + std::string(text.substr(0, 60)) +
                                             "\" is not a UUID; it has 32 hexadecimal digits in five groups, "
                                             "such as 1b4e28ba-2fa1-41d2-883f-0016d3cca427");
    };
    if (text.size() != kTextLength)
        return refuse();
    Bytes bytes{};
    std::size_t nibble = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (isDashPlace(i)) {
            if (text[i] != '-')
                return refuse();
            continue;
        }
        const int value = hexValue(text[i]);
        if (value < 0)
            return refuse();
        auto& byte = bytes[nibble / 2];
        byte = static_cast<std::uint8_t>(nibble % 2 == 0 ? value << 4 : byte | value);
        ++nibble;
    }
    return Uuid(bytes);
}

std::string Uuid::text() const
{
    constexpr char kDigits[] = "0123456789abcdef";
    std::string result;
    result.reserve(kTextLength);
    for (const std::uint8_t byte : m_bytes) {
        if (isDashPlace(result.size()))
            result.push_back('-');
        result.push_back(kDigits[byte >> 4]);
        result.push_back(kDigits[byte & 0x0f]);
    }
    return result;
}

} // namespace sealwalk

std::size_t std::hash<sealwalk::Uuid>::operator()(const sealwalk::Uuid& uuid) const noexcept
{
    // Version-4 UUIDs are random already; any eight bytes spread well.
    std::size_t value = 0;
    std::memcpy(&value, uuid.bytes().data() + 8, sizeof value);
    return value;
}
