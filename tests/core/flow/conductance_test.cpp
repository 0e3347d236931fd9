// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/conductance.h"
#include "core/flow/hose.h"
#include "tests/support/check_row.h"

#include <Eigen/Dense>

#include <array>
#include <cmath>

namespace sealwalk::flow {
namespace {

using tests::CheckRow;

const Temperature kRoom = degreesCelsius(20.0);

// Clausing's integral equation of the tube with diffuse walls (Ann. Phys. 12 (1932) 961): w(x) is the chance
// that a molecule that leaves the wall at x (in radii from the entrance) leaves the tube at the far end. The
// kernels have kinks, so the grid is uniform and the rule Simpson's on both sides of each node.
double wallToWall(double distance)
{
    const double u = std::abs(distance);
    const double s = std::sqrt(u * u + 4.0);
    return 0.5 * (1.0 - u * (u * u + 6.0) / (s * s * s));
}

double wallToEnd(double distance)
{
    const double u = distance;
    const double s = std::sqrt(u * u + 4.0);
    return 0.5 * ((u * u + 2.0) / s - u);
}

double endToEnd(double length)
{
    const double u = length;
    return 0.5 * (u * u + 2.0 - u * std::sqrt(u * u + 4.0));
}

double transmissionWith(int panels, double length)
{
    const int n = panels + 1;
    // Finer towards the ends, where w bends.
    const auto node = [&](int i) {
        return 0.5 * length * (1.0 - std::cos(3.14159265358979324 * i / panels));
    };
    // w is smooth inside, the kernel is not at its own node: w is taken piecewise linear and the kernel is
    // integrated over each panel with a five-point rule.
    constexpr double kNodes[] = {-0.9061798459386640, -0.5384693101056831, 0.0, 0.5384693101056831,
                                 0.9061798459386640};
    constexpr double kWeights[] = {0.2369268850561891, 0.4786286704993665, 0.5688888888888889,
                                   0.4786286704993665, 0.2369268850561891};
    Eigen::MatrixXd a = Eigen::MatrixXd::Identity(n, n);
    Eigen::VectorXd b(n);
    for (int i = 0; i < n; ++i) {
        const double x = node(i);
        b(i) = wallToEnd(length - x);
        for (int j = 0; j < panels; ++j) {
            const double from = node(j);
            const double h = node(j + 1) - from;
            for (int k = 0; k < 5; ++k) {
                const double t = 0.5 * (1.0 + kNodes[k]);
                const double weight = 0.5 * h * kWeights[k] * wallToWall(from + t * h - x);
                a(i, j) -= weight * (1.0 - t);
                a(i, j + 1) -= weight * t;
            }
        }
    }
    const Eigen::VectorXd w = a.partialPivLu().solve(b);
    // Entrance to the first wall hit, then by w.
    double sum = endToEnd(length);
    for (int j = 0; j < panels; ++j) {
        const double from = node(j);
        const double h = node(j + 1) - from;
        for (int k = 0; k < 5; ++k) {
            const double t = 0.5 * (1.0 + kNodes[k]);
            const double x = from + t * h;
            const double first = 2.0 * wallToEnd(x);
            sum += 0.5 * h * kWeights[k] * first * (w(j) * (1.0 - t) + w(j + 1) * t);
        }
    }
    return sum;
}

// The error of piecewise linear w falls with the square of the panels' width.
double transmissionByIntegral(double length)
{
    return (4.0 * transmissionWith(400, length) - transmissionWith(200, length)) / 3.0;
}

double litres(Conductance c)
{
    return c.si() * 1e3;
}

constexpr std::array kThree = {Conductance::fromSi(0.01), Conductance::fromSi(0.02),
                               Conductance::fromSi(0.04)};
const Hose kHose{millimetres(12.7), metres(1.5)};
const PumpingSpeed kPump = PumpingSpeed::fromSi(2.5 * 4.719474432e-4);

double speedBehindHose(Gas gas)
{
    return speedThrough(PumpingSpeed::fromSi(5e-3),
                        longTubeConductance(gas, kRoom, millimetres(25.0), metres(1.0)))
               .si() *
           1e3;
}

class ConductanceRows : public testing::TestWithParam<CheckRow>
{};

TEST_P(ConductanceRows, Agrees)
{
    tests::expectRow(GetParam());
}

constexpr const char* kTextbook = "kinetic theory; textbooks print 11.6, 12.1 and 135 for air (from memory)";
constexpr const char* kClausing = "Clausing's equation, by two discretisations and Monte Carlo elsewhere";
constexpr const char* kFormula = "the formula worked out elsewhere";

// Published: each row names its source. The exact transmissions check the integral the approximation is held
// against below.
INSTANTIATE_TEST_SUITE_P(
    Published, ConductanceRows,
    testing::Values(
        CheckRow{"C_01", 11.57262, 1e-5, kTextbook,
                 [] { return litres(apertureConductance(Gas::Air, kRoom, 1e-4)); }},
        CheckRow{"C_02", 31.13156, 1e-5, kTextbook,
                 [] { return litres(apertureConductance(Gas::Helium, kRoom, 1e-4)); }},
        CheckRow{"C_03", 12.11882, 1e-5, kTextbook,
                 [] { return litres(longTubeConductance(Gas::Air, kRoom, metres(0.01), metres(0.01))); }},
        CheckRow{"C_04", 32.60089, 1e-5, kTextbook,
                 [] { return litres(longTubeConductance(Gas::Helium, kRoom, metres(0.01), metres(0.01))); }},
        CheckRow{"C_05", 134.9222, 1e-5, kTextbook,
                 [] {
                     return litres(
                         laminarTubeConductance(Gas::Air, kRoom, metres(0.01), metres(0.01), millibars(1.0)));
                 }},
        CheckRow{"C_06", 0.9523989, 2e-5, kClausing, [] { return transmissionByIntegral(0.1); }},
        CheckRow{"C_07", 0.8012714, 2e-5, kClausing, [] { return transmissionByIntegral(0.5); }},
        CheckRow{"C_08", 0.6719839, 2e-5, kClausing, [] { return transmissionByIntegral(1.0); }},
        CheckRow{"C_09", 0.5142305, 2e-5, kClausing, [] { return transmissionByIntegral(2.0); }},
        CheckRow{"C_10", 0.3105253, 2e-5, kClausing, [] { return transmissionByIntegral(5.0); }},
        CheckRow{"C_11", 0.1909424, 2e-5, kClausing, [] { return transmissionByIntegral(10.0); }},
        CheckRow{"C_12", 0.1093207, 2e-5, kClausing, [] { return transmissionByIntegral(20.0); }},
        CheckRow{"C_13", 0.04847647, 2e-5, kClausing, [] { return transmissionByIntegral(50.0); }},
        CheckRow{"C_14", 0.8026756, 1e-5, kFormula, [] { return transmissionSanteler(0.5); }},
        CheckRow{"C_15", 0.5142857, 1e-5, kFormula, [] { return transmissionSanteler(2.0); }},
        CheckRow{"C_16", 0.1899441, 1e-5, kFormula, [] { return transmissionSanteler(10.0); }},
        CheckRow{"C_17", 0.04873878, 1e-5, kFormula, [] { return transmissionSanteler(50.0); }},
        CheckRow{"C_20", 0.5714286, 1e-5, kFormula, [] { return transmissionDushman(2.0); }},
        CheckRow{"C_21", 20.15731, 1e-5, kFormula,
                 [] { return litres(shortTubeConductance(Gas::Air, kRoom, metres(0.025), metres(0.05))); }},
        CheckRow{"C_22", 1.447753, 1e-5, kFormula,
                 [] {
                     return litres(knudsenTubeConductance(Gas::Air, kRoom, millimetres(16.0), metres(1.5),
                                                          pascals(20.0)));
                 }},
        CheckRow{"C_23", 1.821742, 1e-5, kFormula,
                 [] {
                     return litres(knudsenTubeConductance(Gas::Helium, kRoom, millimetres(16.0), metres(1.5),
                                                          pascals(20.0)));
                 }},
        CheckRow{"C_24", 0.9991715, 1e-5, kFormula,
                 [] {
                     return knudsenTubeConductance(Gas::Air, kRoom, millimetres(25.0), metres(1.0),
                                                   pascals(1e-3)) /
                            longTubeConductance(Gas::Air, kRoom, millimetres(25.0), metres(1.0));
                 }},
        CheckRow{"C_25", 5.7142857143, 1e-9, kFormula, [] { return litres(inSeries(kThree)); }},
        CheckRow{"C_26", 70.0, 1e-9, kFormula, [] { return litres(inParallel(kThree)); }},
        CheckRow{"C_27", 1.373429, 1e-5, kFormula, [] { return speedBehindHose(Gas::Air); }},
        CheckRow{"C_28", 2.523254, 1e-5, kFormula, [] { return speedBehindHose(Gas::Helium); }},
        CheckRow{"B_10", 0.0003591072, 1e-5, "hose and pump in series, solved elsewhere with scipy",
                 [] { return speedAtChamber(Gas::Air, kRoom, kHose, kPump, pascals(25.0)).value().si(); }},
        CheckRow{"B_11", 0.007789155, 1e-5, "hose and pump in series, solved elsewhere with scipy",
                 [] {
                     const auto at = [](double p) {
                         return flowThroughHose(Gas::Air, kRoom, kHose, kPump, pascals(p)).value().si();
                     };
                     return at(25.0) - at(25.0 - 18.665131579);
                 }}),
    tests::rowName);

// Property: the approximation stays within what its author claims of the integral equation.
TEST(Conductance, SantelerStaysWithinSevenTenthsOfAPerCent)
{
    for (const double l : {0.05, 0.2, 0.7, 1.5, 3.0, 7.0, 15.0, 30.0}) {
        const double exact = transmissionByIntegral(l);
        EXPECT_NEAR(transmissionSanteler(l), exact, 0.007 * exact) << l;
    }
}

// Property: a series conducts less than its narrowest part.
TEST(Conductance, SeriesIsBelowItsSmallestPart)
{
    EXPECT_LT(inSeries(kThree).si(), 0.01);
    EXPECT_LT(speedThrough(litresPerSecond(5.0), Conductance::fromSi(2e-3)).si(), 2e-3);
}

TEST(Hose, PassesTheMolecularValueAtLowPressureAndMoreAbove)
{
    const PumpingSpeed molecular = speedAtChamber(Gas::Air, kRoom, kHose, kPump, pascals(0.0)).value();
    EXPECT_NEAR(speedAtChamber(Gas::Air, kRoom, kHose, kPump, pascals(1e-4)).value() / molecular, 1.0, 1e-3);
    double last = 0.0;
    for (double p = 1.0; p < 1e5; p *= 2.0) {
        const double s = speedAtChamber(Gas::Air, kRoom, kHose, kPump, pascals(p)).value().si();
        EXPECT_GT(s, last);
        EXPECT_LT(s, kPump.si());
        last = s;
    }
    EXPECT_NEAR(last, kPump.si(), 0.01 * kPump.si());
}

TEST(Hose, RefusesNonsense)
{
    EXPECT_FALSE(
        speedAtChamber(Gas::Air, kRoom, {millimetres(0.0), metres(1.0)}, kPump, pascals(1.0)).has_value());
    EXPECT_FALSE(
        speedAtChamber(Gas::Air, kRoom, {millimetres(5.0), metres(-1.0)}, kPump, pascals(1.0)).has_value());
    EXPECT_FALSE(speedAtChamber(Gas::Air, kRoom, kHose, PumpingSpeed{}, pascals(1.0)).has_value());
    EXPECT_FALSE(speedAtChamber(Gas::Air, kRoom, kHose, kPump, pascals(-1.0)).has_value());
}

} // namespace
} // namespace sealwalk::flow
