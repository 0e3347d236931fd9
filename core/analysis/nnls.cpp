// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/nnls.h"

#include "core/base/contract.h"

#include <Eigen/Core>
#include <Eigen/QR>

#include <algorithm>
#include <cmath>
#include <limits>

namespace sealwalk::analysis {

namespace {

using Matrix = Eigen::Map<const Eigen::MatrixXd>;
using Vector = Eigen::Map<const Eigen::VectorXd>;

class LawsonHanson
{
public:
    LawsonHanson(const Matrix& a, const Vector& b)
        : m_a(a)
        , m_b(b)
        , m_x(Eigen::VectorXd::Zero(a.cols()))
        , m_isFree(static_cast<std::size_t>(a.cols()), false)
    {
        const double size = a.size() == 0 ? 0.0 : a.cwiseAbs().colwise().sum().maxCoeff();
        const double right = b.size() == 0 ? 0.0 : b.cwiseAbs().maxCoeff();
        m_tolerance = 10.0 * std::numeric_limits<double>::epsilon() * size * right *
                      static_cast<double>(std::max(a.rows(), a.cols()));
    }

    NnlsSummary run()
    {
        NnlsSummary summary;
        const int most = 3 * static_cast<int>(m_a.cols()) + 10;
        while (summary.iterations < most) {
            const Eigen::Index entering = steepest();
            if (entering < 0) {
                summary.converged = true;
                break;
            }
            m_isFree[static_cast<std::size_t>(entering)] = true;
            ++summary.iterations;
            if (!settle(entering, summary.iterations, most))
                m_barred.push_back(entering);
            else
                m_barred.clear();
        }
        summary.x.assign(m_x.data(), m_x.data() + m_x.size());
        summary.residualNorm = (m_b - m_a * m_x).norm();
        return summary;
    }

private:
    /// The bound column along which the residual falls fastest; -1 when the Kuhn-Tucker conditions hold.
    [[nodiscard]] Eigen::Index steepest() const
    {
        const Eigen::VectorXd slope = m_a.transpose() * (m_b - m_a * m_x);
        Eigen::Index best = -1;
        double most = m_tolerance;
        for (Eigen::Index j = 0; j < slope.size(); ++j) {
            const bool isBarred = std::ranges::find(m_barred, j) != m_barred.end();
            if (!m_isFree[static_cast<std::size_t>(j)] && !isBarred && slope[j] > most) {
                most = slope[j];
                best = j;
            }
        }
        return best;
    }

    /// Least squares over the free columns, letting go of those that would turn negative. False when the
    /// column just taken in would itself turn negative, which only rounding brings about: it is barred until
    /// another has moved.
    bool settle(Eigen::Index entering, int& iterations, int most)
    {
        for (bool first = true; iterations < most; first = false) {
            std::vector<Eigen::Index> free;
            for (Eigen::Index j = 0; j < m_a.cols(); ++j) {
                if (m_isFree[static_cast<std::size_t>(j)])
                    free.push_back(j);
            }
            Eigen::MatrixXd part(m_a.rows(), static_cast<Eigen::Index>(free.size()));
            for (std::size_t k = 0; k < free.size(); ++k)
                part.col(static_cast<Eigen::Index>(k)) = m_a.col(free[k]);
            const Eigen::VectorXd wanted = part.householderQr().solve(m_b);
            if (first) {
                const auto at = std::ranges::find(free, entering) - free.begin();
                if (!(wanted[at] > 0.0)) {
                    m_isFree[static_cast<std::size_t>(entering)] = false;
                    return false;
                }
            }
            if (wanted.minCoeff() > 0.0) {
                for (std::size_t k = 0; k < free.size(); ++k)
                    m_x[free[k]] = wanted[static_cast<Eigen::Index>(k)];
                return true;
            }
            double step = 1.0;
            for (std::size_t k = 0; k < free.size(); ++k) {
                const double to = wanted[static_cast<Eigen::Index>(k)];
                const double from = m_x[free[k]];
                if (to <= 0.0 && from > to)
                    step = std::min(step, from / (from - to));
            }
            for (std::size_t k = 0; k < free.size(); ++k) {
                double& x = m_x[free[k]];
                x += step * (wanted[static_cast<Eigen::Index>(k)] - x);
                if (x <= m_negligible * m_x.maxCoeff()) {
                    x = 0.0;
                    m_isFree[static_cast<std::size_t>(free[k])] = false;
                }
            }
            ++iterations;
        }
        return true;
    }

    const Matrix& m_a;
    const Vector& m_b;
    Eigen::VectorXd m_x;
    std::vector<bool> m_isFree;
    std::vector<Eigen::Index> m_barred;
    double m_tolerance = 0.0;
    static constexpr double m_negligible = 1e-15;
};

} // namespace

NnlsSummary solveNnls(std::span<const double> a, std::size_t rows, std::size_t columns,
                      std::span<const double> b)
{
    SEALWALK_EXPECT(a.size() == rows * columns && b.size() == rows);
    const Matrix matrix(a.data(), static_cast<Eigen::Index>(rows), static_cast<Eigen::Index>(columns));
    const Vector right(b.data(), static_cast<Eigen::Index>(rows));
    return LawsonHanson(matrix, right).run();
}

} // namespace sealwalk::analysis
