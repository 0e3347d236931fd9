// SPDX-License-Identifier: GPL-3.0-or-later
// What a picture is called: the SHA-256 of its bytes.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace sealwalk::storage {

/// Lower-case hexadecimal, 64 digits.
std::string pictureName(const std::vector<std::uint8_t>& bytes);

} // namespace sealwalk::storage
