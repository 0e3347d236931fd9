// SPDX-License-Identifier: GPL-3.0-or-later
// What one unit on the display means on the chamber, from a reference leak there, and how it moved.
#pragma once

#include "core/base/result.h"
#include "core/quantities/kinds.h"

#include <optional>
#include <string>

namespace sealwalk::analysis {

struct SystemCheckOptions
{
    LeakRate reference;                ///< what the reference leak gave, above 0
    double referenceUncertainty = 0.0; ///< relative, standard
    LeakRate shown;                    ///< with the reference leak open
    LeakRate background;               ///< with it closed; below `shown`
    LeakRate noise;                    ///< standard deviation of the display, 0 or more
};

struct SystemFactor
{
    double factor = 1.0;               ///< shown over true: 0.16 when a sixth of the helium arrives
    double coefficient = 1.0;          ///< true over shown, 1/factor
    double readingUncertainty = 0.0;   ///< relative, standard, from the noise of both readings
    double referenceUncertainty = 0.0; ///< relative, standard, of the reference leak

    /// All parts.
    [[nodiscard]] double relativeUncertainty() const;
};

Result<SystemFactor> systemFactor(const SystemCheckOptions& options);

enum class Steadiness
{
    Steady, ///< within 10 %
    Moved,  ///< within 35 %: the readings stand, the change widens their range
    Lost,   ///< response fell by more than 35 %: spray again what was sprayed since the last good check
    Grown,  ///< response rose by more than 35 %: readings since the last good check overstate; look for the
            ///< cause
};

struct FactorChange
{
    double change = 0.0; ///< after over before, less 1
    Steadiness steadiness = Steadiness::Steady;
    SystemFactor between;          ///< geometric mean, for readings between the two checks
    double driftUncertainty = 0.0; ///< relative, standard: the logarithm of the change over sqrt(12)
    std::string advice;            ///< one sentence
};

/// Two checks around readings, both of the same set-up. The 35 % are common practice of the pressure-vessel
/// code, from memory; the 10 % are engineering judgement.
FactorChange compareFactors(const SystemFactor& before, const SystemFactor& after);

struct DetectableOptions
{
    double factor = 1.0;       ///< shown over true, above 0
    LeakRate noise;            ///< standard deviation of the display, 0 or more
    LeakRate driftPerSecond;   ///< its size, 0 or more
    Duration dwell;            ///< helium on
    double noiseFactor = 3.0;  ///< k, 1 to 10
    double riseFraction = 1.0; ///< share of the signal that the dwell shows, 0.2 to 1
    double heliumShare = 1.0;  ///< at the joint, above 0 to 1
};

/// (k·noise + drift·dwell)/factor/(rise·share).
Result<LeakRate> smallestDetectable(const DetectableOptions& options);

/// The older rule for ideal conditions: twice the sum of noise, drift and variation of the background, over
/// the factor. ASNT Nondestructive Testing Handbook, Leak Testing (1998).
LeakRate smallestDetectableByHandbook(double factor, LeakRate noise, LeakRate drift, LeakRate variation);

} // namespace sealwalk::analysis
