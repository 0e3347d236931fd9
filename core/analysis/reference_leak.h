// SPDX-License-Identifier: GPL-3.0-or-later
// What a reference leak gives today in this room, from its certificate.
#pragma once

#include "core/base/result.h"
#include "core/quantities/kinds.h"

#include <string>
#include <vector>

namespace sealwalk::analysis {

struct ReferenceLeakOptions
{
    LeakRate certified; ///< above 0, at certificateTemperature
    Temperature certificateTemperature = degreesCelsius(23.0);
    Temperature room = degreesCelsius(20.0); ///< of the leak when it was used
    double temperatureCoefficient = 0.03;    ///< 1/K, -0.1 to 0.1; membrane leaks about 0.03
    bool exponential = true;                 ///< false: linear, when the certificate says so
    double lossPerYear = 0.02;               ///< share of the rate, 0 to below 1
    double years = 0.0;                      ///< since the certificate; 0 or more
    double relativeUncertainty = 0.05;       ///< standard, of the certified value
    double temperatureUncertainty = 1.25;    ///< K, standard, of the leak's own temperature
    double lossUncertainty = 0.02;           ///< relative standard uncertainty that ageing leaves
};

struct ReferenceLeakToday
{
    LeakRate rate;
    double temperatureFactor = 1.0;
    double ageFactor = 1.0;
    double relativeUncertainty = 0.0;  ///< standard, all parts
    std::vector<std::string> warnings; ///< certificate older than two years, room more than 5 K off
};

/// Source of the laws: permeation through a membrane, a certificate's own coefficient; the typical values are
/// engineering judgement.
Result<ReferenceLeakToday> referenceLeakToday(const ReferenceLeakOptions& options);

/// Share of its rate a leak with its own reservoir loses per year of 365 days, from what it lets out.
double lossPerYear(LeakRate rate, Pressure reservoir, Volume volume);

} // namespace sealwalk::analysis
