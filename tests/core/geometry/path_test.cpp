// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/path.h"

#include <gtest/gtest.h>

#include <random>

namespace sealwalk::geometry {
namespace {

constexpr double kRounding = 1e-9; ///< mm; sums of a few hundred doubles of metre size

double lengthOf(const std::vector<Point>& points)
{
    double sum = 0.0;
    for (std::size_t i = 1; i < points.size(); ++i)
        sum += distance(points[i - 1], points[i]);
    return sum;
}

Path randomPath(std::mt19937& random, bool closed)
{
    std::uniform_real_distribution<double> place(-500.0, 500.0);
    std::uniform_int_distribution<int> count(3, 40);
    std::vector<Point> vertices;
    for (int i = count(random); i > 0; --i)
        vertices.push_back({place(random), place(random)});
    return {std::move(vertices), closed};
}

// Property: a section is as long as the difference of its ends.
TEST(Path, SectionsHaveTheLengthAskedFor)
{
    std::mt19937 random(1);
    for (int run = 0; run < 500; ++run) {
        const bool closed = run % 2 == 0;
        const Path path = randomPath(random, closed);
        std::uniform_real_distribution<double> along(closed ? -path.length() : 0.0, path.length());
        const double from = along(random);
        std::uniform_real_distribution<double> span(0.0, closed ? path.length() : path.length() - from);
        const double length = span(random);
        EXPECT_NEAR(lengthOf(path.section(from, from + length)), length, kRounding * 1e3);
    }
}

// Property: sections that follow each other meet, and together they are the whole.
TEST(Path, SectionsLaidEndToEndCoverTheWhole)
{
    std::mt19937 random(2);
    for (int run = 0; run < 200; ++run) {
        const Path path = randomPath(random, run % 2 == 0);
        double sum = 0.0;
        Point end = path.at(0.0).place;
        for (int i = 0; i < 7; ++i) {
            const auto part = path.section(path.length() * i / 7.0, path.length() * (i + 1) / 7.0);
            EXPECT_NEAR(distance(part.front(), end), 0.0, kRounding * 1e3);
            sum += lengthOf(part);
            end = part.back();
        }
        EXPECT_NEAR(sum, path.length(), kRounding * 1e3);
    }
}

// Property: nothing on the path is nearer than the nearest place, and the path finds its own places.
TEST(Path, NearestIsNearerThanAnySample)
{
    std::mt19937 random(3);
    std::uniform_real_distribution<double> place(-800.0, 800.0);
    for (int run = 0; run < 200; ++run) {
        const Path path = randomPath(random, run % 2 == 0);
        const Point p{place(random), place(random)};
        const Nearest nearest = path.nearest(p);
        EXPECT_NEAR(distance(path.at(nearest.along).place, p), nearest.distance, kRounding * 1e3);
        for (int i = 0; i <= 300; ++i)
            EXPECT_GE(distance(path.at(path.length() * i / 300.0).place, p),
                      nearest.distance - kRounding * 1e3);
        const double along = path.length() * run / 200.0;
        EXPECT_NEAR(path.nearest(path.at(along).place).distance, 0.0, kRounding * 1e3);
    }
}

// Property: a closed path repeats itself every lap, an open one stops at its ends.
TEST(Path, ClosedOnesGoRoundAndOpenOnesStop)
{
    std::mt19937 random(4);
    const Path closed = randomPath(random, true);
    for (double along = -100.0; along < 100.0; along += 7.3) {
        const Point once = closed.at(along).place;
        const Point again = closed.at(along + closed.length()).place;
        EXPECT_NEAR(distance(once, again), 0.0, kRounding * 1e3);
    }
    const Path open = randomPath(random, false);
    EXPECT_EQ(open.at(-5.0).place, open.vertices().front());
    EXPECT_NEAR(distance(open.at(open.length() + 5.0).place, open.vertices().back()), 0.0, kRounding * 1e3);
}

TEST(Path, ASpotHasAPlaceAndNoLength)
{
    const Path spot({{3.0, 4.0}}, false);
    EXPECT_EQ(spot.length(), 0.0);
    EXPECT_EQ(spot.at(12.0).place, (Point{3.0, 4.0}));
    EXPECT_EQ(spot.section(0.0, 0.0).size(), 1u);
    EXPECT_NEAR(spot.nearest({0.0, 0.0}).distance, 5.0, kRounding);
    EXPECT_TRUE(Path().isEmpty());
}

} // namespace
} // namespace sealwalk::geometry
