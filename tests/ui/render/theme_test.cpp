// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/icon.h"
#include "ui/render/rate_painter.h"
#include "ui/render/theme.h"
#include "ui/render/tokens.h"

#include <gtest/gtest.h>

#include <QFontMetricsF>
#include <QJsonObject>
#include <QRegularExpression>
#include <QWidget>

#include <cmath>

namespace sealwalk::render {
namespace {

double linear(double channel)
{
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour)
{
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

double contrast(const QColor& a, const QColor& b)
{
    const double one = luminance(a) + 0.05;
    const double two = luminance(b) + 0.05;
    return std::max(one, two) / std::min(one, two);
}

constexpr ThemeName kAll[] = {ThemeName::Paper, ThemeName::Slate, ThemeName::Hall};

// Published: contrast ratio of WCAG 2.1 (4.5 for text, 3 for lines and large marks; we ask 7 of ink).
TEST(Theme, TextAndMarksStandOutFromTheirGround)
{
    for (const ThemeName name : kAll) {
        const Theme& t = Theme::named(name);
        for (const Role ground : {Role::Window, Role::Panel, Role::Field, Role::Sheet, Role::AccentWash,
                                  Role::OverWash, Role::UnsureWash, Role::Plate})
            EXPECT_GE(contrast(t.colour(Role::Ink), t.colour(ground)), 7.0);
        for (const Role mark :
             {Role::Over, Role::Unsure, Role::Within, Role::Echo, Role::Masked, Role::Permeation, Role::Void,
              Role::NoAccess, Role::Repaired, Role::Temporary, Role::Accent})
            for (const Role ground : {Role::Panel, Role::Field, Role::Sheet, Role::Plate})
                EXPECT_GE(contrast(t.colour(mark), t.colour(ground)), 4.5);
        EXPECT_GE(contrast(t.colour(Role::Edge), t.colour(Role::Sheet)), 3.0);
        EXPECT_GE(contrast(t.colour(Role::OnAccent), t.colour(Role::Accent)), 4.5);
        EXPECT_GE(contrast(t.colour(Role::OnStrip), t.colour(Role::Strip)), 7.0);
    }
}

// Property: more leak is always darker on paper and lighter at night, so grey prints keep the order.
TEST(Theme, RampIsMonotoneInLuminance)
{
    for (const ThemeName name : kAll) {
        const Theme& t = Theme::named(name);
        double last = luminance(t.heat(0.0));
        for (int i = 1; i <= 255; ++i) {
            const double next = luminance(t.heat(i / 255.0));
            EXPECT_TRUE(t.isDark() ? next >= last : next <= last) << i;
            last = next;
        }
        EXPECT_EQ(t.heat(-3.0), t.heat(0.0));
        EXPECT_EQ(t.heat(7.0), t.heat(1.0));
        EXPECT_EQ(t.coldest(), t.heat(0.0));
    }
}

// Property: every placeholder of the style sheet was filled.
TEST(Theme, StyleSheetHasNoHolesLeft)
{
    for (const ThemeName name : kAll) {
        const QString sheet = Theme::named(name).styleSheet();
        EXPECT_FALSE(sheet.contains(QRegularExpression(QStringLiteral("[@%]"))));
        EXPECT_TRUE(sheet.contains(Theme::named(name).colour(Role::Accent).name()));
    }
}

// Property: a widget's own theme reaches what is in it and nothing else.
TEST(Theme, AWidgetMayHaveItsOwn)
{
    QWidget window;
    QWidget sheet(&window);
    QWidget child(&sheet);
    setThemeFor(sheet, ThemeName::Hall);
    EXPECT_EQ(Theme::of(&child).name(), ThemeName::Hall);
    EXPECT_EQ(Theme::of(&window).name(), ThemeName::Paper);
    clearThemeFor(sheet);
    EXPECT_EQ(Theme::of(&child).name(), ThemeName::Paper);
}

// Regression: the monospaced sister of the text face must not be taken for it.
TEST(Fonts, TextFaceIsProportionalWithDigitsOfOneWidth)
{
    for (const Weight weight : {Weight::Normal, Weight::Bold}) {
        const QFontMetricsF metrics(fontOfPixels(40, weight));
        EXPECT_LT(metrics.horizontalAdvance(QStringLiteral("iii")),
                  metrics.horizontalAdvance(QStringLiteral("WWW")));
        for (int digit = 0; digit < 10; ++digit)
            EXPECT_DOUBLE_EQ(metrics.horizontalAdvance(QString::number(digit)),
                             metrics.horizontalAdvance(QStringLiteral("0")));
    }
}

// Property: icons take the ink they are given, at any scale.
TEST(Icons, TakeTheInkOfTheTheme)
{
    for (const double ratio : {1.0, 2.0}) {
        const QColor ink(200, 30, 60);
        const QImage image = iconPixmap(QStringLiteral("repair"), 24, ink, ratio).toImage();
        EXPECT_EQ(image.width(), static_cast<int>(24 * ratio));
        int inked = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                if (image.pixelColor(x, y).alpha() > 250)
                    inked += image.pixelColor(x, y).rgb() == ink.rgb() ? 1 : 0;
        EXPECT_GT(inked, 10);
    }
}

// Property: only the exponent is strong.
TEST(RateLabel, SplitsBeforeTheExponent)
{
    EXPECT_EQ(rateLabel(4.6e-4).plain, QStringLiteral("4.6e"));
    EXPECT_EQ(rateLabel(4.6e-4).strong, QStringLiteral("\u22124"));
    EXPECT_EQ(rateLabel(0.0).text(), QStringLiteral("0"));
    EXPECT_EQ(rateHtml(QStringLiteral("3.5e\u22124 < x")), QStringLiteral("3.5e<b>\u22124</b> &lt; x"));
}

} // namespace
} // namespace sealwalk::render
