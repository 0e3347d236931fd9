// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/judge/findings_delegate.h"

#include "ui/judge/findings_model.h"
#include "ui/render/plate_painter.h"
#include "ui/render/theme.h"
#include "ui/widgets/rate_delegate.h"

#include <QPainter>

namespace sealwalk::ui {

namespace {

using render::Role;
using render::TextSize;

constexpr double kPlate = 16.0;
constexpr double kGlyph = 22.0;

} // namespace

void FindingsDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                             const QModelIndex& index) const
{
    const int column = index.column();
    if (column == FindingsModel::RepairColumn) {
        QStyledItemDelegate::paint(painter, option, index);
        return;
    }
    QStyleOptionViewItem plain = option;
    initStyleOption(&plain, index);
    plain.text.clear();
    plain.widget->style()->drawControl(QStyle::CE_ItemViewItem, &plain, painter, plain.widget);

    const render::Theme& theme = render::Theme::of(option.widget);
    const QString text = index.data().toString();
    const QRectF cell = QRectF(option.rect).adjusted(render::kGapTight + 2, 0, -render::kGapTight - 2, 0);
    const auto verdict = static_cast<analysis::Verdict>(index.data(FindingsModel::VerdictRole).toInt());
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const auto words = [&](const QRectF& where, const QString& shown, Role ink, render::Weight weight) {
        painter->setFont(render::font(TextSize::Text, weight));
        painter->setPen(theme.colour(ink));
        painter->drawText(
            where, static_cast<int>(Qt::AlignVCenter | Qt::AlignLeft),
            painter->fontMetrics().elidedText(shown, Qt::ElideRight, static_cast<int>(where.width())));
    };
    switch (column) {
    case FindingsModel::PointColumn:
        words(cell, text, Role::Ink, render::Weight::Bold);
        break;
    case FindingsModel::JointColumn: {
        words(cell, text, Role::Ink, render::Weight::Normal);
        const double used = painter->fontMetrics().horizontalAdvance(text) + render::kGapTight;
        words(cell.adjusted(used, 0, 0, 0), index.data(FindingsModel::PlaceRole).toString(), Role::InkSoft,
              render::Weight::Normal);
        break;
    }
    case FindingsModel::FindingColumn: {
        render::PlateLook look;
        look.state = static_cast<report::PointState>(index.data(FindingsModel::StateRole).toInt());
        look.teeth = static_cast<report::Teeth>(index.data(FindingsModel::TeethRole).toInt());
        look.temporary = index.data(FindingsModel::TemporaryRole).toBool();
        look.conceded = index.data(FindingsModel::ConcededRole).toBool();
        render::paintPlate(*painter, theme, look, QPointF(cell.left() + kPlate / 2 + 2, cell.center().y()),
                           kPlate);
        words(cell.adjusted(kPlate + render::kGapNear, 0, 0, 0), text, Role::Ink, render::Weight::Normal);
        break;
    }
    case FindingsModel::RateColumn:
        paintWithRates(*painter, cell, text, theme.colour(Role::Ink), true, Qt::AlignRight);
        break;
    case FindingsModel::RangeColumn:
        paintWithRates(*painter, cell, text, theme.colour(Role::InkSoft), false, Qt::AlignLeft);
        break;
    case FindingsModel::LimitColumn:
        render::paintLimitGlyph(*painter, theme, verdict,
                                QRectF(cell.left(), cell.center().y() - kGlyph / 2, kGlyph, kGlyph));
        painter->setFont(render::font(TextSize::Text, render::Weight::Bold));
        painter->setPen(render::verdictColour(theme, verdict));
        painter->drawText(cell.adjusted(kGlyph + render::kGapTight, 0, 0, 0), Qt::AlignVCenter, text);
        break;
    default:
        painter->setFont(render::font(TextSize::Text));
        painter->setPen(theme.colour(Role::Ink));
        painter->drawText(cell, static_cast<int>(Qt::AlignVCenter | Qt::AlignRight), text);
        break;
    }
    painter->restore();
}

} // namespace sealwalk::ui
