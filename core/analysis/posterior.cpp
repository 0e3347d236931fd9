// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/posterior.h"

#include "core/analysis/challenge.h"
#include "core/analysis/source_search.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>

namespace sealwalk::analysis {

namespace {

// A leak matters from here on, as a multiple of the limit.
constexpr double kMatters = 1.5;
// Aim and helium share at the joint stray beyond what repeated readings of one survey can show.
constexpr double kRateStray = 0.14;
// Evidence of hypotheses is trusted this much only: the model is not the air.
constexpr double kTemper = 3.0;

double normalAbove(double z)
{
    constexpr double kFar = 6.5; // nothing is left beyond
    if (std::abs(z) > kFar)
        return z > 0.0 ? 0.0 : 1.0;
    return 0.5 * std::erfc(z / std::numbers::sqrt2);
}

class Collector
{
public:
    Collector(const Judge& judge, std::vector<PointPosterior>& points)
        : m_judge(judge)
        , m_scene(judge.scene())
        , m_points(points)
    {}

    void add(const Hypothesis& so, double weight)
    {
        if (weight < 1e-4)
            return;
        std::vector<bool> held(m_points.size(), false);
        for (std::size_t i = 0; i < so.leaks.size(); ++i) {
            held[so.leaks[i].point] = true;
            addLeak(so, i, weight);
        }
        for (std::size_t point = 0; point < m_points.size(); ++point) {
            if (m_scene.readingsAt[point].empty())
                continue;
            addShares(so, point, weight);
            if (!held[point])
                addAbsence(so, point, weight);
        }
    }

private:
    /// A leak the hypothesis holds: weighed against doing without it, and against its neighbours.
    void addLeak(const Hypothesis& so, std::size_t which, double weight)
    {
        const SupposedLeak& leak = so.leaks[which];
        Hypothesis none = so;
        none.leaks.erase(none.leaks.begin() + static_cast<std::ptrdiff_t>(which));
        m_judge.fitAround(none, leak.point, 3);
        improveNear(none, leak.point);
        const double best = so.evidence;
        double here = 1.0;
        double nothing = std::exp(std::min(0.0, none.evidence - best));
        std::map<std::size_t, double> beside;
        for (const std::size_t next : m_scene.stretches[leak.point].neighbours) {
            if (next != leak.point && !holds(so, next) && answersAlike(leak.point, next))
                beside[next] = std::exp(std::min(0.0, evidenceMoved(so, which, next) - best));
        }
        double sum = here + nothing;
        for (const auto& item : beside)
            sum += item.second;
        PointPosterior& point = m_points[leak.point];
        const double spread = std::hypot(leak.spreadOfLog, kRateStray);
        const double matters =
            normalAbove((std::log(kMatters * m_scene.limit) - std::log(leak.rate)) / spread);
        point.leak += weight * here / sum;
        point.big += weight * here / sum * matters;
        addRate(point, weight * here / sum, std::log(leak.rate), spread);
        for (const auto& [next, share] : beside) {
            PointPosterior& other = m_points[next];
            other.leak += weight * share / sum;
            other.big += weight * share / sum * matters;
            addRate(other, weight * share / sum, std::log(leak.rate), spread);
        }
    }

    /// A probe that passed too fast or too far off shows too little, never too much: a longer side upwards.
    /// One pass in fourteen shows a third, give or take a factor of two: a judgement that keeps the 95 %
    /// range true where hands are unsteady (findings_table), common practice, no source.
    static void addRate(PointPosterior& point, double weight, double logRate, double spread)
    {
        constexpr double kPassedBadly = 0.07;
        constexpr double kLoss = 1.1;
        constexpr double kLossSpread = 0.6;
        point.rates.push_back({(1.0 - kPassedBadly) * weight, logRate, spread});
        point.rates.push_back({kPassedBadly * weight, logRate + kLoss, std::hypot(spread, kLossSpread)});
    }

    bool holds(const Hypothesis& so, std::size_t point) const
    {
        return std::ranges::any_of(so.leaks, [&](const SupposedLeak& leak) { return leak.point == point; });
    }

    /// A leak on a stretch that answers far less than the one beside it lies on the one beside it.
    bool answersAlike(std::size_t home, std::size_t other) const
    {
        constexpr double kFarLess = 0.2;
        if (m_scene.readingsAt[other].empty() || m_scene.readingsAt[home].empty())
            return true; // nobody knows what a stretch that was not sprayed would answer
        return m_scene.readings[strongestReading(other)].rate >
               kFarLess * m_scene.readings[strongestReading(home)].rate;
    }

    double evidenceMoved(const Hypothesis& so, std::size_t which, std::size_t to) const
    {
        double best = -1e300;
        for (std::size_t place = 0; place < Stretch::kPlaces; ++place) {
            Hypothesis other = so;
            m_judge.move(so, other.leaks[which], to, place);
            m_judge.fitAround(other, to, 4);
            best = std::max(best, other.evidence);
        }
        return best;
    }

    /// Lets the leaks that reach `point` most find better places.
    void improveNear(Hypothesis& so, std::size_t point) const
    {
        if (m_scene.readingsAt[point].empty())
            return;
        const std::size_t reading = m_scene.readingsAt[point].front();
        std::optional<std::size_t> strongest;
        for (std::size_t i = 0; i < so.leaks.size(); ++i) {
            if (!strongest || so.leaks[i].part(reading) > so.leaks[*strongest].part(reading))
                strongest = i;
        }
        if (!strongest)
            return;
        relocate(m_judge, so, *strongest);
    }

    std::size_t strongestReading(std::size_t point) const
    {
        return *std::ranges::max_element(m_scene.readingsAt[point], [&](std::size_t a, std::size_t b) {
            return m_scene.readings[a].rate < m_scene.readings[b].rate;
        });
    }

    /// Leaks that a hypothesis could hold at a point and does not: odds, and how they spread over sizes.
    struct Absent
    {
        double sum = 0.0;
        double sumBig = 0.0;
        std::vector<PossibleRate> rates;
    };

    void addUnseen(const Hypothesis& so, std::size_t point, std::size_t place, Absent& absent) const
    {
        const std::size_t strongest = strongestReading(point);
        const SceneReading& shown = m_scene.readings[strongest];
        const auto sights = m_judge.look(*so.air, point, place, shown.condition);
        constexpr int kSteps = 16;
        const double seen = std::max(sights->shareAt(strongest), 0.05);
        const double most = (std::max(shown.rate, 0.0) * 1.3 + 4.0 * shown.noise) / seen;
        const double least = std::min(0.2 * m_scene.limit, 0.1 * most);
        const double step = std::log(most / least) / (kSteps - 1);
        std::vector<Expectation> before;
        std::vector<std::size_t> touched;
        double without = 0.0;
        for (std::size_t at = 0; at < sights->share.size(); ++at) {
            const std::size_t i = sights->first + at;
            if (most * sights->share[at] < 0.05 * m_scene.readings[i].noise)
                continue;
            touched.push_back(i);
            before.push_back(m_judge.expected(so, i));
            without += m_judge.likelihood(i, before.back());
        }
        for (int k = 0; k < kSteps; ++k) {
            const double rate = least * std::exp(step * k);
            double gain = -without;
            for (std::size_t t = 0; t < touched.size(); ++t) {
                const std::size_t i = touched[t];
                Expectation after = before[t];
                after.add(rate, *sights, i);
                after.ownLeak = after.ownLeak || m_scene.readings[i].point == point;
                gain += m_judge.likelihood(i, after);
            }
            const double part = std::exp(std::min(gain, 50.0) + m_judge.priorOdds()) * step /
                                (Judge::kLogRange * Stretch::kPlaces);
            absent.sum += part;
            absent.sumBig += rate >= kMatters * m_scene.limit ? part : 0.0;
            absent.rates.push_back({part, std::log(rate), std::hypot(0.5 * step, kRateStray)});
        }
    }

    /// A point the hypothesis has no leak at: weighed against every size one could have there unseen.
    void addAbsence(const Hypothesis& so, std::size_t point, double weight)
    {
        const std::size_t strongest = strongestReading(point);
        const SceneReading& shown = m_scene.readings[strongest];
        // Far below the limit and within noise there is nothing to weigh.
        if (shown.rate < 3.0 * shown.noise && 4.0 * shown.noise < m_scene.limit)
            return;
        // Where on its stretch the leak lies decides whether the neighbours would have seen it.
        Absent absent;
        for (std::size_t place = 0; place < Stretch::kPlaces; ++place)
            addUnseen(so, point, place, absent);
        PointPosterior& of = m_points[point];
        of.leak += weight * absent.sum / (1.0 + absent.sum);
        of.big += weight * absent.sumBig / (1.0 + absent.sum);
        for (PossibleRate& rate : absent.rates) {
            rate.weight *= weight / (1.0 + absent.sum);
            of.rates.push_back(rate);
        }
    }

    void addShares(const Hypothesis& so, std::size_t point, double weight)
    {
        PointPosterior& of = m_points[point];
        const std::size_t reading = strongestReading(point);
        of.reading = reading;
        const double whole = std::max(m_scene.readings[reading].rate, m_scene.readings[reading].noise);
        const double hang = m_judge.carried(so, reading);
        double explained = hang;
        double freak = 0.0;
        of.owesCarried += weight * hang / whole;
        for (const SupposedLeak& leak : so.leaks) {
            if (leak.point == point)
                continue;
            explained += leak.part(reading);
            freak += leak.rate * leak.sights->mostAt(reading);
            of.owes[leak.point] += weight * leak.part(reading) / whole;
        }
        of.explained += weight * explained;
        of.mostExplained = std::max(of.mostExplained, explained + freak);
    }

    const Judge& m_judge;
    const Scene& m_scene;
    std::vector<PointPosterior>& m_points;
};

} // namespace

std::vector<double> weightsOf(const std::vector<Hypothesis>& sample)
{
    double best = sample.front().evidence;
    for (const Hypothesis& so : sample)
        best = std::max(best, so.evidence);
    std::vector<double> weights;
    double sum = 0.0;
    for (const Hypothesis& so : sample) {
        weights.push_back(std::exp((so.evidence - best) / kTemper));
        sum += weights.back();
    }
    for (double& weight : weights)
        weight /= sum;
    return weights;
}

namespace {

/// Whether other leaks could stand behind the reading, so that the question is worth its time.
bool isDoubtful(const Scene& scene, const PointPosterior& of)
{
    const SceneReading& shown = scene.readings[of.reading];
    constexpr double kAnswers = 3.0;
    constexpr double kMayExplain = 0.3;
    return shown.rate > kAnswers * shown.noise && of.mostExplained > kMayExplain * shown.rate;
}

/// One leak on one of two stretches: the same question for both together.
void weighPairs(const Judge& judge, const std::vector<Hypothesis>& sample,
                std::vector<PointPosterior>& points, int steps)
{
    constexpr double kEitherLikely = 0.2;
    constexpr double kSettled = 0.93;
    for (std::size_t i = 0; i < points.size(); ++i) {
        for (const std::size_t next : judge.scene().stretches[i].neighbours) {
            const double less = std::min(points[i].leak, points[next].leak);
            const double more = std::max(points[i].leak, points[next].leak);
            if (next <= i || less < kEitherLikely || (less > kSettled && more > kSettled))
                continue;
            const double odds = challenge(judge, sample, std::array{i, next}, steps);
            points[i].pairs[next] =
                std::min(1.0, points[i].leak + points[next].leak) / (1.0 + std::exp(-odds));
        }
    }
}

/// The sample's word and that of the challenge: a claim needs both, and so does the word that there is
/// nothing.
void weigh(const Judge& judge, const std::vector<Hypothesis>& sample, std::vector<PointPosterior>& points,
           int steps)
{
    const Scene& scene = judge.scene();
    for (std::size_t i = 0; i < points.size(); ++i) {
        PointPosterior& of = points[i];
        if (scene.readingsAt[i].empty() || !isDoubtful(scene, of))
            continue;
        constexpr double kEven = 0.5;
        const bool matters = scene.readings[of.reading].rate > kMatters * scene.limit;
        if (of.leak <= kEven && !matters)
            continue;
        const double odds = challenge(judge, sample, std::array{i}, steps);
        const double challenged = 1.0 / (1.0 + std::exp(-odds));
        if (of.leak > kEven) {
            of.leak = std::min(of.leak, challenged);
        } else {
            // The challenge is free to bend the air to the leak, so only a fair chance counts.
            constexpr double kFairChance = 0.15;
            if (challenged > kFairChance)
                of.big = std::max(of.big, challenged);
        }
    }
}

} // namespace

std::vector<PointPosterior> posteriorOf(const Judge& judge, const std::vector<Hypothesis>& sample,
                                        const SearchEffort& effort)
{
    std::vector<PointPosterior> points(judge.scene().stretches.size());
    const std::vector<double> weights = weightsOf(sample);
    Collector collector(judge, points);
    for (std::size_t i = 0; i < sample.size(); ++i)
        collector.add(sample[i], weights[i]);
    weighPairs(judge, sample, points, effort.challengeSteps);
    weigh(judge, sample, points, effort.challengeSteps);
    return points;
}

double quantileOf(const std::vector<PossibleRate>& rates, double share)
{
    double low = 1e300;
    double high = -1e300;
    double whole = 0.0;
    for (const PossibleRate& rate : rates) {
        low = std::min(low, rate.logRate - 5.0 * rate.spread);
        high = std::max(high, rate.logRate + 5.0 * rate.spread);
        whole += rate.weight;
    }
    constexpr double kCloseEnough = 1e-6; // of ln(rate)
    while (high - low > kCloseEnough) {
        const double middle = 0.5 * (low + high);
        double below = 0.0;
        for (const PossibleRate& rate : rates)
            below += rate.weight * normalAbove((rate.logRate - middle) / rate.spread);
        (below < share * whole ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

} // namespace sealwalk::analysis
