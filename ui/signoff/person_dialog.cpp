// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/signoff/person_dialog.h"

#include "ui/signoff/new_passphrase.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace sealwalk::ui {

PersonDialog::PersonDialog(bool onePersonHistory, QWidget* parent)
    : QDialog(parent)
    , m_name(new QLineEdit(this))
    , m_role(new QComboBox(this))
    , m_qualification(new QLineEdit(this))
    , m_passphrase(new QLineEdit(this))
    , m_again(new QLineEdit(this))
    , m_onePerson(new QCheckBox(tr("One person keeps this history: who tests may approve too"), this))
    , m_complaint(new QLabel(this))
    , m_buttons(new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this))
{
    setWindowTitle(tr("New person"));
    m_role->addItem(tr("reviewer"), QStringLiteral("reviewer"));
    m_role->addItem(tr("technician"), QStringLiteral("technician"));
    m_role->addItem(tr("both"), QStringLiteral("both"));
    m_passphrase->setEchoMode(QLineEdit::Password);
    m_again->setEchoMode(QLineEdit::Password);
    m_onePerson->setChecked(onePersonHistory);
    m_name->setObjectName(QStringLiteral("personName"));
    m_passphrase->setObjectName(QStringLiteral("newPassphrase"));
    m_again->setObjectName(QStringLiteral("newPassphraseAgain"));
    m_complaint->setWordWrap(true);

    auto* lost = new QLabel(
        tr("The passphrase opens this person's signing key. Nobody can bring it back: when it is lost, "
           "signatures made so far stay valid and a new person is added."),
        this);
    lost->setWordWrap(true);
    auto* form = new QFormLayout(this);
    form->addRow(tr("&Name"), m_name);
    form->addRow(tr("&Role"), m_role);
    form->addRow(tr("&Qualification"), m_qualification);
    form->addRow(tr("&Passphrase"), m_passphrase);
    form->addRow(tr("Passphrase &again"), m_again);
    form->addRow(m_onePerson);
    form->addRow(lost);
    form->addRow(m_complaint);
    form->addRow(m_buttons);
    for (QLineEdit* field : {m_name, m_passphrase, m_again})
        connect(field, &QLineEdit::textChanged, this, &PersonDialog::refresh);
    connect(m_buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(m_buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    refresh();
}

void PersonDialog::refresh()
{
    QString complaint;
    if (m_name->text().trimmed().isEmpty())
        complaint = tr("A name is needed.");
    else
        complaint = complaintAboutNewPassphrase(m_passphrase->text(), m_again->text());
    m_complaint->setText(complaint);
    m_buttons->button(QDialogButtonBox::Ok)->setEnabled(complaint.isEmpty());
}

model::Person PersonDialog::person() const
{
    model::Person person;
    person.name = m_name->text().trimmed().toStdString();
    person.role = m_role->currentData().toString().toStdString();
    person.qualification = m_qualification->text().trimmed().toStdString();
    return person;
}

QString PersonDialog::passphrase() const
{
    return m_passphrase->text();
}

bool PersonDialog::onePersonHistory() const
{
    return m_onePerson->isChecked();
}

} // namespace sealwalk::ui
