// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/key_card.h"

#include "ui/shell/key_table.h"
#include "ui/widgets/heading.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QVBoxLayout>

#include <span>

namespace sealwalk::ui {

namespace {

constexpr std::size_t kRowsOfAColumn = 16; ///< more would not go into a page of 640 px

QWidget* column(const QString& title, std::span<const KeyLine> lines, QWidget* parent)
{
    auto* widget = new QWidget(parent);
    auto* grid = new QGridLayout(widget);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(16);
    grid->setVerticalSpacing(6);
    auto* head = new QLabel(title, widget);
    head->setProperty("role", QStringLiteral("title"));
    grid->addWidget(head, 0, 0, 1, 2);
    int row = 1;
    for (const KeyLine& line : lines) {
        auto* keys = new QLabel(line.keys, widget);
        keys->setProperty("role", QStringLiteral("strong"));
        grid->addWidget(keys, row, 0, Qt::AlignTop);
        QLabel* does = quietLabel(line.does, widget, QString());
        does->setWordWrap(true);
        grid->addWidget(does, row, 1, Qt::AlignTop);
        ++row;
    }
    grid->setRowStretch(row, 1);
    grid->setColumnStretch(1, 1);
    return widget;
}

/// A long list goes into two columns.
void addColumns(QHBoxLayout* row, const QString& title, const std::vector<KeyLine>& lines, QWidget* parent)
{
    const std::span all(lines);
    if (all.size() <= kRowsOfAColumn + 4) {
        row->addWidget(column(title, all, parent), 1);
        return;
    }
    const std::size_t half = (all.size() + 1) / 2;
    row->addWidget(column(title, all.first(half), parent), 1);
    row->addWidget(column(QStringLiteral(" "), all.subspan(half), parent), 1);
}

} // namespace

KeyCard::KeyCard(Stage stage, QWidget* page)
    : QFrame(page)
    , m_before(page->focusWidget())
{
    setObjectName(QStringLiteral("keyCard"));
    setAccessibleName(tr("keys of %1").arg(stageTitle(stage)));
    setProperty("ground", QStringLiteral("field"));
    setAutoFillBackground(true);
    setFocusPolicy(Qt::StrongFocus);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(48, 32, 48, 32);
    row->setSpacing(40);
    addColumns(row, stageTitle(stage), keysOf(stage), this);
    addColumns(row, tr("Everywhere"), keysEverywhere(), this);
    setGeometry(page->rect());
    raise();
    show();
    setFocus();
}

void KeyCard::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        leave();
    else
        QFrame::keyPressEvent(event);
}

void KeyCard::leave()
{
    QWidget* before = m_before == nullptr ? parentWidget() : m_before.data();
    hide();
    deleteLater();
    before->setFocus();
}

void KeyCard::focusOutEvent(QFocusEvent* event)
{
    // Another window in front is no reason; work going on underneath is.
    if (event->reason() != Qt::ActiveWindowFocusReason && event->reason() != Qt::PopupFocusReason)
        deleteLater();
}

} // namespace sealwalk::ui
