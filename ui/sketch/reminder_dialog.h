// SPDX-License-Identifier: GPL-3.0-or-later
// What is usually forgotten, one line each: draw it now, or it is not on this object.
#pragma once

#include "core/editing/reminders.h"

#include <QDialog>

#include <optional>

class QLabel;
class QPushButton;
class QTreeWidget;

namespace sealwalk::ui {

class SketchDesk;

class ReminderDialog : public QDialog
{
    Q_OBJECT

public:
    explicit ReminderDialog(SketchDesk& desk, QWidget* parent = nullptr);
    /// What was chosen to be drawn now.
    [[nodiscard]] const std::optional<editing::Reminder>& wanted() const { return m_wanted; }

signals:
    void nameWanted(); ///< answered before it returns

private:
    void fill(int row);
    [[nodiscard]] const editing::Reminder* chosen() const;
    void allow();
    void sayNone();
    void drawChosen();

    SketchDesk& m_desk;
    std::vector<editing::Reminder> m_reminders;
    QTreeWidget* m_list = nullptr;
    QLabel* m_says = nullptr; ///< why a word was not stored
    QPushButton* m_none = nullptr;
    std::optional<editing::Reminder> m_wanted;
};

} // namespace sealwalk::ui
