// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/raised_text.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <QTransform>

#include <algorithm>
#include <cmath>

namespace sealwalk::render {

namespace {

// Of the size of the face: where its exponents begin above the base line, and how high they are.
constexpr double kFoot = 0.355;
constexpr double kHigh = 0.384;
constexpr double kShare = 1.44; // of the text's size: exponents of 0.72 of its digits
constexpr int kLeast = 15;      // px: digits of 7.5 px, 5.6 points
constexpr int kFine = 16;
constexpr double kRaise = 0.35;   // of the text's size, where that keeps them in the line
constexpr double kTallest = 0.95; // of the text's size: the line's ascent

bool isRaised(QChar c)
{
    const char16_t code = c.unicode();
    return code == 0x00B9 || code == 0x00B2 || code == 0x00B3 || (code >= 0x2070 && code <= 0x207B);
}

/// `each` is given runs of characters in order, and whether they are exponents.
template <class Each>
void eachRun(const QString& text, Each each)
{
    for (qsizetype from = 0, to = 0; from < text.size(); from = to) {
        const bool raised = isRaised(text[from]);
        while (to < text.size() && isRaised(text[to]) == raised)
            ++to;
        each(text.mid(from, to - from), raised);
    }
}

} // namespace

QFont raisedFont(const QFont& font)
{
    QFont raised = font;
    raised.setPixelSize(std::max(kLeast, static_cast<int>(std::lround(kShare * font.pixelSize()))));
    return raised;
}

double raisedWidth(const QString& text, const QFont& font)
{
    double width = 0.0;
    eachRun(text, [&](const QString& run, bool raised) {
        width += QFontMetricsF(raised ? raisedFont(font) : font).horizontalAdvance(run);
    });
    return width;
}

void drawRaised(QPainter& painter, QPointF baseline, const QString& text, const QFont& font)
{
    eachRun(text, [&](const QString& run, bool raised) {
        painter.setFont(font);
        if (!raised) {
            painter.drawText(baseline, run);
            baseline.rx() += QFontMetricsF(font).horizontalAdvance(run);
            return;
        }
        const QFont face = raisedFont(font);
        const double size = face.pixelSize();
        const double up = std::min(kRaise * font.pixelSize(), kTallest * font.pixelSize() - kHigh * size);
        QPainterPath shape;
        shape.setFillRule(Qt::WindingFill);
        QFont large = face; // outlines come in whole parts of its pixels
        large.setPixelSize(kFine * face.pixelSize());
        shape.addText(QPointF(), large, run);
        const QPointF foot = baseline + QPointF(0.0, kFoot * size - up);
        shape = QTransform::fromTranslate(foot.x(), foot.y()).scale(1.0 / kFine, 1.0 / kFine).map(shape);
        const QPen pen = painter.pen();
        painter.fillPath(shape, pen.color());
        // The characters themselves, unseen: readers of the file take letters of another size for another
        // line, and a search would not find "10⁻⁶".
        painter.setPen(QColor(0, 0, 0, 0));
        painter.drawText(baseline, run);
        painter.setPen(pen);
        baseline.rx() += QFontMetricsF(face).horizontalAdvance(run);
    });
}

} // namespace sealwalk::render
