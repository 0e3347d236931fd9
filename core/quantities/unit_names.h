// SPDX-License-Identifier: GPL-3.0-or-later
// The parts unit names are made of.
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace sealwalk::detail {

/// Exponents of pressure, length, time, amount, mass, temperature, standard amount.
using Dimension = std::array<int, 7>;

inline constexpr Dimension kNoDimension = {0, 0, 0, 0, 0, 0, 0};

struct UnitPart
{
    std::string_view spelling;
    Dimension dimension;
    double factor;
    double offset = 0.0;
};

/// The part with exactly this spelling (micro written u, degree written deg, no superscripts).
std::optional<UnitPart> findUnitPart(std::string_view spelling);

} // namespace sealwalk::detail
