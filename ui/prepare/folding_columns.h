// SPDX-License-Identifier: GPL-3.0-or-later
// Columns side by side, each with its own scroll and dividers that may be dragged; under each other in one
// scroll where the page is too narrow for that.
#pragma once

#include <QList>
#include <QWidget>

class QScrollArea;
class QSplitter;
class QVBoxLayout;

namespace sealwalk::ui {

class FoldingColumns : public QWidget
{
    Q_OBJECT

public:
    /// Takes the columns over. `widths` are their first widths side by side, px.
    FoldingColumns(const QList<QWidget*>& columns, const QList<int>& widths, QWidget* parent = nullptr);
    [[nodiscard]] bool isFolded() const { return m_folded; }

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void fold(bool folded);

    QList<QWidget*> m_columns;
    QList<QScrollArea*> m_areas;
    QSplitter* m_split = nullptr;
    QScrollArea* m_one = nullptr;
    QVBoxLayout* m_stack = nullptr;
    bool m_folded = false;
};

} // namespace sealwalk::ui
