// SPDX-License-Identifier: GPL-3.0-or-later
// What is known now of a job that is signed, and who vouches for it. The record itself stays as it is.
#pragma once

#include "core/model/review.h"

#include <QDialog>

#include <optional>

class QComboBox;
class QDialogButtonBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;

namespace sealwalk::ui {

class JobSession;
class Signing;

class AmendmentDialog : public QDialog
{
    Q_OBJECT

public:
    /// For the signed job that is open; closes itself when the amendment is on disk.
    AmendmentDialog(JobSession& session, Signing& signing, QWidget* parent = nullptr);

    void reject() override;

private:
    void refresh();
    void seal();
    void onFinished(const std::optional<Error>& problem);

    Signing& m_signing;
    QPlainTextEdit* m_text;
    QComboBox* m_person;
    QLineEdit* m_passphrase;
    QLabel* m_refusal;
    QDialogButtonBox* m_buttons;
};

} // namespace sealwalk::ui
