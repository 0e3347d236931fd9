// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/history/chance.h"

#include <cmath>
#include <numbers>

namespace sealwalk::demo {

double Chance::uniform()
{
    constexpr int kMantissaBits = 53;
    return std::ldexp(static_cast<double>(m_engine() >> 11U), -kMantissaBits);
}

// Box and Muller (1958); the library's own distribution differs from one library to the next.
double Chance::normal()
{
    const double radius = std::sqrt(-2.0 * std::log(1.0 - uniform()));
    return radius * std::cos(2.0 * std::numbers::pi * uniform());
}

Uuid Chance::uuid()
{
    Uuid::Bytes bytes{};
    std::uint64_t word = 0;
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        if (i % 8 == 0)
            word = m_engine();
        bytes[i] = static_cast<std::uint8_t>(word >> (8 * (i % 8)));
    }
    bytes[6] = static_cast<std::uint8_t>((bytes[6] & 0x0FU) | 0x40U);
    bytes[8] = static_cast<std::uint8_t>((bytes[8] & 0x3FU) | 0x80U);
    return Uuid(bytes);
}

} // namespace sealwalk::demo
