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

struct LeakSum
{
    struct Sum
    {
        LeakRate rate;
        LeakRate low;  ///< 95 %
        LeakRate high; ///< 95 %
    };

    int points = 0;                    ///< all that were asked for
    int answered = 0;                  ///< of these, with an answer of the detector
    std::optional<PointFinding> worst; ///< the largest leak, else the largest bound; none without an answer
    std::optional<Sum> helium;         ///< of the leaks that were located; none when there are none
    std::optional<Sum> air;            ///< the same, each leak turned to air by itself
    std::optional<LeakRate> below; ///< helium: no leak located, every point bounded, and these are their sum
    bool isAtLeast = false;        ///< with `helium`: a point was not tested, or could hide a leak

    /// Whether nobody asked the joint anything in this job.
    [[nodiscard]] bool isGap() const { return answered == 0; }
};

/// Over these findings of `job`. A point that was repaired and not sprayed since counts as not tested. A leak
/// that is open only in another condition stands beside the sum, as in the balance. What leaks share adds
/// linearly, their own parts in squares; source: JCGM 100:2008 (GUM), 5.2.2.
LeakSum leakSum(const model::Job& job, const model::TestObject& object,
                std::span<const PointFinding> findings);

} // namespace sealwalk::analysis
