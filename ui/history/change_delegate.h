// SPDX-License-Identifier: GPL-3.0-or-later
// The bar of a change on an axis of decades: full when both sides are measured, hollow with a core when one
// is a bound, a dashed box when the two cannot be compared.
#pragma once

#include <QStyledItemDelegate>

namespace sealwalk::ui {

class ChangeDelegate : public QStyledItemDelegate
{
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

protected:
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
};

} // namespace sealwalk::ui
