// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/least_squares.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace sealwalk::analysis {
namespace {

// What NIST prints has 11 (nonlinear) and 15 (linear) digits.
constexpr double kElevenDigits = 1e-9;
constexpr double kThirteenDigits = 1e-12;

ResidualFunction saturation(const std::vector<double>& x, const std::vector<double>& y)
{
    return [&x, &y](std::span<const double> b, std::span<double> residuals, std::span<double> jacobian) {
        for (std::size_t i = 0; i < x.size(); ++i) {
            const double decay = std::exp(-b[1] * x[i]);
            residuals[i] = b[0] * (1.0 - decay) - y[i];
            jacobian[i] = 1.0 - decay;
            jacobian[x.size() + i] = b[0] * x[i] * decay;
        }
    };
}

struct Certified
{
    const char* name;
    std::vector<double> x;
    std::vector<double> y;
    std::array<double, 2> start;
    std::array<double, 2> value;
    std::array<double, 2> deviation;
    double sumOfSquares;
};

// Published: NIST Statistical Reference Datasets, nonlinear regression, y = b1 (1 - exp(-b2 x)):
// https://www.itl.nist.gov/div898/strd/nls/data/misra1a.shtml and .../boxbod.shtml, both starts of each.
const std::vector<double> kMisraX = {77.6,  114.9, 141.1, 190.8, 239.9, 289.0, 332.8,
                                     378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0};
const std::vector<double> kMisraY = {10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02,
                                     44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78};
const std::vector<double> kBoxX = {1, 2, 3, 5, 7, 10};
const std::vector<double> kBoxY = {109, 149, 149, 191, 213, 224};
const std::array<double, 2> kMisraValue = {2.3894212918E+02, 5.5015643181E-04};
const std::array<double, 2> kMisraDeviation = {2.7070075241E+00, 7.2668688436E-06};
const std::array<double, 2> kBoxValue = {2.1380940889E+02, 5.4723748542E-01};
const std::array<double, 2> kBoxDeviation = {1.2354515176E+01, 1.0455993237E-01};
const Certified kCertified[] = {
    {"Misra1a_Start1", kMisraX, kMisraY, {500, 0.0001}, kMisraValue, kMisraDeviation, 1.2455138894E-01},
    {"Misra1a_Start2", kMisraX, kMisraY, {250, 0.0005}, kMisraValue, kMisraDeviation, 1.2455138894E-01},
    {"BoxBOD_Start1", kBoxX, kBoxY, {1, 1}, kBoxValue, kBoxDeviation, 1.1680088766E+03},
    {"BoxBOD_Start2", kBoxX, kBoxY, {100, 0.75}, kBoxValue, kBoxDeviation, 1.1680088766E+03},
};

class NistNonlinear : public testing::TestWithParam<Certified>
{};

TEST_P(NistNonlinear, GivesTheCertifiedParametersAndTheirDeviations)
{
    const Certified& certified = GetParam();
    const auto fit =
        fitNonlinear(saturation(certified.x, certified.y), certified.x.size(), certified.start).value();
    for (std::size_t i = 0; i < 2; ++i) {
        EXPECT_NEAR(fit.parameters[i] / certified.value[i], 1.0, kElevenDigits);
        EXPECT_NEAR(fit.uncertainty(i) / certified.deviation[i], 1.0, kElevenDigits);
    }
    EXPECT_NEAR(fit.sumOfSquares / certified.sumOfSquares, 1.0, kElevenDigits);
}

INSTANTIATE_TEST_SUITE_P(StRD, NistNonlinear, testing::ValuesIn(kCertified),
                         [](const auto& row) { return std::string(row.param.name); });

// Published: NIST Statistical Reference Datasets, linear regression, Norris:
// https://www.itl.nist.gov/div898/strd/lls/data/Norris.shtml
TEST(NistLinear, GivesTheCertifiedLineOfNorris)
{
    const std::vector<double> x = {0.2,   337.4, 118.2, 884.6, 10.1,  226.5, 666.3, 996.3, 448.6,
                                   777.0, 558.2, 0.4,   0.6,   775.5, 666.9, 338.0, 447.5, 11.6,
                                   556.0, 228.1, 995.8, 887.6, 120.2, 0.3,   0.3,   556.8, 339.1,
                                   887.2, 999.0, 779.0, 11.1,  118.3, 229.2, 669.1, 448.9, 0.5};
    const std::vector<double> y = {0.1,   338.8, 118.1, 888.0, 9.2,   228.1, 668.5, 998.5, 449.1,
                                   778.9, 559.2, 0.3,   0.1,   778.1, 668.8, 339.3, 448.9, 10.8,
                                   557.7, 228.3, 998.0, 888.8, 119.6, 0.3,   0.6,   557.6, 339.3,
                                   888.0, 998.5, 778.9, 10.2,  117.6, 228.9, 668.4, 449.2, 0.2};
    const std::vector<std::vector<double>> columns = {std::vector<double>(x.size(), 1.0), x};
    const auto fit = fitLinear(columns, y).value();
    EXPECT_NEAR(fit.parameters[0] / -0.262323073774029, 1.0, kThirteenDigits);
    EXPECT_NEAR(fit.parameters[1] / 1.00211681802045, 1.0, kThirteenDigits);
    EXPECT_NEAR(fit.uncertainty(0) / 0.232818234301152, 1.0, kThirteenDigits);
    EXPECT_NEAR(fit.uncertainty(1) / 0.429796848199937E-03, 1.0, kThirteenDigits);
    EXPECT_NEAR(std::sqrt(fit.residualVariance) / 0.884796396144373, 1.0, kThirteenDigits);
}

// Property: known uncertainties are not rescaled by the scatter.
TEST(LeastSquares, KnownUncertaintiesStandWhateverTheScatter)
{
    const std::vector<std::vector<double>> columns = {{1, 1, 1, 1}};
    const auto fit = fitLinear(columns, std::vector<double>{1, 1, 1, 1}, Scatter::Known).value();
    EXPECT_DOUBLE_EQ(fit.parameters[0], 1.0);
    EXPECT_DOUBLE_EQ(fit.uncertainty(0), 0.5);
}

TEST(LeastSquares, SaysWhenTheDataDoNotDetermineTheParameters)
{
    const std::vector<std::vector<double>> alike = {{1, 2, 3}, {2, 4, 6}};
    EXPECT_EQ(fitLinear(alike, std::vector<double>{1, 2, 3}).error().code, ErrorCode::NoAnswer);
    EXPECT_EQ(fitLinear(alike, std::vector<double>{1}).error().code, ErrorCode::NoAnswer);
    const std::vector<double> x = {1, 2, 3};
    const std::vector<double> nowhere = {std::nan(""), 1};
    EXPECT_EQ(fitNonlinear(saturation(x, x), 3, nowhere).error().code, ErrorCode::NoAnswer);
    EXPECT_EQ(fitNonlinear(saturation(x, x), 1, std::vector<double>{1, 1}).error().code, ErrorCode::NoAnswer);
}

} // namespace
} // namespace sealwalk::analysis
