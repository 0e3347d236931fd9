// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/render/picture_support.h"
#include "ui/render/raised_text.h"
#include "ui/render/report_pages.h"

#include <gtest/gtest.h>

#include <QFontMetricsF>
#include <QPainter>

namespace sealwalk::render {
namespace {

constexpr double kPointsPerPixel = 0.75; // of a page at 96 per inch

// Regression: exponents were half as high as their digits, 4.1 points in a report and 3.4 in its small print.
TEST(RaisedText, ExponentsCanBeReadOnPaper)
{
    for (const Weight weight : {Weight::Normal, Weight::Bold})
        for (const double pixels : {9.0, 11.0, 12.0, 15.0}) {
            const QFont face = detail::printFont(pixels, weight);
            QFont large = face;
            large.setPixelSize(1000);
            const double digit = QFontMetricsF(large).tightBoundingRect(QStringLiteral("6")).height() / 1000;
            large.setPixelSize(raisedFont(face).pixelSize() * 100);
            const double raised =
                QFontMetricsF(large).tightBoundingRect(QStringLiteral("\u2076")).height() / 100;
            EXPECT_GE(raised / digit * kPointsPerPixel, 5.5) << pixels;
        }
}

// Property: a line with an exponent is as high as one without, and as wide as it says.
TEST(RaisedText, StaysInItsLine)
{
    constexpr int kScale = 8;
    for (const double pixels : {9.0, 11.0, 15.0}) {
        const QFont face = detail::printFont(pixels);
        const QFontMetricsF metrics(face);
        const QString text = QStringLiteral("\u2076\u207B\u2079");
        const double width = raisedWidth(text, face);
        const QImage image = test::painted(400, 300, Qt::white, [&](QPainter& painter) {
            painter.scale(kScale, kScale);
            painter.setPen(Qt::black);
            drawRaised(painter, QPointF(2.0, 4.0 + metrics.ascent()), text, face);
        });
        const int top = static_cast<int>(4.0 * kScale) - 2;
        EXPECT_EQ(test::like(image, QRect(0, 0, 400, top), Qt::black, 120), 0) << pixels;
        EXPECT_GT(test::like(image, QRect(0, top, 400, 300 - top), Qt::black, 120), 20) << pixels;
        const int end = static_cast<int>((2.0 + width) * kScale) + 2;
        if (end < 400) {
            EXPECT_EQ(test::like(image, QRect(end, 0, 400 - end, 300), Qt::black, 120), 0) << pixels;
        }
    }
}

} // namespace
} // namespace sealwalk::render
