// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/render/picture_support.h"
#include "ui/render/band_painter.h"
#include "ui/render/decade_ruler.h"
#include "ui/render/hatch.h"
#include "ui/render/plate_painter.h"

#include <gtest/gtest.h>

#include <QPainter>

#include <cmath>

namespace sealwalk::render {
namespace {

using report::PointState;
using report::Teeth;

struct Row
{
    PointState state;
    Teeth teeth;
    double rate; ///< mbar l/s; 0: none
    bool temporary = false;
};

constexpr Row kRows[] = {
    {PointState::LeakOver, Teeth::Full, 4.6e-5},
    {PointState::LeakCannotSay, Teeth::Few, 1.1e-6},
    {PointState::Shared, Teeth::Full, 6.2e-6},
    {PointState::Echo, Teeth::None, 3.1e-5},
    {PointState::EchoTakenOut, Teeth::None, 0},
    {PointState::Masked, Teeth::None, 0},
    {PointState::LeakWithin, Teeth::None, 5.6e-8},
    {PointState::Clear, Teeth::None, 0},
    {PointState::BelowDetectable, Teeth::None, 0},
    {PointState::Permeation, Teeth::None, 3e-7},
    {PointState::Void, Teeth::None, 0},
    {PointState::NotAccessible, Teeth::None, 0},
    {PointState::NotSprayed, Teeth::None, 0},
    {PointState::RepairedAwaiting, Teeth::None, 0},
    {PointState::Answered, Teeth::Full, 2.4e-6},
    {PointState::LeakWithin, Teeth::None, 5.6e-8, true},
};

report::MapScale scaleOfSample()
{
    report::MapScale scale;
    scale.limit = millibarLitresPerSecond(1e-6);
    scale.smallestDetectable = millibarLitresPerSecond(2.4e-9);
    return scale;
}

BandLook lookOfRow(const Row& row)
{
    report::MapStretch stretch;
    stretch.state = row.state;
    stretch.teeth = row.teeth;
    if (row.rate > 0)
        stretch.rate = millibarLitresPerSecond(row.rate);
    return lookOf(stretch, scaleOfSample(), BandStyle::screen());
}

QImage bandImage(const Row& row, const Theme& theme)
{
    return test::painted(160, 60, theme.colour(Role::Sheet), [&](QPainter& painter) {
        paintBand(painter, theme, BandStyle::screen(), lookOfRow(row), QPolygonF{{20, 30}, {140, 30}});
    });
}

const Theme& paper()
{
    return Theme::named(ThemeName::Paper);
}

// Property: teeth stand outside the casing, and only over the limit; few of them where one cannot say.
TEST(Band, TeethTellTheVerdict)
{
    const auto teeth = [&](const Row& row) {
        const QImage image = bandImage(row, paper());
        const BandLook look = lookOfRow(row);
        const int above = static_cast<int>(30 - look.width / 2.0 - 1.5 - 1.5);
        return test::unlike(image, QRect(20, above, 120, 1), paper().colour(Role::Sheet), 60);
    };
    const int full = teeth(kRows[0]);
    const int few = teeth(kRows[1]);
    const int none = teeth(kRows[6]);
    EXPECT_GT(full, 30);
    EXPECT_GT(few, 10);
    EXPECT_LT(2 * few, full + 10);
    EXPECT_EQ(none, 0);
}

// Property: a leak is filled with the ramp's colour of its rate, nothing else is.
TEST(Band, BodyTakesTheColourOfItsDecade)
{
    const QImage leak = bandImage(kRows[0], paper());
    const QColor wanted = paper().heat(scaleOfSample().position(millibarLitresPerSecond(4.6e-5)));
    EXPECT_EQ(test::unlike(leak, QRect(30, 27, 100, 6), wanted, 2), 0);
    const QImage wide = bandImage({PointState::LeakOver, Teeth::Full, 4.6e-4}, paper());
    EXPECT_GT(lookOfRow({PointState::LeakOver, Teeth::Full, 4.6e-4}).width, lookOfRow(kRows[0]).width);
    EXPECT_NE(wide.pixelColor(80, 30), leak.pixelColor(80, 30));
}

// Property: what was not sprayed is hollow, never a colour of the ramp; its outline is broken.
TEST(Band, NotSprayedIsHollowAndBroken)
{
    const QImage image = bandImage({PointState::NotSprayed, Teeth::None, 0}, paper());
    EXPECT_EQ(test::unlike(image, QRect(25, 29, 110, 2), paper().colour(Role::Sheet), 2), 0);
    const int outline = test::unlike(image, QRect(20, 25, 120, 1), paper().colour(Role::Sheet), 40);
    EXPECT_GT(outline, 50);
    EXPECT_LT(outline, 100);
}

// Property: masked is hatched: both hatch and ground inside, in many separate strokes.
TEST(Band, MaskedIsHatched)
{
    const QImage image = bandImage({PointState::Masked, Teeth::None, 0}, paper());
    int changes = 0;
    bool dark = false;
    for (int x = 22; x < 138; ++x) {
        const bool now = image.pixelColor(x, 30).lightness() < 170;
        changes += now != dark ? 1 : 0;
        dark = now;
    }
    EXPECT_GT(changes, 20);
}

// Property: in a grey print no two states look alike: their grey pictures differ in many pixels.
TEST(Band, StatesAreToldApartInGrey)
{
    std::vector<QImage> greys;
    for (std::size_t i = 0; i < std::size(kRows) - 1; ++i) {
        const Row& row = kRows[i];
        greys.push_back(test::painted(190, 60, Qt::white, [&](QPainter& painter) {
                            paintBand(painter, paper(), BandStyle::screen(), lookOfRow(row),
                                      QPolygonF{{50, 30}, {170, 30}});
                            paintPlate(painter, paper(), {row.state, row.teeth, false, false}, {20, 30}, 18);
                        }).convertToFormat(QImage::Format_Grayscale8));
    }
    for (std::size_t a = 0; a < greys.size(); ++a)
        for (std::size_t b = a + 1; b < greys.size(); ++b) {
            int different = 0;
            for (int y = 0; y < 60; ++y)
                for (int x = 0; x < 190; ++x)
                    different +=
                        std::abs(qGray(greys[a].pixel(x, y)) - qGray(greys[b].pixel(x, y))) > 40 ? 1 : 0;
            EXPECT_GT(different, 60) << a << " and " << b;
        }
}

// Property: the same bands in every theme, band and disc and plate, each with something on it.
TEST(Band, CatalogueInEveryTheme)
{
    for (const ThemeName name : {ThemeName::Paper, ThemeName::Slate, ThemeName::Hall}) {
        const Theme& theme = Theme::named(name);
        const int height = 38 * static_cast<int>(std::size(kRows)) + 16;
        const QImage image = test::painted(
            230, height, theme.colour(Role::Sheet),
            [&](QPainter& painter) {
                double y = 26;
                for (const Row& row : kRows) {
                    QPolygonF line;
                    for (int q = 0; q < 56; ++q)
                        line.append(QPointF(64 + 2.0 * q, y + 7 * std::sin(q / 9.0)));
                    paintPlate(painter, theme, {row.state, row.teeth, row.temporary, false}, {30, y}, 20);
                    paintBand(painter, theme, BandStyle::screen(), lookOfRow(row), line);
                    paintDisc(painter, theme, BandStyle::screen(), lookOfRow(row), {205, y}, 9);
                    y += 38;
                }
            },
            2.0);
        test::keep(image, QStringLiteral("states-%1").arg(static_cast<int>(name)));
        for (std::size_t i = 0; i < std::size(kRows); ++i)
            EXPECT_GT(test::unlike(image, QRect(380, 14 + 76 * static_cast<int>(i), 80, 76),
                                   theme.colour(Role::Sheet)),
                      40);
    }
}

// Property: hatch lines stay inside their polygon and fill it evenly.
TEST(Hatch, FillsAPolygonEvenly)
{
    const QPolygonF square{{0, 0}, {100, 0}, {100, 100}, {0, 100}};
    double length = 0.0;
    for (const QLineF& line : hatchLines(square, 30.0, 5.0)) {
        length += line.length();
        for (const QPointF& end : {line.p1(), line.p2()})
            EXPECT_TRUE(QRectF(-0.01, -0.01, 100.02, 100.02).contains(end));
    }
    EXPECT_NEAR(length * 5.0, 10000.0, 300.0); // area = length times pitch, within one line at the rim
}

// Regression: a ruler narrower than its words ended the program.
TEST(DecadeRuler, MayBeNarrowerThanItsWords)
{
    report::MapScale scale;
    scale.limit = millibarLitresPerSecond(1e-6);
    scale.smallestDetectable = millibarLitresPerSecond(1e-9);
    for (const double width : {4.0, 30.0, 60.0, 400.0}) {
        const QImage image = test::painted(420, 80, Qt::white, [&](QPainter& painter) {
            paintLevelRuler(painter, Theme::named(ThemeName::Paper), scale, QRectF(0, 0, width, 70), {});
        });
        EXPECT_FALSE(image.isNull());
        if (width > 100.0) {
            EXPECT_GT(test::unlike(image, image.rect(), Qt::white), 100);
        }
    }
}

} // namespace
} // namespace sealwalk::render
