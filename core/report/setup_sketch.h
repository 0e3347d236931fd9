// SPDX-License-Identifier: GPL-3.0-or-later
// The set-up of a job as a schematic: what was stated of it, part by part. Nothing is drawn that nobody said.
#pragma once

#include "core/model/job.h"
#include "core/model/test_object.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace sealwalk::report {

/// One thing of the set-up with its words.
struct SetupPart
{
    std::vector<std::string> lines; ///< its name first, then what is said of it, figures with their units
    bool isStated = true;           ///< false: it must be there, but nothing was said of it
    bool operator==(const SetupPart&) const = default;
};

struct SetupSketch
{
    SetupPart object;
    std::optional<SetupPart> ownPumps;     ///< the object's own; only where their speed is stated
    std::vector<SetupPart> leaks;          ///< reference leaks on the object, one per leak and place
    std::vector<SetupPart> leaksAtInlet;   ///< the same at the detector's inlet
    SetupPart connection;                  ///< where the line leaves the object
    SetupPart hose;                        ///< bore, length
    std::optional<SetupPart> linePressure; ///< in the hose
    std::optional<SetupPart> parallelPump; ///< none: there is none, or nobody spoke of one
    SetupPart detector;

    /// The whole in words, for who cannot see it: "Box coater 2, 480 l; RL-11, 4.9 × 10⁻⁸ …".
    [[nodiscard]] std::string spoken() const;
};

/// The words of the drawing. "%1" stands for the figure or the name. As given: English, for print.
struct SetupWords
{
    std::string litres = "%1 l";
    std::string volumeNotStated = "volume not stated";
    std::string ownPumps = "own pumps";
    std::string airSpeed = "%1 l/s air";
    std::string heliumSpeed = "%1 l/s helium";
    std::string speedNotStated = "speed not stated";
    std::string referenceLeak = "reference leak %1";
    std::string atPlace = "at %1";
    std::string placeNotStated = "place not stated";
    std::string connectionNotStated = "connection not stated";
    std::string hose = "hose";
    std::string bore = "bore %1 mm";
    std::string boreNotStated = "bore not stated";
    std::string length = "%1 m long";
    std::string lengthNotStated = "length not stated";
    std::string sizeNotStated = "size not stated";
    std::string pressure = "%1 mbar inside";
    std::string parallelPump = "pump in parallel";
    std::string detector = "detector %1";
    std::string detectorNotNamed = "detector, not named";
    std::string zeroOn = "zero on";
    std::function<std::string(double number, int digits)> number; ///< none: as files write it
    std::function<std::string(LeakRate rate)> rate;               ///< with its unit; none: mbar·l/s in print
    std::function<std::string(const std::string&)> typed;         ///< what somebody typed; none: as it is
};

SetupSketch setupSketch(const model::Job& job, const model::TestObject& object, const SetupWords& words = {});

} // namespace sealwalk::report
