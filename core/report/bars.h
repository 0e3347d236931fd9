// SPDX-License-Identifier: GPL-3.0-or-later
// Side charts as data: what was located against what comes in, and what makes up the base pressure.
#pragma once

#include "core/analysis/leak_balance.h"
#include "core/analysis/repair_effect.h"
#include "core/report/figure.h"
#include "core/report/map_content.h"

#include <optional>
#include <string>
#include <vector>

namespace sealwalk::report {

struct BarPart
{
    double value = 0.0; ///< in the figure's unit, 0 or more
    std::string label;
    std::optional<double> heat; ///< place on the map's scale: coloured like the map; none: by `kind`
    enum class Kind
    {
        Plain,   ///< walls and pump
        Hollow,  ///< a total
        Missing, ///< hatched: nobody knows where
    } kind = Kind::Plain;
};

struct Bar
{
    std::string name;
    std::vector<BarPart> parts; ///< from zero on
    std::optional<double> low;  ///< 95 % whisker
    std::optional<double> high;
    std::string total; ///< written behind the bar
};

struct BarFigure
{
    std::string title;
    std::string spoken; ///< in a sentence, for screen readers
    std::string unit;
    std::vector<Bar> bars; ///< from top to bottom
    struct Limit
    {
        double at = 0.0;
        std::string text;
        bool dashed = false;
    };
    std::vector<Limit> limits;
    std::string empty; ///< said instead when there is nothing to draw

    /// The greatest value anywhere.
    [[nodiscard]] double highest() const;
};

/// @param scale       colours of the leaks and the unit shown
/// @param totalLimit  of all leaks together, as air
BarFigure balanceBars(const analysis::LeakBalance& balance, const MapScale& scale,
                      std::optional<LeakRate> totalLimit);

struct LoadOptions
{
    const analysis::LeakBalance* balance = nullptr; ///< never null
    const analysis::RepairEffect* effect = nullptr; ///< never null
    std::vector<std::string> repaired;              ///< labels of the leaks ticked
    std::optional<PumpingSpeed> airSpeed;
    std::optional<Pressure> wanted;
    MapScale scale;
};

/// Base pressure now and after the ticked repairs, mbar, in parts; says so when the pumping speed is unknown.
BarFigure loadBars(const LoadOptions& options);

} // namespace sealwalk::report
