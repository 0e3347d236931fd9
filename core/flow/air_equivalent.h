// SPDX-License-Identifier: GPL-3.0-or-later
// What a leak measured with one gas passes of another: the model value, the bracket of geometries, and the
// uncertainty that follows from not knowing the geometry.
#pragma once

#include "core/flow/channel.h"
#include "core/flow/rarefaction.h"

#include <optional>
#include <string>
#include <vector>

namespace sealwalk::flow {

struct AirEquivalentOptions
{
    Gas from = Gas::Helium;       ///< the gas the rate was measured with, undiluted
    Gas to = Gas::Air;            ///< the gas asked for
    ChannelConditions conditions; ///< of the measurement
    /// Other ends for the gas asked for, with the same channel; must pass check() when given.
    std::optional<ChannelConditions> elsewhere = std::nullopt;
};

struct AirEquivalent
{
    LeakRate rate;                        ///< of the gas asked for; pV flow at its temperature
    double ratio = 1.0;                   ///< rate over the rate given
    double ratioLow = 1.0;                ///< one molecular channel, or less where the exit chokes
    double ratioHigh = 1.0;               ///< one laminar channel
    double relativeUncertainty = 0.05;    ///< standard, of the ratio
    Regime regime = Regime::Transitional; ///< of the gas measured with, at its mean pressure
    Length diameter;                      ///< equivalent: real leaks are cracks and scratches
    bool turbulent = false;               ///< then the model overstates the flow of its channel
    std::vector<std::string> notes;       ///< sentences for people
};

/// Solves the channel from `rate` (above zero) and computes the other gas through the same channel.
/// Standard uncertainty of the ratio: half the distance, in logarithm, to the nearer end of the bracket, and
/// at least 5 %; a rule of engineering judgement. Errors: those of check() and channelDiameter().
Result<AirEquivalent> airEquivalent(LeakRate rate, const AirEquivalentOptions& options = {});

/// The ratio of a molecular leak, sqrt(M_from/M_to), both at the same temperature.
double molecularRatio(Gas from, Gas to);
/// The ratio of a laminar leak, eta_from/eta_to.
double laminarRatio(Gas from, Gas to, Temperature temperature);
/// The ratio of a thin hole with choked outflow.
double chokedHoleRatio(Gas from, Gas to);

} // namespace sealwalk::flow
