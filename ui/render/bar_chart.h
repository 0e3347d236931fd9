// SPDX-License-Identifier: GPL-3.0-or-later
// The side charts: stacked level bars with limits and whiskers, in a window.
#pragma once

#include "core/report/bars.h"
#include "ui/render/figure_painter.h"
#include "ui/render/theme.h"

#include <QWidget>

class QChartView;
class QLabel;

namespace sealwalk::render {

class BarChartView : public QWidget
{
    Q_OBJECT

public:
    explicit BarChartView(QWidget* parent = nullptr);
    void setFigure(report::BarFigure figure);
    [[nodiscard]] const report::BarFigure& figure() const { return m_figure; }
    [[nodiscard]] QSize sizeHint() const override { return {404, 140}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {180, 96}; }

protected:
    void changeEvent(QEvent* event) override;

private:
    void rebuild();

    report::BarFigure m_figure;
    QChartView* m_view;
    QLabel* m_nothing; ///< a chart would shorten what it says to its first words
};

} // namespace sealwalk::render
