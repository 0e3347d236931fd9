// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers as people of this locale read them. The core prints for every locale alike; here the decimal mark
// and the true minus are put in.
#pragma once

#include "core/quantities/number_text.h"

#include <QString>

#include <string>

namespace sealwalk::ui {

/// The decimal mark of the default locale.
DecimalMark decimalMark();

/// A number printed by the core, with the decimal mark of the default locale: "0,25", "4,6e-4".
QString localised(const std::string& coreText);

/// The shortest text within a billionth of `number`: what a person would have typed for it.
QString typedText(double number);

/// Rounded for reading: at most `digits` significant digits, without zeros that say nothing: "14", "2.4".
QString figureText(double number, int digits);

/// "4.6e−4" in two parts, because the decade is what matters and is set in strong: "4.6e" and "−4".
struct RateParts
{
    QString mantissa;
    QString exponent;
    [[nodiscard]] QString plain() const { return mantissa + exponent; }
    [[nodiscard]] QString rich() const; ///< for labels: the exponent bold
    bool operator==(const RateParts&) const = default;
};

/// Always with exponent; `digits` significant digits, at least 1.
RateParts rateParts(double number, int digits = 2);

/// For a screen reader: "4.6e-4" with an ASCII minus.
QString spokenRate(double number);

} // namespace sealwalk::ui
