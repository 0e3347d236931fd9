// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers as text, the same in every locale of the machine.
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>

namespace sealwalk {

/// Which of point and comma the writer uses for decimals. The other one is taken for decimals too, unless it
/// could just as well group thousands ("1,234" by a writer of points); then the number is refused.
enum class DecimalMark
{
    Point,
    Comma
};

/// Reads one finite number: "2.5e-7", "2,5e-7", "2.5×10^-7", "2.5·10⁻⁷", "-3". No blanks inside, no grouping.
Result<double> parseNumber(std::string_view text, DecimalMark mark = DecimalMark::Point);

/// How many leading bytes of `text` (which starts with it) look like a number; 0: none. Right or wrong is
/// parseNumber's to say.
std::size_t numberLength(std::string_view text);

/// The shortest text that reads back to exactly this number: "4.6e-4", "0.25", "120".
std::string exactText(double number);

/// Rounded to `digits` significant digits, 1 to 17, as a power of ten whatever its size: "4.6e-4", "1.2e2".
/// Not-a-number and infinity break the contract.
std::string powerText(double number, int digits);

/// Rounded to `digits` significant digits, 1 to 17, trailing zeros kept: "4.60e-4", "0.250", "120".
/// Scientific below 1e-3 and where plain digits would promise more than `digits`. Not-a-number and infinity
/// break the contract.
std::string roundedText(double number, int digits);

/// The same with trailing zeros dropped: "4.6e-4", "0.25".
std::string trimmedText(double number, int digits);

} // namespace sealwalk
