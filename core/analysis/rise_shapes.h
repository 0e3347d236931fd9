// SPDX-License-Identifier: GPL-3.0-or-later
// The ways in which a gas source inside an isolated chamber exhausts itself, as curves from 0 at the start of
// the record to 1 at its end. All have a rate that only falls, as every such source has.
#pragma once

#include <vector>

namespace sealwalk::analysis {

enum class SourceKind
{
    Exponential, ///< sites of one binding energy, or a trapped volume behind a molecular channel: 1 -
                 ///< exp(-t/a)
    Hyperbolic,  ///< a trapped volume behind a laminar channel: t/(t + a)
    Logarithmic, ///< water on a wide spread of binding energies, rate as 1/(t + a): ln(1 + t/a)
    PowerLaw,    ///< rate as (t + a)^-b; b = 1/2 is diffusion out of a deep wall
    Stretched,   ///< sites of many binding energies: 1 - exp(-(t/a)^b)
};

/// Time constant in lengths of the record; no record tells a slower source from a leak.
constexpr double kLongestSource = 10.0;

/// One member of the family: kind and its constants.
struct SourceShape
{
    SourceKind kind = SourceKind::Exponential;
    double a = 1.0;     ///< time constant, in lengths of the record
    double b = 1.0;     ///< exponent of PowerLaw and Stretched, else unused
    double prior = 0.0; ///< share of belief before the record is seen; all shapes sum to 1
};

/// The curve of one shape, 0 at 0 and 1 at x = 1; x is time in lengths of the record.
class SourceCurve
{
public:
    explicit SourceCurve(const SourceShape& shape);

    [[nodiscard]] double share(double x) const;
    /// Per length of the record; that of x = 0.005 where it is infinite at 0.
    [[nodiscard]] double rate(double x) const;
    /// Derivative of share() with respect to the logarithm of the time constant; `shareThere` is share(x).
    [[nodiscard]] double timeSlope(double x, double shareThere) const;

private:
    SourceShape m_shape;
    double m_end = 1.0;     // value at x = 1 before it is made 1
    double m_endRate = 0.0; // rate there
};

/// The shapes tried on a record whose first useful time is `shortest` lengths of the record (0 < shortest <
/// 1).
std::vector<SourceShape> sourceShapes(double shortest);

} // namespace sealwalk::analysis
