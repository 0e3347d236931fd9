// SPDX-License-Identifier: GPL-3.0-or-later
// SHA-256 (FIPS 180-4), and bytes as hexadecimal digits and back.
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace sealwalk::exchange {

/// The SHA-256 of `bytes` as 64 lower-case hexadecimal digits.
std::string sha256Hex(std::string_view bytes);

/// Lower-case hexadecimal digits, two to a byte.
std::string hexOf(std::span<const std::uint8_t> bytes);

/// Reads exactly `byteCount` bytes from lower-case hexadecimal digits; one spelling only, so that no two
/// texts mean the same bytes.
Result<std::vector<std::uint8_t>> bytesOfHex(std::string_view text, std::size_t byteCount);

} // namespace sealwalk::exchange
