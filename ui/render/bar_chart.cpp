// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/bar_chart.h"

#include "core/report/rate_text.h"
#include "ui/render/core_words.h"
#include "ui/render/hatch.h"

#include <QBarCategoryAxis>
#include <QBarSet>
#include <QChart>
#include <QChartView>
#include <QEvent>
#include <QFontMetricsF>
#include <QGraphicsLayout>
#include <QGraphicsScene>
#include <QHorizontalStackedBarSeries>
#include <QPainter>
#include <QTextOption>
#include <QVBoxLayout>
#include <QValueAxis>

#include <algorithm>
#include <cmath>
#include <memory>

namespace sealwalk::render {

namespace {

using report::Bar;
using report::BarFigure;
using report::BarPart;

constexpr double kBarShare = 0.62; // of the room between two bars
constexpr int kLeastHeight = 116;  // lower, the chart shortens every figure of its axis to dots

/// Power of ten taken out of the axis figures.
int axisExponent(double highest)
{
    return highest > 0.0 ? static_cast<int>(std::floor(std::log10(highest))) : 0;
}

/// Whiskers, limits, hatches and words over the bars, placed by the chart's own coordinates.
class BarOverlay : public QGraphicsItem
{
public:
    BarOverlay(QChart* chart, const BarFigure& figure, const Theme& theme, const FigureStyle& style,
               double divisor)
        : QGraphicsItem(chart)
        , m_chart(chart)
        , m_figure(figure)
        , m_theme(theme)
        , m_style(style)
        , m_divisor(divisor)
    {
        setZValue(20);
    }

    [[nodiscard]] QRectF boundingRect() const override { return m_chart->rect(); }

    void paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) override
    {
        painter->setRenderHint(QPainter::Antialiasing);
        for (std::size_t i = 0; i < m_figure.bars.size(); ++i)
            paintBar(*painter, i);
        paintLimits(*painter);
    }

private:
    /// Bars are categories counted from below; ours run from the top.
    [[nodiscard]] QPointF at(double value, std::size_t bar, double aside = 0.0) const
    {
        const double row = static_cast<double>(m_figure.bars.size() - 1 - bar) + aside;
        return m_chart->mapToPosition(QPointF(value / m_divisor, row));
    }

    void paintBar(QPainter& painter, std::size_t index) const
    {
        const Bar& bar = m_figure.bars[index];
        const double u = m_style.unit;
        const QFont face = fontOfPixels(m_style.text);
        const QFont bold = fontOfPixels(m_style.text, Weight::Bold);
        double sum = 0.0;
        for (const BarPart& part : bar.parts) {
            const QPointF low = at(sum, index, kBarShare / 2.0);
            const QPointF high = at(sum + part.value, index, -kBarShare / 2.0);
            const QRectF room = QRectF(low, high).normalized();
            sum += part.value;
            const bool missing = part.kind == BarPart::Kind::Missing;
            if (missing) {
                painter.setPen(QPen(m_theme.colour(Role::Unsure), 1.6 * u));
                painter.drawLines(hatchLines(QPolygonF(room), 45.0, 5.0 * u));
                painter.setBrush(Qt::NoBrush);
                painter.drawRect(room);
            }
            const QFontMetricsF metrics(part.heat || missing ? bold : face);
            const QString text = QString::fromStdString(part.label);
            const double width = metrics.horizontalAdvance(text);
            if (width + 6 * u > room.width())
                continue;
            QColor ink = m_theme.colour(Role::Ink);
            if (missing) {
                const QRectF plate(room.center() - QPointF(width / 2 + 4 * u, metrics.height() / 2),
                                   QSizeF(width + 8 * u, metrics.height()));
                painter.fillRect(plate, m_theme.colour(Role::Plate));
                ink = m_theme.colour(Role::Unsure);
            } else if (part.heat) {
                const QColor ground = m_theme.heat(*part.heat);
                ink = ground.lightnessF() > 0.55F ? QColor(0x14, 0x18, 0x1A) : QColor(0xFB, 0xFA, 0xF6);
            }
            painter.setPen(ink);
            painter.setFont(part.heat || missing ? bold : face);
            QTextOption where((missing ? Qt::AlignHCenter : Qt::AlignLeft) | Qt::AlignVCenter);
            where.setWrapMode(QTextOption::NoWrap);
            painter.drawText(missing ? room : room.adjusted(6 * u, 0, 0, 0), text, where);
        }
        if (bar.low && bar.high && *bar.high > *bar.low) {
            // Below the bar where something follows it, in its middle where it stands alone.
            const double aside = bar.parts.size() > 1 ? -kBarShare / 2.0 - 0.12 : 0.0;
            const QPointF low = at(*bar.low, index, aside);
            const QPointF high = at(*bar.high, index, aside);
            painter.setPen(QPen(m_theme.colour(Role::Ink), 1.5 * u, Qt::SolidLine, Qt::FlatCap));
            painter.drawLine(low, high);
            for (const QPointF& end : {low, high})
                painter.drawLine(QLineF(end - QPointF(0, 4 * u), end + QPointF(0, 4 * u)));
        }
        if (!bar.total.empty()) {
            painter.setPen(m_theme.colour(Role::Ink));
            painter.setFont(fontOfPixels(m_style.text * 13.0 / 11.0, Weight::Bold));
            const QPointF end = at(sum, index);
            painter.drawText(QRectF(end.x() + 5 * u, end.y() - 12 * u, 90 * u, 24 * u),
                             Qt::AlignLeft | Qt::AlignVCenter, QString::fromStdString(bar.total));
        }
    }

    void paintLimits(QPainter& painter) const
    {
        const double u = m_style.unit;
        const QRectF plot = m_chart->plotArea();
        painter.setFont(fontOfPixels(m_style.text, Weight::Bold));
        const QFontMetricsF metrics(painter.font());
        for (const BarFigure::Limit& limit : m_figure.limits) {
            const double x = at(limit.at, 0).x();
            QPen pen(m_theme.colour(Role::Ink), 2.0 * u, Qt::SolidLine, Qt::FlatCap);
            if (limit.dashed)
                pen.setDashPattern({3.0, 1.5});
            painter.setPen(pen);
            painter.drawLine(QLineF(x, plot.top() - 2 * u, x, plot.bottom()));
            const QString text = QString::fromStdString(limit.text);
            const double width = metrics.horizontalAdvance(text);
            const QRectF whole = m_chart->rect();
            const double left = std::clamp(x - width / 2.0, whole.left() + 2 * u,
                                           std::max(whole.left() + 2 * u, whole.right() - width - 2 * u));
            painter.drawText(QPointF(left, plot.top() - 5 * u), text);
        }
    }

    QChart* m_chart;
    BarFigure m_figure;
    const Theme& m_theme;
    FigureStyle m_style;
    double m_divisor;
};

QChart* makeChart(const BarFigure& figure, const Theme& theme, const FigureStyle& style)
{
    auto* chart = new QChart; // owned by the view or scene it is given to
    const double highest = figure.highest();
    const int exponent = axisExponent(highest);
    const double divisor = std::pow(10.0, exponent);
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
                set->append(k == rows - 1 - row ? part.value / divisor : 0.0);
            QColor fill = theme.colour(Role::Line);
            QColor edge = theme.colour(Role::Edge);
            if (part.heat)
                fill = edge = theme.heat(*part.heat);
            else if (part.kind != BarPart::Kind::Plain)
                fill = theme.colour(part.kind == BarPart::Kind::Hollow ? Role::Field : Role::Panel);
            if (part.kind == BarPart::Kind::Hollow)
                edge = theme.colour(Role::Ink);
            set->setBrush(fill);
            set->setPen(QPen(edge, style.unit));
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
    const double top = std::ceil(highest / divisor * 1.12 * 2.0) / 2.0;
    valueAxis->setRange(0.0, std::max(top, 1.0));
    valueAxis->setTickType(QValueAxis::TicksDynamic);
    valueAxis->setTickAnchor(0.0);
    valueAxis->setTickInterval(top > 5.0 ? 2.0 : 1.0);
    valueAxis->setLabelFormat(QStringLiteral("%g"));
    valueAxis->setLabelsFont(face);
    valueAxis->setLabelsColor(theme.colour(Role::InkSoft));
    valueAxis->setTitleFont(face);
    valueAxis->setTitleBrush(theme.colour(Role::InkSoft));
    const QString power =
        exponent < 0 ? QStringLiteral("1e\u2212%1").arg(-exponent) : QStringLiteral("1e%1").arg(exponent);
    valueAxis->setTitleText(QStringLiteral("\u00D7 %1 %2").arg(power, QString::fromStdString(figure.unit)));
    valueAxis->setGridLinePen(QPen(theme.colour(Role::SheetGrid), style.unit));
    valueAxis->setLinePen(QPen(theme.colour(Role::Line), style.unit));
    chart->addAxis(valueAxis, Qt::AlignBottom);
    series->attachAxis(valueAxis);
    new BarOverlay(chart, figure, theme, style, divisor); // a child of the chart
    return chart;
}

void paintEmpty(QPainter& painter, const Theme& theme, const BarFigure& figure, const QRectF& where,
                const FigureStyle& style)
{
    painter.setPen(theme.colour(Role::InkSoft));
    painter.setFont(fontOfPixels(style.text));
    painter.drawText(where, Qt::AlignCenter | Qt::TextWordWrap, QString::fromStdString(figure.empty));
}

} // namespace

BarChartView::BarChartView(QWidget* parent)
    : QWidget(parent)
    , m_view(new QChartView(this))
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_view);
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
    QChart* chart = nullptr;
    if (m_figure.bars.empty()) {
        chart = new QChart;
        chart->setBackgroundVisible(false);
        chart->setTitleFont(render::font(TextSize::Text));
        chart->setTitleBrush(theme.colour(Role::InkSoft));
        chart->setTitle(QString::fromStdString(m_figure.empty));
    } else {
        chart = makeChart(m_figure, theme, {});
    }
    const std::unique_ptr<QChart> last(m_view->chart());
    m_view->setChart(chart);
}

void BarChartView::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange)
        rebuild();
    QWidget::changeEvent(event);
}

void paintBars(QPainter& painter, const Theme& theme, const BarFigure& figure, const QRectF& where,
               const FigureStyle& style)
{
    painter.save();
    if (figure.bars.empty()) {
        paintEmpty(painter, theme, figure, where, style);
    } else {
        QGraphicsScene scene;
        QChart* chart = makeChart(figure, theme, style);
        scene.addItem(chart);
        chart->resize(where.size());
        scene.setSceneRect(QRectF(QPointF(), where.size()));
        painter.setRenderHint(QPainter::Antialiasing);
        scene.render(&painter, where, scene.sceneRect());
    }
    painter.restore();
}

} // namespace sealwalk::render
