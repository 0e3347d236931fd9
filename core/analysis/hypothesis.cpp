// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/hypothesis.h"

#include "core/analysis/exposure.h"

#include <Eigen/Cholesky>
#include <Eigen/Core>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sealwalk::analysis {

namespace {

// How far two sprays of one spot differ: aim, distance and flow vary from spray to spray.
constexpr double kAimVariance = 0.18 * 0.18;
// Tails and room air are known only roughly.
constexpr double kCarriedStray = 0.5;
constexpr double kLeftNoise = 0.06;
// An echo may fail to come however good the rule is; a leak under the probe does not.
constexpr double kFailsLow = 2e-3;

/// Linear near zero, logarithmic far above: one scale for noise and for decades.
double onScale(double rate, double noise)
{
    return std::asinh(rate / (2.0 * noise));
}

/// Width of one standard deviation on that scale, squared.
double scaleVariance(const Expectation& expectation, double noise)
{
    return expectation.variance / (expectation.value * expectation.value + 4.0 * noise * noise);
}

} // namespace

Judge::Judge(const Scene& scene)
    : m_scene(scene)
    , m_progress(scene.readings.size(), 0.0)
{
    if (scene.readings.empty())
        return;
    const double first = scene.readings.front().start;
    const double whole = std::max(scene.readings.back().end - first, 1e-9);
    for (std::size_t i = 0; i < m_progress.size(); ++i)
        m_progress[i] = (scene.readings[i].start - first) / whole;
    const auto points = static_cast<double>(scene.stretches.size());
    const double share = std::clamp(2.5 / (points + 5.0), 0.03, 0.2);
    m_priorOdds = std::log(share / (1.0 - share));
}

double Judge::strayOf(double share, double echoScatter)
{
    constexpr double kMostDecades = 4.0;
    const double decades = share > 0.0 ? std::clamp(-std::log10(share), 0.0, kMostDecades) : kMostDecades;
    return kAimVariance + echoScatter * echoScatter * decades;
}

Hypothesis Judge::empty(const Spread& spread) const
{
    Hypothesis so;
    so.spread = spread;
    so.left = m_scene.leftBehind(spread[Spread::TailShare], spread[Spread::TailTimes] * m_scene.response);
    setEvidence(so);
    return so;
}

SupposedLeak Judge::suppose(const Hypothesis& so, std::size_t reading, std::size_t place) const
{
    const SceneReading& home = m_scene.readings[reading];
    const Stretch& stretch = m_scene.stretches[home.point];
    SupposedLeak leak;
    leak.point = home.point;
    leak.place = place;
    leak.condition = home.condition;
    leak.shares = visibleShares(m_scene, so.spread, stretch.places[place], stretch.view, leak.condition);
    const double unexplained = home.rate - expected(so, reading).value;
    leak.rate =
        std::max(unexplained, 0.1 * std::abs(home.rate) + home.noise) / std::max(leak.shares[reading], 1e-6);
    return leak;
}

double Judge::totalOf(const Hypothesis& so) const
{
    double total = 0.0;
    for (const SupposedLeak& leak : so.leaks)
        total += leak.rate;
    return total;
}

double Judge::carried(const Hypothesis& so, std::size_t reading, double total) const
{
    const double room = so.spread[Spread::Room] * total * m_progress[reading] / m_scene.heliumShare;
    return std::max(0.0, so.left[reading] + room - m_scene.readings[reading].elevated);
}

Expectation Judge::expected(const Hypothesis& so, std::size_t reading) const
{
    const double hang = carried(so, reading, totalOf(so));
    const double noise = m_scene.readings[reading].noise;
    Expectation result{hang, noise * noise + kCarriedStray * kCarriedStray * hang * hang +
                                 kLeftNoise * kLeftNoise * so.left[reading] * so.left[reading]};
    for (const SupposedLeak& leak : so.leaks) {
        const double part = leak.rate * leak.shares[reading];
        result.value += part;
        result.variance += strayOf(leak.shares[reading], so.spread[Spread::EchoScatter]) * part * part;
        result.ownLeak = result.ownLeak || leak.point == m_scene.readings[reading].point;
    }
    return result;
}

double Judge::surprise(std::size_t reading, const Expectation& expectation) const
{
    const SceneReading& shown = m_scene.readings[reading];
    const double step = onScale(shown.rate, shown.noise) - onScale(expectation.value, shown.noise);
    return step / std::sqrt(scaleVariance(expectation, shown.noise));
}

double Judge::likelihood(std::size_t reading, const Expectation& expectation) const
{
    const SceneReading& shown = m_scene.readings[reading];
    const double step = onScale(shown.rate, shown.noise) - onScale(expectation.value, shown.noise);
    const double variance = scaleVariance(expectation, shown.noise);
    const double bell = -0.5 * step * step / variance - 0.5 * std::log(2.0 * std::numbers::pi * variance);
    if (step >= 0.0 || expectation.ownLeak)
        return bell;
    return std::log(std::exp(bell) + kFailsLow);
}

void Judge::fit(Hypothesis& so, int rounds) const
{
    const auto count = static_cast<Eigen::Index>(so.leaks.size());
    if (count == 0) {
        setEvidence(so);
        return;
    }
    Eigen::MatrixXd square(count, count);
    Eigen::VectorXd slope(count);
    Eigen::VectorXd row(count);
    for (int round = 0; round < rounds; ++round) {
        square.setZero();
        slope.setZero();
        const double total = totalOf(so);
        for (std::size_t i = 0; i < m_scene.readings.size(); ++i) {
            const SceneReading& shown = m_scene.readings[i];
            const double hang = carried(so, i, total);
            Expectation expectation{hang, shown.noise * shown.noise +
                                              kCarriedStray * kCarriedStray * hang * hang +
                                              kLeftNoise * kLeftNoise * so.left[i] * so.left[i]};
            bool seen = false;
            for (Eigen::Index j = 0; j < count; ++j) {
                const SupposedLeak& leak = so.leaks[static_cast<std::size_t>(j)];
                const double part = leak.rate * leak.shares[i];
                row[j] = part;
                expectation.value += part;
                expectation.variance += strayOf(leak.shares[i], so.spread[Spread::EchoScatter]) * part * part;
                seen = seen || part > 0.01 * shown.noise;
            }
            if (!seen)
                continue;
            const double variance = scaleVariance(expectation, shown.noise);
            double step = onScale(shown.rate, shown.noise) - onScale(expectation.value, shown.noise);
            double weight = 1.0 / variance;
            if (step < 0.0 && step * step > 9.0 * variance)
                weight *= 9.0 * variance / (step * step); // a reading that failed low has little say
            row /= std::sqrt(expectation.value * expectation.value + 4.0 * shown.noise * shown.noise);
            square.selfadjointView<Eigen::Lower>().rankUpdate(row, weight);
            slope += weight * step * row;
        }
        // The leaks' own breadth keeps a leak that no reading pins down from running off.
        constexpr double kOwnBreadth = 1.0 / (3.0 * 3.0);
        square.diagonal().array() += kOwnBreadth;
        const Eigen::VectorXd move = square.selfadjointView<Eigen::Lower>().ldlt().solve(slope);
        for (Eigen::Index j = 0; j < count; ++j) {
            SupposedLeak& leak = so.leaks[static_cast<std::size_t>(j)];
            leak.rate *= std::exp(std::clamp(move[j], -1.5, 1.5));
            leak.spreadOfLog = 1.0 / std::sqrt(square(j, j));
        }
    }
    setEvidence(so);
}

void Judge::setEvidence(Hypothesis& so) const
{
    so.evidence = 0.0;
    for (std::size_t i = 0; i < m_scene.readings.size(); ++i)
        so.evidence += likelihood(i, expected(so, i));
    for (const SupposedLeak& leak : so.leaks) {
        const double determined =
            std::sqrt(2.0 * std::numbers::pi) * std::min(leak.spreadOfLog, 3.0) / kLogRange;
        so.evidence += m_priorOdds + std::log(std::min(determined, 1.0));
    }
}

Hypothesis Judge::under(const Spread& spread, const Hypothesis& so, int rounds) const
{
    Hypothesis moved = empty(spread);
    moved.leaks = so.leaks;
    for (SupposedLeak& leak : moved.leaks) {
        const Stretch& stretch = m_scene.stretches[leak.point];
        leak.shares =
            visibleShares(m_scene, spread, stretch.places[leak.place], stretch.view, leak.condition);
    }
    fit(moved, rounds);
    return moved;
}

} // namespace sealwalk::analysis
