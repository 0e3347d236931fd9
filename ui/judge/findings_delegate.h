// SPDX-License-Identifier: GPL-3.0-or-later
// Cells of the findings table: plate and word, bold exponent, limit glyph and word.
#pragma once

#include <QStyledItemDelegate>

namespace sealwalk::ui {

class FindingsDelegate : public QStyledItemDelegate
{
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
};

} // namespace sealwalk::ui
