// SPDX-License-Identifier: GPL-3.0-or-later
// Does it add up, does it matter, what to repair first: the balance of a round with its pressure-rise test.
#pragma once

#include "core/analysis/job_view.h"
#include "core/analysis/pressure_rise.h"
#include "core/analysis/repair_effect.h"
#include "core/analysis/round_summary.h"
#include "core/model/test_object.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace sealwalk::analysis {

struct JobBalance
{
    LeakBalance balance;
    RepairEffect effect;            ///< of the ticked repairs
    std::vector<std::string> notes; ///< sentences: what is missing for more
};

/// The pressure-rise test that goes with a round: for a round after a repair the last one as left or between
/// repairs, else the last one as found; the last of any when there is none such, nullptr when there is no
/// test.
const model::RiseTest* riseTestFor(const model::Job& job, model::RoundId round);

/// The pressure-rise test that speaks of a whole state: as found the last one before the first repair, as
/// left the last one after the last repair. nullptr when there is none: a total from the other side of a
/// repair says nothing about the leaks on this side.
const model::RiseTest* riseTestFor(const model::Job& job, Standing standing);

struct MissedPressure
{
    Pressure reached;
    Pressure wanted;
    int digits = 2; ///< significant ones in which the two differ
};

/// The base pressure before the pressure rise as left, where it is above the one that the owner wants; none:
/// it is not, or one of them is not known.
std::optional<MissedPressure> missedPressure(const model::Job& job, const model::TestObject& object);

/// What a judged record says of the total, as air; none when it says nothing at all.
std::optional<RiseTotal> totalOf(const RiseSummary& rise);

/// Balance and effect for findings of one round or standing. `rise` is the judged record of riseTestFor();
/// volume, pumps and wishes come from job and object. `ticked` points without a located leak are left out and
/// named in the notes.
Result<JobBalance> balanceOfJob(const model::Job& job, const model::TestObject& object,
                                std::span<const PointFinding> findings, const model::RiseTest* test,
                                const std::optional<RiseSummary>& rise,
                                std::span<const model::PointId> ticked = {});

} // namespace sealwalk::analysis
