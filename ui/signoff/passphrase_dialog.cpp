// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/signoff/passphrase_dialog.h"

#include "ui/signoff/new_passphrase.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace sealwalk::ui {

PassphraseDialog::PassphraseDialog(const QString& name, QWidget* parent)
    : QDialog(parent)
    , m_old(new QLineEdit(this))
    , m_new(new QLineEdit(this))
    , m_again(new QLineEdit(this))
    , m_complaint(new QLabel(this))
    , m_buttons(new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this))
{
    setWindowTitle(tr("Passphrase of %1").arg(name));
    m_old->setObjectName(QStringLiteral("oldPassphrase"));
    m_new->setObjectName(QStringLiteral("nextPassphrase"));
    m_again->setObjectName(QStringLiteral("nextPassphraseAgain"));
    m_complaint->setWordWrap(true);
    auto* form = new QFormLayout(this);
    form->addRow(tr("&Old passphrase"), m_old);
    form->addRow(tr("&New passphrase"), m_new);
    form->addRow(tr("New passphrase &again"), m_again);
    form->addRow(m_complaint);
    form->addRow(m_buttons);
    for (QLineEdit* field : {m_old, m_new, m_again}) {
        field->setEchoMode(QLineEdit::Password);
        connect(field, &QLineEdit::textChanged, this, &PassphraseDialog::refresh);
    }
    connect(m_buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(m_buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    refresh();
}

void PassphraseDialog::refresh()
{
    QString complaint;
    if (m_old->text().isEmpty())
        complaint = tr("The old passphrase opens the key.");
    else
        complaint = complaintAboutNewPassphrase(m_new->text(), m_again->text());
    m_complaint->setText(complaint);
    m_buttons->button(QDialogButtonBox::Ok)->setEnabled(complaint.isEmpty());
}

QString PassphraseDialog::old() const
{
    return m_old->text();
}

QString PassphraseDialog::passphrase() const
{
    return m_new->text();
}

} // namespace sealwalk::ui
