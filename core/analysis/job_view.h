// SPDX-License-Identifier: GPL-3.0-or-later
// The figures of a job: every reading from the display to the leak on the chamber, what each reference-leak
// check says, and the balance. Screen, command line and report take their figures from here.
#pragma once

#include "core/analysis/corrected_rate.h"
#include "core/analysis/leak_balance.h"
#include "core/analysis/point_finding.h"
#include "core/analysis/system_factor.h"
#include "core/model/job.h"
#include "core/model/test_object.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace sealwalk::analysis {

/// Beside a bound that is wider because nobody clocked the spray.
inline constexpr std::string_view kUntimedSprayReason =
    "spray not timed: what would have shown is given for one response time of helium, 3 s at most";

/// Begins the sentence of a value that is open upwards for the same cause.
inline constexpr std::string_view kUntimedValueReason = "spray not timed: a leak ";

/// One reading by itself; what neighbours' helium did to it is not in here. Exactly one of these holds:
/// `rate` with its range (a response that could be sized), `below` (none seen, or smaller than could be
/// seen), `atLeast` (above the detector's range), or none of them, and `because` says why.
struct CorrectedReading
{
    model::ReadingId reading;
    model::PointId point;
    model::Outcome outcome = model::Outcome::Value;
    model::Condition condition = model::Condition::AtRest;
    bool isVoid = false;
    std::optional<LeakRate> net;  ///< as shown: peak less background
    std::optional<LeakRate> rate; ///< helium, on the chamber, at 100 % helium outside
    std::optional<LeakRate> low;  ///< 95 %, with `rate`
    std::optional<LeakRate> high; ///< 95 %, with `rate`
    double unseen = 1.0;          ///< in `high`: how far it is open upwards because nobody timed the spray
    std::optional<LeakRate> below;
    std::optional<LeakRate> atLeast;
    double relativeUncertainty = 0.0; ///< standard, all parts
    double sharedUncertainty = 0.0;   ///< relative, standard, the part that is the same for the whole set-up
    double ownUncertainty = 0.0;      ///< relative, standard, of this reading alone
    std::vector<FactorUsed> factors;  ///< from net to rate, in order
    std::optional<LeakRate> smallestDetectable; ///< of that moment, on the chamber
    std::optional<LeakRate> limit;
    Verdict verdict = Verdict::NoAnswer;
    std::optional<double> conformance; ///< probability to be within the limit, with `rate`
    /// Whether the set-up turns this reading into a figure on the chamber at all.
    [[nodiscard]] bool isSized() const { return rate || below || atLeast; }
    std::vector<std::string> because; ///< sentences
};

/// Any reading of the job, or one about to be stored: its point decides factor and limit, its time the check
/// and the background watch.
CorrectedReading correctedReading(const model::Job& job, const model::TestObject& object,
                                  const model::Reading& reading);

/// All readings of the round that stand, and the void ones marked so, in order of sequence.
std::vector<CorrectedReading> correctedReadings(const model::Job& job, const model::TestObject& object,
                                                model::RoundId round);

/// One check with a reference leak and what followed from it.
struct CheckView
{
    model::CalibrationId calibration;
    std::optional<LeakRate> reference;  ///< what the leak gave that day in that room
    std::optional<SystemFactor> factor; ///< none when the check is not usable
    std::optional<FactorChange> change; ///< against the check before it in the same set-up and place
    std::optional<FactorChange>
        step; ///< against the last one of another set-up at that place; with no `change`
    std::vector<std::string> notes; ///< warnings, or why it is not usable
};

/// In order of time.
std::vector<CheckView> checks(const model::Job& job);

/// What the set-up can see at one place, now: after the last check and background watch.
struct PlaceSensitivity
{
    std::string place;                  ///< where the reference leak sat
    std::vector<model::JointId> joints; ///< empty: all that have no check of their own
    SystemFactor factor;
    std::optional<LeakRate> smallestDetectable; ///< for the dwell given; none without a background watch
    std::optional<LeakRate> limit;              ///< the lowest that applies there
    bool cannotPass = false; ///< the smallest detectable leak is above the limit: nothing can be passed there
    std::string advice;      ///< one sentence
};

/// @param dwell  planned; a place that answers more slowly is taken to be sprayed for three response times
std::vector<PlaceSensitivity> sensitivities(const model::Job& job, const model::TestObject& object,
                                            Duration dwell);

/// Channel for helium-to-air conversion, from the job's leak path and room temperature.
flow::ChannelConditions channelConditions(const model::Setup& setup);

/// Whether a leak seen in this condition is open when nobody touches the object; others stand beside the sum.
bool isOpenAtRest(model::Condition condition);

/// Why a leak stands beside the sum of the object's leaks.
enum class Beside
{
    Nothing,        ///< it is in the sum
    Setup,          ///< it is the test set-up's
    OtherCondition, ///< it is open only when moved, hot, cold …
};

Beside besideOf(const model::Job& job, const PointFinding& finding);

/// The rate of a finding as air through its own equivalent channel, with the range of reading and geometry;
/// none without a rate above zero, or when no channel passes it.
std::optional<LeakAsAir> asAir(const model::Job& job, const model::TestObject& object,
                               const PointFinding& finding);

/// The leaks of these findings as they enter a sum: those with a rate, one that neighbours share only once.
/// What stands beside the sum says so itself. Labels are "point 12".
std::vector<LocatedLeak> locatedLeaks(const model::Job& job, const model::TestObject& object,
                                      std::span<const PointFinding> findings);

/// Findings with a rate against a pressure-rise total. A leak shared by neighbours counts once. Labels are
/// "point 12".
Result<LeakBalance> jobBalance(const model::Job& job, const model::TestObject& object,
                               std::span<const PointFinding> findings, const std::optional<RiseTotal>& total);

} // namespace sealwalk::analysis
