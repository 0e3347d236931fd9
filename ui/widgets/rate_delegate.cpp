// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/rate_delegate.h"

#include "ui/render/rate_painter.h"
#include "ui/render/theme.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QTextDocument>

#include <algorithm>

namespace sealwalk::ui {

namespace {

using render::Role;
using render::TextSize;

constexpr double kRangeWidth = 46.0; // "0.56–2.5"

} // namespace

void paintWithRates(QPainter& painter, const QRectF& where, const QString& text, const QColor& ink,
                    bool strong, Qt::Alignment alignment)
{
    QTextDocument document;
    document.setDefaultFont(
        render::font(TextSize::Text, strong ? render::Weight::Bold : render::Weight::Normal));
    document.setDocumentMargin(0);
    document.setDefaultStyleSheet(QStringLiteral("body { color: %1 }").arg(ink.name()));
    document.setHtml(QStringLiteral("<body>%1</body>").arg(render::rateHtml(text)));
    painter.save();
    painter.setClipRect(where);
    const double left =
        (alignment & Qt::AlignRight) != 0 ? where.right() - document.idealWidth() : where.left();
    painter.translate(left, where.center().y() - document.size().height() / 2.0);
    document.drawContents(&painter);
    painter.restore();
}

void RateDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const
{
    QStyleOptionViewItem plain = option;
    initStyleOption(&plain, index);
    plain.text.clear();
    plain.widget->style()->drawControl(QStyle::CE_ItemViewItem, &plain, painter, plain.widget);

    const render::Theme& theme = render::Theme::of(option.widget);
    const QRectF cell = QRectF(option.rect).adjusted(render::kGapTight, 0, -render::kGapTight, 0);
    const QString text = index.data().toString();
    const QString range = index.data(RangeRole).toString();
    painter->save();
    painter->setFont(render::font(TextSize::Caption));
    painter->setPen(theme.colour(Role::InkSoft));
    const double width = std::max<double>(kRangeWidth, painter->fontMetrics().horizontalAdvance(range));
    QRectF values = cell.adjusted(0, 0, -width - render::kGapNear, 0);
    if (!range.isEmpty())
        painter->drawText(QRectF(cell.right() - width, cell.top(), width, cell.height()),
                          Qt::AlignLeft | Qt::AlignVCenter, range);
    else if (QFontMetricsF(render::font(TextSize::Text)).horizontalAdvance(text) > values.width())
        values = cell; // words, such as "no such point"
    paintWithRates(*painter, values, text, theme.colour(Role::Ink), false, Qt::AlignRight);
    painter->restore();
}

} // namespace sealwalk::ui
