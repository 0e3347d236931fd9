// SPDX-License-Identifier: GPL-3.0-or-later
// Which findings are shown, and in which order.
#pragma once

#include <QSortFilterProxyModel>

namespace sealwalk::ui {

class FindingsFilter : public QSortFilterProxyModel
{
    Q_OBJECT

public:
    enum Show
    {
        NeedsDecision,
        Over,
        CannotSay,
        NoAnswer,
        Everything
    };

    explicit FindingsFilter(QObject* parent = nullptr);
    void setShown(Show show);
    void setTyped(const QString& text);
    /// How many findings `show` lets through, whatever was typed.
    [[nodiscard]] int count(Show show) const;

protected:
    [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex& parent) const override;

private:
    [[nodiscard]] bool isShown(Show show, int row, const QModelIndex& parent = {}) const;

    Show m_show = NeedsDecision;
    QString m_typed;
};

} // namespace sealwalk::ui
