// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/signoff/submit_dialog.h"

#include "ui/render/core_words.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace sealwalk::ui {

SubmitDialog::SubmitDialog(const std::vector<analysis::ReviewCheck>& checks, QWidget* parent)
    : QDialog(parent)
    , m_reason(new QLineEdit(this))
{
    constexpr int kLeastWidth = 520; // px
    setWindowTitle(tr("Send for review with stops"));
    setMinimumWidth(kLeastWidth);
    QStringList stops;
    for (const analysis::ReviewCheck& check : checks)
        for (const analysis::ReviewMatter& matter : check.matters)
            if (matter.state == analysis::CheckState::Stops)
                stops << QStringLiteral("•  ") + render::inWords(matter.says);
    auto* says = new QLabel(tr("These stop a sign-off; the reviewer can only send the job back:"), this);
    says->setWordWrap(true);
    auto* named = new QLabel(stops.join(QLatin1Char('\n')), this);
    named->setObjectName(QStringLiteral("openStops"));
    named->setTextFormat(Qt::PlainText);
    named->setWordWrap(true);
    auto* asked = new QLabel(tr("&Why it is sent all the same; this goes on record"), this);
    asked->setBuddy(m_reason);
    asked->setWordWrap(true);
    m_reason->setObjectName(QStringLiteral("submitReason"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    QPushButton* send = buttons->button(QDialogButtonBox::Ok);
    send->setText(tr("Send all the same"));
    send->setEnabled(false);
    auto* column = new QVBoxLayout(this);
    for (QWidget* part : std::initializer_list<QWidget*>{says, named, asked, m_reason, buttons})
        column->addWidget(part);
    m_reason->setFocus();
    connect(m_reason, &QLineEdit::textChanged, this, [this, send] { send->setEnabled(!reason().isEmpty()); });
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

QString SubmitDialog::reason() const
{
    return m_reason->text().trimmed();
}

} // namespace sealwalk::ui
