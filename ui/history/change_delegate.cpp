// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/change_delegate.h"

#include "ui/history/changes_model.h"
#include "ui/render/theme.h"

#include <QPainter>
#include <QSortFilterProxyModel>

#include <algorithm>

namespace sealwalk::ui {

namespace {

using analysis::Change;
using render::Role;

constexpr double kReach = 5.0; // decades either side
constexpr double kBar = 11.0;
constexpr double kBox = 26.0;
constexpr int kMargin = 8;

Role inkOf(Change change)
{
    switch (change) {
    case Change::New:
    case Change::Grown:
        return Role::Over;
    case Change::Gone:
    case Change::Shrunk:
        return Role::Within;
    case Change::Same:
    case Change::NotComparable:
        return Role::InkFaint;
    }
    return Role::InkFaint;
}

} // namespace

void ChangeDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const
{
    QStyledItemDelegate::paint(painter, option, index);
    const auto* model = qobject_cast<const ChangesModel*>(index.model());
    const analysis::ComparedPoint* point = model == nullptr ? nullptr : model->at(index.row());
    if (point == nullptr)
        return;
    const render::Theme& theme = render::Theme::of(option.widget);
    const QRectF room = QRectF(option.rect).adjusted(kMargin, 0, -kMargin, 0);
    const double perDecade = room.width() / (2.0 * kReach);
    const double zero = room.center().x();
    const double middle = room.center().y();
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing, false);
    painter->setPen(QPen(theme.colour(Role::Line), 1));
    for (int decade = -5; decade <= 5; ++decade)
        painter->drawLine(QPointF(zero + decade * perDecade, middle - 6),
                          QPointF(zero + decade * perDecade, middle + 6));
    const QColor ink = theme.colour(inkOf(point->change));
    if (point->change == Change::NotComparable) {
        QPen dashed(ink, 1);
        dashed.setDashPattern({3, 2});
        painter->setPen(dashed);
        painter->drawRect(QRectF(zero - kBox / 2, middle - kBar / 2, kBox, kBar));
    } else if (point->decades) {
        const double reach = std::clamp(*point->decades, -kReach, kReach) * perDecade;
        const QRectF bar =
            QRectF(QPointF(zero, middle - kBar / 2), QPointF(zero + reach, middle + kBar / 2)).normalized();
        if (point->atLeast) {
            painter->setPen(QPen(ink, 1.5));
            painter->drawRect(bar);
            painter->fillRect(bar.adjusted(0, kBar / 2 - 1.5, 0, -kBar / 2 + 1.5), ink);
        } else {
            painter->fillRect(bar, ink);
        }
    }
    QPen axis(theme.colour(Role::Ink), 1);
    axis.setDashPattern({3, 2});
    painter->setPen(axis);
    painter->drawLine(QPointF(zero, option.rect.top()), QPointF(zero, option.rect.bottom()));
    painter->restore();
}

} // namespace sealwalk::ui
