// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/survey_score.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace sealwalk::tests {

using analysis::SourceFinding;
using analysis::SourceVerdict;

namespace {

bool claims(const SourceFinding& finding)
{
    return finding.verdict == SourceVerdict::Leak || finding.verdict == SourceVerdict::Shared;
}

double millimetresBetween(const analysis::SurveyPoint& a, const WorldLeak& leak)
{
    return std::hypot(inMillimetres(a.x) - leak.x, inMillimetres(a.up) - leak.up);
}

/// The stretch holds the leak; `slack` widens it.
bool holds(const World& world, std::size_t point, const WorldLeak& leak, double slack)
{
    if (leak.point == point)
        return true;
    const analysis::SurveyPoint& p = world.survey.points[point];
    const analysis::SurveyPoint& home = world.survey.points[leak.point];
    return p.view == home.view && millimetresBetween(p, leak) <= slack * inMillimetres(p.halfLength);
}

} // namespace

void Score::add(const World& world, const std::vector<SourceFinding>& findings)
{
    constexpr double kSlack = 1.12;       // a leak on the border belongs to either side
    constexpr double kSharedSlack = 1.35; // one leak between neighbours
    ++surveys;
    points += static_cast<int>(findings.size());
    std::vector<bool> readable(findings.size(), false);
    for (const analysis::SurveyReading& reading : world.survey.readings)
        readable[static_cast<std::size_t>(reading.point) - 1] = true;
    std::map<std::size_t, double> sumAt;
    for (const WorldLeak& leak : world.leaks)
        sumAt[leak.point] += leak.rate;
    for (const auto& [home, rate] : sumAt) {
        if (!readable[home])
            continue;
        const WorldLeak& leak = *std::ranges::find(world.leaks, home, &WorldLeak::point);
        const SourceFinding* found = nullptr;
        bool masked = false;
        for (std::size_t i = 0; i < findings.size(); ++i) {
            const double slack = findings[i].verdict == SourceVerdict::Shared ? kSharedSlack : kSlack;
            if (!holds(world, i, leak, slack))
                continue;
            if (claims(findings[i]) && (found == nullptr || i == home))
                found = &findings[i];
            masked = masked || findings[i].verdict == SourceVerdict::Masked ||
                     findings[i].verdict == SourceVerdict::Permeation;
        }
        if (rate >= 2.0 * inMillibarLitresPerSecond(world.survey.limit)) {
            ++bigLeaks;
            missed += found == nullptr && !masked ? 1 : 0;
        }
        if (found != nullptr && found->rate.si() > 0.0) {
            const double error = std::log10(inMillibarLitresPerSecond(found->rate) / rate);
            rateErrors.push_back(std::abs(error));
            signedErrors.push_back(error);
            ++rated;
            inRange += inMillibarLitresPerSecond(found->low) <= rate &&
                       rate <= inMillibarLitresPerSecond(found->high);
        }
    }
    for (std::size_t i = 0; i < findings.size(); ++i) {
        const double slack = findings[i].verdict == SourceVerdict::Shared ? kSharedSlack : kSlack;
        const bool real = std::ranges::any_of(
            world.leaks, [&](const WorldLeak& leak) { return holds(world, i, leak, slack); });
        claimed += claims(findings[i]) ? 1 : 0;
        falseClaims += claims(findings[i]) && !real ? 1 : 0;
        maskedForNothing += findings[i].verdict == SourceVerdict::Masked && !real ? 1 : 0;
    }
}

Score& Score::operator+=(const Score& other)
{
    surveys += other.surveys;
    points += other.points;
    bigLeaks += other.bigLeaks;
    missed += other.missed;
    claimed += other.claimed;
    falseClaims += other.falseClaims;
    maskedForNothing += other.maskedForNothing;
    rated += other.rated;
    inRange += other.inRange;
    rateErrors.insert(rateErrors.end(), other.rateErrors.begin(), other.rateErrors.end());
    signedErrors.insert(signedErrors.end(), other.signedErrors.begin(), other.signedErrors.end());
    return *this;
}

double Score::medianRateError() const
{
    if (rateErrors.empty())
        return 0.0;
    std::vector<double> sorted = rateErrors;
    std::ranges::sort(sorted);
    return sorted[sorted.size() / 2];
}

std::string Score::row(const std::string& name) const
{
    std::vector<double> sorted = signedErrors;
    std::ranges::sort(sorted);
    return fmt::format(
        "{:<24}{:>5}{:>7}{:>7} {:>3}={:>5.1f}%{:>7} {:>3}={:>5.1f}%{:>5}={:>4.1f}%{:>8.3f}{:>+8.3f}{:>7.1f}%",
        name, surveys, points, bigLeaks, missed, 100.0 * missedShare(), claimed, falseClaims,
        100.0 * falseShare(), maskedForNothing, 100.0 * maskedShare(), medianRateError(),
        sorted.empty() ? 0.0 : sorted[sorted.size() / 2], 100.0 * rangeShare());
}

std::string scoreHeader()
{
    return fmt::format("{:<24}{:>5}{:>7}{:>7} {:>10}{:>7} {:>10}{:>11}{:>8}{:>8}{:>8}", "", "surv", "points",
                       "big", "missed", "claims", "false", "masked0", "decade", "bias", "range");
}

std::vector<SourceFinding> plainReadings(const analysis::Survey& survey)
{
    std::map<int, double> nets;
    for (const analysis::SurveyReading& reading : survey.readings) {
        double& net = nets.emplace(reading.point, 0.0).first->second;
        net = std::max(net, reading.net().si() / survey.heliumFraction.si());
    }
    std::vector<SourceFinding> findings;
    for (const analysis::SurveyPoint& point : survey.points) {
        SourceFinding finding;
        finding.point = point.number;
        const double net = nets.contains(point.number) ? nets[point.number] : 0.0;
        finding.verdict = net >= survey.limit.si() ? SourceVerdict::Leak : SourceVerdict::Clear;
        finding.rate = LeakRate::fromSi(net);
        finding.low = finding.rate * 0.7;
        finding.high = finding.rate * 1.4;
        findings.push_back(finding);
    }
    return findings;
}

std::vector<SourceFinding> localMaxima(const analysis::Survey& survey)
{
    std::vector<SourceFinding> findings = plainReadings(survey);
    std::vector<SourceFinding> kept = findings;
    for (std::size_t i = 0; i < findings.size(); ++i) {
        for (std::size_t j = 0; j < findings.size(); ++j) {
            const analysis::SurveyPoint& a = survey.points[i];
            const analysis::SurveyPoint& b = survey.points[j];
            if (i == j || a.joint != b.joint || a.view != b.view || findings[j].rate <= findings[i].rate)
                continue;
            const double gap = std::hypot(a.x.si() - b.x.si(), a.up.si() - b.up.si());
            if (gap < 1.5 * (a.halfLength.si() + b.halfLength.si()))
                kept[i].verdict = SourceVerdict::Clear;
        }
    }
    return kept;
}

} // namespace sealwalk::tests
