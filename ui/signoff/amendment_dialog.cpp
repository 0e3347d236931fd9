// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/signoff/amendment_dialog.h"

#include "ui/render/core_words.h"
#include "ui/session/job_session.h"
#include "ui/session/signing.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>

namespace sealwalk::ui {

AmendmentDialog::AmendmentDialog(JobSession& session, Signing& signing, QWidget* parent)
    : QDialog(parent)
    , m_signing(signing)
    , m_text(new QPlainTextEdit(this))
    , m_person(new QComboBox(this))
    , m_passphrase(new QLineEdit(this))
    , m_refusal(new QLabel(this))
    , m_buttons(new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this))
{
    setWindowTitle(tr("Amendment to job %1").arg(session.job().number));
    setMinimumWidth(520);
    m_text->setObjectName(QStringLiteral("amendmentText"));
    m_text->setAccessibleName(tr("What is known now"));
    m_text->setTabChangesFocus(true);
    m_text->setFixedHeight(96);
    m_person->setObjectName(QStringLiteral("amendmentPerson"));
    for (const model::Person& person : session.people().value_or(std::vector<model::Person>()))
        if (person.active && !person.publicKey.empty())
            m_person->addItem(QString::fromStdString(person.name), QString::fromStdString(person.id.text()));
    m_passphrase->setEchoMode(QLineEdit::Password);
    m_passphrase->setObjectName(QStringLiteral("amendmentPassphrase"));
    m_refusal->setWordWrap(true);
    m_buttons->button(QDialogButtonBox::Ok)->setText(tr("Sign and add"));

    auto* says = new QLabel(
        tr("The signed record stays as it is. The amendment stands after it, with a signature of its own."),
        this);
    says->setWordWrap(true);
    auto* form = new QFormLayout(this);
    form->addRow(says);
    form->addRow(tr("&What is known now"), m_text);
    form->addRow(tr("&Signed by"), m_person);
    form->addRow(tr("&Passphrase"), m_passphrase);
    form->addRow(m_refusal);
    form->addRow(m_buttons);
    connect(m_text, &QPlainTextEdit::textChanged, this, &AmendmentDialog::refresh);
    connect(m_passphrase, &QLineEdit::textChanged, this, &AmendmentDialog::refresh);
    connect(m_buttons, &QDialogButtonBox::accepted, this, &AmendmentDialog::seal);
    connect(m_buttons, &QDialogButtonBox::rejected, this, &AmendmentDialog::reject);
    connect(&m_signing, &Signing::busyChanged, this, &AmendmentDialog::refresh);
    connect(&m_signing, &Signing::finished, this, &AmendmentDialog::onFinished);
    if (m_person->count() == 0)
        m_refusal->setText(tr("Nobody in this history has a signing key yet; Sign off adds one."));
    refresh();
}

void AmendmentDialog::refresh()
{
    const bool busy = m_signing.isBusy();
    m_buttons->button(QDialogButtonBox::Ok)
        ->setEnabled(!busy && m_person->count() > 0 && !m_passphrase->text().isEmpty() &&
                     !m_text->toPlainText().trimmed().isEmpty());
    // What is being sealed is stored when it is done; there is no way back from here.
    m_buttons->button(QDialogButtonBox::Cancel)->setEnabled(!busy);
}

void AmendmentDialog::reject()
{
    if (!m_signing.isBusy())
        QDialog::reject();
}

void AmendmentDialog::seal()
{
    const auto person = model::PersonId::parse(m_person->currentData().toString().toStdString());
    if (person)
        m_signing.amend(*person, m_passphrase->text(), m_text->toPlainText().trimmed().toStdString());
}

void AmendmentDialog::onFinished(const std::optional<Error>& problem)
{
    if (!problem) {
        accept();
        return;
    }
    m_passphrase->clear();
    m_refusal->setText(render::inSentence(*problem));
    m_passphrase->setFocus();
}

} // namespace sealwalk::ui
