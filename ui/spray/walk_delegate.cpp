// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/walk_delegate.h"

#include "ui/render/theme.h"
#include "ui/spray/walk_model.h"

#include <QPainter>

#include <algorithm>

namespace sealwalk::ui {

namespace {

using render::Role;
using render::TextSize;

constexpr double kNumberWidth = 44.0;
constexpr double kAnswerWidth = 66.0;
constexpr double kSignSize = 14.0;

void paintSign(QPainter& painter, const render::Theme& theme, const QPointF& c, int sign)
{
    const double r = kSignSize / 2.0;
    const auto pen = [&](Role role) { painter.setPen(QPen(theme.colour(role), 1.5)); };
    painter.setBrush(Qt::NoBrush);
    switch (sign) {
    case WalkModel::Open: {
        pen(Role::InkSoft);
        QPen dashed = painter.pen();
        dashed.setDashPattern({2.0, 2.0});
        painter.setPen(dashed);
        painter.drawEllipse(c, r - 1.5, r - 1.5);
        break;
    }
    case WalkModel::NoResponse:
        pen(Role::InkSoft);
        painter.drawPolygon(QPolygonF{
            {c.x() - r + 1, c.y() - r + 3}, {c.x() + r - 1, c.y() - r + 3}, {c.x(), c.y() + r - 2}});
        break;
    case WalkModel::Value:
        pen(Role::Ink);
        painter.drawPolygon(
            QPolygonF{{c.x(), c.y() - r}, {c.x() + r, c.y()}, {c.x(), c.y() + r}, {c.x() - r, c.y()}});
        painter.setBrush(theme.colour(Role::Ink));
        painter.drawEllipse(c, 1.2, 1.2);
        break;
    case WalkModel::Over:
    case WalkModel::AboveRange:
        pen(Role::Over);
        painter.setBrush(theme.colour(Role::Over));
        painter.drawPolygon(
            QPolygonF{{c.x(), c.y() - r}, {c.x() + r, c.y()}, {c.x(), c.y() + r}, {c.x() - r, c.y()}});
        break;
    case WalkModel::NotAccessible:
        pen(Role::NoAccess);
        painter.drawPolyline(QPolygonF{{c.x() + 1, c.y() - r + 1},
                                       {c.x() - r + 1, c.y() - r + 1},
                                       {c.x() - r + 1, c.y() + r - 1},
                                       {c.x() + r - 1, c.y() + r - 1},
                                       {c.x() + r - 1, c.y() - 1}});
        break;
    case WalkModel::NotTested:
        pen(Role::InkSoft);
        painter.drawLine(QPointF(c.x() - r + 1, c.y()), QPointF(c.x() + r - 1, c.y()));
        break;
    case WalkModel::Void:
        pen(Role::Void);
        painter.drawRect(QRectF(c.x() - r + 1, c.y() - r + 1, 2 * r - 2, 2 * r - 2));
        painter.drawLine(QPointF(c.x() - r + 1, c.y() - r + 1), QPointF(c.x() + r - 1, c.y() + r - 1));
        painter.drawLine(QPointF(c.x() - r + 1, c.y() + r - 1), QPointF(c.x() + r - 1, c.y() - r + 1));
        break;
    case WalkModel::PutOff: // comes round again
        pen(Role::InkSoft);
        for (const double at : {-4.0, 2.0})
            painter.drawPolyline(QPolygonF{{c.x() + at - 1.5, c.y() - r + 2},
                                           {c.x() + at + 3.5, c.y()},
                                           {c.x() + at - 1.5, c.y() + r - 2}});
        break;
    default:
        break;
    }
}

/// Something is lacking on the reading: a triangle with a stroke, beside the sign.
void paintGap(QPainter& painter, const render::Theme& theme, const QPointF& c)
{
    const double r = kSignSize / 2.0;
    painter.setPen(QPen(theme.colour(Role::Unsure), 1.5));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolygon(
        QPolygonF{{c.x(), c.y() - r + 0.5}, {c.x() + r, c.y() + r - 1.5}, {c.x() - r, c.y() + r - 1.5}});
    painter.drawLine(QPointF(c.x(), c.y() - 2.0), QPointF(c.x(), c.y() + 1.5));
    painter.drawPoint(QPointF(c.x(), c.y() + 3.5));
}

} // namespace

void WalkDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const
{
    const render::Theme& theme = render::Theme::of(option.widget);
    const QRectF row = option.rect;
    const bool called = index.data(WalkModel::IsCalledRole).toBool();
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (called) {
        painter->fillRect(row, theme.colour(Role::AccentWash));
        painter->fillRect(QRectF(row.left(), row.top(), 4, row.height()), theme.colour(Role::Accent));
    }
    // Within the row: what lies on the edge is lost when the row below is painted by itself.
    painter->fillRect(QRectF(row.left(), row.bottom() - 1.0, row.width(), 1.0), theme.colour(Role::Line));

    painter->setPen(theme.colour(Role::Ink));
    painter->setFont(render::font(TextSize::Title, render::Weight::Bold));
    painter->drawText(QRectF(row.left() + render::kGapApart, row.top(), kNumberWidth, row.height()),
                      Qt::AlignVCenter, index.data(WalkModel::NumberRole).toString());

    const double left = row.left() + render::kGapApart + kNumberWidth - 12;
    const double right = row.right() - render::kGapApart;
    const double signX = right - kAnswerWidth - kSignSize / 2;
    const bool hasGaps = !index.data(WalkModel::GapsRole).toString().isEmpty();
    const double gapX = signX - kSignSize - render::kGapTight;
    const bool isBare = index.data(WalkModel::SignRole).toInt() == WalkModel::Open &&
                        index.data(WalkModel::AnswerRole).toString().isEmpty();
    // Nothing to say yet: the name has the room of the answer.
    const double signAt = isBare ? right - kSignSize / 2 : signX;
    const double room = (hasGaps ? gapX : signAt) - kSignSize - left;
    const double lines = (row.height() - render::kWalkRow) / 2.0; // both in the middle of a high row
    const auto text = [&](int role, TextSize size, render::Weight weight, Role ink, double top,
                          double height) {
        painter->setFont(render::font(size, weight));
        painter->setPen(theme.colour(ink));
        const QString fitted = painter->fontMetrics().elidedText(index.data(role).toString(), Qt::ElideRight,
                                                                 static_cast<int>(room));
        painter->drawText(QRectF(left, row.top() + top, room, height), Qt::AlignVCenter, fitted);
    };
    text(WalkModel::JointRole, TextSize::Text, called ? render::Weight::Bold : render::Weight::Normal,
         Role::Ink, lines + 2, 16);
    text(WalkModel::PlaceRole, TextSize::Caption, render::Weight::Normal, Role::InkSoft, lines + 17, 14);

    paintSign(*painter, theme, {signAt, row.center().y()}, index.data(WalkModel::SignRole).toInt());
    if (hasGaps)
        paintGap(*painter, theme, {gapX, row.center().y()});
    painter->setFont(render::font(TextSize::Text));
    painter->setPen(theme.colour(Role::Ink));
    painter->drawText(QRectF(right - kAnswerWidth, row.top(), kAnswerWidth, row.height()),
                      Qt::AlignRight | Qt::AlignVCenter, index.data(WalkModel::AnswerRole).toString());
    painter->restore();
}

QSize WalkDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const
{
    return {1, std::max(render::kWalkRow, m_target)}; // as wide as the list
}

} // namespace sealwalk::ui
