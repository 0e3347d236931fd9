// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/rise_shapes.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::analysis {

namespace {

/// A test is run because its sources are expected to have shown themselves by its end. Slower ones stay
/// possible, less and less: a source much slower than the record is no different from a leak, and believing
/// in it as readily as in a quick one would leave every record undecided.
double beliefInTime(double a)
{
    constexpr double kExpected = 1.5; // lengths of the record
    const double slower = a / kExpected;
    return 1.0 / (1.0 + slower * slower);
}

void addGrid(std::vector<SourceShape>& shapes, SourceKind kind, double b, double from, double to,
             double ratio, double belief)
{
    const int steps = std::max(1, static_cast<int>(std::ceil(std::log(to / from) / std::log(ratio))));
    for (int i = 0; i <= steps; ++i) {
        const double a = from * std::pow(to / from, static_cast<double>(i) / steps);
        shapes.push_back({kind, a, b, belief / (steps + 1) * beliefInTime(a)});
    }
}

double valueOf(const SourceShape& shape, double x)
{
    switch (shape.kind) {
    case SourceKind::Exponential:
        return -std::expm1(-x / shape.a);
    case SourceKind::Hyperbolic:
        return x / (x + shape.a);
    case SourceKind::Logarithmic:
        return std::log1p(x / shape.a);
    case SourceKind::PowerLaw:
        return std::expm1((1.0 - shape.b) * std::log1p(x / shape.a)) / (1.0 - shape.b);
    case SourceKind::Stretched:
        return x > 0.0 ? -std::expm1(-std::pow(x / shape.a, shape.b)) : 0.0;
    }
    return 0.0;
}

double rateOf(const SourceShape& shape, double x)
{
    switch (shape.kind) {
    case SourceKind::Exponential:
        return std::exp(-x / shape.a) / shape.a;
    case SourceKind::Hyperbolic:
        return shape.a / ((x + shape.a) * (x + shape.a));
    case SourceKind::Logarithmic:
        return 1.0 / (x + shape.a);
    case SourceKind::PowerLaw:
        return std::pow(1.0 + x / shape.a, -shape.b) / shape.a;
    case SourceKind::Stretched: {
        constexpr double kSoonest = 0.005; // the rate is infinite at 0
        const double late = std::max(x, kSoonest);
        const double power = std::pow(late / shape.a, shape.b);
        return shape.b * power / late * std::exp(-power);
    }
    }
    return 0.0;
}

} // namespace

SourceCurve::SourceCurve(const SourceShape& shape)
    : m_shape(shape)
    , m_end(valueOf(shape, 1.0))
    , m_endRate(rateOf(shape, 1.0) / m_end)
{}

double SourceCurve::share(double x) const
{
    return valueOf(m_shape, x) / m_end;
}

double SourceCurve::rate(double x) const
{
    return rateOf(m_shape, x) / m_end;
}

double SourceCurve::timeSlope(double x, double shareThere) const
{
    // Every shape is a function of x/a alone, so d/d(ln a) of its value is -x times its rate.
    return x > 0.0 ? m_endRate * shareThere - x * rate(x) : 0.0;
}

std::vector<SourceShape> sourceShapes(double shortest)
{
    const double fast = std::clamp(shortest, 0.004, 0.1);
    std::vector<SourceShape> shapes;
    addGrid(shapes, SourceKind::Exponential, 1.0, fast, kLongestSource, 1.3, 0.35);
    addGrid(shapes, SourceKind::Hyperbolic, 1.0, fast, 3.0, 1.7, 0.15);
    addGrid(shapes, SourceKind::Logarithmic, 1.0, fast, kLongestSource, 2.0, 0.15);
    for (const double b : {0.5, 0.8, 1.4})
        addGrid(shapes, SourceKind::PowerLaw, b, fast, kLongestSource, 2.4, 0.07);
    for (const double b : {0.5, 0.7})
        addGrid(shapes, SourceKind::Stretched, b, 3.0 * fast, 3.0, 1.9, 0.07);
    double sum = 0.0;
    for (const SourceShape& shape : shapes)
        sum += shape.prior;
    for (SourceShape& shape : shapes)
        shape.prior /= sum;
    return shapes;
}

} // namespace sealwalk::analysis
