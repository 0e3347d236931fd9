// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/reference_leak.h"

#include "core/analysis/uncertainty.h"
#include "core/base/contract.h"
#include "core/quantities/number_text.h"

#include <fmt/format.h>

#include <cmath>

namespace sealwalk::analysis {

namespace {

constexpr double kOldCertificateYears = 2.0;
constexpr double kFarTemperature = 5.0;
constexpr double kSecondsPerYear = 365.0 * 86400.0;

Status check(const ReferenceLeakOptions& o)
{
    const auto wrong = [](std::string sentence) { return fail(ErrorCode::BadInput, std::move(sentence)); };
    if (!(o.certified.si() > 0.0 && std::isfinite(o.certified.si())))
        return wrong("the certified rate of the reference leak must be above zero");
    for (const Temperature t : {o.certificateTemperature, o.room})
        if (!(t.si() > 200.0 && t.si() < 400.0))
            return wrong("the temperature of a reference leak must be between -73 degC and 127 degC");
    if (!(std::abs(o.temperatureCoefficient) <= 0.1))
        return wrong(
            "the temperature coefficient of a reference leak must be between -10 % and 10 % per kelvin");
    if (!(o.lossPerYear >= 0.0 && o.lossPerYear < 1.0))
        return wrong("the yearly loss of a reference leak must be between 0 and 100 %");
    if (!(o.years >= 0.0 && o.years < 100.0))
        return wrong(
            "the certificate of a reference leak must not be dated after its use, nor a century before");
    for (const double u : {o.relativeUncertainty, o.temperatureUncertainty, o.lossUncertainty})
        if (!(u >= 0.0 && std::isfinite(u)))
            return wrong("the uncertainties of a reference leak must be zero or above");
    return {};
}

} // namespace

Result<ReferenceLeakToday> referenceLeakToday(const ReferenceLeakOptions& options)
{
    if (const Status ok = check(options); !ok)
        return fail(ok.error());
    const double off = (options.room - options.certificateTemperature).si();
    const double step = options.temperatureCoefficient * off;
    ReferenceLeakToday today;
    today.temperatureFactor = options.exponential ? std::exp(step) : 1.0 + step;
    if (!(today.temperatureFactor > 0.0))
        return fail(ErrorCode::BadInput,
                    "so far from its certificate temperature a linear coefficient leaves nothing of "
                    "the reference leak; bring it nearer to its certificate temperature");
    today.ageFactor = std::pow(1.0 - options.lossPerYear, options.years);
    today.rate = options.certified * today.temperatureFactor * today.ageFactor;
    const double parts[] = {options.relativeUncertainty,
                            std::abs(options.temperatureCoefficient) * options.temperatureUncertainty,
                            options.lossUncertainty};
    today.relativeUncertainty = combined(parts);
    if (options.years > kOldCertificateYears)
        today.warnings.push_back(fmt::format("the certificate of the reference leak is {} years old",
                                             trimmedText(options.years, 2)));
    if (std::abs(off) > kFarTemperature)
        today.warnings.push_back(
            fmt::format("the room is {} K from the certificate temperature of the reference leak",
                        trimmedText(std::abs(off), 2)));
    return today;
}

double lossPerYear(LeakRate rate, Pressure reservoir, Volume volume)
{
    SEALWALK_EXPECT(reservoir.si() > 0.0 && volume.si() > 0.0);
    return rate.si() * kSecondsPerYear / (reservoir.si() * volume.si());
}

} // namespace sealwalk::analysis
