// SPDX-License-Identifier: GPL-3.0-or-later
// Three more invented workshops for checking the source search, each with physics of its own: nothing of the
// air, the walk of the probe, the detector or the layout is shared with the search or with survey_world.h.
#pragma once

#include "tests/support/survey_world.h"

#include <cstdint>
#include <string>
#include <vector>

namespace sealwalk::tests {

enum class Workshop
{
    Draughts, ///< puffs carried by a draught, growing and rising; the probe swings to and fro; a tail in two
              ///< parts
    Hall,     ///< power law, farther up than down; exposure varies from point to point; a power-law tail
    Cabin,    ///< small closed room that fills, with pockets; rough aim; the background steps and wanders
};

std::vector<Workshop> allWorkshops();
std::string nameOf(Workshop workshop);

/// Makes the survey number `seed` of a workshop. At `reach` 1 the plain readings are false about once in
/// five; larger carries helium farther.
World makeWorkshop(Workshop workshop, std::uint64_t seed, double reach = 1.0);

} // namespace sealwalk::tests
