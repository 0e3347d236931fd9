// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/moment_field.h"

#include "ui/widgets/below_field.h"
#include "ui/widgets/date_field.h"

#include <QDateTime>
#include <QLabel>
#include <QLineEdit>
#include <QTime>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

constexpr int kWidth = 250; // room for what it is to be filled with

} // namespace

std::optional<Timestamp> readMoment(const QString& text)
{
    const QString typed = text.simplified();
    const auto gap = typed.lastIndexOf(QLatin1Char(' '));
    if (gap < 0)
        return std::nullopt;
    const auto day = readDate(typed.left(gap));
    QTime time;
    for (const char* form : {"H:mm", "HHmm", "H.mm"})
        if (!time.isValid())
            time = QTime::fromString(typed.mid(gap + 1), QString::fromLatin1(form));
    if (!day || !time.isValid())
        return std::nullopt;
    const QDateTime at(*day, time);
    return Timestamp{at.toMSecsSinceEpoch(), at.offsetFromUtc() / 60};
}

MomentField::MomentField(const QString& name, QWidget* parent)
    : QWidget(parent)
{
    m_field = new QLineEdit(this);
    m_field->setAccessibleName(name);
    m_field->setMinimumWidth(kWidth);
    m_field->setPlaceholderText(tr("now; from paper: 2026-03-01 14:32"));
    m_below = makeBelowField(this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_field);
    column->addWidget(m_below);
    setFocusProxy(m_field);
    connect(m_field, &QLineEdit::editingFinished, this, &MomentField::commit);
}

Timestamp MomentField::moment() const
{
    return m_typed.value_or(Timestamp::now());
}

std::string entryWords()
{
    const Timestamp now = Timestamp::now();
    return "entered " + now.date() + ' ' + now.timeOfDay().substr(0, 5);
}

std::string MomentField::entryWords() const
{
    return m_typed ? ui::entryWords() : std::string();
}

void MomentField::commit()
{
    const QString text = m_field->text().trimmed();
    m_typed = text.isEmpty() ? std::nullopt : readMoment(text);
    const bool isFuture = m_typed && *m_typed > Timestamp::now();
    m_wrong = (!text.isEmpty() && !m_typed) || isFuture;
    showComplaint(m_below, m_field,
                  isFuture  ? tr("this has not come yet")
                  : m_wrong ? tr("a day and a time, such as 2026-03-01 14:32; empty: now")
                            : QString());
    if (m_wrong)
        m_typed.reset();
}

} // namespace sealwalk::ui
