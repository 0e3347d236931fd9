// SPDX-License-Identifier: GPL-3.0-or-later
// A limit that is changed once readings are there is told in the record: it should have been agreed before.
// So are the limits of two jobs that are compared.
#pragma once

#include "core/model/job.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sealwalk::analysis {

/// What such a remark names as its check.
inline constexpr std::string_view kLimitChange = "limit changed";

/// One limit that two set-ups have differently; none where one of them has no such limit.
struct LimitDifference
{
    enum class Of
    {
        OneJoint,
        AllTogether,
        Kind, ///< of joint, named by `kind`
    } of = Of::OneJoint;
    std::optional<model::JointKind> kind;
    std::optional<LeakRate> before;
    std::optional<LeakRate> after;
};

/// Every limit that differs, one joint's first. The same limit typed in another unit is the same: doubles of
/// 5e-6 mbar l/s and 5e-7 Pa m3/s differ in the last digit.
std::vector<LimitDifference> limitDifferences(const model::Setup& before, const model::Setup& after);

/// The sentence for the record when `after` sets other limits than `job` has and readings are there; none
/// otherwise.
std::optional<std::string> limitChangeWords(const model::Job& job, const model::Setup& after);

/// The sentence for a comparison of two jobs with different limits; none when they are the same.
std::optional<std::string> otherLimitWords(const model::Job& then, const model::Job& now);

} // namespace sealwalk::analysis
