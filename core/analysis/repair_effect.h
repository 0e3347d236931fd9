// SPDX-License-Identifier: GPL-3.0-or-later
// What repairs would do: pressure rise and base pressure now and after, and the fewest repairs that meet the
// limit.
#pragma once

#include "core/analysis/leak_balance.h"

#include <string>
#include <vector>

namespace sealwalk::analysis {

struct RepairEffectOptions
{
    LeakBalance balance;
    std::vector<std::string> repaired;       ///< labels of the leaks ticked
    std::optional<Volume> volume;            ///< for the rise
    std::optional<PumpingSpeed> airSpeed;    ///< effective, at the chamber, for the base pressure
    std::optional<Pressure> basePressureNow; ///< measured; otherwise it is worked out
    Pressure blankOff;                       ///< what the pumps alone reach
    LeakRate outgassing;                     ///< gas that is no leak
    std::optional<LeakRate> totalLimit;      ///< of all leaks, as air
    std::optional<Pressure> wantedPressure;  ///< base pressure asked for
};

struct RepairEffect
{
    LeakRate leakNow;        ///< total by the pressure rise where it is known, else the located sum
    bool totalKnown = false; ///< by the pressure rise; what is only located may be less than what comes in
    LeakRate removed;        ///< by the ticked repairs
    LeakRate leakAfter;      ///< 0 or more
    LeakRate leakAfterLow;   ///< 95 %
    LeakRate leakAfterHigh;
    std::optional<double> risePerSecondNow; ///< Pa/s, leaks and outgassing; none without a known total
    std::optional<double> risePerSecondAfter;
    std::optional<Pressure> basePressureNow; ///< none when neither it nor the total was measured
    std::optional<Pressure> basePressureAfter;
    /// leakAfter within the total limit and the wanted pressure; none when nothing is asked or known
    std::optional<bool> meetsLimit;
    /// Fewest repairs that meet both; empty when none is needed. Without a known total so many are needed at
    /// least.
    std::vector<std::string> shortestList;
    bool reachable = true; ///< false: even with every located leak gone a limit is not met
    std::string advice;    ///< one sentence
};

/// Refuses labels that are not in the balance, volumes and speeds not above zero.
Result<RepairEffect> repairEffect(const RepairEffectOptions& options);

} // namespace sealwalk::analysis
