// SPDX-License-Identifier: GPL-3.0-or-later
// The words of repairs and the caution that belongs to each. Common practice; cautions defer to site rules
// and licensed people.
#pragma once

#include "core/model/job.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace sealwalk::analysis {

/// Defects a technician sees, the usual first.
std::span<const std::string_view> defectWords();
/// What is done about them.
std::span<const std::string_view> actionWords();

/// Whether this action is no lasting one unless its design says so: fillers, tape, a locked valve, a blank.
bool holdsForATime(std::string_view action);
/// Hours a filler usually cures before vacuum and helium, at room temperature; none where nothing cures.
/// Common practice, no source; the maker's sheet comes first.
std::optional<int> usualCureHours(std::string_view action);

/// Cautions for an action, by the words in it; at least one.
std::vector<std::string> repairCautions(std::string_view action);

/// Whether this action tightens, and a joint of the points was tightened before, whatever its point.
/// `repairs` are those of this job or of earlier ones.
bool isTightenedAgain(const model::Sketch& sketch, std::span<const model::Repair> repairs,
                      const std::vector<model::PointId>& points, std::string_view action);

/// Points to spray again with repaired ones: their neighbours on the joint, and the opposite side of a closed
/// joint.
std::vector<model::PointId> disturbedBy(const model::Sketch& sketch,
                                        const std::vector<model::PointId>& repaired);

} // namespace sealwalk::analysis
