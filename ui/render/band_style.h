// SPDX-License-Identifier: GPL-3.0-or-later
// Measures of the band grammar: cosmetic widths that do not zoom, for screen and print.
#pragma once

#include "core/report/map_content.h"

#include <optional>

namespace sealwalk::render {

/// All lengths in units of the paint device (logical pixels on the screen).
struct BandStyle
{
    double body = 7.0;  ///< width of a band without swell
    double swell = 2.0; ///< per decade above the smallest detectable leak
    double bodyMost = 19.0;
    double casing = 1.5; ///< edge on either side
    double gap = 1.5;    ///< between stretches
    double tooth = 3.0;  ///< how far teeth stand out
    double plate = 18.0; ///< plate size
    double text = 11.0;  ///< numbers and values
    double unit = 1.0;   ///< one screen pixel of the grammar (dashes, hatches) in device units

    bool operator==(const BandStyle&) const = default;

    static BandStyle screen();
    /// @param unitsPerMillimetre  device units in one millimetre of paper
    static BandStyle print(double unitsPerMillimetre);
    /// The same, all lengths times `factor`.
    [[nodiscard]] BandStyle scaled(double factor) const;

    /// Width of a stretch's body.
    [[nodiscard]] double width(const report::MapScale& scale, std::optional<LeakRate> rate) const;
};

} // namespace sealwalk::render
