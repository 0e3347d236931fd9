// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/reminder_dialog.h"

#include "ui/render/icon.h"
#include "ui/sketch/edit_words.h"
#include "ui/sketch/joint_painter.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/widgets/heading.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace sealwalk::ui {

ReminderDialog::ReminderDialog(SketchDesk& desk, QWidget* parent)
    : QDialog(parent)
    , m_reminders(editing::reminders(desk.sketch(), reminderName))
{
    setWindowTitle(tr("Often forgotten"));
    auto* column = new QVBoxLayout(this);
    QLabel* lead = quietLabel(
        tr("Common practice, no published list. Choose what this object has and draw it; leave the "
           "rest."),
        this);
    lead->setWordWrap(true);
    column->addWidget(lead);
    m_list = new QTreeWidget(this);
    m_list->setAccessibleName(tr("Often forgotten"));
    m_list->setColumnCount(2);
    m_list->setHeaderHidden(true);
    m_list->setRootIsDecorated(false);
    m_list->setIconSize(QSize(18, 18));
    m_list->header()->setStretchLastSection(false);
    m_list->header()->setSectionResizeMode(0, QHeaderView::Stretch);
    m_list->header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    for (const editing::Reminder& reminder : m_reminders) {
        auto* item = new QTreeWidgetItem(m_list);
        item->setIcon(0, render::icon(iconOf(reminder.kind)));
        item->setText(0, reminderWords(reminder.what));
        item->setText(1, reminder.onSketch ? tr("drawn") : QString());
        item->setSizeHint(0, QSize(0, 30));
    }
    if (m_list->topLevelItemCount() > 0)
        m_list->setCurrentItem(m_list->topLevelItem(0));
    column->addWidget(m_list, 1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    auto* draw = buttons->addButton(tr("Draw it now"), QDialogButtonBox::AcceptRole);
    draw->setProperty("kind", QStringLiteral("primary"));
    draw->setEnabled(desk.isOpenForWork());
    connect(buttons, &QDialogButtonBox::accepted, this, &ReminderDialog::drawChosen);
    connect(buttons, &QDialogButtonBox::rejected, this, &ReminderDialog::reject);
    connect(m_list, &QTreeWidget::itemActivated, this, &ReminderDialog::drawChosen);
    column->addWidget(buttons);
    resize(520, 460);
}

void ReminderDialog::drawChosen()
{
    const int row = m_list->indexOfTopLevelItem(m_list->currentItem());
    if (row < 0)
        return;
    m_wanted = m_reminders[static_cast<std::size_t>(row)];
    accept();
}

} // namespace sealwalk::ui
