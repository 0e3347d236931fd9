// SPDX-License-Identifier: GPL-3.0-or-later
// The classical laws against figures computed another way: by integrating the differential equations and by
// other least-squares programs.
#include "core/analysis/rise_laws.h"
#include "tests/support/rise_sets.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>

namespace sealwalk::analysis {
namespace {

using tests::RiseSet;

const Volume kVolume = litres(100.0);

RiseLaw trapped()
{
    return trappedVolume(litres(0.002), pascals(1e5), Conductance::fromSi(1e-8), kVolume, pascals(0.1));
}

/// Standard uncertainty of the slope with these columns beside it, for noise of 1.
double slopeUncertainty(double lengths, bool source, bool timeConstantToo)
{
    std::vector<std::vector<double>> columns(2 + (source ? 1 : 0) + (timeConstantToo ? 1 : 0));
    const std::vector<double> zeros(61, 0.0);
    for (int i = 0; i < 61; ++i) {
        const double t = lengths * i / 60.0;
        columns[0].push_back(1.0);
        columns[1].push_back(t);
        if (source)
            columns[2].push_back(-std::expm1(-t));
        if (timeConstantToo)
            columns[3].push_back(t * std::exp(-t));
    }
    return fitLinear(columns, zeros, Scatter::Known).value().uncertainty(1);
}

double amplification(double lengths, bool timeConstantToo = true)
{
    return slopeUncertainty(lengths, true, timeConstantToo) / slopeUncertainty(lengths, false, false);
}

LeastSquaresFit line(const RiseSet& set)
{
    const auto record = tests::recordOf(set);
    return fitLine(record.time, record.pressure).value();
}

LeastSquaresFit full(const RiseSet& set)
{
    const auto record = tests::recordOf(set);
    return fitLeakAndSource(record.time, record.pressure).value();
}

LeastSquaresFit sourceAlone(const RiseSet& set)
{
    const auto record = tests::recordOf(set);
    return fitExhaustingSource(record.time, record.pressure).value();
}

/// u(Q) of the full law with its true constants and known noise.
double leakUncertainty(const RiseSet& set)
{
    const auto record = tests::recordOf(set);
    std::vector<std::vector<double>> columns(4);
    for (const double t : record.time) {
        columns[0].push_back(1.0);
        columns[1].push_back(t);
        columns[2].push_back(-std::expm1(-t / set.timeConstant));
        columns[3].push_back(t * std::exp(-t / set.timeConstant));
    }
    const std::vector<double> zeros(record.time.size(), 0.0);
    return kVolume.si() * set.noise * fitLinear(columns, zeros, Scatter::Known).value().uncertainty(1);
}

struct Row
{
    const char* id;
    const char* quantity;
    std::function<double()> compute;
    double expected;
    double tolerance; // relative
};

// Published R_20: worked example of 40 CFR 1065.644 (inputs; the rule prints 0.00030 mol/s). All others are
// computed here from first principles by another route: laws by numerical integration of their differential
// equations, fits and uncertainties with SciPy 1.10 (curve_fit, QR), R_21 with GNU units.
const Row kRows[] = {
    {"R_01", "D1 pressure at 600 s, Pa", [] { return tests::kD1.law().pressure(600.0); }, 1.7, 1e-9},
    {"R_02", "D2 pressure at 60 s, Pa", [] { return tests::kD2.law().pressure(60.0); }, 0.64477547223, 1e-9},
    {"R_03", "D2 pressure at 120 s, Pa", [] { return tests::kD2.law().pressure(120.0); }, 0.86569644706,
     1e-9},
    {"R_04", "D2 pressure at 900 s, Pa", [] { return tests::kD2.law().pressure(900.0); }, 1.5495575325, 1e-9},
    {"R_05", "D2 first slope, Pa/s", [] { return tests::kD2.law().rate(0.0); }, 0.0071666666667, 1e-9},
    {"R_06", "D2 slope at 900 s, Pa/s", [] { return tests::kD2.law().rate(900.0); }, 0.00050368722913, 1e-9},
    {"R_07", "D3 amount of the trapped volume, Pa", [] { return trapped().amount; }, 1.9999580008, 1e-9},
    {"R_08", "D3 time constant, s", [] { return trapped().timeConstant; }, 199.99600008, 1e-9},
    {"R_09", "D3 apparent leak at first, Pa m3/s", [] { return kVolume.si() * trapped().rate(0.0); },
     0.000999999, 1e-9},
    {"R_10", "D3 pressure at 400 s, Pa", [] { return trapped().pressure(400.0); }, 1.8293039447, 1e-9},
    {"R_11", "D1 u(slope), Pa/s", [] { return 2e-3 / 600.0 * slopeUncertainty(1.0, false, false); },
     1.4544012e-06, 1e-6},
    {"R_12", "D1 u(Q), Pa m3/s", [] { return 0.1 * 2e-3 / 600.0 * slopeUncertainty(1.0, false, false); },
     1.4544012e-07, 1e-6},
    {"R_13", "D1 u(Q)/Q with 3 % of the volume",
     [] { return std::hypot(0.1 * 2e-3 / 600.0 * slopeUncertainty(1.0, false, false) / 2e-4, 0.03); },
     0.030008812, 1e-6},
    {"R_14", "amplification, 1 time constant", [] { return amplification(1.0); }, 89.8516, 1e-4},
    {"R_15", "amplification, 2 time constants", [] { return amplification(2.0); }, 23.2436, 1e-4},
    {"R_16", "amplification, 3 time constants", [] { return amplification(3.0); }, 10.9241, 1e-4},
    {"R_17", "amplification, 5 time constants", [] { return amplification(5.0); }, 4.64955, 1e-4},
    {"R_18", "amplification, 10 time constants", [] { return amplification(10.0); }, 2.05587, 1e-4},
    {"R_19", "amplification, 3, time constant known", [] { return amplification(3.0, false); }, 2.80583,
     1e-4},
    {"R_20", "worked example of 40 CFR 1065.644, mol/s",
     [] {
         const Temperature room = kelvins(293.15);
         return amountRise(litres(2.0), pascals(25300.0), room, pascals(50600.0), room, seconds(70.0)).si();
     },
     0.0002965708, 1e-5},
    {"R_21", "thermal pseudo-leak, Pa m3/s",
     [] { return thermalPseudoLeak(pascals(100.0), kVolume, kelvins(293.15), 0.5 / 3600.0).si(); },
     4.7378096e-06, 1e-6},
    {"R_22", "D1 fitted Q, line, Pa m3/s", [] { return 0.1 * line(tests::kD1).parameters[1]; }, 0.00020016283,
     1e-6},
    {"R_23", "D2 fitted Q, full law, Pa m3/s", [] { return 0.1 * full(tests::kD2).parameters[1]; },
     5.00119e-05, 1e-4},
    {"R_24", "D2 fitted amount, Pa", [] { return full(tests::kD2).parameters[2]; }, 0.802013, 1e-4},
    {"R_25", "D2 fitted time constant, s", [] { return full(tests::kD2).parameters[3]; }, 119.473, 1e-4},
    {"R_26", "D2 u(Q), Pa m3/s", [] { return leakUncertainty(tests::kD2); }, 3.27352e-07, 1e-4},
    {"R_27", "D4 u(Q)/Q: not separable", [] { return leakUncertainty(tests::kD4) / 5e-5; }, 4.31076, 1e-4},
    {"R_28", "D3 fitted amount, source alone, Pa", [] { return sourceAlone(tests::kD3).parameters[1]; },
     2.00112, 1e-4},
    {"R_29", "D4 late slope as a bound, Pa m3/s",
     [] {
         const RiseLaw law = tests::kD4.law();
         return pressureRise(kVolume, pascals(law.pressure(600.0) - law.pressure(400.0)), seconds(200.0))
             .si();
     },
     8.116501296e-05, 1e-8},
    {"R_30", "D3 fitted time constant, source alone, s", [] { return sourceAlone(tests::kD3).parameters[2]; },
     199.627, 1e-4},
};

class RiseFigure : public testing::TestWithParam<Row>
{};

TEST_P(RiseFigure, AgreesWithTheOtherRoute)
{
    const Row& row = GetParam();
    EXPECT_NEAR(row.compute() / row.expected, 1.0, row.tolerance) << row.quantity;
}

INSTANTIATE_TEST_SUITE_P(Physics, RiseFigure, testing::ValuesIn(kRows),
                         [](const auto& row) { return std::string(row.param.id); });

} // namespace
} // namespace sealwalk::analysis
