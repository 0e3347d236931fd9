// SPDX-License-Identifier: GPL-3.0-or-later
// Whether what may be changed while one works was only filled in between two records of a job. Set-up, sketch
// and repairs keep no times, so nothing else tells that nothing of the earlier one was lost.
#pragma once

#include "core/model/job.h"

namespace sealwalk::exchange {

/// Whether all that `less` says stands in `more` unchanged: what is empty in `less`, or still as a new set-up
/// has it, says nothing, and lists may have grown at their end.
bool isFilledIn(const model::Setup& less, const model::Setup& more);
/// The same of sheets, joints and points, wherever they stand in their lists. The revision, which counts the
/// changes, is never lower; an equal one means the same drawing. The last number is a history's business.
bool isFilledIn(const model::Sketch& less, const model::Sketch& more);
/// The same of one repair.
bool isFilledIn(const model::Repair& less, const model::Repair& more);

} // namespace sealwalk::exchange
