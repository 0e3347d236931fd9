// SPDX-License-Identifier: GPL-3.0-or-later
// From what the display showed to the leak on the chamber at 100 % helium, factor by factor, with its range.
#pragma once

#include "core/base/result.h"
#include "core/quantities/kinds.h"

#include <string>
#include <vector>

namespace sealwalk::analysis {

/// One factor that the net reading was multiplied by. The list goes with the number wherever it goes.
struct FactorUsed
{
    std::string name; ///< "system factor", "helium share" …
    double multiplier = 1.0;
    double relativeUncertainty = 0.0; ///< standard
    bool shared = false;              ///< the same for all readings of the set-up: cancels in comparisons
    std::string from;                 ///< where it comes from, one phrase

    bool operator==(const FactorUsed&) const = default;
};

struct CorrectionOptions
{
    LeakRate peak;                   ///< as shown
    LeakRate background;             ///< as shown, just before
    LeakRate noise;                  ///< standard deviation of the display, 0 or more
    LeakRate driftPerSecond;         ///< its size, 0 or more
    Duration dwell;                  ///< helium on; only for the drift
    double noiseFactor = 3.0;        ///< k of the smallest detectable leak
    double repeatability = 0.06;     ///< relative, standard: probe, distance, speed; engineering judgement
    std::vector<FactorUsed> factors; ///< multipliers above 0
};

struct CorrectedRate
{
    LeakRate net;                     ///< as shown, peak less background; may be negative
    LeakRate rate;                    ///< net times all factors
    LeakRate low;                     ///< 95 %; 0 or more
    LeakRate high;                    ///< 95 %
    double multiplier = 1.0;          ///< of all factors
    double sharedUncertainty = 0.0;   ///< relative, standard, of the shared factors
    double ownUncertainty = 0.0;      ///< relative, standard, of this reading alone, its noise included
    double relativeUncertainty = 0.0; ///< relative, standard, all parts
    LeakRate smallestDetectable;      ///< of that moment, on the chamber
    bool detected = false; ///< rate at or above smallestDetectable; otherwise the rate is not a result
    std::vector<FactorUsed> factors; ///< all of them, repeatability included

    /// Absolute standard uncertainty of the rate.
    [[nodiscard]] LeakRate uncertainty() const;
};

/// Relative uncertainties of factors combine as in a product (JCGM 100, 5.1.6) to a lognormal spread; noise
/// and drift of the display are added to the net reading. The range joins both sides of each: what multiplies
/// and what adds, in squares. Checked by Monte Carlo (JCGM 101) in the tests. Refuses what is not finite, a
/// multiplier not above zero and negative uncertainties.
Result<CorrectedRate> correctRate(const CorrectionOptions& options);

} // namespace sealwalk::analysis
