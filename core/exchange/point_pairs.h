// SPDX-License-Identifier: GPL-3.0-or-later
// Pairs of points that a person said are one, as the text a history keeps them in.
#pragma once

#include "core/base/result.h"
#include "core/model/ids.h"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace sealwalk::exchange {

using PointPair = std::pair<model::PointId, model::PointId>;

/// What the names of the settings below begin with.
inline constexpr std::string_view kSamePoints = "same points ";
inline constexpr std::string_view kOtherPoints = "other points ";

/// The name of the setting that keeps the pairs of two jobs.
std::string pairsSetting(model::JobId before, model::JobId after);
/// The name of the setting that keeps the pairs a person said are two places.
std::string deniedSetting(model::JobId before, model::JobId after);
/// One pair a line, two UUIDs with a blank between.
std::string pairsText(const std::vector<PointPair>& pairs);
Result<std::vector<PointPair>> readPairs(std::string_view text);

} // namespace sealwalk::exchange
