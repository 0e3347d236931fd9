// SPDX-License-Identifier: GPL-3.0-or-later
// The range of one leak rate whose two sides need not be alike, and the decision that follows from it.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/quantities/kinds.h"

#include <optional>

namespace sealwalk::analysis {

/// Two-sided and one-sided 95 % ends. A long tail on one side moves the two-sided end far more than the
/// one-sided, so the one cannot be had from the other without knowing the law.
struct RateRange
{
    LeakRate low;         ///< 2.5 % lie below; 0: nothing speaks against no leak at all
    LeakRate surelyAbove; ///< 5 % lie below
    LeakRate surelyBelow; ///< 5 % lie above
    LeakRate high;        ///< 2.5 % lie above
};

/// A range of which only the two-sided ends are known, each side taken as lognormal about `rate`, above 0.
RateRange lognormalRange(LeakRate rate, LeakRate low, LeakRate high);

/// `range` about `rate`, above 0, widened by an independent relative standard uncertainty.
RateRange widened(const RateRange& range, LeakRate rate, double relativeUncertainty);

/// Each end the farther of the two.
RateRange hull(const RateRange& one, const RateRange& other);

/// The range a finding carries; the one-sided ends from the two-sided where it has no own. None without a
/// rate above 0.
std::optional<RateRange> rangeOf(const PointFinding& finding);
void setRange(PointFinding& finding, const RateRange& range);

/// Within or over where the wrong decision is made once in twenty at most (JCGM 106, guard band at the
/// one-sided end), else cannot say; no answer without a limit.
Verdict verdictOf(const RateRange& range, std::optional<LeakRate> limit);

/// Probability that the leak is within the limit, each side taken as lognormal between `rate` and its
/// one-sided end; none where a side has no width or reaches down to nothing.
std::optional<double> conformanceOf(const RateRange& range, LeakRate rate, LeakRate limit);

} // namespace sealwalk::analysis
