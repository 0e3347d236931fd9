// SPDX-License-Identifier: GPL-3.0-or-later
// Within the limit, over it, or cannot say: decision by guard band after JCGM 106:2012.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/base/result.h"
#include "core/quantities/kinds.h"

namespace sealwalk::analysis {

struct DecisionOptions
{
    LeakRate value;       ///< best estimate
    LeakRate uncertainty; ///< standard, 0 or more
    LeakRate limit;       ///< upper, above 0
    double risk = 0.05;   ///< one-sided, above 0 and below 0.5
};

struct Decision
{
    Verdict verdict = Verdict::NoAnswer;
    double conformance = 0.0; ///< probability that the true value is within the limit
    LeakRate acceptBelow;     ///< values up to this one are accepted: limit less guard band
    LeakRate rejectAbove;     ///< values above this one are rejected
};

/// Up to 30 % relative uncertainty the value is taken as normal, above as lognormal with the value as median,
/// since a leak rate so uncertain is known by its decade.
Result<Decision> decide(const DecisionOptions& options);

struct RepairProof
{
    double factor = 1.0; ///< before over after
    double relativeUncertainty = 0.0;
    bool atLeast = false; ///< nothing was seen after: the factor is a lower bound
    bool proven = false;  ///< the leak is smaller than before, with 95 % confidence
};

/// Whether a repair made a leak smaller. Take relative uncertainties without what both readings share: the
/// reference leak, factor and helium share cancel. Rates are above zero; where nothing was seen afterwards
/// `after` is the smallest detectable leak and `afterIsBound` is set.
RepairProof proveRepair(LeakRate before, double uncertaintyBefore, LeakRate after, double uncertaintyAfter,
                        bool afterIsBound);

} // namespace sealwalk::analysis
