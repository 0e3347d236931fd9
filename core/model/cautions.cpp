// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/cautions.h"

#include <array>

namespace sealwalk::model {

namespace {

constexpr std::array<Caution, 12> kCautions{{
    {"helium", "Helium takes the place of air",
     "It has no smell and gives no warning; it gathers under roofs, in hoods and bags. Ventilate, use an "
     "oxygen alarm in "
     "small rooms and pits, never put your head in a bag."},
    {"confined space", "Inside a chamber is a confined space",
     "Entry needs a permit, a gas test, an attendant, rescue, and gas, vent and power locked out."},
    {"glass", "Glass under vacuum can burst inwards",
     "Wear eye and face protection, keep guards on, do not knock, tighten or scratch."},
    {"lids", "Lids and doors are held by tonnes",
     "Never loosen a clamp or bolt before the object is fully vented."},
    {"venting", "Venting can overpressure a chamber",
     "Use a regulator and a relief valve, and stay with it until it is done."},
    {"cylinder", "A gas cylinder is a weapon when it falls",
     "Chain it upright, cap it to move it, fit the right regulator, open slowly."},
    {"electric", "Feedthroughs and pumps carry dangerous voltages",
     "Isolate, lock, prove dead before touching; that is for qualified people."},
    {"hot and cold", "Baked parts burn, cold parts burn too",
     "Keep helium jets off hot glass and ceramic; cryogens also take the oxygen from the air."},
    {"solvents", "Solvents burn, poison and spoil seals",
     "Keep them from hot pumps and switchgear, ventilate; they also plug leaks for a while."},
    {"residue", "Process residue may be toxic, may catch fire, may radiate",
     "Ask what was run before you open or touch; mind the pump exhaust."},
    {"height", "A ladder and a hose do not go together",
     "Use a platform and a second person; mind the door and the hoist."},
    {"pressure parts", "Welds and pressure parts are for licensed people",
     "Repairs there follow local law and are inspected again."},
}};

} // namespace

std::span<const Caution> cautions()
{
    return kCautions;
}

} // namespace sealwalk::model
