// SPDX-License-Identifier: GPL-3.0-or-later
// The short forms a reading is typed in, one hand on the keys: 3.2e-7, 3,2e-7, 3.2-7, 3.2 7, 3.2×10^-7.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace sealwalk {

/// What has been typed so far. The first point or comma is the decimal mark; e, E, a minus, ×, x, *, ^ or a
/// blank opens the exponent, which is negative unless + is typed; a 10 after × or * is swallowed. So "32-8"
/// is 3.2e-7.
struct EnteredNumber
{
    enum class State
    {
        Empty,    ///< nothing typed
        Mantissa, ///< digits, but no exponent: not a value yet
        Opened,   ///< the exponent was opened and has no digits
        Complete, ///< mantissa and exponent; `value` is set
        Zero,     ///< a mantissa of zero: "no response" is the answer for that, not a number
        Wrong     ///< cannot become a number by typing on
    };

    State state = State::Empty;
    double mantissa = 0.0;       ///< as typed, when there are digits
    std::optional<int> exponent; ///< with its sign, when typed
    std::optional<double> value; ///< only when Complete; above zero and finite
    /// "3.2e-7" or "1.5e+1" normalised, when Complete: read again it is the same value. The digits so far
    /// otherwise.
    std::string readBack;
    std::optional<int> shownExponent; ///< of `readBack`, when Complete: "32-8" reads back with -7

    bool operator==(const EnteredNumber&) const = default;
};

/// Largest exponent that is taken; a leak rate of 1e-31 is a slip of the finger in any unit but molecules.
inline constexpr int kLargestEnteredExponent = 30;

EnteredNumber readEntered(std::string_view typed);

/// The mantissa with the exponent offered instead of one typed: readEntered("3.2") with -7 is 3.2e-7.
EnteredNumber withExponent(const EnteredNumber& entered, int exponent);

} // namespace sealwalk
