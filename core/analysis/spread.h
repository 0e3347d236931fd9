// SPDX-License-Identifier: GPL-3.0-or-later
// How helium travels from the probe to a leak on the day of a survey: the near jet, the rising plume with its
// widening and dilution, sideways scatter, what the room keeps, and how the detector lets go of a response.
#pragma once

#include "core/analysis/random.h"

#include <array>
#include <cmath>
#include <cstddef>
#include <vector>

namespace sealwalk::analysis {

/// Dilution of a turbulent round jet on its axis: the share falls as 1/x beyond the core of length `core`.
/// Source: Chen and Rodi, Vertical Turbulent Buoyant Jets (1980): concentration proportional to 1/x.
double jetDilution(double distance, double core);

/// Dilution of a round plume on its axis at `height` above the probe: (1 + height/origin)^-exponent, with
/// exponent 5/3 for a turbulent plume and 1 for a laminar one; `origin` is the virtual source below the tip.
/// Source: Chen and Rodi (1980): concentration proportional to height^(-5/3); Yih (1951): laminar, 1/height.
template <typename Real>
Real plumeDilution(Real height, Real origin, Real exponent)
{
    return std::pow(Real(1) + height / origin, -exponent);
}

/// One possible state of the air and the detector. Lengths in m, times in s. None of it can be measured
/// beforehand; it is estimated from the survey inside the bounds of `spreadBounds`.
struct Spread
{
    enum Index : std::size_t
    {
        NearWidth,     ///< m; distance at which the near cloud has fallen to 1/e
        NearPower,     ///< 1 exponential … 2 Gaussian edge of the near cloud
        NearStretch,   ///< the near cloud reaches this much farther upwards
        PlumeShare,    ///< strength of the plume beside the near cloud
        PlumeOrigin,   ///< m; virtual origin below the tip
        PlumeWidening, ///< half width gained per height
        PlumeExponent, ///< dilution exponent: 1 laminar, 5/3 turbulent
        Tilt,          ///< sideways shift of the plume per height (draught)
        ScatterShare,  ///< strength of what goes every way
        ScatterReach,  ///< m
        ScatterPower,  ///< exponent of its fall far away
        Sweep,         ///< 0: the probe lingers where it answers … 1: passes evenly
        EchoScatter,   ///< how far echoes stray from the rule, ln per root decade of dilution
        TailShare,     ///< share of a response that clears slowly
        TailTimes,     ///< slow clean-up time in response times
        Room,          ///< helium share the room has reached by the end of the survey
        Count
    };
    std::array<double, Count> value{};

    [[nodiscard]] double operator[](Index i) const { return value[i]; }
    double& operator[](Index i) { return value[i]; }

    /// Share of the sprayed helium at a leak that lies `across` m to the side of and `above` m over the
    /// probe; 1 at the probe itself.
    [[nodiscard]] double share(double across, double above) const;
};

struct SpreadBound
{
    double low;
    double high;
    bool logarithmic;
};

/// Sane bounds of each member; a draw is uniform, or uniform in the logarithm, between them.
const std::array<SpreadBound, Spread::Count>& spreadBounds();

/// A middling state, where nothing is known.
Spread usualSpread();
/// A state drawn from the bounds.
Spread drawSpread(Random& random);
/// States that differ in what matters most - width and edge of the near cloud, and how much goes beyond it -
/// with the rest as usual: where a search starts.
std::vector<Spread> startSpreads();
/// A neighbour of `spread`: some members moved by about `size` of their range, kept inside the bounds.
Spread moveSpread(const Spread& spread, Random& random, double size);
/// `spread` moved along the way from `from` to `to`, a share `pace` of it, in about half of its members.
Spread crossSpread(const Spread& spread, const Spread& from, const Spread& to, double pace, Random& random);

} // namespace sealwalk::analysis
