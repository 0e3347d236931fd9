// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/rate_painter.h"

#include "core/report/rate_text.h"
#include "ui/render/core_words.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QRegularExpression>

namespace sealwalk::render {

RateLabel rateLabel(double shown, int digits)
{
    const QString text = inFigures(report::screenRate(shown, digits));
    const qsizetype e = text.indexOf(u'e');
    if (e < 0)
        return {text, {}};
    return {text.left(e + 1), text.mid(e + 1)};
}

QString rateHtml(const QString& text)
{
    static const QRegularExpression exponent(QStringLiteral("(?<=[0-9]e)(\u2212?[0-9]+)"));
    return text.toHtmlEscaped().replace(exponent, QStringLiteral("<b>\\1</b>"));
}

double rateWidth(const RateLabel& label, double pixels)
{
    return QFontMetricsF(fontOfPixels(pixels)).horizontalAdvance(label.plain) +
           QFontMetricsF(fontOfPixels(pixels, Weight::Bold)).horizontalAdvance(label.strong);
}

void paintRate(QPainter& painter, const RateLabel& label, QPointF baseline, double pixels, const QColor& ink)
{
    const QFont normal = fontOfPixels(pixels);
    painter.setPen(ink);
    painter.setFont(normal);
    painter.drawText(baseline, label.plain);
    if (label.strong.isEmpty())
        return;
    painter.setFont(fontOfPixels(pixels, Weight::Bold));
    painter.drawText(baseline + QPointF(QFontMetricsF(normal).horizontalAdvance(label.plain), 0.0),
                     label.strong);
}

void paintRate(QPainter& painter, const RateLabel& label, const QRectF& where, Qt::Alignment alignment,
               double pixels, const QColor& ink)
{
    const QFontMetricsF metrics(fontOfPixels(pixels));
    const double width = rateWidth(label, pixels);
    double x = where.left();
    if ((alignment & Qt::AlignRight) != 0)
        x = where.right() - width;
    else if ((alignment & Qt::AlignHCenter) != 0)
        x = where.center().x() - width / 2.0;
    const double y = where.center().y() + (metrics.ascent() - metrics.descent()) / 2.0;
    paintRate(painter, label, QPointF(x, y), pixels, ink);
}

} // namespace sealwalk::render
