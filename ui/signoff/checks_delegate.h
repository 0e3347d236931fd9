// SPDX-License-Identifier: GPL-3.0-or-later
// One question in the list: block for its weight, question over answer, points at the right.
#pragma once

#include <QStyledItemDelegate>

namespace sealwalk::ui {

class ChecksDelegate : public QStyledItemDelegate
{
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace sealwalk::ui
