// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/source_search.h"

#include "core/analysis/nnls.h"

#include <algorithm>
#include <array>
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
    judge.fitAround(larger, larger.leaks.back().point, kRounds);
    return larger;
}

Hypothesis without(const Judge& judge, const Hypothesis& so, std::size_t leak)
{
    Hypothesis smaller = so;
    smaller.leaks.erase(smaller.leaks.begin() + static_cast<std::ptrdiff_t>(leak));
    judge.fitAround(smaller, so.leaks[leak].point, kRounds);
    return smaller;
}

bool adopt(Hypothesis& so, Hypothesis& other)
{
    constexpr double kBetter = 1e-3; // less than that is the fit's last step
    if (other.evidence <= so.evidence + kBetter)
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

/// First leaks for a hypothesis without any: every reading that answered, explained by as little as can be,
/// by non-negative least squares with each reading weighed by its own noise.
void seed(const Judge& judge, Hypothesis& so)
{
    constexpr double kAnswers = 5.0;
    constexpr std::size_t kMostColumns = 96;
    constexpr double kReadingStray = 0.3;
    const Scene& scene = judge.scene();
    std::vector<std::size_t> answering;
    for (std::size_t i = 0; i < scene.readings.size(); ++i) {
        if (scene.readings[i].rate > kAnswers * scene.readings[i].noise)
            answering.push_back(i);
    }
    std::ranges::sort(answering, std::greater<>(), [&](std::size_t i) { return scene.readings[i].rate; });
    answering.resize(std::min(answering.size(), kMostColumns));
    std::vector<SupposedLeak> candidates;
    std::vector<double> matrix;
    std::vector<double> right;
    const auto weight = [&](std::size_t i) {
        return 1.0 / std::hypot(scene.readings[i].noise, kReadingStray * scene.readings[i].rate);
    };
    for (const std::size_t i : answering)
        right.push_back(weight(i) * scene.readings[i].rate);
    for (const std::size_t home : answering) {
        candidates.push_back(judge.suppose(so, home, 0));
        for (const std::size_t i : answering)
            matrix.push_back(weight(i) * candidates.back().sights->shareAt(i) * scene.readings[home].rate);
    }
    const NnlsSummary solved = solveNnls(matrix, right.size(), candidates.size(), right);
    for (std::size_t j = 0; j < candidates.size(); ++j) {
        const std::size_t home = answering[j];
        SupposedLeak& leak = candidates[j];
        leak.rate = solved.x[j] * scene.readings[home].rate;
        constexpr double kMostlyItsOwn = 0.5;
        if (leak.part(home) > kMostlyItsOwn * scene.readings[home].rate &&
            !holds(so, leak.point, leak.condition))
            so.leaks.push_back(std::move(leak));
    }
    judge.fit(so, kRounds);
}

bool grow(const Judge& judge, Hypothesis& so)
{
    constexpr std::array<std::size_t, 3> kTriedFirst{0, 3, 4}; // the middle and the ends
    std::optional<Hypothesis> best;
    for (const Doubt& doubt : unexplained(judge, so, 3)) {
        const SceneReading& reading = judge.scene().readings[doubt.reading];
        if (holds(so, reading.point, reading.condition))
            continue;
        // A leak near an end of its stretch is not seen from the far side.
        for (const std::size_t place : kTriedFirst) {
            Hypothesis larger = with(judge, so, judge.suppose(so, doubt.reading, place));
            if (!best || larger.evidence > best->evidence)
                best = std::move(larger);
        }
    }
    if (!best)
        return false;
    relocate(judge, *best, best->leaks.size() - 1);
    return adopt(so, *best);
}

bool areClose(const Scene& scene, const SupposedLeak& a, const SupposedLeak& b)
{
    const Stretch& one = scene.stretches[a.point];
    const Stretch& other = scene.stretches[b.point];
    constexpr double kHalves = 4.0;
    return a.condition == b.condition && one.view == other.view &&
           std::hypot(one.middle.x - other.middle.x, one.middle.up - other.middle.up) <
               kHalves * (one.half + other.half) * 0.5 + 0.02;
}

/// Two leaks side by side may be one between them, which no single step from the two leads to.
bool merge(const Judge& judge, Hypothesis& so)
{
    for (std::size_t i = 0; i < so.leaks.size(); ++i) {
        for (std::size_t j = 0; j < so.leaks.size(); ++j) {
            if (i == j || !areClose(judge.scene(), so.leaks[i], so.leaks[j]))
                continue;
            Hypothesis one = without(judge, so, j);
            relocate(judge, one, j < i ? i - 1 : i);
            if (adopt(so, one))
                return true;
        }
    }
    return false;
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

namespace {

/// A stretch that answers far less than the one beside it is not where the leak lies.
bool mayBeHome(const Scene& scene, std::size_t home, std::size_t other)
{
    constexpr double kFarLess = 0.15;
    const auto strongest = [&](std::size_t point) {
        double most = 0.0;
        for (const std::size_t i : scene.readingsAt[point])
            most = std::max(most, scene.readings[i].rate);
        return most;
    };
    return scene.readingsAt[other].empty() || scene.readingsAt[home].empty() ||
           strongest(other) > kFarLess * strongest(home);
}

} // namespace

bool relocate(const Judge& judge, Hypothesis& so, std::size_t which, std::span<const std::size_t> keepOff)
{
    const Scene& scene = judge.scene();
    bool moved = false;
    const std::size_t home = so.leaks[which].point;
    std::vector<std::size_t> stretches{home};
    for (const std::size_t next : scene.stretches[home].neighbours) {
        if (next != home && std::ranges::find(keepOff, next) == keepOff.end() &&
            mayBeHome(scene, home, next) && !holds(so, next, so.leaks[which].condition))
            stretches.push_back(next);
    }
    for (const std::size_t point : stretches) {
        for (std::size_t place = 0; place < Stretch::kPlaces; ++place) {
            if (point == so.leaks[which].point && place == so.leaks[which].place)
                continue;
            Hypothesis other = so;
            judge.move(so, other.leaks[which], point, place);
            judge.fitAround(other, point, 1);
            constexpr double kWithinReach = 4.0; // of evidence, for the rounds that are left
            if (other.evidence > so.evidence - kWithinReach)
                judge.fitAround(other, point, kRounds - 1);
            moved = adopt(so, other) || moved;
        }
    }
    return moved;
}

void improve(const Judge& judge, Hypothesis& so, int sweeps)
{
    constexpr std::size_t kMostLeaks = 40;
    if (so.isSettled)
        return;
    if (so.leaks.empty())
        seed(judge, so);
    for (int sweep = 0; sweep < sweeps; ++sweep) {
        bool changed = false;
        while (so.leaks.size() < kMostLeaks && grow(judge, so))
            changed = true;
        for (std::size_t i = 0; i < so.leaks.size(); ++i)
            changed = relocate(judge, so, i) || changed;
        while (shrink(judge, so) || merge(judge, so))
            changed = true;
        if (!changed) {
            so.isSettled = true;
            return;
        }
    }
}

namespace {

/// A population of hypotheses whose states of the air wander in proportion to their evidence; the differences
/// between members give each step its size and direction. Source: ter Braak, "A Markov chain Monte Carlo
/// version of the genetic algorithm Differential Evolution" (2006).
class Population
{
public:
    Population(const Judge& judge, const SearchEffort& effort)
        : m_judge(judge)
    {
        std::vector<Spread> starts = startSpreads();
        if (!effort.allStarts) {
            constexpr std::size_t kOneIn = 6;
            std::vector<Spread> few;
            for (std::size_t i = 0; i < starts.size(); i += kOneIn)
                few.push_back(starts[i]);
            starts = std::move(few);
        }
        for (std::size_t i = 0; i < effort.drawn; ++i)
            starts.push_back(drawSpread(m_random));
        for (const Spread& start : starts) {
            m_members.push_back(judge.empty(start));
            improve(judge, m_members.back(), 1);
        }
        std::ranges::sort(m_members, std::greater<>(), &Hypothesis::evidence);
        if (m_members.size() > effort.members)
            m_members.resize(effort.members);
    }

    void wander()
    {
        for (std::size_t i = 0; i < m_members.size(); ++i) {
            Hypothesis next = m_judge.under(stepFrom(i), m_members[i], 2);
            if (std::log(m_random.uniform() + 1e-12) < next.evidence - m_members[i].evidence)
                m_members[i] = std::move(next);
        }
    }

    /// Members far behind give way to those ahead; the leaks of all are looked over.
    void renew()
    {
        constexpr double kFarBehind = 8.0;
        for (Hypothesis& member : m_members)
            improve(m_judge, member);
        std::ranges::sort(m_members, std::greater<>(), &Hypothesis::evidence);
        std::size_t ahead = 0;
        const double best = m_members.front().evidence;
        const auto firstBehind = std::ranges::find_if(
            m_members, [&](const Hypothesis& member) { return member.evidence < best - kFarBehind; });
        const auto leaders = static_cast<std::size_t>(firstBehind - m_members.begin());
        for (auto member = firstBehind; member != m_members.end(); ++member)
            *member = m_members[ahead++ % leaders];
        regrow();
    }

    [[nodiscard]] const std::vector<Hypothesis>& members() const { return m_members; }

private:
    /// The last members look for their leaks afresh near the states of the air of the first: leaks that were
    /// supposed under a worse state can hold each other up.
    void regrow()
    {
        constexpr std::size_t kShareRegrown = 3;
        const std::size_t count = m_members.size() / kShareRegrown;
        for (std::size_t i = 0; i < count; ++i) {
            Hypothesis fresh = m_judge.empty(moveSpread(m_members[i].spread(), m_random, 0.1));
            improve(m_judge, fresh);
            Hypothesis& last = m_members[m_members.size() - 1 - i];
            if (fresh.evidence > last.evidence)
                last = std::move(fresh);
        }
    }

    std::size_t anyBut(std::size_t one, std::size_t other)
    {
        for (;;) {
            const auto pick =
                static_cast<std::size_t>(m_random.uniform() * static_cast<double>(m_members.size()));
            if (pick != one && pick != other)
                return pick;
        }
    }

    Spread stepFrom(std::size_t i)
    {
        constexpr double kFreeStep = 0.25;
        if (m_members.size() < 3 || m_random.uniform() < kFreeStep)
            return moveSpread(m_members[i].spread(), m_random, 0.12);
        const std::size_t from = anyBut(i, i);
        const std::size_t to = anyBut(i, from);
        const double pace = m_random.uniform() < 0.1 ? 1.0 : 0.55;
        return crossSpread(m_members[i].spread(), m_members[from].spread(), m_members[to].spread(), pace,
                           m_random);
    }

    const Judge& m_judge;
    Random m_random{20260301};
    std::vector<Hypothesis> m_members;
};

} // namespace

SearchEffort lightEffort()
{
    return {.allStarts = false, .drawn = 0, .members = 4, .generations = 6, .challengeSteps = 6};
}

std::vector<Hypothesis> searchSources(const Judge& judge, const SearchEffort& effort)
{
    const int renewEvery = std::max(effort.generations / (effort.allStarts ? 3 : 2), 1);
    Population population(judge, effort);
    std::vector<Hypothesis> sample;
    for (int generation = 1; generation <= effort.generations; ++generation) {
        population.wander();
        if (generation % renewEvery == 0)
            population.renew();
        if (generation == effort.generations - renewEvery || generation == effort.generations)
            sample.insert(sample.end(), population.members().begin(), population.members().end());
    }
    return sample;
}

} // namespace sealwalk::analysis
