// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/paper_dialog.h"

#include "ui/widgets/below_field.h"
#include "ui/widgets/date_field.h"
#include "ui/widgets/quantity_edit.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>

namespace sealwalk::ui {

PaperDialog::PaperDialog(QWidget* parent)
    : QDialog(parent)
    , m_day(new DateField(tr("Day of the readings"), this))
    , m_dwell(new QuantityEdit(tr("sprayed for, each"), readUnit("s").value(), this))
    , m_complaint(makeBelowField(this))
{
    setObjectName(QStringLiteral("paperDialog"));
    setWindowTitle(tr("Readings from a paper sheet"));
    m_day->setDate(QDate::currentDate());
    m_day->field()->setObjectName(QStringLiteral("paperDay"));
    m_dwell->setRange({.above = 0.0});
    m_dwell->field()->setObjectName(QStringLiteral("paperDwell"));
    m_dwell->setToolTip(tr("Seconds of helium at every point, where the sheet says so; empty: not known"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    auto* form = new QFormLayout(this);
    form->addRow(tr("&Day of the readings on the sheet"), m_day);
    form->addRow(tr("&Sprayed for, each"), m_dwell);
    form->addRow(m_complaint);
    form->addRow(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &PaperDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

void PaperDialog::proposeDay(const Timestamp& opened)
{
    const QDate day = QDate::fromString(QString::fromStdString(opened.date()), Qt::ISODate);
    if (day.isValid() && day < QDate::currentDate())
        m_day->setDate(day);
}

QDate PaperDialog::day() const
{
    return m_day->date().value_or(QDate());
}

std::optional<Duration> PaperDialog::dwell() const
{
    const auto typed = m_dwell->si();
    return typed ? std::optional(seconds(*typed)) : std::nullopt;
}

void PaperDialog::accept()
{
    m_day->commit(); // Enter leaves the cursor where it is
    m_dwell->commit();
    const bool isDay = m_day->date() && !m_day->isWrong() && *m_day->date() <= QDate::currentDate();
    showComplaint(m_complaint, m_day->field(),
                  isDay || m_day->isWrong() // the field says that itself
                      ? QString()
                      : tr("A day on which readings can have been taken: today or before."));
    if (!isDay)
        m_day->field()->setFocus();
    else if (m_dwell->isWrong())
        m_dwell->field()->setFocus();
    else
        QDialog::accept();
}

} // namespace sealwalk::ui
