// SPDX-License-Identifier: GPL-3.0-or-later
// What a joint, or the whole object, leaks in one job and standing: its worst point and the sum.
#pragma once

#include "core/analysis/answered.h"
#include "core/analysis/point_finding.h"
#include "core/model/job.h"
#include "core/model/test_object.h"

#include <optional>
#include <span>

namespace sealwalk::analysis {

/// What can be said of leaks together.
enum class SumState
{
    NotTested,
    Sum,            ///< a figure, or the least it is
    Unsized,        ///< a leak without any figure, and none with one
    OtherCondition, ///< the only leaks are open in another condition
    SetupOnly,      ///< the only leaks are the test set-up's
    Below,          ///< no leak, and all that could have hidden
    NoLeak,         ///< no leak where it was tested; what could have hidden is not known
};

struct LeakSum
{
    struct Sum
    {
        LeakRate rate;
        LeakRate low;  ///< 95 %
        LeakRate high; ///< 95 %
        /// None where a leak is beyond the detector's range: the rate is the least of the sum.
        [[nodiscard]] bool hasRange() const { return low < high; }
    };

    int points = 0;   ///< all that were asked for
    int answered = 0; ///< of these, with an answer of the detector
    std::optional<PointFinding>
        worst; ///< the largest leak, else the largest bound; none without either (outweighs())
    std::optional<Sum> helium;     ///< of the leaks that were located; none when there are none
    std::optional<Sum> air;        ///< the same, each leak turned to air by itself
    std::optional<LeakRate> below; ///< helium: no leak located, every point bounded, and these are their sum
    std::optional<LeakRate> belowAir; ///< the same, each bound turned to air by itself
    int unsized = 0;                  ///< leaks that would be in the sum, had they a figure
    int otherCondition = 0;           ///< leaks beside the sum: open only in another condition
    int ofSetup = 0;                  ///< leaks beside the sum: of the test set-up
    bool isAtLeast =
        false; ///< with `helium`: a point was not tested, could hide a leak, or leaks beyond range

    [[nodiscard]] SumState state() const;
    /// Whether nobody asked the joint anything in this job.
    [[nodiscard]] bool isGap() const { return answered == 0; }
};

/// Over these findings of `job`. A point that was repaired and not sprayed since counts as not tested. A leak
/// that is open only in another condition, and one of the set-up, stands beside the sum, as in the balance. A
/// leak beyond the detector's range is in it with the least it is. The range is that of spreadOfSum().
LeakSum leakSum(const model::Job& job, const model::TestObject& object,
                std::span<const PointFinding> findings);

} // namespace sealwalk::analysis
