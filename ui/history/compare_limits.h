// SPDX-License-Identifier: GPL-3.0-or-later
// What is said of two jobs with different limits: each is judged by its own, and one of them is on the scale.
#pragma once

#include "ui/history/compare_work.h"

#include <QString>

namespace sealwalk::ui {

/// Empty when both jobs have the same limits.
QString limitWords(const ComparedJobs& jobs);

} // namespace sealwalk::ui
