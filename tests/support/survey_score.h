// SPDX-License-Identifier: GPL-3.0-or-later
// Scores findings against the leaks a world really has.
#pragma once

#include "core/analysis/sources.h"
#include "tests/support/survey_world.h"

#include <string>
#include <vector>

namespace sealwalk::tests {

struct Score
{
    int surveys = 0;
    int points = 0;
    int bigLeaks = 0; ///< at or above twice the limit
    int missed = 0;   ///< of those, neither claimed nor masked
    int claimed = 0;
    int falseClaims = 0;
    int maskedForNothing = 0;
    int rated = 0;
    int inRange = 0;
    std::vector<double> rateErrors; ///< decades, absolute
    std::vector<double> signedErrors;

    void add(const World& world, const std::vector<analysis::SourceFinding>& findings);
    Score& operator+=(const Score& other);
    [[nodiscard]] double missedShare() const { return share(missed, bigLeaks); }
    [[nodiscard]] double falseShare() const { return share(falseClaims, claimed); }
    [[nodiscard]] double maskedShare() const { return share(maskedForNothing, points); }
    [[nodiscard]] double rangeShare() const { return share(inRange, rated); }
    [[nodiscard]] double medianRateError() const;
    [[nodiscard]] std::string row(const std::string& name) const;

private:
    static double share(int part, int whole) { return whole == 0 ? 0.0 : static_cast<double>(part) / whole; }
};

std::string scoreHeader();

/// The numbers as they are: a net reading of the limit or more, or clearly out of the noise, is a leak.
std::vector<analysis::SourceFinding> plainReadings(const analysis::Survey& survey);
/// The same, but only where no neighbour on the joint reads more.
std::vector<analysis::SourceFinding> localMaxima(const analysis::Survey& survey);

} // namespace sealwalk::tests
