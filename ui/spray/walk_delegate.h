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
    /// At least so high, for fingers.
    void setTargetHeight(int pixels) { m_target = pixels; }
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    int m_target = 0;
};

} // namespace sealwalk::ui
