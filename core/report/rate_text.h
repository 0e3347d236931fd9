// SPDX-License-Identifier: GPL-3.0-or-later
// How a leak rate is written: mantissa and decade, because the decade is what matters.
#pragma once

#include <string>

namespace sealwalk::report {

/// A number as mantissa and power of ten, rounded: 4.6 and -4.
struct RateParts
{
    std::string mantissa; ///< "4.6", "-4.6"; "0" for zero
    int exponent = 0;
    bool isZero = false;
    bool operator==(const RateParts&) const = default;
};

/// @param digits  significant digits, 1 to 17
RateParts rateParts(double number, int digits = 2);

/// On the screen: "4.6e−4" with a true minus. Widgets set the exponent in bold.
std::string screenRate(double number, int digits = 2);
/// In print: "4.6 × 10⁻⁴".
std::string printRate(double number, int digits = 2);
/// A sentence of the analysis as the screen writes it: "2.3e-08 mbar l/s" becomes "2.3e−8 mbar·l/s".
std::string onScreen(const std::string& sentence);
/// The same for print: "2.3 × 10⁻⁸ mbar·l/s".
std::string inPrint(const std::string& sentence);
/// In files and for screen readers: "4.6e-4".
std::string plainRate(double number, int digits = 2);

/// A 95 % range beside its value, in the value's decade: "(2.6–11)e−4" beside "3.5e−4". Ends that are
/// hundreds of times away are written out: "2.6e−7 … 1.1e−1".
std::string rangeBeside(double number, double low, double high);
/// In print it says its decade itself: "(2.6–11) × 10⁻⁴"; far ends are written out as above.
std::string printRange(double number, double low, double high);
/// In files and for screen readers: "2.6e-4 to 1.1e-3".
std::string plainRange(double low, double high);

} // namespace sealwalk::report
