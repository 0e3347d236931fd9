// SPDX-License-Identifier: GPL-3.0-or-later
// A leak rate in a table: its decade in bold, its 95 % range beside it, smaller and in soft ink.
#pragma once

#include <QStyledItemDelegate>

class QColor;
class QPainter;
class QRectF;

namespace sealwalk::ui {

/// Text with every exponent in bold: "3.5e−4 … 6.0e−4".
void paintWithRates(QPainter& painter, const QRectF& where, const QString& text, const QColor& ink,
                    bool strong, Qt::Alignment alignment);

/// Paints the display text, and after it what the model gives as RangeRole: "2.6–11", in the decade of the
/// value. Ranges of a column stand below each other, and so do the values.
class RateDelegate : public QStyledItemDelegate
{
    Q_OBJECT

public:
    static constexpr int RangeRole = Qt::UserRole + 100;

    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
};

} // namespace sealwalk::ui
