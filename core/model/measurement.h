// SPDX-License-Identifier: GPL-3.0-or-later
// What is measured besides the points: reference leak, calibrations, background, pressure rise; and that one
// of them is void.
#pragma once

#include "core/base/timestamp.h"
#include "core/model/enum_names.h"
#include "core/model/ids.h"
#include "core/quantities/kinds.h"

#include <optional>
#include <string>
#include <vector>

namespace sealwalk::model {

/// A leak of known rate with its certificate.
struct ReferenceLeak
{
    std::string serial;
    std::string certificate;
    LeakRate value;      ///< helium, at certificateTemperature on certificateDate
    std::string entered; ///< as typed, with its unit
    Timestamp certificateDate;
    std::optional<Timestamp> dueDate;
    Temperature certificateTemperature = degreesCelsius(23.0);
    double temperatureCoefficient = 0.03; ///< 1/K
    bool exponential = true;           ///< exponential in temperature; false: linear, as the certificate says
    double lossPerYear = 0.02;         ///< fraction of the rate lost per year
    double relativeUncertainty = 0.05; ///< standard uncertainty of the certificate value
    bool operator==(const ReferenceLeak&) const = default;
};

enum class CalibrationKind
{
    DetectorCheck, ///< reference leak at the detector's inlet
    SystemCheck,   ///< reference leak on the object, through the whole set-up
};

template <>
struct EnumNames<CalibrationKind>
{
    static constexpr std::string_view what = "kind of calibration";
    static constexpr std::array<std::pair<CalibrationKind, std::string_view>, 2> table{{
        {CalibrationKind::DetectorCheck, "detector check"},
        {CalibrationKind::SystemCheck, "system check"},
    }};
};

enum class CalibrationMoment
{
    Before,
    During,
    After
};

template <>
struct EnumNames<CalibrationMoment>
{
    static constexpr std::string_view what = "moment of calibration";
    static constexpr std::array<std::pair<CalibrationMoment, std::string_view>, 3> table{{
        {CalibrationMoment::Before, "before"},
        {CalibrationMoment::During, "during"},
        {CalibrationMoment::After, "after"},
    }};
};

struct Calibration
{
    CalibrationId id;
    CalibrationKind kind = CalibrationKind::SystemCheck;
    CalibrationMoment moment = CalibrationMoment::Before;
    Timestamp at;
    ReferenceLeak leak;
    Temperature roomTemperature = degreesCelsius(20.0);
    LeakRate shown;                   ///< with the reference leak open
    LeakRate background;              ///< with it closed
    std::optional<Duration> response; ///< to 63 % of the step
    std::optional<Duration> cleanUp;  ///< back to within noise of the background
    std::string place;                ///< where the leak sat: "far flange"; one factor per place
    std::vector<JointId> joints;      ///< joints this factor serves; empty: all that have none of their own
    std::string by;
    std::string note;
    bool operator==(const Calibration&) const = default;
};

/// A quiet watch of the background, no helium given: a series, or its level and swing as read by eye.
struct BackgroundWatch
{
    BackgroundId id;
    Timestamp at;
    std::vector<double> times;    ///< seconds from `at`, increasing
    std::vector<LeakRate> values; ///< as shown, one per time
    std::string source;           ///< "typed", or the name of the file or feed
    std::string by;
    std::optional<LeakRate> swing; ///< up and down from the one value, the level, both read by eye
    bool operator==(const BackgroundWatch&) const = default;
};

enum class TestMoment
{
    AsFound,
    AsLeft,
    Between
};

template <>
struct EnumNames<TestMoment>
{
    static constexpr std::string_view what = "moment of the pressure-rise test";
    static constexpr std::array<std::pair<TestMoment, std::string_view>, 3> table{{
        {TestMoment::AsFound, "as found"},
        {TestMoment::AsLeft, "as left"},
        {TestMoment::Between, "between repairs"},
    }};
};

/// A pressure-rise record: the object valved off and left alone.
struct RiseTest
{
    RiseTestId id;
    TestMoment moment = TestMoment::AsFound;
    Timestamp at;
    std::vector<double> times;            ///< seconds from `at`, increasing
    std::vector<double> pressures;        ///< Pa, one per time
    std::vector<double> temperatures;     ///< K, one per time, or empty
    std::optional<Pressure> basePressure; ///< before valving off, pumps running
    std::string gauge;
    std::string source; ///< "typed", or the file's name
    std::string by;
    std::string note;
    bool operator==(const RiseTest&) const = default;
};

/// Says that a calibration, a background watch or a pressure rise proves nothing, and why. It stays on record
/// and counts for nothing.
struct MeasurementVoid
{
    MeasurementId measurement; ///< the id of the one meant, whichever of the three it is
    std::string reason;
    std::string by;
    Timestamp at;
    bool operator==(const MeasurementVoid&) const = default;
};

} // namespace sealwalk::model
