// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/number_field.h"

#include <QLocale>

#include <cmath>

namespace sealwalk::ui {

std::optional<double> readNumber(const QString& text)
{
    QString plain = text.trimmed();
    plain.replace(QLatin1Char(','), QLatin1Char('.')).replace(QChar(0x2212), QLatin1Char('-'));
    bool ok = false;
    const double value = QLocale::c().toDouble(plain, &ok);
    return ok && std::isfinite(value) ? std::optional(value) : std::nullopt;
}

QString plainNumber(double number)
{
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    constexpr int kDigits = 3; // a thousandth of a millimetre
    QString text = locale.toString(number, 'f', kDigits);
    while (text.endsWith(locale.zeroDigit()))
        text.chop(1);
    if (text.endsWith(locale.decimalPoint()))
        text.chop(1);
    return text;
}

NumberField::NumberField(const QString& name, int width, QWidget* parent)
    : QLineEdit(parent)
{
    setAccessibleName(name);
    setFixedWidth(width);
    connect(this, &QLineEdit::editingFinished, this, &NumberField::finish);
    connect(this, &QLineEdit::textEdited, this, [this](const QString& text) {
        if (const auto number = readNumber(text))
            emit typing(*number);
    });
}

void NumberField::setNumber(std::optional<double> number)
{
    if (hasFocus() && isModified())
        return;
    m_number = number;
    setText(number ? plainNumber(*number) : QString());
    setModified(false);
}

void NumberField::finish()
{
    if (!isModified())
        return;
    setModified(false);
    const QString typed = text();
    const std::optional<double> number = readNumber(typed);
    const bool isFraction = number && m_whole && std::floor(*number) != *number;
    if ((!number && !typed.trimmed().isEmpty()) || isFraction) {
        emit refused((m_whole ? tr("\"%1\" is no whole number; %2 takes one such as 24.")
                              : tr("\"%1\" is no number; %2 takes one such as 24 or 12.5."))
                         .arg(typed, accessibleName()));
        setNumber(m_number);
        return;
    }
    if (number == m_number)
        return;
    m_number = number;
    emit edited(number);
}

} // namespace sealwalk::ui
