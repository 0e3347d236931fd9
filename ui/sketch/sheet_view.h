// SPDX-License-Identifier: GPL-3.0-or-later
// Where the millimetres of a sheet lie on the screen: zoom and pan.
#pragma once

#include "core/geometry/point.h"

#include <QPointF>
#include <QRectF>
#include <QSizeF>

namespace sealwalk::ui {

class SheetView
{
public:
    /// px per mm, within these bounds.
    static constexpr double kLeastScale = 0.005;
    static constexpr double kMostScale = 40.0;

    [[nodiscard]] double scale() const { return m_scale; }
    [[nodiscard]] QPointF toScreen(geometry::Point place) const
    {
        return {m_origin.x() + place.x * m_scale, m_origin.y() - place.y * m_scale};
    }
    [[nodiscard]] geometry::Point toSheet(QPointF at) const
    {
        return {(at.x() - m_origin.x()) / m_scale, (m_origin.y() - at.y()) / m_scale};
    }
    [[nodiscard]] double toMillimetres(double pixels) const { return pixels / m_scale; }
    /// Where the sheet's origin lies, px.
    [[nodiscard]] QPointF origin() const { return m_origin; }
    [[nodiscard]] geometry::Box visible(QSizeF size) const;

    /// The place under `at` stays there.
    void zoomAt(QPointF at, double factor);
    void pan(QPointF by) { m_origin += by; }
    /// The whole of `box` within `room`, centred.
    void fit(const geometry::Box& box, const QRectF& room);

private:
    double m_scale = 0.5;
    QPointF m_origin{400.0, 300.0};
};

} // namespace sealwalk::ui
