// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/hypothesis.h"

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
// A first rise as late as drift, where a leak is supposed on the stretch itself: one leak in a dozen answers
// through a space behind it.
constexpr double kLateOfOwn = 0.08;
constexpr double kMostDecades = 4.0;
// A leak where nobody sprayed is a last resort: what answers next to it is more likely its own leak.
constexpr double kUnsprayedOdds = -3.0;
// A leak that shows less than this part of the noise is not fitted by that reading.
constexpr double kSeenByFit = 0.01;

double squared(double x)
{
    return x * x;
}

/// Linear near zero, logarithmic far above: one scale for noise and for decades. asinh(rate / (2 noise)),
/// by its definition, with the square that the variance needs as well.
/// @param square  rate² + (2 noise)²
double onScale(double rate, double square, double logNoise)
{
    const double scaled = std::log(std::abs(rate) + std::sqrt(square)) - logNoise;
    return rate < 0.0 ? -scaled : scaled;
}

double totalOf(const Hypothesis& so)
{
    return std::accumulate(so.leaks.begin(), so.leaks.end(), 0.0,
                           [](double sum, const SupposedLeak& leak) { return sum + leak.rate; });
}

} // namespace

void Expectation::add(double rate, const Sights& sights, std::size_t reading)
{
    if (!sights.covers(reading))
        return;
    const std::size_t at = reading - sights.first;
    const double part = rate * sights.share[at];
    value += part;
    variance += sights.stray[at] * part * part;
    most += rate * sights.most[at];
}

void Outlook::add(double rate, const Sights& sights)
{
    const std::size_t count = range.count();
    for (std::size_t i = 0; i < count; ++i) {
        const double part = rate * sights.share[i];
        value[i] += part;
        variance[i] += sights.stray[i] * part * part;
        most[i] += rate * sights.most[i];
    }
}

Judge::Judge(const Scene& scene)
    : m_scene(scene)
    , m_progress(scene.readings.size(), 0.0)
{
    if (scene.readings.empty())
        return;
    const auto byStart = [](const SceneReading& a, const SceneReading& b) { return a.start < b.start; };
    const auto byEnd = [](const SceneReading& a, const SceneReading& b) { return a.end < b.end; };
    const double first = std::ranges::min_element(scene.readings, byStart)->start;
    const double whole = std::max(std::ranges::max_element(scene.readings, byEnd)->end - first, 1e-9);
    m_leastNoise = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < m_progress.size(); ++i) {
        const SceneReading& reading = scene.readings[i];
        m_progress[i] = (reading.start - first) / whole;
        m_logNoise.push_back(std::log(2.0 * reading.noise));
        m_onScale.push_back(
            onScale(reading.rate, squared(reading.rate) + 4.0 * squared(reading.noise), m_logNoise.back()));
        m_leastNoise = std::min(m_leastNoise, reading.noise);
    }
    const auto points = static_cast<double>(scene.stretches.size());
    const double share = std::clamp(2.5 / (points + 5.0), 0.03, 0.2);
    m_priorOdds = std::log(share / (1.0 - share));
}

const std::vector<Bearing>& Judge::bearingsOf(std::size_t point, std::size_t place,
                                              std::size_t condition) const
{
    std::vector<Bearing>& known = m_bearings[spotOf(point, place, condition)];
    if (known.empty()) {
        const Stretch& stretch = m_scene.stretches[point];
        known = bearings(m_scene, point, stretch.places[place], condition);
    }
    return known;
}

std::shared_ptr<const Sights> Judge::look(Air& air, std::size_t point, std::size_t place,
                                          std::size_t condition) const
{
    std::shared_ptr<const Sights>& known = air.seen[spotOf(point, place, condition)];
    if (known)
        return known;
    const Stretch& stretch = m_scene.stretches[point];
    const std::vector<Bearing>& from = bearingsOf(point, place, condition);
    auto sights = std::make_shared<Sights>();
    sights->first = m_scene.readingsIn[stretch.view].first;
    sights->share.resize(from.size());
    sights->stray.resize(from.size());
    sights->most.resize(from.size());
    const double echoVariance = squared(air.spread[Spread::EchoScatter]);
    for (std::size_t i = 0; i < from.size(); ++i) {
        const double share = visibleShare(m_scene, air.spread, stretch.places[place], from[i],
                                          m_scene.readings[sights->first + i]);
        if (share <= 0.0)
            continue;
        const double decades = std::clamp(-std::log10(share), 0.0, kMostDecades);
        sights->share[i] = share;
        sights->stray[i] = kAimVariance + echoVariance * decades;
        sights->most[i] = from[i].most;
    }
    known = std::move(sights);
    return known;
}

std::shared_ptr<Air> Judge::breathe(const Spread& spread) const
{
    auto air = std::make_shared<Air>();
    air->spread = spread;
    air->left = m_scene.leftBehind(spread[Spread::TailShare], spread[Spread::TailTimes] * m_scene.response);
    air->quiet.resize(m_scene.readingsIn.size());
    for (std::size_t i = 0; i < air->left.size(); ++i)
        air->restVariance.push_back(squared(m_scene.readings[i].noise) + squared(kLeftNoise * air->left[i]));
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
                std::max(leak.sights->shareAt(reading), 1e-6);
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
    leak.rate = wanted / std::max(leak.sights->shareAt(leak.witness), 1e-6);
    leak.point = point;
    leak.place = place;
}

double Judge::carried(const Hypothesis& so, std::size_t reading) const
{
    return background(*so.air, reading, totalOf(so)).value;
}

Expectation Judge::background(const Air& air, std::size_t reading, double total) const
{
    const double room = air.spread[Spread::Room] * total * m_progress[reading] / m_scene.heliumShare;
    Expectation result;
    result.value = std::max(0.0, air.left[reading] + room - m_scene.readings[reading].elevated);
    result.variance = air.restVariance[reading] + squared(kCarriedStray * result.value);
    return result;
}

void Judge::layBackground(const Air& air, double total, std::size_t view, Outlook& outlook) const
{
    const ReadingRange& range = m_scene.readingsIn[view];
    outlook.range = range;
    outlook.value.resize(range.count());
    outlook.variance.resize(range.count());
    outlook.most.assign(range.count(), 0.0);
    outlook.ownLeak.assign(range.count(), 0);
    for (std::size_t i = 0; i < range.count(); ++i) {
        const Expectation nothing = background(air, range.first + i, total);
        outlook.value[i] = nothing.value;
        outlook.variance[i] = nothing.variance;
    }
}

Expectation Judge::expected(const Hypothesis& so, std::size_t reading) const
{
    Expectation result = background(*so.air, reading, totalOf(so));
    for (const SupposedLeak& leak : so.leaks) {
        result.add(leak.rate, *leak.sights, reading);
        result.ownLeak = result.ownLeak || leak.point == m_scene.readings[reading].point;
    }
    return result;
}

double Judge::surprise(std::size_t reading, const Expectation& expectation) const
{
    const double square = squared(expectation.value) + 4.0 * squared(m_scene.readings[reading].noise);
    const double step = m_onScale[reading] - onScale(expectation.value, square, m_logNoise[reading]);
    return step / std::sqrt(expectation.variance / square);
}

double Judge::likelihood(std::size_t reading, const Expectation& expectation) const
{
    const Density density = densityOf(reading, expectation);
    return std::log(density.factor) + density.exponent;
}

/// Density of one reading; the logarithm is taken of many together.
Judge::Density Judge::densityOf(std::size_t reading, const Expectation& expectation) const
{
    const SceneReading& shown = m_scene.readings[reading];
    const double square = squared(expectation.value) + 4.0 * squared(shown.noise);
    const double step = m_onScale[reading] - onScale(expectation.value, square, m_logNoise[reading]);
    const double variance = expectation.variance / square;
    const double exponent = -0.5 * step * step / variance;
    const double height = 1.0 / std::sqrt(2.0 * std::numbers::pi * variance);
    if (expectation.ownLeak)
        return {shown.late ? kLateOfOwn * height : height, exponent};
    const double bell = height * std::exp(exponent);
    if (step < 0.0)
        return {bell + kFailsLow, 0.0};
    constexpr double kBellAlone = 0.1353; // two standard deviations
    // Even freak air is smooth: it does not pass by the neighbours unseen.
    constexpr double kOverNeighbours = 30.0;
    if (bell > kBellAlone || shown.rate > expectation.value + expectation.most ||
        shown.rate > kOverNeighbours * shown.beside)
        return {height, exponent};
    return {bell + kRunsHigh, 0.0};
}

void Judge::fit(Hypothesis& so, int rounds) const
{
    for (std::size_t view = 0; view < m_scene.readingsIn.size(); ++view)
        fitView(so, view, rounds);
    setEvidence(so);
}

void Judge::fitAround(Hypothesis& so, std::size_t point, int rounds) const
{
    const std::size_t view = m_scene.stretches[point].view;
    fitView(so, view, rounds);
    // The air of the room joins the views.
    const double total = totalOf(so);
    const double room = so.spread()[Spread::Room] * std::abs(total - so.total) / m_scene.heliumShare;
    if (room > kSeenByFit * m_leastNoise) {
        setEvidence(so);
        return;
    }
    so.ofReadings[view] = viewEvidence(so, view, total);
    so.evidence = prior(so) + std::accumulate(so.ofReadings.begin(), so.ofReadings.end(), 0.0);
}

void Judge::fitView(Hypothesis& so, std::size_t view, int rounds) const
{
    std::vector<std::size_t>& leaks = m_bench.leaks;
    leaks.clear();
    for (std::size_t j = 0; j < so.leaks.size(); ++j) {
        if (m_scene.stretches[so.leaks[j].point].view == view)
            leaks.push_back(j);
    }
    if (leaks.empty() || m_scene.readingsIn[view].count() == 0)
        return;
    for (int round = 0; round < rounds && step(so, view, leaks); ++round) {
    }
}

/// One Gauss-Newton step of the rates of `leaks`; false when nothing moved any more.
bool Judge::step(Hypothesis& so, std::size_t view, const std::vector<std::size_t>& leaks) const
{
    Outlook& outlook = m_bench.outlook;
    layBackground(*so.air, totalOf(so), view, outlook);
    const std::size_t rows = outlook.range.count();
    const std::size_t columns = leaks.size();
    m_bench.parts.resize(rows * columns);
    m_bench.rest.assign(rows, 0.0); // first the largest part seen, then what is left to explain
    for (std::size_t j = 0; j < columns; ++j) {
        const SupposedLeak& leak = so.leaks[leaks[j]];
        const double* share = leak.sights->share.data();
        const double* stray = leak.sights->stray.data();
        double* parts = m_bench.parts.data() + j * rows;
        for (std::size_t i = 0; i < rows; ++i) {
            const double part = leak.rate * share[i];
            parts[i] = part;
            outlook.value[i] += part;
            outlook.variance[i] += stray[i] * part * part;
            m_bench.rest[i] = std::max(m_bench.rest[i], part);
        }
    }
    std::vector<double>& scale = outlook.most; // of a row; unused by a fit otherwise
    for (std::size_t i = 0; i < rows; ++i) {
        const std::size_t reading = outlook.range.first + i;
        const double noise = m_scene.readings[reading].noise;
        if (m_bench.rest[i] <= kSeenByFit * noise) {
            m_bench.rest[i] = 0.0;
            continue;
        }
        const double square = squared(outlook.value[i]) + 4.0 * squared(noise);
        const double variance = outlook.variance[i] / square;
        const double step = m_onScale[reading] - onScale(outlook.value[i], square, m_logNoise[reading]);
        double weight = 1.0 / variance;
        if (step < 0.0 && step * step > 9.0 * variance)
            weight *= 9.0 * variance / (step * step); // a reading that failed low has little say
        scale[i] = std::sqrt(weight / square);
        m_bench.rest[i] = std::sqrt(weight) * step;
    }
    using Column = Eigen::Map<Eigen::ArrayXd>;
    const auto count = static_cast<Eigen::Index>(columns);
    const auto columnOf = [&](std::size_t j) {
        return Column(m_bench.parts.data() + j * rows, static_cast<Eigen::Index>(rows));
    };
    const Column scales(scale.data(), static_cast<Eigen::Index>(rows));
    const Column rest(m_bench.rest.data(), static_cast<Eigen::Index>(rows));
    m_bench.square.resize(columns * columns);
    m_bench.slope.resize(columns);
    Eigen::Map<Eigen::MatrixXd> square(m_bench.square.data(), count, count);
    Eigen::Map<Eigen::VectorXd> slope(m_bench.slope.data(), count);
    // The leaks' own breadth keeps a leak that no reading pins down from running off.
    constexpr double kOwnBreadth = 1.0 / (3.0 * 3.0);
    for (std::size_t j = 0; j < columns; ++j) {
        columnOf(j) *= scales;
        const auto at = static_cast<Eigen::Index>(j);
        for (std::size_t k = 0; k <= j; ++k)
            square(at, static_cast<Eigen::Index>(k)) = (columnOf(j) * columnOf(k)).sum();
        square(at, at) += kOwnBreadth;
        slope[at] = (columnOf(j) * rest).sum();
    }
    for (std::size_t j = 0; j < columns; ++j) {
        const auto at = static_cast<Eigen::Index>(j);
        so.leaks[leaks[j]].spreadOfLog = 1.0 / std::sqrt(square(at, at));
    }
    const Eigen::LLT<Eigen::Ref<Eigen::MatrixXd>> factors(square); // in place
    factors.solveInPlace(slope);
    for (std::size_t j = 0; j < columns; ++j)
        so.leaks[leaks[j]].rate *= std::exp(std::clamp(slope[static_cast<Eigen::Index>(j)], -1.5, 1.5));
    constexpr double kStands = 1e-4; // of ln(rate): nothing a reading could tell
    return slope.cwiseAbs().maxCoeff() > kStands;
}

double Judge::evidenceOf(const Outlook& outlook) const
{
    // A density lies between 1e-3 and 1e9 or so; the product stays far inside the range of a double.
    constexpr std::size_t kTogether = 16;
    double sum = 0.0;
    double product = 1.0;
    for (std::size_t i = 0; i < outlook.range.count(); ++i) {
        const Density density =
            densityOf(outlook.range.first + i,
                      {outlook.value[i], outlook.variance[i], outlook.most[i], outlook.ownLeak[i] != 0});
        sum += density.exponent;
        product *= density.factor;
        if (i % kTogether == kTogether - 1) {
            sum += std::log(product);
            product = 1.0;
        }
    }
    return sum + std::log(product);
}

double Judge::viewEvidence(const Hypothesis& so, std::size_t view, double total) const
{
    const bool isQuiet =
        so.spread()[Spread::Room] * total / m_scene.heliumShare <= kSeenByFit * m_leastNoise &&
        std::ranges::none_of(
            so.leaks, [&](const SupposedLeak& leak) { return m_scene.stretches[leak.point].view == view; });
    std::optional<double>& known = so.air->quiet[view];
    if (isQuiet && known)
        return *known;
    Outlook& outlook = m_bench.outlook;
    layBackground(*so.air, isQuiet ? 0.0 : total, view, outlook);
    for (const SupposedLeak& leak : so.leaks) {
        if (m_scene.stretches[leak.point].view != view)
            continue;
        outlook.add(leak.rate, *leak.sights);
        for (const std::size_t own : m_scene.readingsAt[leak.point])
            outlook.ownLeak[own - outlook.range.first] = 1;
    }
    const double evidence = evidenceOf(outlook);
    if (isQuiet)
        known = evidence;
    return evidence;
}

void Judge::setEvidence(Hypothesis& so) const
{
    so.total = totalOf(so);
    so.ofReadings.resize(m_scene.readingsIn.size());
    for (std::size_t view = 0; view < so.ofReadings.size(); ++view)
        so.ofReadings[view] = viewEvidence(so, view, so.total);
    so.evidence = prior(so) + std::accumulate(so.ofReadings.begin(), so.ofReadings.end(), 0.0);
}

double Judge::prior(const Hypothesis& so) const
{
    double sum = 0.0;
    for (const SupposedLeak& leak : so.leaks) {
        const double determined =
            std::sqrt(2.0 * std::numbers::pi) * std::min(leak.spreadOfLog, 3.0) / kLogRange;
        sum += m_priorOdds + std::log(std::min(determined, 1.0));
        if (!m_scene.wasSprayed(leak.point, leak.condition))
            sum += kUnsprayedOdds;
    }
    return sum;
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
