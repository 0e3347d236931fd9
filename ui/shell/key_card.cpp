// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/key_card.h"

#include "ui/shell/key_table.h"
#include "ui/widgets/heading.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

QWidget* column(const QString& title, const std::vector<KeyLine>& lines, QWidget* parent)
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
        grid->addWidget(keys, row, 0);
        grid->addWidget(quietLabel(line.does, widget, QString()), row, 1);
        ++row;
    }
    grid->setRowStretch(row, 1);
    grid->setColumnStretch(1, 1);
    return widget;
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
    row->setSpacing(64);
    row->addWidget(column(stageTitle(stage), keysOf(stage), this), 1);
    row->addWidget(column(tr("Everywhere"), keysEverywhere(), this), 1);
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
