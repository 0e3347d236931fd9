// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/rise_refine.h"

#include "core/analysis/least_squares.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace sealwalk::analysis {

namespace {

constexpr double kFurthest =
    3.0; // in ln a: a fit that wanders further off its grid has no minimum of its own

/// Parameters: start, leak, then amount and ln a of each source. All amounts in Pa over the record.
struct Layout
{
    std::size_t sources;
    [[nodiscard]] std::size_t count() const { return 2 + 2 * sources; }
    static std::size_t amount(std::size_t source) { return 2 + 2 * source; }
    static std::size_t time(std::size_t source) { return 3 + 2 * source; }
};

ProjectedFit projected(const LeastSquaresFit& found, const Layout& layout, const ProjectedFit& from)
{
    ProjectedFit fit = from;
    const double variance = found.covarianceOf(1, 1);
    fit.chiSquare = found.sumOfSquares;
    fit.leak = found.parameters[1];
    fit.leakUncertainty = std::sqrt(variance);
    fit.leakFrom = -std::numeric_limits<double>::infinity();
    fit.leakTo = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < layout.sources; ++i) {
        const double perLeak = found.covarianceOf(Layout::amount(i), 1) / variance;
        fit.sources[i] = found.parameters[Layout::amount(i)];
        fit.sourcePerLeak[i] = perLeak;
        if (perLeak < 0.0)
            fit.leakTo = std::min(fit.leakTo, fit.leak - fit.sources[i] / perLeak);
        else if (perLeak > 0.0)
            fit.leakFrom = std::max(fit.leakFrom, fit.leak - fit.sources[i] / perLeak);
    }
    return fit;
}

} // namespace

std::optional<RefinedReading> refineReading(const CompressedRise& rise, std::span<const SourceShape> shapes,
                                            const ProjectedFit& from)
{
    const Layout layout{shapes.size()};
    const std::size_t n = rise.bins.size();
    if (n <= layout.count())
        return std::nullopt;
    const double first = rise.bins.front().pressure;
    std::vector<double> start(layout.count());
    start[0] = 0.0;
    start[1] = from.leak;
    for (std::size_t i = 0; i < shapes.size(); ++i) {
        start[Layout::amount(i)] = from.sources[i];
        start[Layout::time(i)] = std::log(shapes[i].a);
    }
    std::vector<SourceShape> current(shapes.begin(), shapes.end());
    std::vector<SourceCurve> curves;
    const auto function = [&](std::span<const double> b, std::span<double> residuals,
                              std::span<double> jacobian) {
        curves.clear();
        for (std::size_t s = 0; s < current.size(); ++s) {
            current[s].a = std::exp(b[Layout::time(s)]);
            curves.emplace_back(current[s]);
        }
        for (std::size_t i = 0; i < n; ++i) {
            const RiseBin& bin = rise.bins[i];
            const double x = bin.time / rise.length;
            const double weight = 1.0 / bin.uncertainty;
            double value = b[0] + b[1] * x;
            jacobian[i] = weight;
            jacobian[n + i] = weight * x;
            for (std::size_t s = 0; s < current.size(); ++s) {
                const double share = curves[s].share(x);
                value += b[Layout::amount(s)] * share;
                jacobian[Layout::amount(s) * n + i] = weight * share;
                jacobian[Layout::time(s) * n + i] =
                    weight * b[Layout::amount(s)] * curves[s].timeSlope(x, share);
            }
            residuals[i] = weight * (value - (bin.pressure - first));
        }
    };
    NonlinearOptions options;
    options.iterationsAtMost = 25;
    options.tolerance = 1e-4;
    options.scatter = Scatter::Known;
    const auto found = fitNonlinear(function, n, start, options);
    if (!found || !(found->sumOfSquares <= from.chiSquare) || !(found->covarianceOf(1, 1) > 0.0))
        return std::nullopt;
    RefinedReading refined{{shapes.begin(), shapes.end()}, projected(*found, layout, from)};
    for (std::size_t s = 0; s < shapes.size(); ++s) {
        const double time = found->parameters[Layout::time(s)];
        if (!(found->parameters[Layout::amount(s)] >= 0.0) ||
            std::abs(time - start[Layout::time(s)]) > kFurthest)
            return std::nullopt;
        refined.shapes[s].a = std::exp(time);
    }
    return refined;
}

} // namespace sealwalk::analysis
