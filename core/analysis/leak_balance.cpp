// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/leak_balance.h"

#include "core/analysis/uncertainty.h"
#include "core/flow/air_equivalent.h"
#include "core/quantities/number_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace sealwalk::analysis {

namespace {

constexpr double kCoverage = 2.0; // 95 %
// A missing share that no one would look for; engineering judgement.
constexpr double kSmallShare = 0.20;

Status check(const RiseTotal& total)
{
    const double low = total.low.si();
    const double high = total.high.si();
    const double rate = total.rate.value_or(total.high).si();
    if (!(low >= 0.0 && low <= rate && rate <= high && high > 0.0 && std::isfinite(high)))
        return fail(
            ErrorCode::BadInput,
            "the total of the pressure-rise test and its range must be finite, in order and not below zero");
    return {};
}

void addLocated(LeakBalance& balance, std::span<const SumTerm> below, std::span<const SumTerm> above)
{
    const double sum = balance.located.si();
    if (!(sum > 0.0))
        return;
    balance.locatedLow = LeakRate::fromSi(sum * std::exp(-kCoverage * spreadOfSum(below)));
    balance.locatedHigh = LeakRate::fromSi(sum * std::exp(kCoverage * spreadOfSum(above)));
}

void addUnlocated(LeakBalance& balance)
{
    const RiseTotal& total = *balance.total;
    const double t = total.rate.value_or(total.high).si();
    const double l = balance.located.si();
    const double below = std::hypot(t - total.low.si(), balance.locatedHigh.si() - l);
    const double above = std::hypot(total.high.si() - t, l - balance.locatedLow.si());
    if (total.rate)
        balance.unlocated = LeakRate::fromSi(t - l);
    balance.unlocatedLow = LeakRate::fromSi(t - l - below);
    balance.unlocatedHigh = LeakRate::fromSi(t - l + above);
    const auto share = [t](double part) { return std::clamp(part / t, 0.0, 1.0); };
    if (total.rate && t > 0.0)
        balance.unlocatedShare = share(t - l);
    if (t > 0.0) {
        balance.unlocatedShareLow = total.rate ? share(balance.unlocatedLow.si()) : 0.0;
        balance.unlocatedShareHigh = share(balance.unlocatedHigh.si());
    }
}

void judge(LeakBalance& balance)
{
    const auto percent = [](double share) { return trimmedText(std::round(share * 100.0), 3) + " %"; };
    if (!balance.total) {
        balance.advice =
            "no pressure-rise test to hold the located leaks against; run one with the pumps valved off";
        return;
    }
    addUnlocated(balance);
    if (!balance.total->rate) {
        balance.verdict =
            balance.unlocatedHigh.si() < 0.0 ? BalanceVerdict::MoreThanTotal : BalanceVerdict::NoTotal;
        balance.advice =
            "the pressure-rise record does not part leak from outgassing; only an upper bound of what is "
            "missing is known";
        return;
    }
    if (balance.unlocatedLow.si() > 0.0) {
        balance.verdict = BalanceVerdict::Missing;
        balance.advice = fmt::format("{} of the total is not located ({} to {}): something is still missing",
                                     percent(*balance.unlocatedShare), percent(balance.unlocatedShareLow),
                                     percent(balance.unlocatedShareHigh));
    } else if (balance.unlocatedHigh.si() < 0.0) {
        balance.verdict = BalanceVerdict::MoreThanTotal;
        balance.advice = "the located leaks exceed the total: look for a leak counted twice, a system factor "
                         "that changed, "
                         "or another state of the chamber";
    } else if (!balance.unlocatedShare) { // a pressure rise of nothing: there is no share of it
        balance.verdict = BalanceVerdict::Explained;
        balance.advice = "the pressure rise shows no leak within its range; nothing located contradicts it";
    } else if (*balance.unlocatedShare > kSmallShare) {
        balance.verdict = BalanceVerdict::CannotSay;
        balance.advice = fmt::format(
            "by best estimate {} of the total is not located, but the ranges allow for anything up "
            "to {}: spray the points left out and seal or repair the largest leak, then look again",
            percent(*balance.unlocatedShare), percent(balance.unlocatedShareHigh));
    } else {
        balance.verdict = BalanceVerdict::Explained;
        balance.advice =
            fmt::format("the located leaks account for the total within the ranges; up to {} could still be "
                        "missing",
                        percent(balance.unlocatedShareHigh));
    }
}

} // namespace

std::string_view nameOf(BalanceVerdict verdict)
{
    switch (verdict) {
    case BalanceVerdict::NoTotal:
        return "no total";
    case BalanceVerdict::Explained:
        return "explained";
    case BalanceVerdict::CannotSay:
        return "cannot say";
    case BalanceVerdict::Missing:
        return "missing";
    case BalanceVerdict::MoreThanTotal:
        return "more than total";
    }
    return {};
}

Result<LeakBalance> balanceLeaks(std::span<const LocatedLeak> leaks, const std::optional<RiseTotal>& total,
                                 const flow::ChannelConditions& conditions)
{
    if (total)
        if (const Status ok = check(*total); !ok)
            return fail(ok.error());
    LeakBalance balance;
    balance.total = total;
    std::vector<SumTerm> below;
    std::vector<SumTerm> above;
    for (const LocatedLeak& leak : leaks) {
        const double ownAbove = leak.ownAbove.value_or(leak.ownUncertainty);
        if (!(leak.sharedUncertainty >= 0.0 && leak.ownUncertainty >= 0.0 && ownAbove >= 0.0))
            return fail(ErrorCode::BadInput, leak.label + ": the uncertainty must be zero or above");
        const auto air =
            flow::airEquivalent(leak.helium, {flow::Gas::Helium, flow::Gas::Air, conditions, std::nullopt});
        if (!air)
            return fail(air.error().in(leak.label));
        const SumTerm down{air->rate.si(), leak.sharedUncertainty,
                           std::hypot(leak.ownUncertainty, air->relativeUncertainty)};
        const SumTerm up{air->rate.si(), leak.sharedUncertainty,
                         std::hypot(ownAbove, air->relativeUncertainty)};
        LeakAsAir as;
        as.label = leak.label;
        as.air = air->rate;
        as.ratio = air->ratio;
        as.relativeUncertainty = std::hypot(down.shared, down.own);
        as.beside = leak.beside;
        as.low = as.air * std::exp(-kCoverage * spreadOfSum(std::span(&down, 1)));
        as.high = as.air * std::exp(kCoverage * spreadOfSum(std::span(&up, 1)));
        if (as.inSum()) {
            balance.located += as.air;
            below.push_back(down);
            above.push_back(up);
        }
        balance.leaks.push_back(std::move(as));
    }
    addLocated(balance, below, above);
    for (LeakAsAir& leak : balance.leaks)
        if (leak.inSum())
            leak.share = leak.air / balance.located;
    std::stable_sort(balance.leaks.begin(), balance.leaks.end(),
                     [](const LeakAsAir& a, const LeakAsAir& b) { return a.air > b.air; });
    judge(balance);
    return balance;
}

} // namespace sealwalk::analysis
