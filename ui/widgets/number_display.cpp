// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/number_display.h"

#include <QLocale>

#include <cmath>

namespace sealwalk::ui {

namespace {

constexpr double kSameNumber = 1e-9;
constexpr int kMostDigits = 15;
constexpr double kWrittenOut = 1e5;
const QChar kTrueMinus(0x2212);

/// Zeros after the decimal mark say nothing in a field a person typed.
std::string withoutTrailingZeros(std::string text)
{
    const std::size_t exponentAt = text.find('e');
    const std::string exponent = exponentAt == std::string::npos ? std::string() : text.substr(exponentAt);
    std::string mantissa = text.substr(0, exponentAt);
    if (mantissa.find('.') != std::string::npos) {
        mantissa.erase(mantissa.find_last_not_of('0') + 1);
        if (mantissa.back() == '.')
            mantissa.pop_back();
    }
    return mantissa + exponent;
}

/// Nobody types 1e2 for a hundred: whole numbers of everyday size are written out.
int fewestDigits(double number)
{
    const double size = std::abs(number);
    return size >= 1.0 && size < kWrittenOut ? static_cast<int>(std::log10(size)) + 1 : 1;
}

} // namespace

DecimalMark decimalMark()
{
    return QLocale().decimalPoint() == QLatin1String(",") ? DecimalMark::Comma : DecimalMark::Point;
}

QString localised(const std::string& coreText)
{
    QString text = QString::fromStdString(coreText);
    if (decimalMark() == DecimalMark::Comma)
        text.replace(QLatin1Char('.'), QLatin1Char(','));
    return text;
}

QString typedText(double number)
{
    for (int digits = fewestDigits(number); digits <= kMostDigits; ++digits) {
        const std::string text = roundedText(number, digits);
        const Result<double> back = parseNumber(text);
        if (back && std::abs(*back - number) <= kSameNumber * std::abs(number))
            return localised(withoutTrailingZeros(text));
    }
    return localised(exactText(number));
}

QString figureText(double number, int digits)
{
    return localised(withoutTrailingZeros(roundedText(number, digits)));
}

QString RateParts::rich() const
{
    return exponent.isEmpty() ? mantissa : QStringLiteral("%1<b>%2</b>").arg(mantissa, exponent);
}

RateParts rateParts(double number, int digits)
{
    if (number == 0.0)
        return {QStringLiteral("0"), {}};
    int exponent = static_cast<int>(std::floor(std::log10(std::abs(number))));
    const double scale = std::pow(10.0, digits - 1);
    double mantissa = std::round(number / std::pow(10.0, exponent) * scale) / scale;
    if (std::abs(mantissa) >= 10.0) {
        mantissa /= 10.0;
        ++exponent;
    }
    const QString sign = exponent < 0 ? QString(kTrueMinus) : QString();
    return {QLocale().toString(mantissa, 'f', digits - 1) + QLatin1Char('e'),
            sign + QString::number(std::abs(exponent))};
}

QString spokenRate(double number)
{
    return rateParts(number).plain().replace(kTrueMinus, QLatin1Char('-'));
}

} // namespace sealwalk::ui
