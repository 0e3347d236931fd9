// SPDX-License-Identifier: GPL-3.0-or-later
// Where printed text breaks: at blanks only, so that "mbar·l/s" and "4.6 × 10⁻⁴" stay whole.
#pragma once

#include <QFont>
#include <QString>
#include <QStringList>

namespace sealwalk::render {

/// The lines of `text` in `width` (units of the font's size in pixels). A word that is wider than a line by
/// itself is cut where it is full. Widths of words are remembered; one memory per thread.
QStringList brokenLines(const QString& text, const QFont& font, double width);

struct TextWidths
{
    double line = 0.0; ///< of the longest line, nothing broken
    double word = 0.0; ///< of the longest piece that is not broken
};
TextWidths widthsOf(const QString& text, const QFont& font);

} // namespace sealwalk::render
