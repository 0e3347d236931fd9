// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/link_label.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QImage>
#include <QPalette>

#include <cstdlib>

namespace sealwalk::ui {
namespace {

/// Whether some pixel is nearly of that colour.
bool shows(const QImage& image, const QColor& colour)
{
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) {
            const QColor at = image.pixelColor(x, y);
            if (std::abs(at.red() - colour.red()) + std::abs(at.green() - colour.green()) +
                    std::abs(at.blue() - colour.blue()) <
                60)
                return true;
        }
    return false;
}

// Regression: after the theme was changed, a link kept the colour of the theme before, dark on dark.
TEST(LinkLabel, FollowsThePalette)
{
    const auto painted = [](QLabel& label, Qt::GlobalColor link) {
        QPalette palette = QApplication::palette();
        palette.setColor(QPalette::Window, Qt::white);
        palette.setColor(QPalette::Link, link);
        QApplication::setPalette(palette);
        QCoreApplication::processEvents();
        return label.grab().toImage();
    };
    const QPalette before = QApplication::palette();
    LinkLabel label(QStringLiteral("<b><a href=\"x\">IIII IIII</a></b>"));
    QFont font = label.font();
    font.setPixelSize(60);
    label.setFont(font);
    label.resize(400, 100);
    EXPECT_TRUE(shows(painted(label, Qt::blue), Qt::blue));
    const QImage after = painted(label, Qt::green);
    EXPECT_TRUE(shows(after, Qt::green));
    EXPECT_FALSE(shows(after, Qt::blue));
    QApplication::setPalette(before);
    EXPECT_EQ(label.text(), QStringLiteral("<b><a href=\"x\">IIII IIII</a></b>"));
}

} // namespace
} // namespace sealwalk::ui
