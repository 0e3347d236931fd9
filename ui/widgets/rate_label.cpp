// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/rate_label.h"

#include "ui/widgets/number_display.h"

namespace sealwalk::ui {

RateLabel::RateLabel(const QString& unit, QWidget* parent)
    : QLabel(parent)
    , m_unit(unit)
{
    setTextFormat(Qt::RichText);
}

void RateLabel::setSaidUnit(const QString& unit)
{
    m_unit = unit;
}

void RateLabel::setRate(std::optional<double> number, const QString& otherwise)
{
    setText(number ? rateParts(*number).rich() : otherwise.toHtmlEscaped());
    setAccessibleName(number ? spokenRate(*number) + QLatin1Char(' ') + m_unit : otherwise);
}

} // namespace sealwalk::ui
