// SPDX-License-Identifier: GPL-3.0-or-later
// The equipment under test: what stays the same from job to job.
#pragma once

#include "core/base/timestamp.h"
#include "core/model/ids.h"
#include "core/quantities/kinds.h"

#include <optional>
#include <string>

namespace sealwalk::model {

/// The seven decades every map of an object is drawn on, so that years compare by eye.
struct DecadeScale
{
    int lowestDecade = -10; ///< power of ten, mbar·l/s
    int decades = 7;
    bool operator==(const DecadeScale&) const = default;
};

struct TestObject
{
    ObjectId id;
    std::string name;  ///< never empty
    std::string tag;   ///< asset number
    std::string place; ///< site, hall
    std::string note;
    std::optional<Volume> volume;
    double volumeUncertainty = 0.05;    ///< relative standard uncertainty
    std::optional<LeakRate> pointLimit; ///< default for new jobs, helium
    std::optional<LeakRate> totalLimit; ///< default for new jobs, as air
    std::optional<PumpingSpeed>
        airSpeed; ///< effective speed of the object's own pumps at the chamber, for air
    std::optional<Pressure> pumpBlankOff;   ///< what the pumps alone reach
    std::optional<Pressure> wantedPressure; ///< base pressure the owner needs
    DecadeScale scale;
    bool invented = false; ///< demonstration data, labelled so wherever it is shown
    Timestamp created;

    bool operator==(const TestObject&) const = default;
};

} // namespace sealwalk::model
