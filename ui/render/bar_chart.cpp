// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/bar_chart.h"

#include "ui/render/bar_painter.h"
#include "ui/render/core_words.h"

#include <QBarCategoryAxis>
#include <QBarSet>
#include <QChart>
#include <QChartView>
#include <QEvent>
#include <QGraphicsItem>
#include <QGraphicsLayout>
#include <QHorizontalStackedBarSeries>
#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>
#include <QValueAxis>

#include <memory>

namespace sealwalk::render {

namespace {

using report::BarFigure;
using report::BarPart;

constexpr int kLeastHeight = 116; // lower, the chart shortens every figure of its axis to dots
constexpr int kMostOfARow = 110;  // higher, a bar is no bar any more
constexpr int kAroundTheRows = 76;
constexpr int kAllRoom = 1000; // before anything is left over

/// Whiskers, limits, hatches and words over the bars, placed by the chart's own coordinates.
class BarOverlay : public QGraphicsItem
{
public:
    BarOverlay(QChart* chart, const BarFigure& figure, const Theme& theme, const FigureStyle& style)
        : QGraphicsItem(chart)
        , m_chart(chart)
        , m_figure(figure)
        , m_theme(theme)
        , m_style(style)
    {
        setZValue(20);
    }

    [[nodiscard]] QRectF boundingRect() const override { return m_chart->rect(); }

    void paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) override
    {
        painter->setRenderHint(QPainter::Antialiasing);
        paintBarMarks(*painter, m_theme, m_figure,
                      {m_chart->rect(), m_chart->plotArea(),
                       [this](QPointF place) { return m_chart->mapToPosition(place); }},
                      m_style);
    }

private:
    QChart* m_chart;
    BarFigure m_figure;
    const Theme& m_theme;
    FigureStyle m_style;
};

QChart* makeChart(const BarFigure& figure, const Theme& theme, const FigureStyle& style)
{
    auto* chart = new QChart; // owned by the view or scene it is given to
    const BarAxis axis = BarAxis::of(figure);
    chart->legend()->hide();
    chart->setAnimationOptions(QChart::NoAnimation);
    chart->setBackgroundVisible(false);
    chart->setMargins(QMargins(0, 0, 0, 0));
    chart->layout()->setContentsMargins(0, style.text * (figure.limits.empty() ? 0.2 : 1.5), 0, 0);

    auto* series = new QHorizontalStackedBarSeries(chart);
    series->setBarWidth(kBarShare);
    const auto rows = static_cast<qsizetype>(figure.bars.size());
    QStringList names;
    for (qsizetype row = rows - 1; row >= 0; --row)
        names.append(QString::fromStdString(figure.bars[static_cast<std::size_t>(row)].name));
    // One set per part, with a value in its own bar only: parts of two bars share nothing.
    for (qsizetype row = 0; row < rows; ++row)
        for (const BarPart& part : figure.bars[static_cast<std::size_t>(row)].parts) {
            auto* set = new QBarSet(QString::fromStdString(part.label), series);
            for (qsizetype k = 0; k < rows; ++k)
                set->append(k == rows - 1 - row ? part.value / axis.divisor : 0.0);
            const BarColours colours = coloursOf(part, theme);
            set->setBrush(colours.fill);
            set->setPen(QPen(colours.edge, style.unit));
            series->append(set);
        }
    chart->addSeries(series);

    const QFont face = fontOfPixels(style.text);
    auto* rowAxis = new QBarCategoryAxis(chart);
    rowAxis->append(names);
    rowAxis->setLabelsFont(face);
    rowAxis->setLabelsColor(theme.colour(Role::Ink));
    rowAxis->setGridLineVisible(false);
    rowAxis->setLineVisible(false);
    chart->addAxis(rowAxis, Qt::AlignLeft);
    series->attachAxis(rowAxis);
    auto* valueAxis = new QValueAxis(chart);
    valueAxis->setRange(0.0, axis.top);
    valueAxis->setTickType(QValueAxis::TicksDynamic);
    valueAxis->setTickAnchor(0.0);
    valueAxis->setTickInterval(axis.step);
    valueAxis->setLabelFormat(QStringLiteral("%g"));
    valueAxis->setLabelsFont(face);
    valueAxis->setLabelsColor(theme.colour(Role::InkSoft));
    valueAxis->setTitleFont(face);
    valueAxis->setTitleBrush(theme.colour(Role::InkSoft));
    valueAxis->setTitleText(axis.title);
    valueAxis->setGridLinePen(QPen(theme.colour(Role::SheetGrid), style.unit));
    valueAxis->setLinePen(QPen(theme.colour(Role::Line), style.unit));
    chart->addAxis(valueAxis, Qt::AlignBottom);
    series->attachAxis(valueAxis);
    new BarOverlay(chart, figure, theme, style); // a child of the chart
    return chart;
}

} // namespace

BarChartView::BarChartView(QWidget* parent)
    : QWidget(parent)
    , m_view(new QChartView(this))
    , m_nothing(new QLabel(this))
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_view, kAllRoom);
    layout->addWidget(m_nothing, kAllRoom);
    layout->addStretch(1);
    m_nothing->setWordWrap(true);
    m_nothing->setProperty("role", QStringLiteral("soft"));
    m_nothing->setAlignment(Qt::AlignCenter);
    m_view->setFrameShape(QFrame::NoFrame);
    m_view->setRenderHint(QPainter::Antialiasing);
    m_view->setBackgroundBrush(Qt::NoBrush);
    m_view->setStyleSheet(QStringLiteral("background: transparent"));
    m_view->setFocusPolicy(Qt::NoFocus);
    m_view->viewport()->setFocusPolicy(Qt::NoFocus); // which the view gives to its viewport by itself
    setMinimumHeight(kLeastHeight);
    rebuild();
}

void BarChartView::setFigure(report::BarFigure figure)
{
    m_figure = inWords(std::move(figure));
    setAccessibleName(QString::fromStdString(m_figure.title));
    setAccessibleDescription(
        QString::fromStdString(m_figure.empty.empty() ? m_figure.spoken : m_figure.empty));
    rebuild();
}

void BarChartView::rebuild()
{
    const Theme& theme = Theme::of(this);
    const bool isEmpty = m_figure.bars.empty();
    m_nothing->setText(QString::fromStdString(m_figure.empty));
    m_nothing->setVisible(isEmpty);
    m_view->setVisible(!isEmpty);
    m_view->setMaximumHeight(kAroundTheRows + kMostOfARow * static_cast<int>(m_figure.bars.size()));
    const std::unique_ptr<QChart> last(m_view->chart());
    m_view->setChart(isEmpty ? new QChart : makeChart(m_figure, theme, {}));
}

void BarChartView::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange)
        rebuild();
    QWidget::changeEvent(event);
}

} // namespace sealwalk::render
