// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/least_squares.h"

#include "core/base/contract.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <limits>

namespace sealwalk::analysis {

namespace {

constexpr double kRankTolerance = 1e-13; // smallest over largest pivot of the column-scaled matrix

tl::unexpected<Error> tooFew()
{
    return fail(ErrorCode::NoAnswer, "there are fewer observations than parameters to fit");
}

/// (AᵀA)⁻¹ of the rows by columns matrix behind `qr`, undoing the column scaling; false when rank is short.
bool covarianceFrom(const Eigen::ColPivHouseholderQR<Eigen::MatrixXd>& qr, const Eigen::VectorXd& scale,
                    double variance, std::vector<double>& covariance)
{
    const Eigen::Index n = scale.size();
    if (qr.rank() < n)
        return false;
    const Eigen::MatrixXd r = qr.matrixR().topLeftCorner(n, n).triangularView<Eigen::Upper>();
    const Eigen::MatrixXd inverse = r.triangularView<Eigen::Upper>().solve(Eigen::MatrixXd::Identity(n, n));
    const Eigen::MatrixXd pivoted = inverse * inverse.transpose();
    const Eigen::MatrixXd plain = qr.colsPermutation() * pivoted * qr.colsPermutation().transpose();
    covariance.resize(static_cast<std::size_t>(n * n));
    for (Eigen::Index i = 0; i < n; ++i)
        for (Eigen::Index j = 0; j < n; ++j)
            covariance[static_cast<std::size_t>(i * n + j)] = variance * plain(i, j) / (scale(i) * scale(j));
    return true;
}

Eigen::VectorXd columnScale(const Eigen::MatrixXd& matrix)
{
    Eigen::VectorXd scale = matrix.colwise().norm();
    for (Eigen::Index i = 0; i < scale.size(); ++i)
        if (!(scale(i) > 0.0))
            scale(i) = 1.0;
    return scale;
}

Status finish(LeastSquaresFit& fit, const Eigen::MatrixXd& matrix, Scatter scatter)
{
    const Eigen::VectorXd scale = columnScale(matrix);
    Eigen::ColPivHouseholderQR<Eigen::MatrixXd> qr(matrix * scale.cwiseInverse().asDiagonal());
    qr.setThreshold(kRankTolerance);
    const auto freedom = static_cast<double>(matrix.rows() - matrix.cols());
    fit.residualVariance = freedom > 0.0 ? fit.sumOfSquares / freedom : 0.0;
    const double variance = scatter == Scatter::Known ? 1.0 : fit.residualVariance;
    if (!covarianceFrom(qr, scale, variance, fit.covariance))
        return fail(ErrorCode::NoAnswer, "the data do not determine all parameters of the fit");
    return {};
}

} // namespace

double LeastSquaresFit::uncertainty(std::size_t parameter) const
{
    return std::sqrt(covarianceOf(parameter, parameter));
}

Result<LeastSquaresFit> fitLinear(std::span<const std::vector<double>> columns,
                                  std::span<const double> observations, Scatter scatter)
{
    const auto rows = static_cast<Eigen::Index>(observations.size());
    const auto cols = static_cast<Eigen::Index>(columns.size());
    if (rows < cols || cols == 0)
        return tooFew();
    Eigen::MatrixXd matrix(rows, cols);
    for (Eigen::Index j = 0; j < cols; ++j) {
        const std::vector<double>& column = columns[static_cast<std::size_t>(j)];
        SEALWALK_EXPECT(column.size() == observations.size());
        matrix.col(j) = Eigen::Map<const Eigen::VectorXd>(column.data(), rows);
    }
    const Eigen::Map<const Eigen::VectorXd> y(observations.data(), rows);
    const Eigen::VectorXd scale = columnScale(matrix);
    Eigen::ColPivHouseholderQR<Eigen::MatrixXd> qr(matrix * scale.cwiseInverse().asDiagonal());
    const Eigen::VectorXd solution = qr.solve(y).cwiseQuotient(scale);

    LeastSquaresFit fit;
    fit.parameters.assign(solution.data(), solution.data() + cols);
    fit.sumOfSquares = (matrix * solution - y).squaredNorm();
    fit.iterations = 1;
    if (const Status status = finish(fit, matrix, scatter); !status)
        return fail(status.error());
    return fit;
}

Result<LeastSquaresFit> fitNonlinear(const ResidualFunction& function, std::size_t residuals,
                                     std::span<const double> start, const NonlinearOptions& options)
{
    const auto rows = static_cast<Eigen::Index>(residuals);
    const auto cols = static_cast<Eigen::Index>(start.size());
    if (rows < cols || cols == 0)
        return tooFew();
    Eigen::VectorXd r(rows);
    Eigen::MatrixXd jacobian(rows, cols);
    const auto evaluate = [&](const std::vector<double>& at) {
        function(at, {r.data(), residuals}, {jacobian.data(), residuals * start.size()});
        const double sum = r.squaredNorm();
        return std::isfinite(sum) && jacobian.allFinite() ? sum : std::numeric_limits<double>::infinity();
    };

    LeastSquaresFit fit;
    fit.parameters.assign(start.begin(), start.end());
    fit.sumOfSquares = evaluate(fit.parameters);
    if (!std::isfinite(fit.sumOfSquares))
        return fail(ErrorCode::NoAnswer, "the fit cannot begin at its starting values");

    double damping = 1e-3;
    Eigen::VectorXd diagonal = Eigen::VectorXd::Zero(cols);
    bool settled = false;
    for (; fit.iterations < options.iterationsAtMost && !settled; ++fit.iterations) {
        const Eigen::MatrixXd here = jacobian;
        const Eigen::MatrixXd normal = here.transpose() * here;
        const Eigen::VectorXd gradient = here.transpose() * r;
        diagonal = diagonal.cwiseMax(normal.diagonal());
        bool better = false;
        while (!better && !settled) {
            Eigen::MatrixXd damped = normal;
            damped.diagonal() += damping * diagonal;
            const Eigen::VectorXd step = -damped.ldlt().solve(gradient);
            std::vector<double> candidate = fit.parameters;
            double relative = 0.0;
            for (Eigen::Index j = 0; j < cols; ++j) {
                const auto k = static_cast<std::size_t>(j);
                candidate[k] += step(j);
                relative = std::max(relative, std::abs(step(j)) / (std::abs(candidate[k]) + 1e-300));
            }
            const double sum =
                step.allFinite() ? evaluate(candidate) : std::numeric_limits<double>::infinity();
            if (sum <= fit.sumOfSquares) {
                better = true;
                settled = relative < options.tolerance;
                fit.parameters = candidate;
                fit.sumOfSquares = sum;
                damping = std::max(0.2 * damping, 1e-15);
            } else {
                damping *= 5.0;
                settled = relative < options.tolerance || damping > 1e15;
            }
        }
        if (!better)
            evaluate(fit.parameters); // residuals and derivatives belong to the last good place again
    }
    if (!settled)
        return fail(ErrorCode::NoAnswer, "the fit did not settle within its allowed number of steps");
    if (const Status status = finish(fit, jacobian, options.scatter); !status)
        return fail(status.error());
    return fit;
}

} // namespace sealwalk::analysis
