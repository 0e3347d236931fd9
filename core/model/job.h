// SPDX-License-Identifier: GPL-3.0-or-later
// One piece of work on a test object, from request to sign-off: the whole record.
#pragma once

#include "core/model/measurement.h"
#include "core/model/reading.h"
#include "core/model/repair.h"
#include "core/model/review.h"
#include "core/model/sketch.h"

#include <map>

namespace sealwalk::model {

enum class GasBasis
{
    Helium,
    Air
};

template <>
struct EnumNames<GasBasis>
{
    static constexpr std::string_view what = "gas basis";
    static constexpr std::array<std::pair<GasBasis, std::string_view>, 2> table{{
        {GasBasis::Helium, "helium"},
        {GasBasis::Air, "air"},
    }};
};

/// A caution read by a person. Reading is not permission.
struct CautionTick
{
    std::string caution; ///< its stable word
    std::string by;
    Timestamp at;
    bool operator==(const CautionTick&) const = default;
};

struct Instrument
{
    std::string what; ///< detector, gauge, thermometer, oxygen meter
    std::string identity;
    std::optional<Timestamp> due;
    bool operator==(const Instrument&) const = default;
};

/// What Prepare asks for. Everything may be empty at first; Spray says what is missing.
struct Setup
{
    std::string customer; ///< whom the job is done for
    std::string witness;  ///< who watches it for the customer; may be nobody
    std::string purpose;  ///< why the job was asked for
    std::string procedure;
    std::string lastTouched;                  ///< what was last worked on: where to look first
    std::string excluded;                     ///< what is left out on purpose
    std::optional<LeakRate> pointLimit;       ///< helium at 1 bar outside, one point
    std::optional<LeakRate> totalLimit;       ///< as air, all leaks together
    std::map<JointKind, LeakRate> kindLimits; ///< point limits of single joint kinds
    std::string limitAgreedBy;
    std::string unit = "mbar l/s"; ///< shown everywhere in the job; a unit's stable text
    GasBasis gasBasis = GasBasis::Helium;

    std::string detector;                       ///< identity, not a product name
    std::string connection;                     ///< where it is connected
    std::string detectorUnit = "mbar l/s";      ///< what its display says
    std::optional<LeakRate> rangeTop;           ///< highest value it can show
    std::optional<LeakRate> rangeBottom;        ///< lowest value it can show
    bool zeroOn = false;                        ///< background subtracted on the display
    std::optional<PumpingSpeed> detectorSpeed;  ///< helium, at its inlet
    std::optional<PumpingSpeed> auxiliarySpeed; ///< helium, pump in parallel; none: detector alone
    std::optional<Length> hoseDiameter;
    std::optional<Length> hoseLength;
    std::optional<Pressure> linePressure; ///< in the hose during the test
    std::optional<Volume> volume;         ///< of this job; none: the object's

    Fraction heliumShare = fraction(1.0); ///< at the joint
    double heliumShareUncertainty = 0.10; ///< relative standard uncertainty
    std::optional<double> heliumFlow;     ///< standard litres per minute at 0 °C
    std::string heliumBottle;
    Length leakPath = millimetres(5.0); ///< assumed length of a leak channel
    std::optional<Duration> response;   ///< typed over the computed or measured one
    double noiseFactor = 3.0;           ///< k of the smallest detectable leak
    Temperature roomTemperature = degreesCelsius(20.0);
    std::string objectState; ///< cleaned, dried, drained, valves, temperature
    bool dried = false;
    std::string noCheckAfterReason; ///< why there is no check afterwards; empty: there must be one
    std::vector<Instrument> instruments;
    std::vector<CautionTick> cautions;
    bool operator==(const Setup&) const = default;
};

enum class JobState
{
    Open,
    Submitted,
    Returned,
    Signed
};

template <>
struct EnumNames<JobState>
{
    static constexpr std::string_view what = "state of a job";
    static constexpr std::array<std::pair<JobState, std::string_view>, 4> table{{
        {JobState::Open, "open"},
        {JobState::Submitted, "submitted"},
        {JobState::Returned, "returned"},
        {JobState::Signed, "signed"},
    }};
};

struct Job
{
    JobId id;
    int number = 0; ///< in its history
    /// The number it was opened under, when it came from another history where `number` was taken; otherwise
    /// the same as `number`, or 0. Signatures cover this one.
    int openedAs = 0;
    ObjectId object;
    Timestamp opened;
    JobState state = JobState::Open;
    Setup setup;
    Sketch sketch;
    std::vector<Round> rounds;     ///< in order of number
    std::vector<Reading> readings; ///< in order of sequence, corrected ones included
    std::vector<VoidMark> voids;
    std::vector<Calibration> calibrations;
    std::vector<BackgroundWatch> backgrounds;
    std::vector<RiseTest> riseTests;
    std::vector<MeasurementVoid> voidMeasurements; ///< of the three above
    std::vector<Repair> repairs;
    std::vector<Judgement> judgements; ///< the latest of a point and round counts
    std::vector<Concession> concessions;
    std::vector<ReviewEntry> review;
    std::vector<Signature> signatures;
    bool operator==(const Job&) const = default;

    [[nodiscard]] const Round* round(RoundId id) const;
    [[nodiscard]] const Reading* reading(ReadingId id) const;
    [[nodiscard]] bool isVoid(ReadingId id) const;
    /// Why a calibration, background watch or pressure rise is void; nullptr when it stands.
    [[nodiscard]] const MeasurementVoid* voidOf(const Uuid& measurement) const;
    /// Those that are not void, in the order they were stored.
    [[nodiscard]] std::vector<const Calibration*> standingCalibrations() const;
    [[nodiscard]] std::vector<const BackgroundWatch*> standingBackgrounds() const;
    [[nodiscard]] std::vector<const RiseTest*> standingRiseTests() const;
    /// The reading that took the place of `id`; nullptr when it still stands.
    [[nodiscard]] const Reading* correctionOf(ReadingId id) const;
    /// Readings of a round that stand: neither corrected nor void, in order of sequence.
    [[nodiscard]] std::vector<const Reading*> standing(RoundId round) const;
    /// The limit of one point: its joint kind's, else the job's; none when no limit is set.
    [[nodiscard]] std::optional<LeakRate> limitOf(PointId point) const;
    /// Whether records may still be added: open or returned.
    [[nodiscard]] bool isOpenForWork() const
    {
        return state == JobState::Open || state == JobState::Returned;
    }
};

} // namespace sealwalk::model
