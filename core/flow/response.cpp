// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/flow/response.h"

#include "core/base/contract.h"
#include "core/flow/conductance.h"
#include "core/flow/hose.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace sealwalk::flow {

Duration responseTime(Volume volume, PumpingSpeed speed)
{
    SEALWALK_EXPECT(volume.si() > 0.0 && speed.si() > 0.0);
    return volume / speed;
}

double riseFraction(Duration time, Duration response, Duration deadTime)
{
    const double since = (time - deadTime).si();
    if (since <= 0.0)
        return 0.0;
    if (response.si() <= 0.0)
        return 1.0;
    return -std::expm1(-since / response.si());
}

double riseFractionTwoLags(Duration time, Duration chamber, Duration detector)
{
    SEALWALK_EXPECT(chamber.si() > 0.0 && detector.si() > 0.0);
    const double t = time.si();
    const double a = chamber.si();
    const double b = detector.si();
    if (t <= 0.0)
        return 0.0;
    // Closer than this the difference quotient loses more than the confluent form neglects.
    if (std::abs(a - b) < 1e-6 * a)
        return 1.0 - (1.0 + t / a) * std::exp(-t / a);
    return 1.0 - (a * std::exp(-t / a) - b * std::exp(-t / b)) / (a - b);
}

Duration dwellFor(double fraction, Duration response)
{
    SEALWALK_EXPECT(fraction >= 0.0 && fraction < 1.0);
    return response * -std::log1p(-fraction);
}

double pulseFraction(Duration time, Duration sprayed, Duration response)
{
    if (time <= sprayed)
        return riseFraction(time, response);
    if (response.si() <= 0.0)
        return 0.0;
    return riseFraction(sprayed, response) * std::exp(-(time - sprayed).si() / response.si());
}

Duration fallTo(double fraction, Duration response)
{
    SEALWALK_EXPECT(fraction > 0.0 && fraction <= 1.0);
    return response * -std::log(fraction);
}

Duration waitFor(LeakRate signal, LeakRate smallest, double share, Duration response)
{
    SEALWALK_EXPECT(smallest.si() > 0.0 && share > 0.0);
    const double allowed = share * smallest.si();
    if (signal.si() <= allowed)
        return seconds(0.0);
    return fallTo(allowed / signal.si(), response);
}

Result<DwellCorrection> correctDwell(Duration dwell, Duration response, double responseUncertainty,
                                     Duration deadTime)
{
    SEALWALK_EXPECT(responseUncertainty >= 0.0);
    if (!(dwell.si() > 0.0 && std::isfinite(dwell.si())))
        return fail(ErrorCode::BadInput, "the dwell must be above zero");
    DwellCorrection correction;
    if (response.si() <= 0.0)
        return correction;
    correction.fraction = riseFraction(dwell, response, deadTime);
    if (correction.fraction < kLeastRiseFraction)
        return fail(
            ErrorCode::NoAnswer,
            fmt::format(
                "the dwell of {:.3g} s is too short for a response time of {:.3g} s; at least {:.3g} s "
                "is needed to size a leak",
                dwell.si(), response.si(), (deadTime + dwellFor(kLeastRiseFraction, response)).si()));
    const double ratio = (dwell - deadTime).si() / response.si();
    correction.relativeUncertainty = ratio * std::exp(-ratio) / correction.fraction * responseUncertainty;
    return correction;
}

double detectorShare(PumpingSpeed detector, PumpingSpeed auxiliary)
{
    SEALWALK_EXPECT(detector.si() > 0.0 && auxiliary.si() >= 0.0);
    return detector / (detector + auxiliary);
}

Result<ResponseSummary> respond(const ResponseOptions& options)
{
    const auto above = [](double x) { return x > 0.0 && std::isfinite(x); };
    if (!above(options.volume.si()))
        return fail(ErrorCode::BadInput, "the volume must be above zero");
    if (!above(options.pump.si()))
        return fail(ErrorCode::BadInput, "the pumping speed of the detector must be above zero");
    if (!(options.auxiliary.si() >= 0.0 && std::isfinite(options.auxiliary.si())))
        return fail(ErrorCode::BadInput, "the pumping speed of the auxiliary pump must be zero or above");
    if (options.hoseDiameter.has_value() != options.hoseLength.has_value())
        return fail(ErrorCode::BadInput, "a hose needs both its inner diameter and its length");
    if (!(options.linePressure.si() >= 0.0 && std::isfinite(options.linePressure.si())))
        return fail(ErrorCode::BadInput, "the pressure in the hose must be zero or above");
    if (!(options.sizing >= kLeastRiseFraction && options.sizing <= 0.999))
        return fail(ErrorCode::BadInput,
                    "the share of the signal to wait for must be between 20 % and 99.9 %");
    if (!(options.residual >= 0.001 && options.residual <= 0.8))
        return fail(ErrorCode::BadInput,
                    "the share of the last signal that may be left must be between 0.1 % and 80 %");
    if (const Status ok = checkFlowTemperature(options.temperature); !ok)
        return fail(ok.error());

    ResponseSummary summary;
    summary.effective = options.pump;
    if (options.hoseDiameter) {
        const Hose hose{*options.hoseDiameter, *options.hoseLength};
        if (const Status ok = check(hose); !ok)
            return fail(ok.error());
        summary.effective =
            speedThrough(options.pump, knudsenTubeConductance(Gas::Helium, options.temperature, hose.diameter,
                                                              hose.length, options.linePressure));
    }
    summary.share = detectorShare(summary.effective, options.auxiliary);
    summary.response = responseTime(options.volume, summary.effective + options.auxiliary);
    summary.dwell = dwellFor(options.sizing, summary.response);
    summary.wait = fallTo(options.residual, summary.response);
    return summary;
}

} // namespace sealwalk::flow
