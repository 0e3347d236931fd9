// SPDX-License-Identifier: GPL-3.0-or-later
// A new passphrase for a key that is there: the old one, and the new one twice.
#pragma once

#include <QDialog>

class QDialogButtonBox;
class QLabel;
class QLineEdit;

namespace sealwalk::ui {

class PassphraseDialog : public QDialog
{
    Q_OBJECT

public:
    explicit PassphraseDialog(const QString& name, QWidget* parent = nullptr);
    [[nodiscard]] QString old() const;
    [[nodiscard]] QString passphrase() const;

private:
    void refresh();

    QLineEdit* m_old;
    QLineEdit* m_new;
    QLineEdit* m_again;
    QLabel* m_complaint;
    QDialogButtonBox* m_buttons;
};

} // namespace sealwalk::ui
