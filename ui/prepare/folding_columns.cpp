// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/folding_columns.h"

#include "ui/render/theme.h"

#include <QResizeEvent>
#include <QScrollArea>
#include <QSplitter>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

QScrollArea* scrollArea(QWidget* parent)
{
    auto* area = new QScrollArea(parent);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFocusPolicy(Qt::NoFocus);
    return area;
}

} // namespace

FoldingColumns::FoldingColumns(const QList<QWidget*>& columns, const QList<int>& widths, QWidget* parent)
    : QWidget(parent)
    , m_columns(columns)
    , m_split(new QSplitter(Qt::Horizontal, this))
    , m_one(scrollArea(this))
{
    m_split->setChildrenCollapsible(false);
    for (QWidget* column : m_columns) {
        QScrollArea* area = scrollArea(m_split);
        area->setWidget(column);
        // Field after field by Tab must bring each into sight.
        area->setMinimumWidth(column->minimumSizeHint().width());
        m_areas << area;
        m_split->addWidget(area);
    }
    m_split->setSizes(widths);
    auto* stack = new QWidget(m_one);
    m_stack = new QVBoxLayout(stack);
    m_stack->setContentsMargins(0, 0, 0, 0);
    m_one->setWidget(stack);
    m_one->hide();
    // No layout: the dividers' least width must not hold the page wider than its window.
    m_split->setGeometry(rect());
}

void FoldingColumns::fold(bool folded)
{
    if (folded == m_folded)
        return;
    m_folded = folded;
    QWidget* focused = focusWidget();
    for (qsizetype i = 0; i < m_columns.size(); ++i) {
        if (folded) {
            m_stack->addWidget(m_areas[i]->takeWidget());
        } else {
            m_stack->removeWidget(m_columns[i]);
            m_areas[i]->setWidget(m_columns[i]);
        }
        m_columns[i]->show();
    }
    m_one->setVisible(folded);
    m_split->setVisible(!folded);
    if (focused != nullptr)
        focused->setFocus();
}

void FoldingColumns::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fold(event->size().width() < render::kListsNeed);
    m_split->setGeometry(rect());
    m_one->setGeometry(rect());
}

} // namespace sealwalk::ui
