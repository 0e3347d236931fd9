// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/theme.h"
#include "ui/render/underlay_picture.h"

#include <gtest/gtest.h>

#include <QPainter>

#include <cmath>

namespace sealwalk::render {
namespace {

double luminance(const QColor& colour)
{
    const auto part = [](double v) { return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); };
    return 0.2126 * part(colour.redF()) + 0.7152 * part(colour.greenF()) + 0.0722 * part(colour.blueF());
}

/// A page of one colour under a sheet of a theme, 10 px of the picture to the mm.
QImage drawn(ThemeName name, const QColor& page, double opacity, QSize size = {400, 300})
{
    QImage picture(size, QImage::Format_RGB32);
    picture.fill(page);
    const Theme& theme = Theme::named(name);
    QImage sheet(100, 100, QImage::Format_RGB32);
    sheet.fill(theme.colour(Role::Sheet));
    QPainter painter(&sheet);
    painter.translate(50.0, 50.0);
    model::Underlay under;
    under.corner = {-20.0, -15.0};
    under.millimetresPerPixel = 40.0 / size.width();
    under.opacity = opacity;
    UnderlayPicture(DecodedPicture{picture, size}).paint(painter, theme, under, 1.0);
    return sheet;
}

// Property: in a dim hall no area is brighter than 0.07, a white page at full strength included.
TEST(UnderlayPicture, StaysDimInTheHall)
{
    for (const double opacity : {0.1, 0.35, 0.6, 1.0}) {
        const double seen = luminance(drawn(ThemeName::Hall, Qt::white, opacity).pixelColor(50, 50));
        EXPECT_LE(seen, 0.07) << opacity;
        const double sheet = luminance(Theme::named(ThemeName::Hall).colour(Role::Sheet));
        EXPECT_GT(seen, sheet) << opacity; // still seen
    }
}

TEST(UnderlayPicture, IsAsStrongAsAskedForOnPaper)
{
    const QColor half = drawn(ThemeName::Paper, Qt::black, 0.5).pixelColor(50, 50);
    const QColor sheet = Theme::named(ThemeName::Paper).colour(Role::Sheet);
    EXPECT_NEAR(half.red(), sheet.red() / 2, 2);
}

TEST(UnderlayPicture, LiesWhereItsCornerSaysWhicheverHalfIsPainted)
{
    for (const QSize size : {QSize(40, 30), QSize(1001, 751), QSize(4096, 3072)}) {
        const QImage sheet = drawn(ThemeName::Paper, Qt::black, 1.0, size);
        // 40 x 30 mm from 20 left of and 15 below the middle
        EXPECT_LT(sheet.pixelColor(32, 37).red(), 40) << size.width();
        EXPECT_LT(sheet.pixelColor(67, 62).red(), 40) << size.width();
        EXPECT_GT(sheet.pixelColor(27, 50).red(), 200) << size.width();
        EXPECT_GT(sheet.pixelColor(50, 32).red(), 200) << size.width();
    }
}

TEST(UnderlayPicture, PaintedSmallKeepsThinLines)
{
    // Regression: every 16th column black, painted at a tenth: an even grey, not some lines and some none.
    QImage lined(4000, 400, QImage::Format_RGB32);
    lined.fill(Qt::white);
    for (int y = 0; y < lined.height(); ++y)
        for (int x = 0; x < lined.width(); x += 16)
            lined.setPixelColor(x, y, Qt::black);
    QImage sheet(420, 60, QImage::Format_RGB32);
    sheet.fill(Qt::white);
    QPainter painter(&sheet);
    painter.translate(10.0, 50.0);
    model::Underlay under;
    under.millimetresPerPixel = 0.1;
    under.opacity = 1.0;
    UnderlayPicture(DecodedPicture{lined, lined.size()})
        .paint(painter, Theme::named(ThemeName::Paper), under, 1.0);
    int darkest = 255;
    for (int x = 40; x < 380; ++x)
        darkest = std::min(darkest, sheet.pixelColor(x, 30).red());
    EXPECT_GT(darkest, 180);
}

} // namespace
} // namespace sealwalk::render
