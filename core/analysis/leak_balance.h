// SPDX-License-Identifier: GPL-3.0-or-later
// Located leaks, as air, against what a pressure-rise test says comes in.
#pragma once

#include "core/base/result.h"
#include "core/flow/channel.h"
#include "core/quantities/kinds.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace sealwalk::analysis {

struct LocatedLeak
{
    std::string label;              ///< "point 12"
    LeakRate helium;                ///< at 100 % helium, on the chamber; above 0
    double sharedUncertainty = 0.0; ///< relative, standard, common to all leaks of the set-up
    double ownUncertainty =
        0.0; ///< relative, standard, of this leak alone; of the lower side when `ownAbove` is given
    std::optional<double> ownAbove =
        std::nullopt; ///< of the upper side, where that is wider: the probe may have missed
    std::string beside =
        {}; ///< why it stands beside the sum ("belongs to the test set-up"); empty: it is in it
};

/// The total from a pressure-rise test, as air.
struct RiseTotal
{
    std::optional<LeakRate> rate; ///< none: not separable, only `high` holds
    LeakRate low;                 ///< 95 %
    LeakRate high;                ///< 95 %, above 0
};

struct LeakAsAir
{
    std::string label;
    LeakRate air;
    LeakRate low;                   ///< 95 %
    LeakRate high;                  ///< 95 %
    double ratio = 1.0;             ///< air over helium
    double relativeUncertainty = 0; ///< standard, all parts, of the lower side
    double share = 0.0;             ///< of the located sum; 0 beside the sum
    std::string beside =
        {}; ///< why it is not in the sum, "was found only in another condition"; empty: it is
    [[nodiscard]] bool inSum() const { return beside.empty(); }
    /// "point 12 was found only in another condition; it is not in the sum"
    [[nodiscard]] std::string whyNotInSum() const { return label + ' ' + beside + "; it is not in the sum"; }
};

enum class BalanceVerdict
{
    NoTotal,       ///< no pressure-rise test
    Explained,     ///< the located leaks account for the total, within the ranges and by best estimate
    CannotSay,     ///< by best estimate more than a fifth is missing, but the ranges allow for nothing
    Missing,       ///< something is still not located
    MoreThanTotal, ///< the located leaks exceed the total: echoes counted twice, another state, a wrong
                   ///< factor
};

/// "no total", "explained", "cannot say", "missing", "more than total"
std::string_view nameOf(BalanceVerdict verdict);

struct LeakBalance
{
    std::vector<LeakAsAir> leaks; ///< largest first
    LeakRate located;             ///< sum, as air
    LeakRate locatedLow;          ///< 95 %
    LeakRate locatedHigh;         ///< 95 %
    std::optional<RiseTotal> total;
    std::optional<LeakRate>
        unlocated;          ///< total less located; below 0 when more was located; none without a total
    LeakRate unlocatedLow;  ///< 95 %
    LeakRate unlocatedHigh; ///< 95 %
    std::optional<double> unlocatedShare; ///< of the total, 0 to 1
    double unlocatedShareLow = 0.0;
    double unlocatedShareHigh = 1.0;
    BalanceVerdict verdict = BalanceVerdict::NoTotal;
    std::string advice; ///< one sentence
};

/// Each leak is turned to air through its own equivalent channel under `conditions`; the unknown geometry of
/// a leak is its own uncertainty. What leaks share adds linearly, their own parts in squares. Refuses leaks
/// not above zero and totals whose range is not in order.
Result<LeakBalance> balanceLeaks(std::span<const LocatedLeak> leaks, const std::optional<RiseTotal>& total,
                                 const flow::ChannelConditions& conditions = {});

} // namespace sealwalk::analysis
