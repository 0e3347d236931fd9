// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/finding_words.h"

#include "core/quantities/leak_rate_unit.h"
#include "core/quantities/number_text.h"

#include <fmt/format.h>

#include <cmath>

namespace sealwalk::analysis {

namespace {

/// " 85 mm above" and the like; empty when it is in another view or at the same spot.
std::string whereWords(const FindingFacts& facts)
{
    constexpr double kWorthNaming = 5.0; // mm
    if (!facts.above || !facts.beside || facts.whom.size() != 1)
        return {};
    const double up = std::round(*facts.above);
    const double aside = std::round(std::abs(*facts.beside));
    std::string words;
    if (std::abs(up) >= kWorthNaming)
        words = fmt::format("{:.0f} mm {}", std::abs(up), up > 0.0 ? "above" : "below");
    if (aside >= kWorthNaming)
        words += fmt::format("{}{:.0f} mm to the side", words.empty() ? "" : " and ", aside);
    return words.empty() ? words : ", " + words;
}

std::string exposureWords(const FindingFacts& facts)
{
    constexpr double kNearlyAll = 0.9;
    if (facts.exposure >= kNearlyAll)
        return {};
    return fmt::format(
        "Dwell and helium share let {:.0f} % of the full signal through; the size is corrected for that.",
        100.0 * facts.exposure);
}

void append(std::vector<std::string>& sentences, std::string sentence)
{
    if (!sentence.empty())
        sentences.push_back(std::move(sentence));
}

} // namespace

std::string pointsWords(const std::vector<int>& points, std::string_view last)
{
    if (points.size() == 1)
        return fmt::format("point {}", points.front());
    std::string words = "points ";
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (i > 0)
            words += i + 1 == points.size() ? fmt::format(" {} ", last) : ", ";
        words += std::to_string(points[i]);
    }
    return words;
}

std::string rateWords(LeakRate rate, std::string_view unit)
{
    constexpr double kHeliumMolarMass = 4.002602e-3;
    FlowBasis basis;
    basis.molarMass = kHeliumMolarMass;
    if (const Result<Unit> wanted = readUnit(unit, UnitKind::LeakRates)) {
        if (const Result<double> number = numberIn(rate, *wanted, basis))
            return fmt::format("{} {}", powerText(*number, 2), wanted->symbol);
    }
    return powerText(inMillibarLitresPerSecond(rate), 2) + " mbar\u00B7l/s";
}

std::vector<std::string> leakWords(const FindingFacts& facts, std::string_view unit)
{
    constexpr double kNothing = 0.01;
    std::vector<std::string> sentences;
    if (facts.explained < kNothing * facts.read)
        sentences.push_back(fmt::format("It answered with {}, and no leak found elsewhere explains it.",
                                        rateWords(facts.read, unit)));
    else
        sentences.push_back(
            fmt::format("It answered with {}; helium that went elsewhere and earlier responses "
                        "explain {} of it.",
                        rateWords(facts.read, unit), rateWords(facts.explained, unit)));
    if (!facts.condition.empty())
        sentences.push_back(fmt::format("It answers in the condition \"{}\".", facts.condition));
    append(sentences, exposureWords(facts));
    return sentences;
}

std::vector<std::string> sharedWords(const FindingFacts& facts, std::string_view unit)
{
    std::vector<std::string> sentences{fmt::format(
        "It answered with {}; one leak near the border to {} explains both, and which stretch it lies on "
        "cannot be told. The size is that of the one leak.",
        rateWords(facts.read, unit), pointsWords(facts.whom))};
    append(sentences, exposureWords(facts));
    return sentences;
}

std::vector<std::string> echoWords(const FindingFacts& facts, std::string_view unit)
{
    std::vector<std::string> sentences;
    if (facts.whom.empty() && !facts.mostlyTail)
        sentences.push_back(
            fmt::format("Its {} may be helium in the room, what earlier responses left, or a leak of "
                        "its own too small to matter.",
                        rateWords(facts.read, unit)));
    else if (facts.whom.empty())
        sentences.push_back(fmt::format("Its {} is left over from earlier responses and helium in the room.",
                                        rateWords(facts.read, unit)));
    else if (facts.mostlyTail)
        sentences.push_back(fmt::format("Its {} is the tail of the response at {} that had not cleared yet.",
                                        rateWords(facts.read, unit), pointsWords(facts.whom)));
    else
        sentences.push_back(fmt::format("Its {} is explained by helium that reached the leak at {}{}.",
                                        rateWords(facts.read, unit), pointsWords(facts.whom),
                                        whereWords(facts)));
    sentences.push_back(
        fmt::format("A leak of its own above {} would have shown.", rateWords(facts.mayHide, unit)));
    return sentences;
}

std::vector<std::string> maskedWords(const FindingFacts& facts, std::string_view unit)
{
    constexpr double kExplainsLittle = 0.2;
    if (!facts.mostlyTail && facts.read > LeakRate() && facts.explained < kExplainsLittle * facts.read)
        return {fmt::format(
            "Its {} is far more than helium from elsewhere explains today, yet an odd draught could "
            "have brought it from a larger leak: {} and spray it again by itself.",
            rateWords(facts.read, unit),
            facts.whom.empty() ? "seal or bag the larger leaks" : "seal or bag " + pointsWords(facts.whom))};
    if (facts.whom.empty())
        return {fmt::format(
            "A leak of up to {} could hide in what earlier responses and helium in the room left here: "
            "wait until the background is down and spray again.",
            rateWords(facts.mayHide, unit))};
    if (facts.mostlyTail)
        return {fmt::format(
            "It was sprayed on the tail of the response at {}, in which a leak of up to {} could hide: "
            "wait until the background is down, or seal or bag {}, and spray again.",
            pointsWords(facts.whom), rateWords(facts.mayHide, unit), pointsWords(facts.whom))};
    return {fmt::format(
        "Helium that reached the leak at {}{} may explain its {}, but a leak of up to {} could hide in "
        "that: seal or bag {} and spray again.",
        pointsWords(facts.whom), whereWords(facts), rateWords(facts.read, unit),
        rateWords(facts.mayHide, unit), pointsWords(facts.whom))};
}

std::vector<std::string> clearWords(const FindingFacts& facts, std::string_view unit, bool tooBlind)
{
    std::vector<std::string> sentences{fmt::format(
        "No response; a leak above {} would have shown at that moment.", rateWords(facts.mayHide, unit))};
    if (tooBlind)
        sentences.push_back("That is more than the limit, so this does not pass it: spray again with a lower "
                            "background or a longer dwell.");
    return sentences;
}

} // namespace sealwalk::analysis
