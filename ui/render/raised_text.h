// SPDX-License-Identifier: GPL-3.0-or-later
// Exponents large enough for paper: the face draws them half as high as its digits, four points in a report's
// text. They stay the characters they are, so that a search in the file finds "10⁻⁶".
#pragma once

#include <QFont>
#include <QPointF>
#include <QString>

class QPainter;

namespace sealwalk::render {

/// The face in which the exponents of a text in `font` are drawn: digits of at least 5.6 points on paper.
QFont raisedFont(const QFont& font);
/// How far a line of text reaches with its exponents as drawRaised() draws them.
double raisedWidth(const QString& text, const QFont& font);
/// Draws one line from the left end of its base line, in the painter's pen.
void drawRaised(QPainter& painter, QPointF baseline, const QString& text, const QFont& font);

} // namespace sealwalk::render
