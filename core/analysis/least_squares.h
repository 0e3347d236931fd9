// SPDX-License-Identifier: GPL-3.0-or-later
// Least squares, linear and nonlinear, with the covariance of what was fitted. Checked against the certified
// results of the NIST Statistical Reference Datasets in least_squares_test.cpp.
#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <functional>
#include <span>
#include <vector>

namespace sealwalk::analysis {

/// What a fit found.
struct LeastSquaresFit
{
    std::vector<double> parameters;
    std::vector<double> covariance; ///< row by row, of the parameters, scaled by residualVariance when asked
    double sumOfSquares = 0.0;      ///< of the residuals at the end
    double residualVariance = 0.0;  ///< sumOfSquares / (observations - parameters); 0 when there is none left
    int iterations = 0;

    /// Standard uncertainty of one parameter.
    [[nodiscard]] double uncertainty(std::size_t parameter) const;
    [[nodiscard]] double covarianceOf(std::size_t a, std::size_t b) const
    {
        return covariance[a * parameters.size() + b];
    }
};

/// Whether the covariance is scaled by the scatter of the residuals or the observations' own uncertainties
/// hold.
enum class Scatter
{
    FromResiduals, ///< unit weights, or weights known up to a factor
    Known          ///< every residual was divided by its known standard uncertainty
};

/// Minimises |columns·b - observations|.
/// @param columns  one vector per parameter, each as long as `observations`
/// Errors: fewer observations than parameters; columns that cannot be told apart (NoAnswer).
Result<LeastSquaresFit> fitLinear(std::span<const std::vector<double>> columns,
                                  std::span<const double> observations,
                                  Scatter scatter = Scatter::FromResiduals);

/// Fills `residuals` (model minus observation) and `jacobian`, one column of derivatives after the other, for
/// `parameters`.
using ResidualFunction = std::function<void(std::span<const double> parameters, std::span<double> residuals,
                                            std::span<double> jacobian)>;

struct NonlinearOptions
{
    int iterationsAtMost = 200;
    double tolerance = 1e-11; ///< relative, of the last step of every parameter
    Scatter scatter = Scatter::FromResiduals;
};

/// Minimises the sum of squared residuals from `start` by damped Gauss-Newton steps (Levenberg 1944,
/// Marquardt 1963). Errors: fewer residuals than parameters; no end within iterationsAtMost; parameters the
/// data do not determine (all NoAnswer).
Result<LeastSquaresFit> fitNonlinear(const ResidualFunction& function, std::size_t residuals,
                                     std::span<const double> start, const NonlinearOptions& options = {});

} // namespace sealwalk::analysis
