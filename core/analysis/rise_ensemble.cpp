// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/rise_ensemble.h"

#include "core/analysis/rise_projection.h"
#include "core/analysis/rise_refine.h"
#include "core/base/contract.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>
#include <numeric>

namespace sealwalk::analysis {

namespace {

constexpr std::array<double, 4> kBeliefBySources = {0.2, 0.4, 0.3, 0.1}; // none, one, two, three
constexpr double kBeliefNoLeak = 0.03;
constexpr double kWorthKeeping = 10.0; // in log evidence below the best
constexpr double kHopeless = 30.0;     // the same, by misfit alone
constexpr std::size_t kPairsExtended = 8;
constexpr std::size_t kReadingsKept = 12;

/// A reading before it is weighed.
struct Candidate
{
    std::array<int, 3> grid = {-1, -1, -1};   // its shapes, or those it was refined from
    std::array<int, 3> shapes = {-1, -1, -1}; // the same, or the refined ones behind the grid's
    int count = 0;
    ProjectedFit fit;
    double misfit = 0.0; // chi square at the best leak the reading allows
    double logEvidence = -std::numeric_limits<double>::infinity();
    double mass = 0.0; // of the normal distribution of the leak inside its allowed stretch
    double weight = 0.0;
};

double normalCdf(double z)
{
    return 0.5 * std::erfc(-z / std::numbers::sqrt2);
}

double normalMass(double from, double to)
{
    // Both tails of erfc are exact, differences near 1 are not: use the tail both ends lie in.
    return from > 0.0 ? normalCdf(-from) - normalCdf(-to) : normalCdf(to) - normalCdf(from);
}

/// Everything that is laid over one record.
class Ensemble
{
public:
    Ensemble(const CompressedRise& rise, const EnsembleOptions& options)
        : m_options(options)
        , m_rise(rise)
        , m_shapes(shapesFor(rise, options))
        , m_projection(rise, m_shapes)
    {}

    RisePosterior run()
    {
        collect();
        refine();
        measureInflation();
        weigh();
        return summarise();
    }

private:
    static std::vector<SourceShape> shapesFor(const CompressedRise& rise, const EnsembleOptions& options)
    {
        // A source may be over within the first interval; then only its amount is seen.
        std::vector<SourceShape> shapes = sourceShapes(0.25 * rise.bins[1].time / rise.length);
        for (const SourceKind kind : options.without)
            shapes.erase(std::remove_if(shapes.begin(), shapes.end(),
                                        [&](const SourceShape& shape) { return shape.kind == kind; }),
                         shapes.end());
        return shapes;
    }

    /// Adds the candidate unless no leak of 0 or more goes with sources of 0 or more.
    void keep(Candidate candidate)
    {
        const ProjectedFit& f = candidate.fit;
        const double from = std::max(0.0, f.leakFrom);
        if (!(f.leakTo > from))
            return;
        const double off = std::max({from - f.leak, f.leak - f.leakTo, 0.0}) / f.leakUncertainty;
        candidate.misfit = f.chiSquare + off * off;
        m_candidates.push_back(candidate);
    }

    void consider(std::array<int, 3> shapes, int count)
    {
        Candidate candidate;
        candidate.grid = shapes;
        candidate.shapes = shapes;
        candidate.count = count;
        if (m_projection.fit({shapes.data(), static_cast<std::size_t>(count)}, candidate.fit))
            keep(candidate);
    }

    void collect()
    {
        const int n = static_cast<int>(m_shapes.size());
        m_candidates.reserve(static_cast<std::size_t>(n * n));
        consider({-1, -1, -1}, 0);
        for (int i = 0; i < n; ++i)
            consider({i, -1, -1}, 1);
        const std::size_t pairsFrom = m_candidates.size();
        if (m_projection.bins() >= 6)
            for (int i = 0; i < n; ++i)
                for (int j = i + 1; j < n; ++j)
                    consider({i, j, -1}, 2);
        if (m_projection.bins() < 8)
            return;
        std::vector<std::size_t> best(m_candidates.size() - pairsFrom);
        std::iota(best.begin(), best.end(), pairsFrom);
        const std::size_t keep = std::min(kPairsExtended, best.size());
        std::partial_sort(
            best.begin(), best.begin() + static_cast<std::ptrdiff_t>(keep), best.end(),
            [&](std::size_t a, std::size_t b) { return m_candidates[a].misfit < m_candidates[b].misfit; });
        best.resize(keep);
        for (const std::size_t pair : best) {
            const std::array<int, 3> shapes = m_candidates[pair].shapes;
            for (int k = 0; k < n; ++k)
                if (k != shapes[0] && k != shapes[1])
                    consider({shapes[0], shapes[1], k}, 3);
        }
    }

    /// The best of one and of two sources with their time constants set free. A refined reading stands beside
    /// those of the grid with the belief of the one it came from; its shapes are added to the list.
    void refine()
    {
        for (int count = 1; count <= 2; ++count) {
            const Candidate* best = nullptr;
            for (const Candidate& c : m_candidates)
                if (c.count == count && (!best || c.misfit < best->misfit))
                    best = &c;
            if (!best)
                continue;
            std::vector<SourceShape> shapes;
            for (int i = 0; i < count; ++i)
                shapes.push_back(shapeOf(*best, i));
            const auto refined = refineReading(m_rise, shapes, best->fit);
            if (!refined)
                continue;
            Candidate candidate = *best;
            candidate.fit = refined->fit;
            for (std::size_t i = 0; i < refined->shapes.size(); ++i) {
                candidate.shapes[i] = static_cast<int>(m_shapes.size());
                m_shapes.push_back(refined->shapes[i]);
            }
            keep(candidate);
        }
    }

    [[nodiscard]] const SourceShape& shapeOf(const Candidate& c, int source) const
    {
        return m_shapes[static_cast<std::size_t>(c.shapes[static_cast<std::size_t>(source)])];
    }

    /// What the residuals of the best reading exceed the gauge's noise by. Of few samples many sources leave
    /// nothing over to measure that by, so the number of sources is chosen that leaves least doubt.
    void measureInflation()
    {
        std::array<const Candidate*, kBeliefBySources.size()> best = {};
        for (const Candidate& c : m_candidates) {
            const Candidate*& there = best[static_cast<std::size_t>(c.count)];
            if (!there || c.misfit < there->misfit)
                there = &c;
        }
        double least = std::numeric_limits<double>::infinity();
        const Candidate* chosen = nullptr;
        for (const Candidate* c : best) {
            if (!c)
                continue;
            // A source costs its amount and its time constant; no record is left without a degree of freedom.
            const double freedom =
                std::max(1.0, static_cast<double>(m_projection.bins()) - 2.0 - 2.0 * c->count);
            const double inflation = std::max(1.0, c->misfit / freedom) * (1.0 + 2.0 / freedom);
            if (inflation < least) {
                least = inflation;
                chosen = c;
            }
        }
        if (!chosen)
            return;
        const double rho = residualCorrelation(*chosen);
        const double significant = 2.0 / std::sqrt(static_cast<double>(m_projection.bins()));
        const double correlated = rho > significant ? std::min((1.0 + rho) / (1.0 - rho), 12.0) : 1.0;
        m_inflation = least * correlated * m_options.tempering;
    }

    /// Correlation of neighbouring residuals.
    [[nodiscard]] double residualCorrelation(const Candidate& c) const
    {
        const RiseReading reading = readingOf(c, c.fit.leak);
        std::vector<double> rest;
        for (const RiseBin& bin : m_rise.bins)
            rest.push_back(bin.pressure - reading.start - reading.leak * bin.time / m_rise.length);
        for (const RiseSource& source : reading.sources) {
            const SourceCurve curve(source.shape);
            for (std::size_t i = 0; i < rest.size(); ++i)
                rest[i] -= source.rise * curve.share(m_rise.bins[i].time / m_rise.length);
        }
        double square = 0.0;
        double shifted = 0.0;
        for (std::size_t i = 0; i < rest.size(); ++i) {
            rest[i] /= m_rise.bins[i].uncertainty;
            square += rest[i] * rest[i];
            if (i > 0)
                shifted += rest[i] * rest[i - 1];
        }
        return square > 0.0 ? std::clamp(shifted / square, -1.0, 0.99) : 0.0;
    }

    void weigh()
    {
        // Most candidates are hopeless by their misfit alone; belief and width differ by far less than this.
        double least = std::numeric_limits<double>::infinity();
        for (const Candidate& c : m_candidates)
            least = std::min(least, c.misfit);
        const double hopeless = least + 2.0 * m_inflation * kHopeless;
        const double range = m_projection.rise();
        double best = -std::numeric_limits<double>::infinity();
        for (Candidate& c : m_candidates) {
            const ProjectedFit& f = c.fit;
            if (c.misfit > hopeless)
                continue;
            const double u = std::sqrt(m_inflation) * f.leakUncertainty;
            const double from = std::max(0.0, f.leakFrom);
            c.mass = normalMass((from - f.leak) / u, (f.leakTo - f.leak) / u);
            if (!(c.mass > 1e-12))
                continue;
            std::array<double, 3> widths = {};
            if (!m_projection.widths({c.grid.data(), static_cast<std::size_t>(c.count)}, widths))
                continue;
            double logPrior = std::log(kBeliefBySources[static_cast<std::size_t>(c.count)]);
            for (int i = 0; i < c.count; ++i)
                logPrior += std::log(shapeOf(c, i).prior * (i + 1));
            const double width = std::sqrt(2.0 * std::numbers::pi * m_inflation);
            double occam = std::log(width * f.leakUncertainty * c.mass / range);
            for (int i = 0; i < c.count; ++i)
                occam += std::log(std::min(1.0, width * widths[static_cast<std::size_t>(i)] / range));
            c.logEvidence = logPrior + occam - 0.5 * f.chiSquare / m_inflation;
            best = std::max(best, c.logEvidence);
        }
        m_candidates.erase(std::remove_if(m_candidates.begin(), m_candidates.end(),
                                          [&](const Candidate& c) {
                                              return !(c.logEvidence >= best - kWorthKeeping) ||
                                                     !std::isfinite(c.logEvidence);
                                          }),
                           m_candidates.end());
        double sum = 0.0;
        for (Candidate& c : m_candidates)
            sum += c.weight = std::exp(c.logEvidence - best);
        for (Candidate& c : m_candidates)
            c.weight /= sum;
        std::sort(m_candidates.begin(), m_candidates.end(),
                  [](const Candidate& a, const Candidate& b) { return a.weight > b.weight; });
    }

    [[nodiscard]] double belowOrAt(double leak) const
    {
        double sum = 0.0;
        for (const Candidate& c : m_candidates) {
            const double u = std::sqrt(m_inflation) * c.fit.leakUncertainty;
            const double from = std::max(0.0, c.fit.leakFrom);
            const double to = std::min(leak, c.fit.leakTo);
            if (to > from)
                sum += c.weight * normalMass((from - c.fit.leak) / u, (to - c.fit.leak) / u) / c.mass;
        }
        return sum;
    }

    [[nodiscard]] double quantile(double share) const
    {
        double low = 0.0;
        double high = 0.0;
        for (const Candidate& c : m_candidates)
            high = std::max(high,
                            std::min(c.fit.leakTo, std::max(0.0, c.fit.leak) + 12.0 * std::sqrt(m_inflation) *
                                                                                   c.fit.leakUncertainty));
        for (int i = 0; i < 60 && high - low > 1e-6 * high; ++i) {
            const double middle = 0.5 * (low + high);
            (belowOrAt(middle) < share ? low : high) = middle;
        }
        return 0.5 * (low + high);
    }

    RisePosterior summarise()
    {
        RisePosterior posterior;
        posterior.inflation = m_inflation;
        if (m_candidates.empty())
            return posterior;
        // Belief in "no leak" by the ratio of densities at 0 (Dickey 1971), each reading for itself.
        double noLeak = 0.0;
        for (const Candidate& c : m_candidates) {
            const double u = std::sqrt(m_inflation) * c.fit.leakUncertainty;
            if (c.fit.leakFrom <= 0.0) {
                const double z = c.fit.leak / u;
                const double density =
                    std::exp(-0.5 * z * z) / (u * std::sqrt(2.0 * std::numbers::pi)) / c.mass;
                noLeak += c.weight * density * m_projection.rise() * kBeliefNoLeak / (1.0 - kBeliefNoLeak);
            }
        }
        posterior.noLeak = noLeak / (1.0 + noLeak);
        posterior.middle = quantile(0.5);
        posterior.high = quantile(1.0 - m_options.tail);
        posterior.low = posterior.noLeak > m_options.tail ? 0.0 : quantile(m_options.tail);
        for (const Candidate& c : m_candidates)
            if (c.count == 0)
                posterior.straight += c.weight;
        for (std::size_t i = 0; i < std::min(kReadingsKept, m_candidates.size()); ++i)
            posterior.readings.push_back(readingOf(m_candidates[i], posterior.middle));
        return posterior;
    }

    /// The candidate with the leak held at `leak`, or as near as it allows.
    [[nodiscard]] RiseReading readingOf(const Candidate& c, double leak) const
    {
        RiseReading reading;
        reading.weight = c.weight;
        reading.leak = std::clamp(leak, std::max(0.0, c.fit.leakFrom), c.fit.leakTo);
        for (int i = 0; i < c.count; ++i) {
            const auto k = static_cast<std::size_t>(i);
            const double amount = c.fit.sources[k] + c.fit.sourcePerLeak[k] * (reading.leak - c.fit.leak);
            reading.sources.push_back({shapeOf(c, i), std::max(0.0, amount)});
        }
        reading.start = m_projection.startOf(reading.leak, reading.sources);
        return reading;
    }

    EnsembleOptions m_options;
    const CompressedRise& m_rise;
    std::vector<SourceShape> m_shapes;
    RiseProjection m_projection;
    std::vector<Candidate> m_candidates;
    double m_inflation = 1.0;
};

} // namespace

RisePosterior weighReadings(const CompressedRise& rise, const EnsembleOptions& options)
{
    SEALWALK_EXPECT(rise.bins.size() >= 3);
    return Ensemble(rise, options).run();
}

double outgassingRate(const RisePosterior& posterior, double x)
{
    double sum = 0.0;
    double rate = 0.0;
    for (const RiseReading& reading : posterior.readings) {
        sum += reading.weight;
        for (const RiseSource& source : reading.sources)
            rate += reading.weight * source.rise * SourceCurve(source.shape).rate(x);
    }
    return sum > 0.0 ? rate / sum : 0.0;
}

} // namespace sealwalk::analysis
