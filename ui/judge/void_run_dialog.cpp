// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/judge/void_run_dialog.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace sealwalk::ui {

VoidRunDialog::VoidRunDialog(const QString& what, const QString& because, QWidget* parent)
    : QDialog(parent)
    , m_reason(new QLineEdit(tr("background moved"), this))
{
    setWindowTitle(tr("Void together"));
    auto* text = new QLabel(
        because + QLatin1Char('\n') + tr("Void the readings of %1 and spray them again?").arg(what), this);
    text->setWordWrap(true);
    text->setMinimumWidth(420);
    m_reason->setObjectName(QStringLiteral("voidReason"));
    m_reason->selectAll();
    auto* label = new QLabel(tr("&Reason"), this);
    label->setBuddy(m_reason);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    QPushButton* ok = buttons->button(QDialogButtonBox::Ok);
    ok->setText(tr("Void and spray again"));
    auto* column = new QVBoxLayout(this);
    column->addWidget(text);
    column->addWidget(label);
    column->addWidget(m_reason);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_reason, &QLineEdit::textChanged, ok,
            [ok](const QString& typed) { ok->setEnabled(!typed.trimmed().isEmpty()); });
    m_reason->setFocus();
}

QString VoidRunDialog::reason() const
{
    return m_reason->text().trimmed();
}

} // namespace sealwalk::ui
