// SPDX-License-Identifier: GPL-3.0-or-later
// Somebody who signs in this history: name, role, qualification and the passphrase of their key.
#pragma once

#include "core/model/review.h"

#include <QDialog>

class QCheckBox;
class QComboBox;
class QDialogButtonBox;
class QLabel;
class QLineEdit;

namespace sealwalk::ui {

class PersonDialog : public QDialog
{
    Q_OBJECT

public:
    explicit PersonDialog(bool onePersonHistory, QWidget* parent = nullptr);
    [[nodiscard]] model::Person person() const;
    [[nodiscard]] QString passphrase() const;
    [[nodiscard]] bool onePersonHistory() const;

private:
    void refresh();

    QLineEdit* m_name;
    QComboBox* m_role;
    QLineEdit* m_qualification;
    QLineEdit* m_passphrase;
    QLineEdit* m_again;
    QCheckBox* m_onePerson;
    QLabel* m_complaint;
    QDialogButtonBox* m_buttons;
};

} // namespace sealwalk::ui
