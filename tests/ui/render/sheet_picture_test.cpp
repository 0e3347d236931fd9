// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/rate_text.h"
#include "tests/ui/render/picture_support.h"
#include "tests/ui/render/sample_map.h"
#include "ui/render/sheet_picture.h"

#include <gtest/gtest.h>

#include <QBuffer>
#include <QPainter>
#include <QSvgGenerator>

#include <algorithm>

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

// Property: what is read counts as covered, and nothing else: not empty paper, not the number that is carried
// by what lies over it.
TEST(SheetPicture, KnowsWhatARoomWouldCover)
{
    const SheetPicture picture(test::sampleJob().map(), 0.45, BandStyle::screen());
    const QRectF all = picture.bounds();
    constexpr std::size_t kNobody = 1'000'000;
    EXPECT_GT(picture.coveredBy(all, kNobody), 0.0);
    EXPECT_EQ(picture.coveredBy(all.translated(2.0 * all.width(), 0.0), kNobody), 0.0);
    const QRectF number = picture.numberRoom(4);
    ASSERT_FALSE(number.isEmpty());
    EXPECT_GT(picture.coveredBy(number, kNobody), picture.coveredBy(number, 4));
    SheetParts bandsOnly;
    bandsOnly.plates = bandsOnly.numbers = bandsOnly.values = bandsOnly.names = false;
    const SheetPicture bare(test::sampleJob().map(), 0.45, BandStyle::screen(), bandsOnly);
    EXPECT_EQ(bare.numbersLeftOut(), 0) << "none were asked for";
    // Regression: the flag of a called point lay over the disc of another joint.
    const auto& stretches = bare.content().stretches;
    for (std::size_t i = 0; i < stretches.size(); ++i) {
        const QRectF near(bare.placeOf(i) - QPointF(2, 2), QSizeF(4, 4));
        EXPECT_GT(bare.coveredBy(near, kNobody), 0.0) << i;
        if (bare.outwardOf(i).isNull()) { // a spot
            EXPECT_LT(bare.coveredBy(near, i), bare.coveredBy(near, kNobody)) << i;
        }
    }
}

// Property: numbers that found no room are counted; with more room there are fewer.
TEST(SheetPicture, CountsTheNumbersWithoutRoom)
{
    const auto map = test::sampleJob().map();
    const int far = SheetPicture(map, 0.05, BandStyle::screen()).numbersLeftOut();
    EXPECT_GT(far, 0);
    EXPECT_LT(SheetPicture(map, 2.0, BandStyle::screen()).numbersLeftOut(), far);
}

/// What is written on a picture.
QString wordsOn(const SheetPicture& picture)
{
    QByteArray svg;
    QBuffer buffer(&svg);
    QSvgGenerator drawing;
    drawing.setOutputDevice(&buffer);
    QPainter painter(&drawing);
    picture.paint(painter, Theme::named(ThemeName::Paper));
    painter.end();
    return QString::fromUtf8(svg);
}

// Property: a range stands below its value near by; where plates crowd it gives way before the value does.
TEST(SheetPicture, ARangeStandsBelowItsValueWhereThereIsRoom)
{
    const test::SampleJob sample = test::sampleJob();
    auto content = std::make_shared<report::MapContent>(*sample.map(0));
    const auto over = std::find_if(content->stretches.begin(), content->stretches.end(), [](const auto& s) {
        return s.state == report::PointState::LeakOver && s.range;
    });
    ASSERT_NE(over, content->stretches.end());
    const report::MapStretch loud = *over;
    const report::MapScale& scale = content->scale;
    const QString range = QString::fromStdString(report::rangeBeside(
        scale.shown(*loud.rate), scale.number(loud.range->low), scale.number(loud.range->high)));
    const QString mantissa = rateLabel(scale.shown(*loud.rate)).plain;
    const QString near = wordsOn(SheetPicture(content, 0.45, BandStyle::screen()));
    EXPECT_EQ(near.count(range), 1) << range.toStdString();
    EXPECT_EQ(near.count(mantissa), 1);
    content->brackets.clear();
    for (report::MapStretch& stretch : content->stretches) {
        stretch.state = loud.state;
        stretch.teeth = loud.teeth;
        stretch.rate = loud.rate;
        stretch.range = loud.range;
        stretch.label.clear();
    }
    const QString crowded = wordsOn(SheetPicture(content, 0.15, BandStyle::screen()));
    EXPECT_LT(crowded.count(range), crowded.count(mantissa));
}

} // namespace
} // namespace sealwalk::render
