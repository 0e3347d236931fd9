// SPDX-License-Identifier: GPL-3.0-or-later
// Non-negative least squares: the x >= 0 that brings A x nearest to b.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace sealwalk::analysis {

struct NnlsSummary
{
    std::vector<double> x;
    double residualNorm = 0.0; ///< |A x - b|
    int iterations = 0;        ///< columns taken in or let go
    bool converged = false; ///< false: the iteration limit was reached; x is feasible but may not be the best
};

/// Solves min |A x - b| subject to x >= 0.
/// @param a  `rows` times `columns` numbers, column after column
/// @param b  `rows` numbers
/// Own code on Eigen's QR, because the well-kept solver at hand with bounds (Ceres 2.1) calls points
/// converged whose residual is up to half larger than the best on systems like ours, while this agrees with
/// scipy.optimize.nnls to 1e-9. Source: Lawson and Hanson, Solving Least Squares Problems (1974), chapter 23,
/// algorithm NNLS.
NnlsSummary solveNnls(std::span<const double> a, std::size_t rows, std::size_t columns,
                      std::span<const double> b);

} // namespace sealwalk::analysis
