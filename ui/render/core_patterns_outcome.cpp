// SPDX-License-Identifier: GPL-3.0-or-later
// Balance, repairs and their cautions, comparison.
#include "ui/render/core_patterns.h"

#include <QtGlobal>

namespace sealwalk::render {

std::span<const char* const> outcomePatterns()
{
    static constexpr const char* kAll[] = {
        QT_TRANSLATE_NOOP(
            "Core",
            "no pressure-rise test to hold the located leaks against; run one with the pumps valved off"),
        QT_TRANSLATE_NOOP(
            "Core", "Cannot say at %1: no response, but a leak above the limit could have stayed unseen."),
        QT_TRANSLATE_NOOP("Core",
                          "the pressure-rise record does not part leak from outgassing; only an upper "
                          "bound of what is missing is known"),
        QT_TRANSLATE_NOOP("Core", "%1 of the total is not located (%2 to %3): something is still missing"),
        QT_TRANSLATE_NOOP("Core",
                          "the located leaks exceed the total: look for a leak counted twice, a system "
                          "factor that changed, or another state of the chamber"),
        QT_TRANSLATE_NOOP("Core",
                          "the pressure rise shows no leak within its range; nothing located contradicts it"),
        QT_TRANSLATE_NOOP(
            "Core",
            "by best estimate %1 of the total is not located, but the ranges allow for anything up to "
            "%2: spray the points left out and seal or repair the largest leak, then look again"),
        QT_TRANSLATE_NOOP(
            "Core",
            "the located leaks account for the total within the ranges; up to %1 could still be missing"),
        QT_TRANSLATE_NOOP("Core", "no total limit and no wanted pressure to repair towards"),
        QT_TRANSLATE_NOOP("Core",
                          "no total limit, and without the speed of the object's own pumps for air no "
                          "repair can be held against the base pressure wanted"),
        QT_TRANSLATE_NOOP("Core", "repairing every located leak is not enough; what is not located must be "
                                  "found, or the limit is below the outgassing"),
        QT_TRANSLATE_NOOP("Core", "the leaks together are already as small as asked"),
        QT_TRANSLATE_NOOP("Core", "repairing %1 is enough"),
        QT_TRANSLATE_NOOP("Core", "%1 repairs are enough, from %2 on"),
        QT_TRANSLATE_NOOP("Core", "cannot say whether the leaks together are as small as asked: %1"),
        QT_TRANSLATE_NOOP("Core", "repairing %1 is needed, and cannot say whether it is enough: %2"),
        QT_TRANSLATE_NOOP("Core",
                          "%1 repairs are needed, from %2 on, and cannot say whether they are enough: %3"),
        QT_TRANSLATE_NOOP("Core", "the pressure rise does not part leak from outgassing"),
        QT_TRANSLATE_NOOP("Core", "there is no leak with a rate and no pressure rise of this state"),
        QT_TRANSLATE_NOOP("Core", "there is no pressure rise of this state"),
        QT_TRANSLATE_NOOP("Core", "points without a reading: %1"),
        QT_TRANSLATE_NOOP("Core", "points whose readings are void: %1"),
        QT_TRANSLATE_NOOP("Core", "points that could hide a leak: %1"),
        QT_TRANSLATE_NOOP("Core", "the leak that point %1 shares with %2 is counted once"),
        QT_TRANSLATE_NOOP("Core", "point %1 has no located leak; repairing it changes no figure here"),
        QT_TRANSLATE_NOOP("Core",
                          "the pressure rise on record was measured on the other side of a repair: the "
                          "total of this state is not known until it is measured again"),
        QT_TRANSLATE_NOOP("Core", "what is left after the repairs is projected, not measured: a new "
                                  "pressure rise proves it"),
        QT_TRANSLATE_NOOP("Core", "without the volume the pressure rise cannot be worked out"),
        QT_TRANSLATE_NOOP(
            "Core",
            "without the pumping speed for air at the chamber the base pressure cannot be worked out"),
        QT_TRANSLATE_NOOP("Core",
                          "the base pressure was not measured and what the pumps alone reach is not known: "
                          "it is worked out without it"),
        QT_TRANSLATE_NOOP("Core", "open: cures until %1"),
        QT_TRANSLATE_NOOP("Core", "open: cures until %1; sprayed too early"),
        QT_TRANSLATE_NOOP("Core", "open: not all sprayed again"),
        QT_TRANSLATE_NOOP("Core", "open: sprayed again, still over the limit"),
        QT_TRANSLATE_NOOP("Core", "open: sprayed again, cannot say"),
        QT_TRANSLATE_NOOP("Core", "sprayed again; no pressure rise since"),
        QT_TRANSLATE_NOOP("Core", "proven: sprayed again, total measured"),
        QT_TRANSLATE_NOOP("Core", "proven: sprayed again; the total could not be told from outgassing"),
        QT_TRANSLATE_NOOP("Core", "proven: sprayed again; the pressure rise gives no total"),
        QT_TRANSLATE_NOOP("Core", "proven: sprayed again; no part of the object's total"),
        QT_TRANSLATE_NOOP("Core", "repaired again later"),
        QT_TRANSLATE_NOOP("Core",
                          "Vacuum-compatible grease only, and sparingly: a seal that passes only because "
                          "it is wet is not repaired."),
        QT_TRANSLATE_NOOP(
            "Core",
            "Polish along the seal line, never across it, and never a knife edge; keep the grit out."),
        QT_TRANSLATE_NOOP("Core", "Let a filler cure fully before pumping and before helium; ventilate, and "
                                  "mind the maker's sheet."),
        QT_TRANSLATE_NOOP("Core", "Let a filler cure fully before pumping and before helium."),
        QT_TRANSLATE_NOOP("Core", "Tape and putty prove the place or keep pumps alive; they are no repair."),
        QT_TRANSLATE_NOOP("Core",
                          "Hot work needs its permit, a vented and purged vessel and qualified people; "
                          "pressure parts follow the local code."),
        QT_TRANSLATE_NOOP("Core",
                          "Hot work needs its permit and qualified people; heat may open the neighbours."),
        QT_TRANSLATE_NOOP(
            "Core", "Tighten in sequence and small steps to the stated torque; never glass under vacuum."),
        QT_TRANSLATE_NOOP("Core", "Never use a metal gasket twice; look at both edges."),
        QT_TRANSLATE_NOOP(
            "Core",
            "Wipe without lint; solvents need ventilation and no flame, and elastomers take them up."),
        QT_TRANSLATE_NOOP("Core", "Support the weight, keep the bend; spray it at rest and moved."),
        QT_TRANSLATE_NOOP("Core", "Tag it and tell operations."),
        QT_TRANSLATE_NOOP("Core", "Solvents: ventilate, no flame, gloves."),
        QT_TRANSLATE_NOOP("Core",
                          "Vent fully before anything is loosened: lids and flanges are held by great "
                          "force. Site rules and licensed people come first."),
        QT_TRANSLATE_NOOP("Core", "%1 then, %2 now"),
        QT_TRANSLATE_NOOP("Core", "%1 %2, which need not have shown %3: seen was only what is above %4"),
        QT_TRANSLATE_NOOP("Core", "%1 now; below %2 then"),
        QT_TRANSLATE_NOOP("Core", "%1 then; below %2 now"),
        QT_TRANSLATE_NOOP("Core", "another condition: %1 then, %2 now"),
        QT_TRANSLATE_NOOP("Core", "there was no such point then"),
        QT_TRANSLATE_NOOP("Core", "the point is no longer there"),
        QT_TRANSLATE_NOOP(
            "Core",
            "no response both times, but %1 only what is above %2 would have shown, %3 what is above %4"),
        QT_TRANSLATE_NOOP("Core", "no response both times, below %1 then and %2 now"),
        QT_TRANSLATE_NOOP("Core", "echo %1, its own part below %2"),
        QT_TRANSLATE_NOOP("Core", "masked %1, its own part below %2"),
        QT_TRANSLATE_NOOP("Core", "without a size %1"),
        QT_TRANSLATE_NOOP("Core", "beyond the detector's range %1"),
        QT_TRANSLATE_NOOP("Core", "void %1"),
        QT_TRANSLATE_NOOP("Core", "not accessible %1"),
        QT_TRANSLATE_NOOP("Core", "not tested %1"),
        QT_TRANSLATE_NOOP("Core", "not sprayed %1"),
    };
    return kAll;
}

} // namespace sealwalk::render
