// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/rise_laws.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace sealwalk::analysis {

namespace {

constexpr double kGasConstant = 8.31446261815324; // J/(mol K), exact since the SI of 2019

/// Both fits with a source: the time constant is scanned on a grid with the rest linear, then everything
/// refined.
Result<LeastSquaresFit> fitSource(std::span<const double> time, std::span<const double> pressure, bool leak)
{
    const std::size_t n = time.size();
    const std::size_t parameters = leak ? 4 : 3;
    if (n < parameters)
        return fail(ErrorCode::NoAnswer, "there are fewer samples than parameters to fit");
    const double first = time.front();
    const double length = time.back() - first;
    const std::vector<double> ones(n, 1.0);
    std::vector<double> line;
    for (const double t : time)
        line.push_back(t - first);

    std::vector<double> start;
    double best = std::numeric_limits<double>::infinity();
    constexpr int kSteps = 60;
    const double shortest = std::max(length / static_cast<double>(n), 1e-3 * length);
    for (int i = 0; i <= kSteps; ++i) {
        const double theta = shortest * std::pow(10.0 * length / shortest, static_cast<double>(i) / kSteps);
        std::vector<double> source;
        for (const double t : line)
            source.push_back(-std::expm1(-t / theta));
        std::vector<std::vector<double>> columns{ones};
        if (leak)
            columns.push_back(line);
        columns.push_back(source);
        const auto fit = fitLinear(columns, pressure);
        if (fit && fit->sumOfSquares < best) {
            best = fit->sumOfSquares;
            start = fit->parameters;
            start.push_back(theta);
        }
    }
    if (start.empty())
        return fail(ErrorCode::NoAnswer, "no time constant fits the record");

    const auto function = [&](std::span<const double> b, std::span<double> residuals,
                              std::span<double> jacobian) {
        const std::size_t source = leak ? 2 : 1;
        const double amount = b[source];
        const double theta = b[source + 1];
        for (std::size_t i = 0; i < n; ++i) {
            const double t = line[i];
            const double decay = std::exp(-t / theta);
            residuals[i] = b[0] + (leak ? b[1] * t : 0.0) + amount * (1.0 - decay) - pressure[i];
            jacobian[i] = 1.0;
            if (leak)
                jacobian[n + i] = t;
            jacobian[source * n + i] = 1.0 - decay;
            jacobian[(source + 1) * n + i] = -amount * t / (theta * theta) * decay;
        }
    };
    return fitNonlinear(function, n, start);
}

} // namespace

double RiseLaw::pressure(double time) const
{
    return start + slope * time - amount * std::expm1(-time / timeConstant);
}

double RiseLaw::rate(double time) const
{
    return slope + amount / timeConstant * std::exp(-time / timeConstant);
}

RiseLaw trappedVolume(Volume trapped, Pressure trappedPressure, Conductance conductance, Volume chamber,
                      Pressure start)
{
    const double v = trapped.si();
    const double both = chamber.si() + v;
    RiseLaw law;
    law.start = start.si();
    law.amount = (trappedPressure - start).si() * v / both;
    law.timeConstant = chamber.si() * v / (conductance.si() * both);
    return law;
}

LeakRate thermalPseudoLeak(Pressure pressure, Volume volume, Temperature temperature, double warming)
{
    return pascalCubicMetresPerSecond(pressure.si() * volume.si() / temperature.si() * warming);
}

AmountFlow amountRise(Volume volume, Pressure before, Temperature temperatureBefore, Pressure after,
                      Temperature temperatureAfter, Duration time)
{
    const double change = after.si() / temperatureAfter.si() - before.si() / temperatureBefore.si();
    return molesPerSecond(volume.si() / kGasConstant * change / time.si());
}

Result<LeastSquaresFit> fitLine(std::span<const double> time, std::span<const double> pressure)
{
    std::vector<std::vector<double>> columns{std::vector<double>(time.size(), 1.0), {}};
    for (const double t : time)
        columns[1].push_back(t - time.front());
    return fitLinear(columns, pressure);
}

Result<LeastSquaresFit> fitExhaustingSource(std::span<const double> time, std::span<const double> pressure)
{
    return fitSource(time, pressure, false);
}

Result<LeastSquaresFit> fitLeakAndSource(std::span<const double> time, std::span<const double> pressure)
{
    return fitSource(time, pressure, true);
}

} // namespace sealwalk::analysis
