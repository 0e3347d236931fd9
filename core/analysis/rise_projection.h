// SPDX-License-Identifier: GPL-3.0-or-later
// Fast linear fits of many combinations of source shapes to one record: start pressure and leak line are
// taken out of every curve once, what is left is a small system per combination.
#pragma once

#include "core/analysis/rise_compress.h"
#include "core/analysis/rise_shapes.h"

#include <array>
#include <span>
#include <vector>

namespace sealwalk::analysis {

struct RiseSource;

/// Weighted least squares of: start + leak·x + sum of sources, all amounts in Pa over the record.
struct ProjectedFit
{
    double chiSquare = 0.0;
    double leak = 0.0;
    double leakUncertainty = 0.0;
    double leakFrom =
        0.0; ///< between these the best amounts of all sources, given the leak, are not negative
    double leakTo = 0.0;
    std::array<double, 3> sources = {};       ///< best amounts
    std::array<double, 3> sourcePerLeak = {}; ///< change of the best amount with the leak
};

class RiseProjection
{
public:
    RiseProjection(const CompressedRise& rise, const std::vector<SourceShape>& shapes);

    /// Fits the shapes of these indices, at most 3. False: they cannot be told apart on this record.
    bool fit(std::span<const int> shapes, ProjectedFit& result) const;

    /// Standard deviations of the amounts, each given the leak and the sources after it; false as in fit().
    bool widths(std::span<const int> shapes, std::array<double, 3>& result) const;

    [[nodiscard]] std::size_t bins() const { return m_x.size(); }
    /// Scale of all amounts: the largest change of pressure in the record, Pa.
    [[nodiscard]] double rise() const { return m_rise; }
    /// Pressure at the first sample that fits best beside a leak and sources held as given.
    [[nodiscard]] double startOf(double leak, const std::vector<RiseSource>& sources) const;

private:
    std::vector<double> m_x;
    std::vector<double> m_y;       // Pa above the first bin
    std::vector<double> m_weight;  // root of the weight
    std::vector<double> m_columns; // shape after shape, weighted, start and line taken out
    std::vector<double> m_residue; // the record, weighted, start and line taken out
    std::vector<double> m_gram;    // of m_columns, symmetric
    std::vector<double> m_product; // m_columns with m_residue
    std::vector<double> m_lineOf;  // slope of the line taken out of each shape
    std::size_t m_shapes = 0;
    double m_first = 0.0;
    double m_rise = 0.0;
    double m_residueSquare = 0.0;
    double m_lineOfRecord = 0.0;
    double m_lineNorm = 0.0; // root of the weighted square of x about its mean
};

} // namespace sealwalk::analysis
