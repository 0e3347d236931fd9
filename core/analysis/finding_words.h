// SPDX-License-Identifier: GPL-3.0-or-later
// The sentences that say why a finding is what it is, for a technician.
#pragma once

#include "core/quantities/kinds.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sealwalk::analysis {

/// Facts the sentences are made of. Rates at pure helium.
struct FindingFacts
{
    LeakRate read;               ///< net, freed of helium share and dwell
    LeakRate explained;          ///< of it, what other leaks, tails and the room explain
    LeakRate mayHide;            ///< a leak up to this would not have shown
    double exposure = 1.0;       ///< share of the full signal that dwell and helium share let through
    std::vector<int> whom;       ///< points concerned, the strongest first
    std::optional<double> above; ///< mm the first of `whom` lies above the point (negative: below); same view
    std::optional<double> beside; ///< mm to its side
    bool mostlyTail = false;      ///< tail and room air outweigh direct helium
    std::string condition;        ///< set when the leak is there in this condition only
};

/// A rate with its unit, two digits: "3.2e-08 mbar·l/s". `unit` is any spelling of a leak-rate unit; an
/// unknown one falls back to mbar·l/s.
std::string rateWords(LeakRate rate, std::string_view unit);

/// "point 3", "points 3, 5 and 9"; `last` stands before the last.
std::string pointsWords(const std::vector<int>& points, std::string_view last = "and");

std::vector<std::string> leakWords(const FindingFacts& facts, std::string_view unit);
std::vector<std::string> sharedWords(const FindingFacts& facts, std::string_view unit);
std::vector<std::string> echoWords(const FindingFacts& facts, std::string_view unit);
std::vector<std::string> maskedWords(const FindingFacts& facts, std::string_view unit);
std::vector<std::string> clearWords(const FindingFacts& facts, std::string_view unit, bool tooBlind);

} // namespace sealwalk::analysis
