// SPDX-License-Identifier: GPL-3.0-or-later
// A hose between chamber and pump, from molecular to laminar flow.
#pragma once

#include "core/flow/gas.h"

namespace sealwalk::flow {

struct Hose
{
    Length diameter; ///< inner, 0.1 mm to 1 m
    Length length;   ///< with bends added (bendLength), 1 mm to 1 km

    bool operator==(const Hose&) const = default;
};

Status check(const Hose& hose);

/// Flow of `gas` at `chamber` pressure when `pump` is at the far end: the pump's inlet pressure is solved so
/// that the hose (Knudsen's law, integrated over its length) passes what the pump takes. 0 at zero pressure.
Result<LeakRate> flowThroughHose(Gas gas, Temperature temperature, const Hose& hose, PumpingSpeed pump,
                                 Pressure chamber);

/// Speed at the chamber. At zero chamber pressure the molecular value.
Result<PumpingSpeed> speedAtChamber(Gas gas, Temperature temperature, const Hose& hose, PumpingSpeed pump,
                                    Pressure chamber);

} // namespace sealwalk::flow
