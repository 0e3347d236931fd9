// SPDX-License-Identifier: GPL-3.0-or-later
// A photo or drawing, named by what it contains.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace sealwalk::model {

struct Picture
{
    std::string sha256;    ///< lower-case hexadecimal
    std::string extension; ///< "png", "jpg", "svg", "pdf"
    std::vector<std::uint8_t> bytes;
    bool operator==(const Picture&) const = default;
};

} // namespace sealwalk::model
