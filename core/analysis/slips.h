// SPDX-License-Identifier: GPL-3.0-or-later
// Slips of the hand that are asked about once before a reading is stored, and gaps that are marked on it.
#pragma once

#include "core/analysis/spray_timing.h"
#include "core/model/job.h"

#include <optional>
#include <string>
#include <vector>

namespace sealwalk::analysis {

/// Why a value about to be stored looks like a slip; one sentence that ends in a question. None: it looks
/// right. Asked for: peak below background, outside the detector's range, a thousand times the neighbours on
/// its joint, or a thousand times this point's last standing reading in the job. With the one that is
/// `corrected` nothing is compared: it was wrong.
std::optional<std::string> slip(const model::Job& job, model::RoundId round, model::PointId point,
                                LeakRate peak, std::optional<LeakRate> background,
                                std::optional<model::ReadingId> corrected = std::nullopt);

/// What a reviewer would miss on a reading.
enum class Gap
{
    NoBackground, ///< just before
    NotTimed,     ///< nobody clocked the spray
    ShortSpray,   ///< below the response time
    BeforeAnswer  ///< no answer within less than the delay with which the point answered before
};
/// @param before  that delay, of `EarlierDelays`; none: it had not answered
std::vector<Gap> gapsOf(const model::Reading& reading, Duration response,
                        std::optional<Duration> before = std::nullopt);
/// One phrase about a gap of that reading.
std::string gapWords(Gap gap, const model::Reading& reading, const SprayTiming& timing,
                     std::optional<Duration> before = std::nullopt);

} // namespace sealwalk::analysis
