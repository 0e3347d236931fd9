// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/render/picture_support.h"
#include "tests/ui/render/sample_map.h"
#include "ui/render/sheet_picture.h"

#include <gtest/gtest.h>

#include <QPainter>

namespace sealwalk::render {
namespace {

QImage mapImage(const SheetPicture& picture, ThemeName name, double ratio = 1.0)
{
    const QRectF bounds = picture.bounds();
    const Theme& theme = Theme::named(name);
    return test::painted(
        static_cast<int>(bounds.width()) + 2, static_cast<int>(bounds.height()) + 2,
        theme.colour(Role::Sheet),
        [&](QPainter& painter) {
            painter.translate(-bounds.topLeft());
            picture.paint(painter, theme);
            paintScaleBar(painter, theme, bounds.bottomLeft() + QPointF(10, -8), picture.unitsPerMillimetre(),
                          picture.style(), picture.content());
        },
        ratio);
}

// Property: nothing painted leaves the picture's own bounds, in any theme.
TEST(SheetPicture, PaintsBothSheetsInEveryTheme)
{
    const test::SampleJob sample = test::sampleJob();
    for (const std::size_t sheet : {0U, 1U}) {
        const SheetPicture picture(sample.map(sheet), 0.45, BandStyle::screen());
        for (const ThemeName name : {ThemeName::Paper, ThemeName::Slate, ThemeName::Hall})
            for (const double ratio : {1.0, 2.0}) {
                const QImage image = mapImage(picture, name, ratio);
                const QColor ground = Theme::named(name).colour(Role::Sheet);
                EXPECT_EQ(test::unlike(image, QRect(0, 0, image.width(), 1), ground), 0);
                EXPECT_GT(test::unlike(image, image.rect(), ground), 5000);
                test::keep(image,
                           QStringLiteral("map-%1-%2-%3").arg(sheet).arg(static_cast<int>(name)).arg(ratio));
            }
    }
}

} // namespace
} // namespace sealwalk::render
