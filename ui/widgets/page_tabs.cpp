// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/page_tabs.h"

#include <QShortcut>
#include <QSplitter>
#include <QTabBar>

#include <algorithm>

namespace sealwalk::ui {

PageTabs::PageTabs(QWidget* body, std::vector<Part> parts, int needs, QWidget* parent)
    : QWidget(parent)
    , m_body(body)
    , m_parts(std::move(parts))
    , m_needs(needs)
    , m_tabs(new QTabBar(this))
{
    m_body->setParent(this);
    m_tabs->setDrawBase(false);
    m_tabs->setExpanding(false);
    m_tabs->setAccessibleName(tr("Parts of this page"));
    m_tabs->setObjectName(QStringLiteral("pageTabs"));
    for (const Part& part : m_parts)
        m_tabs->addTab(part.title);
    m_tabs->hide();
    auto* turn = new QShortcut(Qt::CTRL | Qt::Key_M, this);
    turn->setContext(Qt::WidgetWithChildrenShortcut);
    connect(turn, &QShortcut::activated, this, &PageTabs::next);
    connect(m_tabs, &QTabBar::currentChanged, this, [this](int index) {
        showParts();
        if (m_narrow)
            emit turned(m_parts[static_cast<std::size_t>(index)].widget);
    });
}

void PageTabs::bringUp(const QWidget* widget)
{
    const auto part = std::find_if(m_parts.begin(), m_parts.end(), [&](const Part& candidate) {
        return candidate.widget == widget || candidate.widget->isAncestorOf(widget);
    });
    if (part != m_parts.end())
        m_tabs->setCurrentIndex(static_cast<int>(part - m_parts.begin()));
}

void PageTabs::next()
{
    if (m_narrow)
        m_tabs->setCurrentIndex((m_tabs->currentIndex() + 1) % m_tabs->count());
}

void PageTabs::showParts()
{
    const auto front = static_cast<std::size_t>(std::max(0, m_tabs->currentIndex()));
    for (std::size_t i = 0; i < m_parts.size(); ++i)
        m_parts[i].widget->setVisible(!m_narrow || i == front);
    // A splitter with nothing left to show would keep its share of the page.
    for (QSplitter* splitter : m_body->findChildren<QSplitter*>()) {
        const bool holdsPart = std::any_of(m_parts.begin(), m_parts.end(), [&](const Part& part) {
            return splitter->isAncestorOf(part.widget);
        });
        if (holdsPart)
            splitter->setVisible(!m_narrow || splitter->isAncestorOf(m_parts[front].widget));
    }
}

void PageTabs::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

/// No layout: what the parts need side by side must not hold the page wider than its window.
void PageTabs::arrange()
{
    const bool narrow = width() < m_needs;
    if (narrow != m_narrow) {
        m_narrow = narrow;
        m_tabs->setVisible(narrow);
        emit narrowed(narrow);
        showParts();
    }
    const int above = narrow ? m_tabs->sizeHint().height() : 0;
    m_tabs->setGeometry(0, 0, width(), above);
    m_body->setGeometry(0, above, width(), height() - above);
}

} // namespace sealwalk::ui
