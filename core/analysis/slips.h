// SPDX-License-Identifier: GPL-3.0-or-later
// Slips of the hand that are asked about once before a reading is stored, and gaps that are marked on it.
#pragma once

#include "core/analysis/spray_timing.h"
#include "core/model/job.h"

#include <optional>
#include <string>
#include <unordered_map>
#include <unordered_set>
#include <vector>

namespace sealwalk::analysis {

/// What a value of a round is held against. The job must outlive it and stay as it is.
class SlipCheck
{
public:
    /// @param only  the one point that will be asked about; none: any
    SlipCheck(const model::Job& job, model::RoundId round, std::optional<model::PointId> only = std::nullopt);

    /// Why a value looks like a slip; one sentence that ends in a question. None: it looks right. Asked for:
    /// peak below background, outside the detector's range, a thousand times this point's last standing
    /// reading in the job, or a thousand times the neighbours on its joint, or what the round shows where it
    /// has none. With the one that is `corrected` nothing is compared: it was wrong.
    [[nodiscard]] std::optional<std::string>
    doubt(model::PointId point, LeakRate peak, std::optional<LeakRate> background,
          std::optional<model::ReadingId> corrected = std::nullopt) const;

private:
    struct Shown
    {
        model::PointId point;
        model::JointId joint;
        LeakRate rate;
    };
    [[nodiscard]] std::optional<std::string> outsideDetector(LeakRate peak,
                                                             std::optional<LeakRate> background) const;
    [[nodiscard]] std::optional<LeakRate> lastValue(model::PointId point,
                                                    std::optional<model::ReadingId> corrected) const;
    [[nodiscard]] std::optional<std::string> farFromOthers(model::PointId point, LeakRate peak) const;

    const model::Job& m_job;
    Timestamp m_opened; ///< of the round
    std::unordered_map<model::RoundId, std::size_t> m_order;
    std::unordered_set<model::ReadingId> m_fallen; ///< corrected or void
    std::unordered_map<model::PointId, std::vector<const model::Reading*>> m_values;
    std::unordered_map<model::PointId, model::JointId> m_joints;
    std::vector<Shown> m_shown; ///< standing, of the round
};

/// SlipCheck::doubt() of one value about to be stored.
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
