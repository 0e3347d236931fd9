// SPDX-License-Identifier: GPL-3.0-or-later
// What to tell a person before or after a job from elsewhere is taken into a history. Says only; the history
// does.
#pragma once

#include "core/exchange/job_json.h"

#include <string>
#include <vector>

namespace sealwalk::exchange {

/// Whether two records of one job hold the same: content, review and signatures. What belongs to a history
/// (number, sequences) and an object renamed since do not count.
bool isSameJob(const JobRecord& here, const JobRecord& there);

/// One sentence for each way in which the object `there` differs from the one of the same identity `here`.
std::vector<std::string> objectDifferences(const model::TestObject& here, const model::TestObject& there);

/// Numbers that name one place in `here` and another in `there`, two jobs of one object, in order.
std::vector<int> clashingPoints(const model::Sketch& here, const model::Sketch& there);

} // namespace sealwalk::exchange
