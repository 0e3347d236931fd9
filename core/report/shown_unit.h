// SPDX-License-Identifier: GPL-3.0-or-later
// The unit a job is shown in, as a factor and its spellings.
#pragma once

#include "core/model/job.h"
#include "core/quantities/leak_rate_unit.h"
#include "core/report/map_builder.h"
#include "core/report/shown_gas.h"

#include <optional>
#include <string>

namespace sealwalk::report {

struct ShownUnit
{
    double perSi = 10.0;             ///< number shown = SI value times this
    std::string symbol = "mbar·l/s"; ///< in print and on the screen
    std::string spoken = "millibar litre per second";
    ShownGas gas; ///< what the leaks at points are shown as

    /// Of a rate as it is, whatever its gas.
    [[nodiscard]] double number(LeakRate rate) const { return rate.si() * perSi; }
    /// Of a leak at a point, given as helium, in the gas shown.
    [[nodiscard]] double ofHelium(LeakRate helium) const { return number(gas.ofHelium(helium)); }
    /// "mbar·l/s He", "mbar·l/s air": for heads of columns.
    [[nodiscard]] std::string head() const { return symbol + ' ' + std::string(gas.symbol()); }
    /// "4.6 × 10⁻⁴", without the unit.
    [[nodiscard]] std::string print(LeakRate rate) const;
    /// "4.6 × 10⁻⁴ mbar·l/s"
    [[nodiscard]] std::string printWithUnit(LeakRate rate) const;
};

/// @param unit  any spelling of a unit of leak rate; one that is not known, or that cannot be converted,
/// falls
///              back to mbar·l/s. Standard volumes are at the job's room temperature, masses those of
///              the gas shown.
ShownUnit shownUnit(const model::Setup& setup, const std::string& unit = {});

/// What ties helium flows of this job to amounts and masses: its room temperature and the gas.
FlowBasis flowBasis(const model::Setup& setup);

/// The largest of the smallest detectable leaks of the job's places: nothing is claimed below it anywhere.
/// None when no place has one.
std::optional<LeakRate> worstDetectable(const model::Job& job, const model::TestObject& object);
/// The same, and no better than it was when any of these points was sprayed: what the last watch of the
/// background can see says nothing of an earlier one.
std::optional<LeakRate> worstDetectable(const model::Job& job, const model::TestObject& object,
                                        std::span<const analysis::PointFinding> answered);

/// Map options that show `unit`.
MapOptions mapOptions(const ShownUnit& unit);

} // namespace sealwalk::report
