// SPDX-License-Identifier: GPL-3.0-or-later
// The one painter of the set-up's schematic: window and PDF. Lines and words only, so that it prints in grey.
#pragma once

#include "core/report/setup_sketch.h"
#include "ui/render/theme.h"

#include <QFont>
#include <QPointF>
#include <QRectF>
#include <QString>

#include <memory>
#include <vector>

class QPainter;

namespace sealwalk::render {

struct SetupStyle
{
    double text = 11.0;     ///< font size, device units
    bool shapesText = true; ///< false: plain letters, so that a search in a file finds every word
};

/// The schematic laid out for a width: object left, line and pumps in the middle, detector right.
class LaidSetup
{
public:
    /// @param width  device units; below 30 times the text size words are broken hard
    LaidSetup(report::SetupSketch sketch, double width, const SetupStyle& style = {});

    [[nodiscard]] double height() const { return m_height; }
    void paint(QPainter& painter, const Theme& theme, QPointF corner) const;

private:
    struct Words
    {
        QString text;
        QRectF where;
        Qt::Alignment alignment;
        bool isStrong = false;
        bool isStated = true;
    };

    double addWords(const report::SetupPart& part, QRectF where, Qt::Alignment alignment, bool strongFirst);
    [[nodiscard]] double heightOf(const report::SetupPart& part, double width) const;
    void layAbove();
    void layMiddle();
    void layBelow();

    report::SetupSketch m_sketch;
    double m_width;
    SetupStyle m_style;
    QFont m_face;
    QFont m_strong;
    double m_line = 0.0; ///< height of a line of words
    QRectF m_object;
    QRectF m_detector;
    double m_axis = 0.0; ///< of the line from object to detector
    double m_tee = 0.0;  ///< where the pump in parallel leaves it
    double m_below = 0.0;
    double m_height = 0.0;
    std::vector<QPointF> m_leaks; ///< marks over the object
    std::vector<Words> m_words;
};

} // namespace sealwalk::render
