// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/hypothesis.h"

#include "core/analysis/exposure.h"

#include <Eigen/Cholesky>
#include <Eigen/Core>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <numeric>

namespace sealwalk::analysis {

namespace {

// How far two sprays of one spot differ: aim, distance and flow vary from spray to spray.
constexpr double kAimVariance = 0.18 * 0.18;
// Tails and room air are known only roughly.
constexpr double kCarriedStray = 0.5;
constexpr double kLeftNoise = 0.06;
// An echo may fail to come however good the rule is; a leak under the probe does not.
constexpr double kFailsLow = 2e-3;
// Freak air may bring helium where the rule has none: probability per unit of ln(rate).
constexpr double kRunsHigh = 1.5e-2;
constexpr double kMostDecades = 4.0;
// A leak where nobody sprayed is a last resort: what answers next to it is more likely its own leak.
constexpr double kUnsprayedOdds = -3.0;

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

double totalOf(const Hypothesis& so)
{
    return std::accumulate(so.leaks.begin(), so.leaks.end(), 0.0,
                           [](double sum, const SupposedLeak& leak) { return sum + leak.rate; });
}

double squared(double x)
{
    return x * x;
}

} // namespace

double freakShare(double across, double above)
{
    const double distance = std::sqrt(across * across + above * above);
    const double near = std::exp(-distance / 0.06);
    const double everywhere = 0.003 / (1.0 + distance / 0.1);
    if (above <= 0.0)
        return std::min(1.0, near + everywhere);
    const double cone = std::exp(-squared(across / (0.05 + 0.6 * above)));
    return std::min(1.0, near + everywhere + 0.25 * cone / (1.0 + above / 0.05));
}

void Expectation::add(double rate, const Sight& sight, double echoScatter)
{
    const double part = rate * sight.share;
    value += part;
    variance += (kAimVariance + echoScatter * echoScatter * sight.decades) * part * part;
    most += rate * sight.most;
}

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
    for (const SceneReading& reading : scene.readings)
        m_onScale.push_back(onScale(reading.rate, reading.noise));
    const auto points = static_cast<double>(scene.stretches.size());
    const double share = std::clamp(2.5 / (points + 5.0), 0.03, 0.2);
    m_priorOdds = std::log(share / (1.0 - share));
}

std::shared_ptr<const std::vector<Sight>> Judge::look(Air& air, std::size_t point, std::size_t place,
                                                      std::size_t condition) const
{
    std::shared_ptr<const std::vector<Sight>>& known = air.seen[{point, place, condition}];
    if (known)
        return known;
    const Stretch& stretch = m_scene.stretches[point];
    const Place& leak = stretch.places[place];
    const std::vector<double> shares = visibleShares(m_scene, air.spread, leak, stretch.view, condition);
    auto sights = std::make_shared<std::vector<Sight>>(shares.size());
    for (std::size_t i = 0; i < shares.size(); ++i) {
        if (shares[i] <= 0.0)
            continue;
        const Stretch& probed = m_scene.stretches[m_scene.readings[i].point];
        const Place probe = probed.nearestTo(leak);
        Sight& sight = (*sights)[i];
        sight.share = shares[i];
        sight.decades = std::clamp(-std::log10(shares[i]), 0.0, kMostDecades);
        sight.most = probed.isPlan ? freakShare(std::hypot(leak.x - probe.x, leak.up - probe.up), 0.0)
                                   : freakShare(leak.x - probe.x, leak.up - probe.up);
    }
    known = std::move(sights);
    return known;
}

std::shared_ptr<Air> Judge::breathe(const Spread& spread) const
{
    auto air = std::make_shared<Air>();
    air->spread = spread;
    air->left = m_scene.leftBehind(spread[Spread::TailShare], spread[Spread::TailTimes] * m_scene.response);
    return air;
}

Hypothesis Judge::empty(const Spread& spread) const
{
    Hypothesis so;
    so.air = breathe(spread);
    setEvidence(so);
    return so;
}

SupposedLeak Judge::suppose(const Hypothesis& so, std::size_t reading, std::size_t place) const
{
    const SceneReading& home = m_scene.readings[reading];
    SupposedLeak leak;
    leak.point = home.point;
    leak.place = place;
    leak.condition = home.condition;
    leak.witness = reading;
    leak.sights = look(*so.air, leak.point, place, leak.condition);
    const double unexplained = home.rate - expected(so, reading).value;
    leak.rate = std::max(unexplained, 0.1 * std::abs(home.rate) + home.noise) /
                std::max((*leak.sights)[reading].share, 1e-6);
    return leak;
}

void Judge::move(const Hypothesis& so, SupposedLeak& leak, std::size_t point, std::size_t place) const
{
    // The reading it has to account for: its new home's, or, on a stretch that was not sprayed, the one it
    // had.
    const bool ownReading = point != leak.point && !m_scene.readingsAt[point].empty();
    if (ownReading)
        leak.witness = m_scene.readingsAt[point].front();
    const double wanted =
        ownReading ? std::max(m_scene.readings[leak.witness].rate, m_scene.readings[leak.witness].noise)
                   : leak.part(leak.witness);
    leak.sights = look(*so.air, point, place, leak.condition);
    leak.rate = wanted / std::max((*leak.sights)[leak.witness].share, 1e-6);
    leak.point = point;
    leak.place = place;
}

double Judge::carried(const Hypothesis& so, std::size_t reading) const
{
    return background(*so.air, reading, totalOf(so)).value;
}

Expectation Judge::background(const Air& air, std::size_t reading, double total) const
{
    const SceneReading& shown = m_scene.readings[reading];
    const double room = air.spread[Spread::Room] * total * m_progress[reading] / m_scene.heliumShare;
    const double left = air.left[reading];
    Expectation result;
    result.value = std::max(0.0, left + room - shown.elevated);
    result.variance =
        squared(shown.noise) + squared(kCarriedStray * result.value) + squared(kLeftNoise * left);
    return result;
}

double Judge::quiet(Air& air, std::size_t reading) const
{
    if (air.quiet.empty())
        air.quiet.assign(m_scene.readings.size(), std::numeric_limits<double>::quiet_NaN());
    double& known = air.quiet[reading];
    if (std::isnan(known))
        known = likelihood(reading, background(air, reading, 0.0));
    return known;
}

Expectation Judge::expected(const Hypothesis& so, std::size_t reading) const
{
    return expected(so, reading, totalOf(so));
}

Expectation Judge::expected(const Hypothesis& so, std::size_t reading, double total) const
{
    Expectation result = background(*so.air, reading, total);
    const double echoScatter = so.spread()[Spread::EchoScatter];
    for (const SupposedLeak& leak : so.leaks) {
        result.add(leak.rate, (*leak.sights)[reading], echoScatter);
        result.ownLeak = result.ownLeak || leak.point == m_scene.readings[reading].point;
    }
    return result;
}

double Judge::surprise(std::size_t reading, const Expectation& expectation) const
{
    const double noise = m_scene.readings[reading].noise;
    const double step = m_onScale[reading] - onScale(expectation.value, noise);
    return step / std::sqrt(scaleVariance(expectation, noise));
}

double Judge::likelihood(std::size_t reading, const Expectation& expectation) const
{
    const SceneReading& shown = m_scene.readings[reading];
    const double step = m_onScale[reading] - onScale(expectation.value, shown.noise);
    const double variance = scaleVariance(expectation, shown.noise);
    const double bell = -0.5 * step * step / variance - 0.5 * std::log(2.0 * std::numbers::pi * variance);
    if (expectation.ownLeak)
        return bell;
    if (step < 0.0)
        return std::log(std::exp(bell) + kFailsLow);
    constexpr double kBellAlone = -2.0;
    // Even freak air is smooth: it does not pass by the neighbours unseen.
    constexpr double kOverNeighbours = 30.0;
    if (bell > kBellAlone || shown.rate > expectation.value + expectation.most ||
        shown.rate > kOverNeighbours * shown.beside)
        return bell;
    return std::log(std::exp(bell) + kRunsHigh);
}

void Judge::fit(Hypothesis& so, int rounds) const
{
    const auto count = static_cast<Eigen::Index>(so.leaks.size());
    if (count == 0) {
        setEvidence(so);
        return;
    }
    const double echoScatter = so.spread()[Spread::EchoScatter];
    Eigen::MatrixXd square(count, count);
    Eigen::VectorXd slope(count);
    Eigen::VectorXd row(count);
    for (int round = 0; round < rounds; ++round) {
        square.setZero();
        slope.setZero();
        const double total = totalOf(so);
        for (std::size_t i = 0; i < m_scene.readings.size(); ++i) {
            const SceneReading& shown = m_scene.readings[i];
            double seen = 0.0;
            for (Eigen::Index j = 0; j < count; ++j) {
                row[j] = so.leaks[static_cast<std::size_t>(j)].part(i);
                seen = std::max(seen, row[j]);
            }
            if (seen <= 0.01 * shown.noise)
                continue;
            Expectation expectation = background(*so.air, i, total);
            for (const SupposedLeak& leak : so.leaks)
                expectation.add(leak.rate, (*leak.sights)[i], echoScatter);
            const double variance = scaleVariance(expectation, shown.noise);
            const double step = m_onScale[i] - onScale(expectation.value, shown.noise);
            double weight = 1.0 / variance;
            if (step < 0.0 && step * step > 9.0 * variance)
                weight *= 9.0 * variance / (step * step); // a reading that failed low has little say
            row /= std::sqrt(squared(expectation.value) + 4.0 * squared(shown.noise));
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
    const double total = totalOf(so);
    const double room = so.spread()[Spread::Room] * total / m_scene.heliumShare;
    for (std::size_t i = 0; i < m_scene.readings.size(); ++i) {
        // Most readings see nothing of any leak; what they say of this air is worked out once.
        const double unseen = 0.005 * m_scene.readings[i].noise;
        const bool isQuiet =
            room * m_progress[i] < unseen && std::ranges::all_of(so.leaks, [&](const SupposedLeak& leak) {
                return leak.part(i) < unseen && leak.rate * (*leak.sights)[i].most < unseen &&
                       leak.point != m_scene.readings[i].point;
            });
        so.evidence += isQuiet ? quiet(*so.air, i) : likelihood(i, expected(so, i, total));
    }
    for (const SupposedLeak& leak : so.leaks) {
        const double determined =
            std::sqrt(2.0 * std::numbers::pi) * std::min(leak.spreadOfLog, 3.0) / kLogRange;
        so.evidence += m_priorOdds + std::log(std::min(determined, 1.0));
        if (!m_scene.wasSprayed(leak.point, leak.condition))
            so.evidence += kUnsprayedOdds;
    }
}

Hypothesis Judge::under(const Spread& spread, const Hypothesis& so, int rounds) const
{
    Hypothesis moved;
    moved.air = breathe(spread);
    moved.leaks = so.leaks;
    for (SupposedLeak& leak : moved.leaks)
        leak.sights = look(*moved.air, leak.point, leak.place, leak.condition);
    fit(moved, rounds);
    return moved;
}

} // namespace sealwalk::analysis
