// SPDX-License-Identifier: GPL-3.0-or-later
// The findings of a round: the one place that screen, command line and report ask.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/model/job.h"
#include "core/model/test_object.h"

#include <vector>

namespace sealwalk::analysis {

/// One finding per active point of the round, in order of number; points outside the round are left out. An
/// unknown round has no findings. The verdict of a person, where there is one, stands over the computed one
/// and names both. A concession counts while it has not run out: by `now`, in a signed job by its approval.
std::vector<PointFinding> jobFindings(const model::Job& job, const model::TestObject& object,
                                      model::RoundId round, const Timestamp& now = Timestamp::now());

/// One reading by itself, stored or about to be: net, on the chamber, against the limit; neighbours play no
/// part.
PointFinding readingFinding(const model::Job& job, const model::TestObject& object,
                            const model::Reading& reading);

} // namespace sealwalk::analysis
