// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/challenge.h"

#include "core/analysis/source_search.h"

#include <algorithm>
#include <optional>

namespace sealwalk::analysis {

namespace {

constexpr int kRelocateEvery = 24;

class Challenger
{
public:
    Challenger(const Judge& judge, const std::vector<Hypothesis>& sample, std::span<const std::size_t> points,
               int steps)
        : m_judge(judge)
        , m_sample(sample)
        , m_points(points)
        , m_steps(steps)
        , m_random(7919 + points.front())
    {}

    double logOdds()
    {
        Hypothesis with = bestWith();
        Hypothesis without = bestWithout();
        adapt(with, false);
        adapt(without, true);
        return with.evidence - without.evidence;
    }

private:
    bool isAsked(std::size_t point) const { return std::ranges::find(m_points, point) != m_points.end(); }

    bool holds(const Hypothesis& so) const
    {
        return std::ranges::any_of(so.leaks, [&](const SupposedLeak& leak) { return isAsked(leak.point); });
    }

    /// The best of the sample that does (or does not) hold a leak at the point.
    const Hypothesis* bestThat(bool holdsLeak) const
    {
        const Hypothesis* best = nullptr;
        for (const Hypothesis& so : m_sample) {
            if (holds(so) == holdsLeak && (best == nullptr || so.evidence > best->evidence))
                best = &so;
        }
        return best;
    }

    Hypothesis bestWith() const
    {
        if (const Hypothesis* known = bestThat(true))
            return *known;
        const Hypothesis& base = *bestThat(false);
        std::optional<Hypothesis> best;
        for (std::size_t place = 0; place < Stretch::kPlaces; ++place) {
            Hypothesis with = base;
            with.leaks.push_back(m_judge.suppose(base, strongestReading(), place));
            m_judge.fitAround(with, with.leaks.back().point, 3);
            if (!best || with.evidence > best->evidence)
                best = std::move(with);
        }
        return *best;
    }

    Hypothesis bestWithout() const
    {
        if (const Hypothesis* known = bestThat(false))
            return *known;
        Hypothesis without = *bestThat(true);
        std::erase_if(without.leaks, [&](const SupposedLeak& leak) { return isAsked(leak.point); });
        m_judge.fitAround(without, m_points.front(), 3);
        return without;
    }

    std::size_t strongestReading() const
    {
        const Scene& scene = m_judge.scene();
        return *std::ranges::max_element(scene.readingsAt[m_points.front()], std::less<>(),
                                         [&](std::size_t i) { return scene.readings[i].rate; });
    }

    /// Lets the air and the places of the leaks near the point give way.
    void adapt(Hypothesis& so, bool keepOff)
    {
        for (int step = 0; step < m_steps; ++step) {
            if (step % kRelocateEvery == 0)
                relocateNear(so, keepOff);
            Hypothesis next = m_judge.under(stepFrom(so.spread()), so, 2);
            if (next.evidence > so.evidence)
                so = std::move(next);
        }
        relocateNear(so, keepOff);
    }

    void relocateNear(Hypothesis& so, bool keepOff) const
    {
        const Scene& scene = m_judge.scene();
        const Stretch& here = scene.stretches[m_points.front()];
        constexpr double kNear = 8.0; // half lengths
        for (std::size_t i = 0; i < so.leaks.size(); ++i) {
            const Stretch& there = scene.stretches[so.leaks[i].point];
            const double dx = here.middle.x - there.middle.x;
            const double dy = here.middle.up - there.middle.up;
            if (here.view == there.view && !isAsked(so.leaks[i].point) &&
                dx * dx + dy * dy < kNear * kNear * here.half * here.half + 0.01)
                relocate(m_judge, so, i, keepOff ? m_points : std::span<const std::size_t>());
        }
    }

    Spread stepFrom(const Spread& spread)
    {
        if (m_sample.size() < 3 || m_random.uniform() < 0.5)
            return moveSpread(spread, m_random, 0.15);
        return crossSpread(spread, any(), any(), 0.55, m_random);
    }

    const Spread& any()
    {
        const auto pick = static_cast<std::size_t>(m_random.uniform() * static_cast<double>(m_sample.size()));
        return m_sample[pick].spread();
    }

    const Judge& m_judge;
    const std::vector<Hypothesis>& m_sample;
    std::span<const std::size_t> m_points;
    int m_steps;
    Random m_random;
};

} // namespace

double challenge(const Judge& judge, const std::vector<Hypothesis>& sample,
                 std::span<const std::size_t> points, int steps)
{
    return Challenger(judge, sample, points, steps).logOdds();
}

} // namespace sealwalk::analysis
