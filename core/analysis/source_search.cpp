// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/source_search.h"

#include "core/analysis/exposure.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace sealwalk::analysis {

namespace {

constexpr int kRounds = 3;

struct Doubt
{
    std::size_t reading;
    double surprise;
};

/// Readings that show more than is expected, the most surprising first.
std::vector<Doubt> unexplained(const Judge& judge, const Hypothesis& so, std::size_t most)
{
    constexpr double kWorthALook = 1.5;
    std::vector<Doubt> doubts;
    for (std::size_t i = 0; i < judge.scene().readings.size(); ++i) {
        const double surprise = judge.surprise(i, judge.expected(so, i));
        if (surprise > kWorthALook)
            doubts.push_back({i, surprise});
    }
    std::ranges::sort(doubts, std::greater<>(), &Doubt::surprise);
    if (doubts.size() > most)
        doubts.resize(most);
    return doubts;
}

Hypothesis with(const Judge& judge, const Hypothesis& so, SupposedLeak leak)
{
    Hypothesis larger = so;
    larger.leaks.push_back(std::move(leak));
    judge.fit(larger, kRounds);
    return larger;
}

Hypothesis without(const Judge& judge, const Hypothesis& so, std::size_t leak)
{
    Hypothesis smaller = so;
    smaller.leaks.erase(smaller.leaks.begin() + static_cast<std::ptrdiff_t>(leak));
    judge.fit(smaller, kRounds);
    return smaller;
}

bool adopt(Hypothesis& so, Hypothesis& other)
{
    if (other.evidence <= so.evidence + 1e-6)
        return false;
    std::swap(so, other);
    return true;
}

bool holds(const Hypothesis& so, std::size_t point, std::size_t condition)
{
    return std::ranges::any_of(so.leaks, [&](const SupposedLeak& leak) {
        return leak.point == point && leak.condition == condition;
    });
}

/// Tries the other places of one leak's stretch and the stretches beside it.
bool moveLeak(const Judge& judge, Hypothesis& so, std::size_t which)
{
    const Scene& scene = judge.scene();
    bool moved = false;
    const std::size_t home = so.leaks[which].point;
    std::vector<std::size_t> stretches{home};
    for (const std::size_t next : scene.stretches[home].neighbours) {
        if (next != home && !scene.readingsAt[next].empty() && !holds(so, next, so.leaks[which].condition))
            stretches.push_back(next);
    }
    for (const std::size_t point : stretches) {
        for (std::size_t place = 0; place < Stretch::kPlaces; ++place) {
            if (point == so.leaks[which].point && place == so.leaks[which].place)
                continue;
            Hypothesis other = so;
            SupposedLeak& leak = other.leaks[which];
            const double before = leak.shares[scene.readingsAt[home].front()];
            leak.point = point;
            leak.place = place;
            const Stretch& stretch = scene.stretches[point];
            leak.shares =
                visibleShares(scene, so.spread, stretch.places[place], stretch.view, leak.condition);
            const double after = leak.shares[scene.readingsAt[home].front()];
            if (before > 0.0 && after > 0.0)
                leak.rate *= std::clamp(before / after, 0.2, 5.0);
            judge.fit(other, kRounds);
            moved = adopt(so, other) || moved;
        }
    }
    return moved;
}

bool grow(const Judge& judge, Hypothesis& so)
{
    std::optional<Hypothesis> best;
    for (const Doubt& doubt : unexplained(judge, so, 3)) {
        const SceneReading& reading = judge.scene().readings[doubt.reading];
        if (holds(so, reading.point, reading.condition))
            continue;
        Hypothesis larger = with(judge, so, judge.suppose(so, doubt.reading, 0));
        if (!best || larger.evidence > best->evidence)
            best = std::move(larger);
    }
    if (!best)
        return false;
    moveLeak(judge, *best, best->leaks.size() - 1);
    return adopt(so, *best);
}

bool shrink(const Judge& judge, Hypothesis& so)
{
    for (std::size_t i = 0; i < so.leaks.size(); ++i) {
        Hypothesis smaller = without(judge, so, i);
        if (adopt(so, smaller))
            return true;
    }
    return false;
}

} // namespace

void improve(const Judge& judge, Hypothesis& so)
{
    constexpr std::size_t kMostLeaks = 40;
    for (int sweep = 0; sweep < 3; ++sweep) {
        bool changed = false;
        while (so.leaks.size() < kMostLeaks && grow(judge, so))
            changed = true;
        for (std::size_t i = 0; i < so.leaks.size(); ++i)
            changed = moveLeak(judge, so, i) || changed;
        while (shrink(judge, so))
            changed = true;
        if (!changed)
            return;
    }
}

std::vector<Hypothesis> searchSources(const Judge& judge)
{
    constexpr std::size_t kStarts = 24;
    constexpr std::size_t kChains = 4;
    constexpr int kSteps = 80;
    constexpr int kBurnIn = 30;
    constexpr int kEvery = 10;
    Random random(20260301);

    std::vector<Hypothesis> starts;
    for (std::size_t i = 0; i < kStarts; ++i) {
        starts.push_back(judge.empty(i == 0 ? usualSpread() : drawSpread(random)));
        improve(judge, starts.back());
    }
    std::ranges::sort(starts, std::greater<>(), &Hypothesis::evidence);

    std::vector<Hypothesis> sample;
    for (std::size_t chain = 0; chain < std::min(kChains, starts.size()); ++chain) {
        Hypothesis at = starts[chain];
        for (int step = 0; step < kSteps; ++step) {
            Hypothesis next = judge.under(moveSpread(at.spread, random, step < kBurnIn ? 0.2 : 0.1), at, 2);
            if (std::log(random.uniform() + 1e-12) < next.evidence - at.evidence)
                at = std::move(next);
            if (step % kEvery != kEvery - 1)
                continue;
            improve(judge, at);
            if (step >= kBurnIn)
                sample.push_back(at);
        }
    }
    return sample;
}

} // namespace sealwalk::analysis
