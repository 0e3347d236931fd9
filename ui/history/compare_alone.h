// SPDX-License-Identifier: GPL-3.0-or-later
// What is said of points that only one of two jobs has: "new" in a comparison is a leak, not a point.
#pragma once

#include "core/analysis/comparison.h"
#include "core/model/job.h"

#include <QString>

namespace sealwalk::ui {

/// Empty when every point is in both.
QString aloneWords(const analysis::Comparison& comparison, const model::Job& before, const model::Job& after);

} // namespace sealwalk::ui
