// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/repair_effect.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace sealwalk::analysis {

namespace {

Status check(const RepairEffectOptions& options)
{
    for (const std::string& label : options.repaired) {
        const auto known = std::find_if(options.balance.leaks.begin(), options.balance.leaks.end(),
                                        [&](const LeakAsAir& leak) { return leak.label == label; });
        if (known == options.balance.leaks.end())
            return fail(ErrorCode::NotFound, fmt::format("\"{}\" is not one of the located leaks", label));
    }
    if (options.volume && !(options.volume->si() > 0.0))
        return fail(ErrorCode::BadInput, "the volume must be above zero");
    if (options.airSpeed && !(options.airSpeed->si() > 0.0))
        return fail(ErrorCode::BadInput, "the pumping speed must be above zero");
    return {};
}

// Pressures and limits for a given leak; what each wish makes of it.
class Target
{
public:
    explicit Target(const RepairEffectOptions& options, LeakRate now)
        : m_options(options)
        , m_now(now)
    {}

    /// A base pressure is wanted, and nothing ties it to leaks.
    [[nodiscard]] bool lacksSpeed() const { return m_options.wantedPressure && !m_options.airSpeed; }
    /// None when what comes in is only known as far as it was located: that would be too low a pressure.
    [[nodiscard]] std::optional<Pressure> basePressure(LeakRate leak) const
    {
        return isPressureKnown() ? leastPressure(leak) : std::nullopt;
    }

    [[nodiscard]] bool asked() const
    {
        return m_options.totalLimit || (m_options.wantedPressure && m_options.airSpeed);
    }

    /// False is certain; true only where it is settled.
    [[nodiscard]] bool met(LeakRate leak) const
    {
        if (m_options.totalLimit && leak > *m_options.totalLimit)
            return false;
        const auto pressure = leastPressure(leak);
        return !(m_options.wantedPressure && m_options.airSpeed && pressure) ||
               *pressure <= *m_options.wantedPressure;
    }

    /// Whether that much leak in sight allows to say that what is asked for is met.
    [[nodiscard]] bool isSettled(LeakRate leak) const
    {
        const auto& total = m_options.balance.total;
        if (total && total->rate)
            return true;
        const bool isLimitSettled =
            !m_options.totalLimit || (total && total->high - (m_now - leak) <= *m_options.totalLimit);
        return isLimitSettled && (isPressureKnown() || !(m_options.wantedPressure && m_options.airSpeed));
    }

private:
    [[nodiscard]] bool isPressureKnown() const
    {
        const auto& total = m_options.balance.total;
        return m_options.basePressureNow || (total && total->rate);
    }

    [[nodiscard]] std::optional<Pressure> leastPressure(LeakRate leak) const
    {
        if (!m_options.airSpeed)
            return m_options.basePressureNow && leak == m_now ? m_options.basePressureNow : std::nullopt;
        // A measured base pressure holds what no one can list; repairs only take their part off it.
        if (m_options.basePressureNow)
            return std::max(m_options.blankOff,
                            *m_options.basePressureNow - (m_now - leak) / *m_options.airSpeed);
        return (leak + m_options.outgassing) / *m_options.airSpeed + m_options.blankOff;
    }

    const RepairEffectOptions& m_options;
    LeakRate m_now;
};

// Largest first is the fewest: any other choice of as many removes less.
// Returns the leak that is left of what is in sight.
LeakRate addShortestList(const RepairEffectOptions& options, const Target& target, RepairEffect& effect)
{
    LeakRate left = effect.leakNow;
    for (const LeakAsAir& leak : options.balance.leaks) {
        if (target.met(left))
            break;
        if (!leak.inSum())
            continue;
        effect.shortestList.push_back(leak.label);
        left = std::max(LeakRate{}, left - leak.air);
    }
    effect.reachable = target.met(left);
    return left;
}

// What is missing before anything can be called small enough.
std::string_view missingFor(const LeakBalance& balance)
{
    if (balance.total)
        return "the pressure rise does not part leak from outgassing";
    return balance.leaks.empty() ? "there is no leak with a rate and no pressure rise of this state"
                                 : "there is no pressure rise of this state";
}

std::string adviceFor(const Target& target, const RepairEffect& effect, const LeakBalance& balance,
                      LeakRate left)
{
    if (!target.asked())
        return target.lacksSpeed() ? "no total limit, and without the speed of the object's own pumps for "
                                     "air no repair can be held "
                                     "against the base pressure wanted"
                                   : "no total limit and no wanted pressure to repair towards";
    if (!effect.reachable)
        return "repairing every located leak is not enough; what is not located must be found, or the limit "
               "is below the "
               "outgassing";
    if (!target.isSettled(left)) {
        const std::string_view missing = missingFor(balance);
        if (effect.shortestList.empty())
            return fmt::format("cannot say whether the leaks together are as small as asked: {}", missing);
        if (effect.shortestList.size() == 1)
            return fmt::format("repairing {} is needed, and cannot say whether it is enough: {}",
                               effect.shortestList.front(), missing);
        return fmt::format("{} repairs are needed, from {} on, and cannot say whether they are enough: {}",
                           effect.shortestList.size(), effect.shortestList.front(), missing);
    }
    if (effect.shortestList.empty())
        return "the leaks together are already as small as asked";
    if (effect.shortestList.size() == 1)
        return fmt::format("repairing {} is enough", effect.shortestList.front());
    return fmt::format("{} repairs are enough, from {} on", effect.shortestList.size(),
                       effect.shortestList.front());
}

} // namespace

Result<RepairEffect> repairEffect(const RepairEffectOptions& options)
{
    if (const Status ok = check(options); !ok)
        return fail(ok.error());
    const LeakBalance& balance = options.balance;
    RepairEffect effect;
    const bool measured = balance.total && balance.total->rate;
    effect.totalKnown = measured;
    effect.leakNow = measured ? *balance.total->rate : balance.located;
    double below =
        (measured ? effect.leakNow - balance.total->low : balance.located - balance.locatedLow).si();
    double above =
        (measured ? balance.total->high - effect.leakNow : balance.locatedHigh - balance.located).si();
    for (const LeakAsAir& leak : balance.leaks) {
        const bool ticked =
            std::find(options.repaired.begin(), options.repaired.end(), leak.label) != options.repaired.end();
        if (!ticked || !leak.inSum())
            continue;
        effect.removed += leak.air;
        below = std::hypot(below, (leak.high - leak.air).si());
        above = std::hypot(above, (leak.air - leak.low).si());
    }
    const double rest = (effect.leakNow - effect.removed).si();
    effect.leakAfter = LeakRate::fromSi(std::max(0.0, rest));
    effect.leakAfterLow = LeakRate::fromSi(std::max(0.0, rest - below));
    effect.leakAfterHigh = LeakRate::fromSi(std::max(0.0, rest + above));
    if (options.volume && measured) {
        effect.risePerSecondNow = (effect.leakNow + options.outgassing).si() / options.volume->si();
        effect.risePerSecondAfter = (effect.leakAfter + options.outgassing).si() / options.volume->si();
    }
    const Target target(options, effect.leakNow);
    effect.basePressureNow = target.basePressure(effect.leakNow);
    effect.basePressureAfter = target.basePressure(effect.leakAfter);
    if (const bool met = target.met(effect.leakAfter);
        target.asked() && (!met || target.isSettled(effect.leakAfter)))
        effect.meetsLimit = met;
    const LeakRate left = addShortestList(options, target, effect);
    effect.advice = adviceFor(target, effect, balance, left);
    return effect;
}

} // namespace sealwalk::analysis
