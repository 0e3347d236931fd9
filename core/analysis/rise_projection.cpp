// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/rise_projection.h"

#include "core/analysis/rise_ensemble.h"

#include <Eigen/Core>

#include <algorithm>
#include <cmath>
#include <limits>

namespace sealwalk::analysis {

namespace {

/// Solves the symmetric system of at most 3 unknowns by Cholesky; false when it is singular to working
/// precision.
struct SmallCholesky
{
    double l[3][3] = {};
    int n = 0;

    bool factor(const double a[3][3], int size)
    {
        n = size;
        for (int i = 0; i < n; ++i)
            for (int j = 0; j <= i; ++j) {
                double sum = a[i][j];
                for (int k = 0; k < j; ++k)
                    sum -= l[i][k] * l[j][k];
                if (i == j) {
                    if (!(sum > 1e-10 * a[i][i]))
                        return false;
                    l[i][i] = std::sqrt(sum);
                } else {
                    l[i][j] = sum / l[j][j];
                }
            }
        return true;
    }

    void solve(const double* b, double* x) const
    {
        for (int i = 0; i < n; ++i) {
            double sum = b[i];
            for (int k = 0; k < i; ++k)
                sum -= l[i][k] * x[k];
            x[i] = sum / l[i][i];
        }
        for (int i = n - 1; i >= 0; --i) {
            double sum = x[i];
            for (int k = i + 1; k < n; ++k)
                sum -= l[k][i] * x[k];
            x[i] = sum / l[i][i];
        }
    }
};

double dot(const double* a, const double* b, std::size_t n)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < n; ++i)
        sum += a[i] * b[i];
    return sum;
}

} // namespace

RiseProjection::RiseProjection(const CompressedRise& rise, const std::vector<SourceShape>& shapes)
    : m_shapes(shapes.size())
{
    const std::size_t n = rise.bins.size();
    m_first = rise.bins.front().pressure;
    std::vector<double> constant(n);
    std::vector<double> line(n);
    double sum = 0.0;
    double sumX = 0.0;
    for (const RiseBin& bin : rise.bins) {
        m_x.push_back(bin.time / rise.length);
        m_y.push_back(bin.pressure - m_first);
        m_weight.push_back(1.0 / bin.uncertainty);
        const double w = m_weight.back() * m_weight.back();
        sum += w;
        sumX += w * m_x.back();
    }
    const auto [lowest, highest] = std::minmax_element(m_y.begin(), m_y.end());
    m_rise = std::max(*highest - *lowest, rise.bins.back().uncertainty);

    const double mean = sumX / sum;
    const double norm0 = std::sqrt(sum);
    for (std::size_t i = 0; i < n; ++i) {
        constant[i] = m_weight[i] / norm0;
        line[i] = m_weight[i] * (m_x[i] - mean);
        m_lineNorm += line[i] * line[i];
    }
    m_lineNorm = std::sqrt(m_lineNorm);
    for (double& value : line)
        value /= m_lineNorm;

    const auto takeOut = [&](double* values) {
        const double c0 = dot(constant.data(), values, n);
        const double c1 = dot(line.data(), values, n);
        for (std::size_t i = 0; i < n; ++i)
            values[i] -= c0 * constant[i] + c1 * line[i];
        return c1 / m_lineNorm;
    };
    m_residue.resize(n);
    for (std::size_t i = 0; i < n; ++i)
        m_residue[i] = m_weight[i] * m_y[i];
    m_lineOfRecord = takeOut(m_residue.data());
    m_residueSquare = dot(m_residue.data(), m_residue.data(), n);

    m_columns.resize(m_shapes * n);
    for (std::size_t s = 0; s < m_shapes; ++s) {
        double* values = m_columns.data() + s * n;
        const SourceCurve curve(shapes[s]);
        for (std::size_t i = 0; i < n; ++i)
            values[i] = m_weight[i] * curve.share(m_x[i]);
        m_lineOf.push_back(takeOut(values));
        m_product.push_back(dot(values, m_residue.data(), n));
    }
    m_gram.resize(m_shapes * m_shapes);
    const auto rows = static_cast<Eigen::Index>(n);
    const auto count = static_cast<Eigen::Index>(m_shapes);
    const Eigen::Map<const Eigen::MatrixXd> columns(m_columns.data(), rows, count);
    Eigen::Map<Eigen::MatrixXd>(m_gram.data(), count, count).noalias() = columns.transpose() * columns;
}

bool RiseProjection::widths(std::span<const int> shapes, std::array<double, 3>& result) const
{
    const int n = static_cast<int>(shapes.size());
    double held[3][3] = {}; // normal matrix with the leak held
    for (int i = 0; i < n; ++i)
        for (int j = 0; j <= i; ++j) {
            const auto a = static_cast<std::size_t>(shapes[static_cast<std::size_t>(i)]);
            const auto b = static_cast<std::size_t>(shapes[static_cast<std::size_t>(j)]);
            held[i][j] = m_gram[a * m_shapes + b] + m_lineNorm * m_lineNorm * m_lineOf[a] * m_lineOf[b];
        }
    SmallCholesky cholesky;
    if (!cholesky.factor(held, n))
        return false;
    for (int i = 0; i < n; ++i)
        result[static_cast<std::size_t>(i)] = 1.0 / cholesky.l[i][i];
    return true;
}

bool RiseProjection::fit(std::span<const int> shapes, ProjectedFit& result) const
{
    const int n = static_cast<int>(shapes.size());
    double gram[3][3] = {};
    double product[3] = {};
    double lines[3] = {};
    for (int i = 0; i < n; ++i) {
        const auto a = static_cast<std::size_t>(shapes[static_cast<std::size_t>(i)]);
        product[i] = m_product[a];
        lines[i] = m_lineOf[a];
        for (int j = 0; j <= i; ++j)
            gram[i][j] = m_gram[a * m_shapes + static_cast<std::size_t>(shapes[static_cast<std::size_t>(j)])];
    }
    SmallCholesky cholesky;
    if (!cholesky.factor(gram, n))
        return false;
    double amounts[3] = {};
    double spread[3] = {};
    cholesky.solve(product, amounts);
    cholesky.solve(lines, spread);

    result.chiSquare = m_residueSquare;
    result.leak = m_lineOfRecord;
    double variance = 1.0 / (m_lineNorm * m_lineNorm);
    for (int i = 0; i < n; ++i) {
        result.chiSquare -= amounts[i] * product[i];
        result.leak -= amounts[i] * lines[i];
        variance += lines[i] * spread[i];
    }
    result.chiSquare = std::max(0.0, result.chiSquare);
    result.leakUncertainty = std::sqrt(variance);
    result.leakFrom = -std::numeric_limits<double>::infinity();
    result.leakTo = std::numeric_limits<double>::infinity();
    for (int i = 0; i < n; ++i) {
        const auto k = static_cast<std::size_t>(i);
        const double perLeak = -spread[i] / variance;
        result.sources[k] = amounts[i];
        result.sourcePerLeak[k] = perLeak;
        if (perLeak < 0.0)
            result.leakTo = std::min(result.leakTo, result.leak - amounts[i] / perLeak);
        else if (perLeak > 0.0)
            result.leakFrom = std::max(result.leakFrom, result.leak - amounts[i] / perLeak);
        else if (amounts[i] < 0.0)
            return false;
    }
    return result.leakTo > result.leakFrom;
}

double RiseProjection::startOf(double leak, const std::vector<RiseSource>& sources) const
{
    std::vector<double> rest = m_y;
    for (std::size_t i = 0; i < rest.size(); ++i)
        rest[i] -= leak * m_x[i];
    for (const RiseSource& source : sources) {
        const SourceCurve curve(source.shape);
        for (std::size_t i = 0; i < rest.size(); ++i)
            rest[i] -= source.rise * curve.share(m_x[i]);
    }
    double sum = 0.0;
    double weights = 0.0;
    for (std::size_t i = 0; i < rest.size(); ++i) {
        const double w = m_weight[i] * m_weight[i];
        sum += w * rest[i];
        weights += w;
    }
    return m_first + sum / weights;
}

} // namespace sealwalk::analysis
