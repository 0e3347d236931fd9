// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/shape.h"

#include <gtest/gtest.h>

#include <limits>
#include <numbers>
#include <random>

namespace sealwalk::geometry {
namespace {

using std::numbers::pi;

/// A chord within f of its arc of radius r is shorter than the arc by the share f / (3 r), to first order.
double shareLost(double radius)
{
    return 0.05 / (3.0 * radius) * 1.01 + 1e-12;
}

double crossOf(const Path& path)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < path.vertices().size(); ++i) {
        const Point a = path.vertices()[i];
        const Point b = path.vertices()[(i + 1) % path.vertices().size()];
        sum += a.x * b.y - b.x * a.y;
    }
    return sum;
}

// Published: circumference 2πr (Euclid's circle as measured by Archimedes).
TEST(Shape, ARingIsAsLongAsItsCircle)
{
    for (const double r : {1.0, 12.0, 105.0, 2500.0}) {
        const Path path = outline(Ring{{10.0, -20.0}, r});
        EXPECT_TRUE(path.isClosed());
        EXPECT_LE(path.length(), 2.0 * pi * r);
        EXPECT_GE(path.length(), 2.0 * pi * r * (1.0 - shareLost(r)));
    }
}

// Published: perimeter of a rectangle with rounded corners, 2 (w + h) − 8 r + 2 π r.
TEST(Shape, ARoundedRectangleIsAsLongAsTheFormulaSays)
{
    struct Row
    {
        double width, height, radius, rotation;
    };
    for (const Row& row :
         {Row{860.0, 1060.0, 110.0, 0.0}, Row{200.0, 100.0, 50.0, 0.7}, Row{80.0, 80.0, 40.0, 2.0},
          Row{300.0, 40.0, 0.0, 0.0}, Row{1e4, 2e3, 10.0, -1.0}}) {
        const Path path =
            outline(RoundedRectangle{{5.0, 6.0}, row.width, row.height, row.radius, row.rotation});
        const double exact = 2.0 * (row.width + row.height) - 8.0 * row.radius + 2.0 * pi * row.radius;
        EXPECT_NEAR(path.length(), exact, 0.05 / 3.0 * 2.0 * pi * 1.01 + 1e-6) << row.width;
        EXPECT_LE(path.length(), exact + 1e-6);
    }
}

// Property: closed shapes start at 12 o'clock and run clockwise as seen (negative area).
TEST(Shape, ClosedOutlinesStartAtTheTopAndRunClockwise)
{
    for (const Shape& shape :
         {Shape(Ring{{0.0, 0.0}, 70.0}), Shape(RoundedRectangle{{0.0, 0.0}, 50.0, 140.0, 9.0, 0.0})}) {
        const Path path = outline(shape);
        EXPECT_NEAR(path.at(0.0).place.x, 0.0, 1e-9);
        EXPECT_NEAR(path.at(0.0).place.y, 70.0, 1e-9);
        EXPECT_GT(path.at(path.length() / 4.0).place.x, 0.0);
        EXPECT_LT(crossOf(path), 0.0);
    }
}

// Property: every vertex of a flattened arc lies on the arc, every chord within 0.05 mm of it.
TEST(Shape, ChordsStayWithinTheFlatness)
{
    for (const double r : {0.3, 5.0, 110.0, 4000.0}) {
        const Path path = outline(Ring{{0.0, 0.0}, r});
        for (std::size_t i = 0; i < path.vertices().size(); ++i) {
            const Point a = path.vertices()[i];
            const Point b = path.vertices()[(i + 1) % path.vertices().size()];
            EXPECT_NEAR(std::hypot(a.x, a.y), r, 1e-9 * r + 1e-12);
            EXPECT_GE(std::hypot((a.x + b.x) / 2.0, (a.y + b.y) / 2.0), r - 0.05 - 1e-9);
        }
    }
}

// Property: a smooth line passes through its nodes in their order.
TEST(Shape, ASmoothLinePassesThroughItsNodes)
{
    std::mt19937 random(7);
    std::uniform_real_distribution<double> place(-300.0, 300.0);
    for (int run = 0; run < 100; ++run) {
        FreePath free{{}, run % 2 == 0, true};
        for (int i = 0; i < 3 + run % 9; ++i)
            free.nodes.push_back({place(random), place(random)});
        const Path path = outline(free);
        double last = -1.0;
        for (const Point& node : free.nodes) {
            double along = std::numeric_limits<double>::infinity();
            double walked = 0.0;
            for (std::size_t i = 0; i < path.vertices().size(); ++i) {
                if (distance(path.vertices()[i], node) < 1e-6 && walked > last) {
                    along = walked;
                    break;
                }
                if (i + 1 < path.vertices().size())
                    walked += distance(path.vertices()[i], path.vertices()[i + 1]);
            }
            EXPECT_TRUE(std::isfinite(along)) << "a node is missed";
            last = along;
        }
    }
}

Shape randomShape(std::mt19937& random)
{
    std::uniform_real_distribution<double> place(-500.0, 500.0);
    std::uniform_real_distribution<double> size(1.0, 400.0);
    switch (std::uniform_int_distribution<int>(0, 4)(random)) {
    case 0:
        return Ring{{place(random), place(random)}, size(random)};
    case 1: {
        const double w = size(random);
        const double h = size(random);
        return RoundedRectangle{
            {place(random), place(random)}, w, h, std::min(w, h) * 0.3, place(random) / 100.0};
    }
    case 2:
        return Spot{{place(random), place(random)}, 12.0};
    default: {
        FreePath free{{}, size(random) > 200.0, size(random) > 200.0};
        for (int i = 0; i < 6; ++i)
            free.nodes.push_back({place(random), place(random)});
        return free;
    }
    }
}

void expectSame(const Shape& a, const Shape& b)
{
    const Path pa = outline(a);
    const Path pb = outline(b);
    ASSERT_EQ(pa.vertices().size(), pb.vertices().size());
    for (std::size_t i = 0; i < pa.vertices().size(); ++i)
        ASSERT_NEAR(distance(pa.vertices()[i], pb.vertices()[i]), 0.0, 1e-6);
}

// Property: shifts, turns and mirrorings have inverses and keep lengths.
TEST(Shape, TransformsAreTakenBackByTheirInverses)
{
    std::mt19937 random(9);
    std::uniform_real_distribution<double> number(-300.0, 300.0);
    for (int run = 0; run < 500; ++run) {
        const Shape shape = randomShape(random);
        const Vector by{number(random), number(random)};
        const Point pivot{number(random), number(random)};
        const double angle = number(random) / 50.0;
        expectSame(moved(moved(shape, by), -by), shape);
        expectSame(turned(turned(shape, pivot, angle), pivot, -angle), shape);
        expectSame(mirrored(mirrored(shape, pivot), pivot), shape);
        const double length = outline(shape).length();
        EXPECT_NEAR(outline(turned(shape, pivot, angle)).length(), length, 1e-6);
        EXPECT_NEAR(outline(mirrored(shape, pivot)).length(), length, 1e-6);
    }
}

TEST(Shape, WhatCannotBeDrawnIsRefusedWithASentence)
{
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double inf = std::numeric_limits<double>::infinity();
    const Shape bad[] = {
        Ring{{0.0, 0.0}, 0.0},
        Ring{{0.0, 0.0}, -3.0},
        Ring{{nan, 0.0}, 3.0},
        Ring{{0.0, 0.0}, inf},
        RoundedRectangle{{0.0, 0.0}, 0.0, 10.0, 0.0, 0.0},
        RoundedRectangle{{0.0, 0.0}, 10.0, -1.0, 0.0, 0.0},
        RoundedRectangle{{0.0, 0.0}, 10.0, 8.0, 4.1, 0.0},
        RoundedRectangle{{0.0, 0.0}, 10.0, 8.0, -0.1, 0.0},
        RoundedRectangle{{0.0, 0.0}, 10.0, 8.0, nan, 0.0},
        RoundedRectangle{{0.0, 0.0}, 10.0, 8.0, 1.0, nan},
        FreePath{{{0.0, 0.0}}, false, false},
        FreePath{{{0.0, 0.0}, {1.0, 0.0}}, true, false},
        FreePath{{{2.0, 2.0}, {2.0, 2.0}}, false, false},
        FreePath{{{0.0, 0.0}, {inf, 0.0}}, false, true},
        Spot{{nan, 0.0}, 12.0},
        Spot{{0.0, 0.0}, 0.0},
    };
    for (const Shape& shape : bad)
        EXPECT_FALSE(complaint(shape).empty()) << shape.index();
    EXPECT_TRUE(complaint(RoundedRectangle{{0.0, 0.0}, 10.0, 8.0, 4.0, 0.0}).empty());
    EXPECT_TRUE(complaint(FreePath{{{0.0, 0.0}, {1.0, 0.0}}, false, true}).empty());
}

} // namespace
} // namespace sealwalk::geometry
