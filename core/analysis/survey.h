// SPDX-License-Identifier: GPL-3.0-or-later
// A survey as a value: where the points are, what the detector showed at them and when. Input of the source
// search, of the plan and of the advice on the next step.
#pragma once

#include "core/quantities/kinds.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace sealwalk::analysis {

/// A numbered place on a joint. `up` is height, upwards; points of different views do not share coordinates.
struct SurveyPoint
{
    int number = 0; ///< unique in the survey, 1 or more
    std::string joint;
    std::string view;
    Length x;
    Length up;
    Length halfLength;    ///< how far along its joint, either side, the point stands for; 0 or more
    bool isPlan = false;  ///< the view is seen from above: nothing on it is above anything else
    bool isSetup = false; ///< belongs to the test set-up (detector hose, tee): sprayed first
    bool operator==(const SurveyPoint&) const = default;
};

/// What the detector showed while one point was sprayed, corrected to the chamber's leak rate by the system
/// factor but not for helium share or dwell.
struct SurveyReading
{
    int point = 0;  ///< a SurveyPoint's number
    Duration start; ///< helium on, since any common zero
    Duration dwell; ///< helium on to helium off; above 0
    LeakRate background;
    LeakRate peak;
    std::optional<Duration> delay = std::nullopt; ///< helium on to the first clear rise
    std::string condition = {};                   ///< joint condition; empty: as it stands
    bool isVoid = false;                          ///< taken out by the technician
    /// What would have shown at that moment by the watched background, on the chamber; 0: not known.
    LeakRate smallestDetectable = {};
    bool fullSignal = false; ///< nobody clocked it: taken to have shown all it could, whatever `dwell` says
    std::vector<int> shielded = {}; ///< numbers of points taped or bagged off meanwhile
    bool operator==(const SurveyReading&) const = default;

    [[nodiscard]] LeakRate net() const { return peak - background; }
    [[nodiscard]] Duration end() const { return start + dwell; }
};

struct Survey
{
    std::string unit = "mbar l/s"; ///< the unit the file was written in; rates here are SI
    LeakRate limit;                ///< the largest acceptable leak at one point; above 0
    Fraction heliumFraction = fraction(1.0);
    Duration response; ///< time to 63 % of a step; 0 or more
    std::vector<SurveyPoint> points;
    std::vector<SurveyReading> readings; ///< in order of time
    bool operator==(const Survey&) const = default;

    /// Index of the point with this number, or nothing.
    [[nodiscard]] std::optional<std::size_t> indexOf(int number) const;
};

} // namespace sealwalk::analysis
