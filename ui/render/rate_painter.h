// SPDX-License-Identifier: GPL-3.0-or-later
// Leak rates on the screen: 4.6e−4 with the exponent in bold, because the decade is what matters.
#pragma once

#include "ui/render/theme.h"

#include <QPointF>
#include <QString>

class QPainter;
class QRectF;

namespace sealwalk::render {

/// A short text whose last part is set in bold.
struct RateLabel
{
    QString plain;
    QString strong;

    [[nodiscard]] QString text() const { return plain + strong; }
    bool operator==(const RateLabel&) const = default;
};

/// "4.6e" and "−4" of a number in the unit shown.
RateLabel rateLabel(double shown, int digits = 2);

/// Splits a text such as "3.5e−4 … 6.0e−4": every exponent in bold, as HTML for labels and delegates.
QString rateHtml(const QString& text);

double rateWidth(const RateLabel& label, double pixels);
/// Paints from the left end of the base line.
void paintRate(QPainter& painter, const RateLabel& label, QPointF baseline, double pixels, const QColor& ink);
/// Paints in a rectangle.
void paintRate(QPainter& painter, const RateLabel& label, const QRectF& where, Qt::Alignment alignment,
               double pixels, const QColor& ink);

} // namespace sealwalk::render
