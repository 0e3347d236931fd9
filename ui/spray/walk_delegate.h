// SPDX-License-Identifier: GPL-3.0-or-later
// One row of the walk: number, joint over place, sign, answer.
#pragma once

#include <QStyledItemDelegate>

namespace sealwalk::ui {

class WalkDelegate : public QStyledItemDelegate
{
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace sealwalk::ui
