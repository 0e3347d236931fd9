// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/digest.h"

#include <fmt/format.h>
#include <sodium.h>

#include <array>

namespace sealwalk::exchange {

namespace {

int valueOf(char digit)
{
    if (digit >= '0' && digit <= '9')
        return digit - '0';
    if (digit >= 'a' && digit <= 'f')
        return digit - 'a' + 10;
    return -1;
}

} // namespace

std::string sha256Hex(std::string_view bytes)
{
    std::array<std::uint8_t, crypto_hash_sha256_BYTES> digest{};
    crypto_hash_sha256(digest.data(), reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
    return hexOf(digest);
}

std::string hexOf(std::span<const std::uint8_t> bytes)
{
    constexpr char kDigits[] = "0123456789abcdef";
    std::string text;
    text.reserve(bytes.size() * 2);
    for (const std::uint8_t byte : bytes) {
        text.push_back(kDigits[byte >> 4]);
        text.push_back(kDigits[byte & 0x0f]);
    }
    return text;
}

Result<std::vector<std::uint8_t>> bytesOfHex(std::string_view text, std::size_t byteCount)
{
    const auto refuse = [&] {
        return fail(ErrorCode::BadInput,
                    fmt::format("{} lower-case hexadecimal digits are expected here", byteCount * 2));
    };
    if (text.size() != byteCount * 2)
        return refuse();
    std::vector<std::uint8_t> bytes;
    bytes.reserve(byteCount);
    for (std::size_t i = 0; i < text.size(); i += 2) {
        const int high = valueOf(text[i]);
        const int low = valueOf(text[i + 1]);
        if (high < 0 || low < 0)
            return refuse();
        bytes.push_back(static_cast<std::uint8_t>(high * 16 + low));
    }
    return bytes;
}

} // namespace sealwalk::exchange
