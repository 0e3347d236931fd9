// SPDX-License-Identifier: GPL-3.0-or-later
// One line of `log --stdin`: a reading as JSON.
#pragma once

#include "core/base/result.h"
#include "core/model/job.h"

#include <string_view>

namespace sealwalk::cli {

struct LineFrame
{
    const model::Job* job = nullptr;
    model::RoundId round;
    LeakRate one; ///< the rate that is 1 in the unit of the lines
    std::string unit;
    std::string by;
};

/// Keys: point (a number), at (ISO 8601; now when missing), outcome ("value" when there is a peak, otherwise
/// it must be given), peak, background, dwell_s, delay_s, clean_up_s, condition, condition_detail, gentle,
/// confirmed, by, reason, remark, corrects (the sequence of an earlier reading). Others are an error that
/// names them.
Result<model::Reading> readingFromLine(std::string_view line, const LineFrame& frame);

} // namespace sealwalk::cli
