// SPDX-License-Identifier: GPL-3.0-or-later
// Which of several measurements is shown, and the button that makes it void.
#pragma once

#include <QWidget>

class QComboBox;
class QPushButton;

namespace sealwalk::ui {

/// Takes no room while there is nothing to choose from.
class RecordsRow : public QWidget
{
    Q_OBJECT

public:
    /// @param which     what a screen reader says of the list
    /// @param voidName  of the button; also what it is, "void this check"
    RecordsRow(const QString& which, const QString& voidName, QWidget* parent = nullptr);

    /// What is chosen stays chosen while there are as many as before; else `otherwise` is.
    void fill(const QStringList& names, int otherwise);
    /// -1 without any.
    [[nodiscard]] int index() const;
    [[nodiscard]] QPushButton& voiding() const { return *m_void; }
    /// After the button was shut under the hand.
    void focusList();

signals:
    void chosen(int index);
    void voidWanted();

private:
    QComboBox* m_which;
    QPushButton* m_void;
};

} // namespace sealwalk::ui
