// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/reminder_dialog.h"

#include "ui/render/core_words.h"
#include "ui/render/icon.h"
#include "ui/session/job_session.h"
#include "ui/sketch/edit_words.h"
#include "ui/sketch/joint_painter.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/widgets/below_field.h"
#include "ui/widgets/heading.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

ReminderDialog::ReminderDialog(SketchDesk& desk, QWidget* parent)
    : QDialog(parent)
    , m_desk(desk)
{
    setWindowTitle(tr("Often forgotten"));
    auto* column = new QVBoxLayout(this);
    QLabel* lead = quietLabel(
        tr("Common practice, no published list. Draw what this object has; what it has not is said for the "
           "record, and no longer reminded of in this job."),
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
    column->addWidget(m_list, 1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    auto* draw = buttons->addButton(tr("Draw it now"), QDialogButtonBox::AcceptRole);
    draw->setProperty("kind", QStringLiteral("primary"));
    draw->setEnabled(desk.isOpenForWork());
    m_none = buttons->addButton(tr("There is &none"), QDialogButtonBox::ActionRole);
    m_none->setObjectName(QStringLiteral("notThere"));
    connect(m_none, &QPushButton::clicked, this, &ReminderDialog::sayNone);
    connect(m_list, &QTreeWidget::currentItemChanged, this, &ReminderDialog::allow);
    connect(buttons, &QDialogButtonBox::accepted, this, &ReminderDialog::drawChosen);
    connect(buttons, &QDialogButtonBox::rejected, this, &ReminderDialog::reject);
    connect(m_list, &QTreeWidget::itemActivated, this, &ReminderDialog::drawChosen);
    m_says = makeBelowField(this);
    column->addWidget(m_says);
    column->addWidget(buttons);
    resize(520, 460);
    fill(0);
}

void ReminderDialog::fill(int row)
{
    if (m_desk.session().hasJob())
        m_reminders = editing::reminders(m_desk.session().job(), reminderName);
    m_list->clear();
    for (const editing::Reminder& reminder : m_reminders) {
        auto* item = new QTreeWidgetItem(m_list);
        item->setIcon(0, render::icon(iconOf(reminder.kind)));
        item->setText(0, reminderWords(reminder.what));
        item->setText(1, reminder.onSketch ? tr("drawn") : reminder.isAbsent ? tr("not there") : QString());
        item->setSizeHint(0, QSize(0, 30));
    }
    if (m_list->topLevelItemCount() > 0)
        m_list->setCurrentItem(m_list->topLevelItem(std::min(row, m_list->topLevelItemCount() - 1)));
    allow();
}

const editing::Reminder* ReminderDialog::chosen() const
{
    const int row = m_list->indexOfTopLevelItem(m_list->currentItem());
    const bool any = row >= 0 && static_cast<std::size_t>(row) < m_reminders.size();
    return any ? &m_reminders[static_cast<std::size_t>(row)] : nullptr;
}

void ReminderDialog::allow()
{
    const editing::Reminder* reminder = chosen();
    m_none->setEnabled(m_desk.isOpenForWork() && reminder != nullptr && !reminder->onSketch);
    m_none->setText(reminder != nullptr && reminder->isAbsent ? tr("There is &one") : tr("There is &none"));
}

/// A word of whoever is at the window: it stands in the record.
void ReminderDialog::sayNone()
{
    const editing::Reminder* reminder = chosen();
    if (reminder == nullptr)
        return;
    if (m_desk.session().logger().isEmpty())
        emit nameWanted();
    if (m_desk.session().logger().isEmpty()) {
        showComplaint(m_says, m_list, tr("It stands under a name; nobody was named."));
        return;
    }
    const int row = m_list->indexOfTopLevelItem(m_list->currentItem());
    const Status stored = m_desk.session().remark(
        m_desk.session().logger().toStdString(), std::string(reminder->what), std::nullopt,
        std::string(reminder->isAbsent ? model::kThereAfterAll : model::kNotThere));
    showComplaint(m_says, m_list, stored ? QString() : render::inSentence(stored.error()));
    if (stored)
        fill(row); // those that are settled go to the end: the next one is here now
}

void ReminderDialog::drawChosen()
{
    const editing::Reminder* reminder = chosen();
    if (reminder == nullptr)
        return;
    m_wanted = *reminder;
    accept();
}

} // namespace sealwalk::ui
