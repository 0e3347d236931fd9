// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/render/picture_support.h"
#include "ui/render/axis_ticks.h"
#include "ui/render/bar_chart.h"
#include "ui/render/bar_painter.h"
#include "ui/render/figure_painter.h"
#include "ui/render/plot_view.h"

#include <gtest/gtest.h>

#include <QElapsedTimer>
#include <QPainter>
#include <QTest>

#include <cmath>
#include <iostream>

namespace sealwalk::render {
namespace {

report::Figure riseFigure()
{
    report::Figure figure;
    figure.title = "Pressure rise";
    figure.x = {"min", 0.0, 30.0, false, {}};
    figure.y = {"mbar", 0.0, 3.6e-3, false, {}};
    report::Series measured{"measured",          {}, {}, {}, {}, report::Tone::Chart1, report::Line::None,
                            report::Mark::Circle};
    report::Series sum{"", {}, {}, {}, {}, report::Tone::Ink, report::Line::Solid};
    report::Series leak{
        "leak, 6.1e\u22124 mbar\u00B7l/s", {}, {}, {}, {}, report::Tone::Chart3, report::Line::Solid};
    report::Series walls{"walls: fades", {}, {}, {}, {}, report::Tone::Chart2, report::Line::Dashed};
    report::Series left{"", {}, {}, {}, {}, report::Tone::Chart1, report::Line::None, report::Mark::Stem};
    for (int i = 0; i <= 60; ++i) {
        const double t = i * 30.0;
        const double q = 2e-4 + 6.1e-4 / 480.0 * t;
        const double w = 8e-4 * (1.0 - std::exp(-t / 240.0));
        const double noise = 4e-5 * std::sin(i * 1.7);
        for (auto& [series, value] : {std::pair<report::Series&, double>{measured, q + w + noise},
                                      {sum, q + w},
                                      {leak, q},
                                      {walls, w},
                                      {left, noise}}) {
            series.x.push_back(t / 60.0);
            series.y.push_back(value);
        }
        measured.hollow.push_back(true);
    }
    figure.series = {sum, leak, walls, measured};
    figure.moments.push_back({12.0, "3 \u03B8: separable from here", report::Line::Dotted});
    figure.residualAxis = report::Axis{"", -1e-4, 1e-4, false, {}};
    figure.residuals = {left};
    return figure;
}

// Property: round steps inside the axis, decades on a logarithmic one.
TEST(AxisTicks, AreRound)
{
    const auto ticks = ticksOf({"", 0.0, 3.6e-3, false, {}}, 4);
    ASSERT_EQ(ticks.size(), 4U);
    EXPECT_DOUBLE_EQ(ticks[1].at, 1e-3);
    EXPECT_EQ(ticks[1].text, QStringLiteral("1.0e\u22123"));
    const auto plain = ticksOf({"", 0.0, 90.0, false, {}}, 5);
    EXPECT_EQ(plain.back().text, QStringLiteral("80"));
    const auto decades = ticksOf({"", 1e-9, 1e-3, true, {}}, 10);
    ASSERT_EQ(decades.size(), 7U);
    EXPECT_EQ(decades.front().text, QStringLiteral("1e\u22129"));
    EXPECT_DOUBLE_EQ(partOf({"", 1e-9, 1e-3, true, {}}, 1e-6), 0.5);
}

// Property: the curve passes where its value belongs on the axes.
TEST(Figure, DrawsCurvesOnTheirAxes)
{
    const Theme& theme = Theme::named(ThemeName::Paper);
    report::Figure figure;
    figure.x = {"s", 0.0, 10.0, false, {}};
    figure.y = {"mbar", 0.0, 10.0, false, {}};
    figure.series.push_back({"", {0.0, 10.0}, {5.0, 5.0}, {}, {}, report::Tone::Chart3});
    const QRectF where(0, 0, 300, 200);
    const QImage image = test::painted(
        300, 200, Qt::white, [&](QPainter& painter) { paintFigure(painter, theme, figure, where); });
    const QRectF area = plotArea(figure, where);
    const int y = static_cast<int>(area.center().y());
    EXPECT_GT(test::like(image, QRect(static_cast<int>(area.left()) + 5, y - 1, 100, 3),
                         theme.colour(Role::Chart3), 60),
              90);
    EXPECT_EQ(test::like(image, QRect(static_cast<int>(area.left()) + 5, y - 40, 100, 30),
                         theme.colour(Role::Chart3), 60),
              0);
}

// Regression: a straight line led through the time in which no value came, as if it had been measured.
TEST(Figure, NoLineLeadsThroughAGap)
{
    auto samples = std::make_shared<report::LongSeries>();
    for (int i = 0; i < 600; ++i)
        if (i < 200 || i >= 400)
            samples->append(i * 0.1, i < 300 ? 2e-9F : -3e-9F); // and what has no logarithm keeps to the foot
    report::Figure figure;
    figure.x = {"s", 0.0, 60.0, false, {}};
    figure.y = {"mbar·l/s", 1e-11, 1e-7, true, {}};
    figure.series.push_back({"", {}, {}, samples, {}, report::Tone::Chart1});
    const Theme& theme = Theme::named(ThemeName::Paper);
    const QRectF area = plotArea(figure, QRectF(0, 0, 700, 220));
    const auto inked = [&](double step, double from, double to) {
        figure.series.front().longestStep = step;
        const QImage image = test::painted(700, 220, Qt::white, [&](QPainter& painter) {
            paintFigure(painter, theme, figure, QRectF(0, 0, 700, 220));
        });
        const auto x = [&](double time) {
            return static_cast<int>(area.left() + area.width() * time / 60.0);
        };
        return test::like(image,
                          QRect(x(from), static_cast<int>(area.top()), x(to) - x(from),
                                static_cast<int>(area.height()) + 2),
                          theme.colour(Role::Chart1), 60);
    };
    EXPECT_GT(inked(0.0, 22, 38), 100);
    EXPECT_EQ(inked(2.0, 22, 38), 0);
    EXPECT_GT(inked(2.0, 2, 18), 100);
    EXPECT_GT(inked(2.0, 42, 58), 100) << "along the foot";
}

// Property: one spike among 2.88 million samples is seen, in less than a frame, in less than 64 MiB.
TEST(Figure, LongSeriesKeepTheirSpikes)
{
    auto samples = std::make_shared<report::LongSeries>();
    constexpr std::size_t kSamples = 2880000;
    QElapsedTimer clock;
    clock.start();
    for (std::size_t i = 0; i < kSamples; ++i)
        samples->append(static_cast<double>(i) * 0.01,
                        i == 1234567 ? 9.0F
                                     : 1.0F + 0.1F * static_cast<float>(std::sin(static_cast<double>(i))));
    const double built = static_cast<double>(clock.nsecsElapsed()) / 1e6;
    report::Figure figure;
    figure.x = {"s", 0.0, 28800.0, false, {}};
    figure.y = {"mbar\u00B7l/s", 0.0, 10.0, false, {}};
    figure.series.push_back({"", {}, {}, samples, {}, report::Tone::Chart1});
    const Theme& theme = Theme::named(ThemeName::Paper);
    double paint = 1e9;
    QImage image;
    for (int i = 0; i < 5; ++i) {
        clock.restart();
        image = test::painted(900, 300, Qt::white, [&](QPainter& painter) {
            clock.restart();
            paintFigure(painter, theme, figure, QRectF(0, 0, 900, 300));
            paint = std::min(paint, static_cast<double>(clock.nsecsElapsed()) / 1e6);
        });
    }
    test::keep(image, QStringLiteral("long-series"));
    std::cout << "2.88 million samples: built in " << built << " ms, painted in " << paint << " ms, "
              << static_cast<double>(samples->bytes()) / 1048576.0 << " MiB\n";
    EXPECT_LT(paint, 16.0);
    EXPECT_LT(samples->bytes(), std::size_t{64} * 1024 * 1024);
    const QRectF area = plotArea(figure, QRectF(0, 0, 900, 300));
    const int y = static_cast<int>(area.bottom() - area.height() * 0.85);
    EXPECT_GE(test::like(image, QRect(static_cast<int>(area.left()), y, static_cast<int>(area.width()), 3),
                         theme.colour(Role::Chart1), 40),
              1);
}

// Property: wheel zooming looks closer at the place under the cursor and never beyond the whole.
TEST(PlotView, ZoomsWithinTheWhole)
{
    PlotView view;
    view.resize(400, 200);
    view.setZoomable(true);
    view.setFigure(riseFigure());
    QTest::keyClick(&view, Qt::Key_Plus);
    EXPECT_LT(view.figure().x.high - view.figure().x.low, 25.0);
    for (int i = 0; i < 10; ++i)
        QTest::keyClick(&view, Qt::Key_Minus);
    EXPECT_DOUBLE_EQ(view.figure().x.low, 0.0);
    EXPECT_DOUBLE_EQ(view.figure().x.high, 30.0);
}

// Property: pictures of the plots and side charts, in each theme; each has curves on it.
TEST(Figure, PlotsInEveryTheme)
{
    analysis::LeakBalance balance;
    const auto rate = [](double q) { return millibarLitresPerSecond(q); };
    balance.leaks = {{"point 17", rate(4.13e-4), rate(3.2e-4), rate(5.3e-4), 0.9, 0.1, 0.98, {}},
                     {"point 38", rate(5e-6), rate(4e-6), rate(6e-6), 0.9, 0.1, 0.02, {}}};
    balance.located = rate(4.2e-4);
    balance.locatedLow = rate(3.2e-4);
    balance.locatedHigh = rate(5.3e-4);
    balance.total = analysis::RiseTotal{rate(6.1e-4), rate(5.7e-4), rate(6.5e-4)};
    balance.unlocated = rate(1.9e-4);
    balance.verdict = analysis::BalanceVerdict::Missing;
    analysis::RepairEffect effect;
    effect.leakNow = rate(6.1e-4);
    effect.basePressureNow = millibars(4.6e-6);
    effect.basePressureAfter = millibars(2.6e-6);
    report::LoadOptions load;
    load.balance = &balance;
    load.effect = &effect;
    load.repaired = {"point 17"};
    load.airSpeed = litresPerSecond(206.0);
    load.wanted = millibars(2e-6);
    for (const ThemeName name : {ThemeName::Paper, ThemeName::Slate, ThemeName::Hall}) {
        const Theme& theme = Theme::named(name);
        const QImage image = test::painted(
            760, 480, theme.colour(Role::Panel),
            [&](QPainter& painter) {
                paintFigure(painter, theme, riseFigure(), QRectF(10, 10, 340, 330));
                paintBars(painter, theme, report::balanceBars(balance, load.scale, rate(5e-5)),
                          QRectF(360, 10, 390, 150));
                paintBars(painter, theme, report::loadBars(load), QRectF(360, 180, 390, 150));
            },
            2.0);
        test::keep(image, QStringLiteral("plots-%1").arg(static_cast<int>(name)));
        EXPECT_GT(test::like(image, image.rect(), theme.colour(Role::Chart3)), 100);
        EXPECT_GT(
            test::like(image, QRect(720, 0, 800, 340), theme.heat(load.scale.position(rate(4.6e-4))), 20),
            1000);
    }
    BarChartView view;
    view.setFigure(report::balanceBars(balance, load.scale, rate(5e-5)));
    EXPECT_TRUE(view.accessibleDescription().contains(QStringLiteral("missing")));
    load.airSpeed.reset();
    EXPECT_FALSE(report::loadBars(load).empty.empty());
}

} // namespace
} // namespace sealwalk::render
