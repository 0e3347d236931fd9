// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/void_dialog.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace sealwalk::ui {

VoidDialog::VoidDialog(const VoidQuestion& question, QWidget* parent)
    : QDialog(parent)
    , m_reason(new QLineEdit(question.suggested, this))
{
    setWindowTitle(question.title);
    auto* text = new QLabel(question.text, this);
    text->setWordWrap(true);
    text->setMinimumWidth(420);
    m_reason->setObjectName(QStringLiteral("voidReason"));
    m_reason->selectAll();
    auto* label = new QLabel(tr("&Reason"), this);
    label->setBuddy(m_reason);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    QPushButton* ok = buttons->button(QDialogButtonBox::Ok);
    ok->setText(question.agree);
    auto* column = new QVBoxLayout(this);
    column->addWidget(text);
    column->addWidget(label);
    column->addWidget(m_reason);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    const auto allow = [this, ok] { ok->setEnabled(!reason().isEmpty()); };
    connect(m_reason, &QLineEdit::textChanged, this, allow);
    allow();
    m_reason->setFocus();
}

QString VoidDialog::reason() const
{
    return m_reason->text().trimmed();
}

} // namespace sealwalk::ui
