// SPDX-License-Identifier: GPL-3.0-or-later
// A plot in a window. Wheel and drag look closer along x where that is allowed; double click shows all.
#pragma once

#include "core/report/figure.h"

#include <QPointF>
#include <QWidget>

#include <optional>

namespace sealwalk::render {

class PlotView : public QWidget
{
    Q_OBJECT

public:
    explicit PlotView(QWidget* parent = nullptr);

    void setFigure(report::Figure figure);
    [[nodiscard]] const report::Figure& figure() const { return m_figure; }
    /// Lets the user look closer along x. Off at first.
    void setZoomable(bool zoomable);

    [[nodiscard]] QSize sizeHint() const override { return {320, 200}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {140, 90}; }

signals:
    void viewChanged(double from, double to); ///< the visible part of the x axis

protected:
    void paintEvent(QPaintEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void show(double from, double to);
    void zoom(double factor, double part);
    [[nodiscard]] QRectF room() const;

    report::Figure m_figure; ///< its x axis is what is shown
    double m_allFrom = 0.0;
    double m_allTo = 1.0;
    bool m_zoomable = false;
    std::optional<QPointF> m_dragFrom;
};

} // namespace sealwalk::render
