// SPDX-License-Identifier: GPL-3.0-or-later
// Which check with a reference leak serves a reading, and what the background could hide at its moment.
#pragma once

#include "core/analysis/background_series.h"
#include "core/analysis/corrected_rate.h"
#include "core/analysis/reference_leak.h"
#include "core/analysis/spray_timing.h"
#include "core/analysis/system_factor.h"
#include "core/model/job.h"
#include "core/model/test_object.h"

#include <optional>
#include <string>
#include <vector>

namespace sealwalk::analysis::detail {

/// The reference leak of a check on the day and in the room of the check.
Result<ReferenceLeakToday> referenceOf(const model::Calibration& check);

/// Factor of one check; noise from the background watch nearest before it.
Result<SystemFactor> factorOf(const model::Job& job, const model::Calibration& check);

/// Checks of this kind that serve the joint, in order of time: those that name it, else those that name none.
std::vector<const model::Calibration*> checksFor(const model::Job& job, model::CalibrationKind kind,
                                                 model::JointId joint);

/// The multipliers from display to chamber for a reading of `joint` at `at`: reference leak, system factor,
/// its drift between checks, or detector check and share. None when no check is usable; `notes` says why.
std::optional<std::vector<FactorUsed>> factorsFor(const model::Job& job, model::JointId joint, Timestamp at,
                                                  std::vector<std::string>& notes);

/// The check that opened the set-up of a reading, and the one that closes it. A check made "before" starts a
/// new set-up: it never closes the one before it.
struct Bracket
{
    const model::Calibration* opening = nullptr; ///< none: no check is usable
    const model::Calibration* closing = nullptr;
    bool early = false; ///< the reading is older than every check
};

/// The usable checks around a reading of `joint` at `at`, those its factor comes from: on the object, else at
/// the detector. Pointers live as long as `job` is unchanged.
Bracket checksAround(const model::Job& job, model::JointId joint, Timestamp at);

/// Response time that goes for readings of `joint`: typed, measured, or worked out from the volume of the job
/// (else of its object) over the helium speed through the hose; none when unknown. Dwell, wait and the share
/// of the signal a dwell showed all come from here.
struct KnownResponse
{
    Duration time;
    double relativeUncertainty = 0.1;
    TimingSource source = TimingSource::Measured;
    std::string from;
};
std::optional<KnownResponse> responseOf(const model::Job& job, const model::TestObject& object,
                                        model::JointId joint, Timestamp at);

/// The last background watch before `at`, else the first; none when no watch is usable.
std::optional<BackgroundSummary> backgroundAt(const model::Job& job, Timestamp at);

} // namespace sealwalk::analysis::detail
