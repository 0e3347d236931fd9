// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/date_field.h"

#include "ui/widgets/below_field.h"

#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

constexpr int kEarliestYear = 1950;
constexpr int kLatestYear = 2200;

} // namespace

std::optional<QDate> readDate(const QString& text)
{
    const QString typed = text.trimmed();
    const QString forms[] = {QStringLiteral("yyyy-M-d"), QStringLiteral("d.M.yyyy")};
    for (const QString& form : forms) {
        const QDate date = QDate::fromString(typed, form);
        if (date.isValid() && date.year() >= kEarliestYear && date.year() <= kLatestYear)
            return date;
    }
    const QDate local = QLocale().toDate(typed, QLocale::ShortFormat);
    // A two-digit year reads as 19xx, which no certificate of today bears.
    if (local.isValid() && local.year() >= kEarliestYear + 50 && local.year() <= kLatestYear)
        return local;
    return {};
}

DateField::DateField(const QString& name, QWidget* parent)
    : QWidget(parent)
{
    m_field = new QLineEdit(this);
    m_field->setAccessibleName(name);
    m_field->setPlaceholderText(tr("2026-03-01"));
    m_below = makeBelowField(this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(1);
    column->addWidget(m_field);
    column->addWidget(m_below);
    setFocusProxy(m_field);
    connect(m_field, &QLineEdit::editingFinished, this, &DateField::onEditingFinished);
}

void DateField::setDate(std::optional<QDate> date)
{
    if (date == m_date && !m_wrong)
        return;
    m_date = date;
    m_wrong = false;
    m_field->setText(date ? date->toString(Qt::ISODate) : QString());
    m_field->setModified(false);
    showComplaint(m_below, m_field, {});
}

void DateField::onEditingFinished()
{
    if (!m_field->isModified())
        return;
    const QString typed = m_field->text().trimmed();
    const std::optional<QDate> read = typed.isEmpty() ? std::nullopt : readDate(typed);
    m_wrong = !typed.isEmpty() && !read;
    m_field->setModified(m_wrong);
    showComplaint(m_below, m_field, m_wrong ? tr("not a date; write it as 2026-03-01") : QString());
    if (m_wrong || read == m_date)
        return;
    m_date = read;
    emit edited(m_date);
}

} // namespace sealwalk::ui
