// SPDX-License-Identifier: GPL-3.0-or-later
// How a well-mixed volume answers to helium: rise, fall, waits, and the share an auxiliary pump leaves.
//
// Elastomers that took up helium make the fall slower than the exponential; a measured clean-up time goes
// before the computed one.
#pragma once

#include "core/base/result.h"
#include "core/quantities/kinds.h"

#include <optional>

namespace sealwalk::flow {

/// Volume over speed for helium; 63 % of a step. Both above zero.
Duration responseTime(Volume volume, PumpingSpeed speed);
/// Signal over its final value `time` after helium on, with a transport dead time; 0 before it.
double riseFraction(Duration time, Duration response, Duration deadTime = seconds(0.0));
/// The same behind a detector that itself lags.
double riseFractionTwoLags(Duration time, Duration chamber, Duration detector);
/// Time to reach `fraction` of the final signal, 0 to below 1.
Duration dwellFor(double fraction, Duration response);
/// Signal at `time` after the spray began, sprayed from 0 to `sprayed`, over the final value.
double pulseFraction(Duration time, Duration sprayed, Duration response);
/// Time for a signal to fall to `fraction` (above 0, at most 1) of itself.
Duration fallTo(double fraction, Duration response);
/// Wait until what is left of a steady `signal` is at most `share` of `smallest`; 0 when it already is.
Duration waitFor(LeakRate signal, LeakRate smallest, double share, Duration response);

/// A short dwell may be corrected only from this fraction of the final signal on.
inline constexpr double kLeastRiseFraction = 0.2;

struct DwellCorrection
{
    double fraction = 1.0;            ///< divide the net reading by it
    double relativeUncertainty = 0.0; ///< standard, from that of the response time
};

/// Refuses a dwell so short that less than a fifth of the signal was there. `responseUncertainty` is the
/// relative standard uncertainty of the response time. A response of zero needs no correction.
Result<DwellCorrection> correctDwell(Duration dwell, Duration response, double responseUncertainty,
                                     Duration deadTime = seconds(0.0));

/// The share of the helium that reaches the detector beside an auxiliary pump; helium speeds at the chamber.
/// Not to be applied when the system factor was measured with the same auxiliary pump running: it is in
/// there.
double detectorShare(PumpingSpeed detector, PumpingSpeed auxiliary);

struct ResponseOptions
{
    Volume volume;          ///< above 0
    PumpingSpeed pump;      ///< helium speed of the detector at its inlet, above 0
    PumpingSpeed auxiliary; ///< helium speed of pumps at the chamber in parallel, 0 or more
    std::optional<Length> hoseDiameter = std::nullopt; ///< of the detector's hose; both or neither
    std::optional<Length> hoseLength = std::nullopt;
    Pressure linePressure = pascals(0.0); ///< mean pressure in the hose
    Temperature temperature = degreesCelsius(20.0);
    double sizing = 0.95;   ///< share of the final signal to wait for while spraying, 0.2 to 0.999
    double residual = 0.01; ///< share of the last signal that may be left, 0.001 to 0.8
};

struct ResponseSummary
{
    PumpingSpeed effective; ///< of the detector, at the chamber
    double share = 1.0;     ///< of the helium, reaching the detector
    Duration response;      ///< to 63 %
    Duration dwell;         ///< to `sizing`
    Duration wait;          ///< down to `residual`
};

Result<ResponseSummary> respond(const ResponseOptions& options);

} // namespace sealwalk::flow
