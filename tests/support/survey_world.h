// SPDX-License-Identifier: GPL-3.0-or-later
// Invented workshops that make surveys with known leaks, for checking the source search. Their air, probe and
// detector are not the model the search uses: other clouds, simulated time, other noise, aim errors, leaks
// anywhere.
#pragma once

#include "core/analysis/survey.h"

#include <cstdint>
#include <string>
#include <vector>

namespace sealwalk::tests {

/// How the helium of one family of workshops travels.
enum class Air
{
    Puffs,    ///< Gaussian cloud with an exponential skirt, farther upwards
    Powers,   ///< one power law of a distance that is shorter upwards
    Plumes,   ///< thin rising plume with draught, and little else
    Channels, ///< helium runs along the joint, less across
    Ragged,   ///< puffs with every path strengthened or weakened at random
    Still,    ///< puffs in a room that fills with helium
    Exact,    ///< exponential of the distance, no sweep: the probe is always nearest to the leak
};

struct WorldLeak
{
    std::size_t point = 0; ///< index of the point whose stretch it lies on
    double along = 0.0;    ///< -1 … 1 of the half length
    double rate = 0.0;     ///< mbar·l/s
    double x = 0.0;        ///< mm
    double up = 0.0;
    std::size_t view = 0;
};

struct World
{
    analysis::Survey survey;
    std::vector<WorldLeak> leaks;
};

std::vector<Air> allAirs();
std::string nameOf(Air air);

/// Makes the survey number `seed` of a family; `severity` 0.5 mild, 1 usual, 1.5 hard scales reach, noise and
/// haste.
World makeWorld(Air air, std::uint64_t seed, double severity = 1.0);

} // namespace sealwalk::tests
