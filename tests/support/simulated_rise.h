// SPDX-License-Identifier: GPL-3.0-or-later
// Pressure-rise records from physics other than the curves the analysis fits: chambers with desorbing walls,
// diffusing walls and trapped volumes, integrated in time, seen through gauges with faults.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace sealwalk::tests {

/// Where the gas that is not the leak comes from.
enum class RisePhysics
{
    None,             ///< a leak alone
    WallSites,        ///< 2 to 4 kinds of site that release and take up again, pumped before
    TrappedMolecular, ///< one or two trapped volumes behind molecular channels, beside a wall
    TrappedLaminar,   ///< a trapped volume behind a laminar channel: p dp law
    PowerLaw,         ///< rate as (t + pumped)^-alpha, alpha 0.6 to 1.4
    WaterBroad,       ///< a continuous spread of binding energies, each of first order
    Diffusion,        ///< gas dissolved in a slab, pumped before
    Mixture,          ///< two of the above
};
inline constexpr int kRisePhysicsCount = 8;
const char* nameOf(RisePhysics physics);

struct SimulatedRise
{
    std::vector<double> time;        ///< s
    std::vector<double> pressure;    ///< Pa as the gauge shows it
    std::vector<double> temperature; ///< K, or empty
    double volume = 0.0;             ///< m³
    double leak = 0.0;               ///< Pa·m³/s, true
    double outgassingEnd = 0.0;      ///< Pa·m³/s, true
    RisePhysics physics = RisePhysics::None;
    std::string faults;   ///< of the gauge and the room, for people
    bool carried = false; ///< long and quiet enough in principle to tell the leak
};

/// One record; the same for the same seed.
SimulatedRise simulateRise(RisePhysics physics, std::uint64_t seed);

} // namespace sealwalk::tests
