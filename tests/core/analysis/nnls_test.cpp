// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/nnls.h"
#include "core/analysis/random.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <fstream>

namespace sealwalk::analysis {
namespace {

/// Largest breach of the Kuhn-Tucker conditions: slope 0 where x > 0, not positive where x = 0; relative to
/// |A'b|.
double breach(const std::vector<double>& a, std::size_t rows, const std::vector<double>& b,
              const std::vector<double>& x)
{
    std::vector<double> residual = b;
    for (std::size_t j = 0; j < x.size(); ++j)
        for (std::size_t i = 0; i < rows; ++i)
            residual[i] -= a[j * rows + i] * x[j];
    double worst = 0.0;
    double size = 1e-300;
    for (std::size_t j = 0; j < x.size(); ++j) {
        double slope = 0.0;
        double right = 0.0;
        for (std::size_t i = 0; i < rows; ++i) {
            slope += a[j * rows + i] * residual[i];
            right += a[j * rows + i] * b[i];
        }
        worst = std::max(worst, x[j] > 0.0 ? std::abs(slope) : slope);
        size = std::max(size, std::abs(right));
    }
    return worst / size;
}

// Published: scipy.optimize.nnls 1.10 on the same systems (tests/data/analysis/make_nnls_systems.py).
TEST(Nnls, AgreesWithScipy)
{
    std::ifstream file(SEALWALK_TEST_DATA "/analysis/nnls_systems.json");
    const nlohmann::json data = nlohmann::json::parse(file);
    ASSERT_GE(data.at("systems").size(), 8U);
    for (const nlohmann::json& system : data.at("systems")) {
        const auto a = system.at("a").get<std::vector<double>>();
        const auto b = system.at("b").get<std::vector<double>>();
        const auto x = system.at("x").get<std::vector<double>>();
        const NnlsSummary mine = solveNnls(a, system.at("rows"), system.at("columns"), b);
        EXPECT_TRUE(mine.converged) << system.at("name");
        EXPECT_NEAR(mine.residualNorm, system.at("residual").get<double>(), 1e-9) << system.at("name");
        const double largest = *std::max_element(x.begin(), x.end());
        for (std::size_t j = 0; j < x.size(); ++j)
            EXPECT_NEAR(mine.x[j], x[j], 1e-7 * std::max(largest, 1.0)) << system.at("name") << ' ' << j;
    }
}

// Property: the Kuhn-Tucker conditions, which only the solution meets, over random systems tall, square and
// wide.
TEST(Nnls, MeetsTheKuhnTuckerConditions)
{
    Random random(5);
    for (int run = 0; run < 60; ++run) {
        const auto rows = static_cast<std::size_t>(3 + random.uniform() * 40);
        const auto columns = static_cast<std::size_t>(1 + random.uniform() * 40);
        std::vector<double> a(rows * columns);
        std::vector<double> b(rows);
        for (double& value : a)
            value = std::max(0.0, random.bell());
        for (double& value : b)
            value = random.bell();
        const NnlsSummary mine = solveNnls(a, rows, columns, b);
        EXPECT_TRUE(mine.converged) << run;
        EXPECT_GE(*std::min_element(mine.x.begin(), mine.x.end()), 0.0);
        EXPECT_LT(breach(a, rows, b, mine.x), 1e-9) << run;
    }
}

TEST(Nnls, AnswersOnTheEdges)
{
    EXPECT_TRUE(solveNnls({}, 0, 0, {}).converged);
    EXPECT_TRUE(solveNnls({}, 3, 0, std::vector<double>{3.0, 0.0, 4.0}).converged);
    EXPECT_DOUBLE_EQ(solveNnls({}, 3, 0, std::vector<double>{3.0, 0.0, 4.0}).residualNorm, 5.0);
    const NnlsSummary zero = solveNnls(std::vector<double>(6, 0.0), 3, 2, std::vector<double>{1.0, 1.0, 1.0});
    EXPECT_TRUE(zero.converged);
    EXPECT_EQ(zero.x, (std::vector<double>{0.0, 0.0}));
    // Two equal columns: any split is right, the residual is not.
    const NnlsSummary twins =
        solveNnls(std::vector<double>{1.0, 2.0, 1.0, 2.0}, 2, 2, std::vector<double>{2.0, 4.0});
    EXPECT_NEAR(twins.x[0] + twins.x[1], 2.0, 1e-12);
}

} // namespace
} // namespace sealwalk::analysis
