// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/next_step.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <unordered_map>

namespace sealwalk::analysis {

namespace {

constexpr double kLeftOfLimit = 0.05;
// A leak this many times the limit casts a shadow worth leaving the order for.
constexpr double kCastsShadow = 10.0;
// A shadow reaches where the usual air would bring half the limit.
constexpr double kShadowOfLimit = 0.5;
// Two neighbours that answer within this factor may be one leak.
constexpr double kAlike = 10.0;

struct Known
{
    const SurveyPoint* point = nullptr;
    double rate = 0.0; ///< Pa·m³/s at pure helium, the last reading's
    int readings = 0;
};

double rateOf(const Survey& survey, const SurveyReading& reading)
{
    const double tau = survey.response.si();
    const double follows = tau > 0.0 ? std::max(-std::expm1(-reading.dwell.si() / tau), 0.2) : 1.0;
    return reading.net().si() / (follows * survey.heliumFraction.si());
}

double distance(const SurveyPoint& a, const SurveyPoint& b)
{
    return std::hypot(a.x.si() - b.x.si(), a.up.si() - b.up.si());
}

/// What a spray at `probe` would draw from the leak at `from`.
double echoAt(const SurveyPoint& probe, const Known& from)
{
    if (probe.view != from.point->view)
        return 0.0;
    const double above = probe.isPlan ? 0.0 : from.point->up.si() - probe.up.si();
    const double across = probe.isPlan ? distance(probe, *from.point) : from.point->x.si() - probe.x.si();
    return from.rate * usualSpread().share(across, above);
}

class Round
{
public:
    Round(const Survey& survey, std::span<const int> order)
        : m_survey(survey)
    {
        for (const SurveyPoint& point : survey.points) {
            m_index.emplace(point.number, m_known.size());
            m_known.push_back({&point, 0.0, 0});
        }
        for (const SurveyReading& reading : survey.readings) {
            const auto found = m_index.find(reading.point);
            if (reading.isVoid || found == m_index.end())
                continue;
            m_known[found->second].rate = rateOf(survey, reading);
            ++m_known[found->second].readings;
            m_last = &reading;
        }
        for (const int number : order) {
            const auto found = m_index.find(number);
            if (found != m_index.end() && m_known[found->second].readings == 0)
                m_open.push_back(&m_known[found->second]);
        }
    }

    [[nodiscard]] const std::vector<const Known*>& open() const { return m_open; }
    [[nodiscard]] const SurveyReading* last() const { return m_last; }
    [[nodiscard]] const Known& at(int number) const { return m_known[m_index.at(number)]; }

    /// The known leak that would spoil a spray at this point, the worst; none.
    [[nodiscard]] const Known* shadowOn(const Known& open) const
    {
        const Known* worst = nullptr;
        double most = kShadowOfLimit * m_survey.limit.si();
        for (const Known& leak : m_known) {
            if (leak.rate < kCastsShadow * m_survey.limit.si())
                continue;
            const double echo = echoAt(*open.point, leak);
            if (echo > most) {
                most = echo;
                worst = &leak;
            }
        }
        return worst;
    }

    /// A neighbour of the last point that answered alike, when neither was repeated: one leak or two?
    [[nodiscard]] const Known* rivalOfLast() const
    {
        const Known& mine = at(m_last->point);
        if (mine.rate < m_survey.limit.si() || mine.readings > 1)
            return nullptr;
        for (const Known& other : m_known) {
            const bool beside = other.point != mine.point && other.point->view == mine.point->view &&
                                distance(*other.point, *mine.point) <
                                    1.5 * (other.point->halfLength.si() + mine.point->halfLength.si()) + 0.02;
            if (beside && other.readings == 1 && other.rate > mine.rate / kAlike &&
                other.rate < mine.rate * kAlike)
                return &other;
        }
        return nullptr;
    }

private:
    const Survey& m_survey;
    std::unordered_map<int, std::size_t> m_index;
    std::vector<Known> m_known;
    std::vector<const Known*> m_open;
    const SurveyReading* m_last = nullptr;
};

NextStep chooseStep(const Round& round)
{
    if (round.last() != nullptr) {
        if (const Known* rival = round.rivalOfLast()) {
            const Known& mine = round.at(round.last()->point);
            const Known& stronger = rival->rate > mine.rate ? *rival : mine;
            const Known& weaker = rival->rate > mine.rate ? mine : *rival;
            return {
                StepKind::RepeatGentle, stronger.point->number, weaker.point->number, Duration(),
                fmt::format(
                    "Points {} and {} answered alike: repeat {} with less helium to see whether it is one "
                    "leak or two.",
                    weaker.point->number, stronger.point->number, stronger.point->number)};
        }
    }
    if (round.open().empty())
        return {StepKind::Done, 0, 0, Duration(), "Every point has its reading."};
    const Known& first = *round.open().front();
    const Known* shadow = round.shadowOn(first);
    if (shadow == nullptr)
        return {StepKind::Spray, first.point->number, 0, Duration(), "Next in order."};
    for (const Known* open : round.open()) {
        if (round.shadowOn(*open) == nullptr)
            return {StepKind::LeaveOrder, open->point->number, shadow->point->number, Duration(),
                    fmt::format("Helium at point {} would reach the leak at point {}: spray point {} first.",
                                first.point->number, shadow->point->number, open->point->number)};
    }
    return {StepKind::SealFirst, first.point->number, shadow->point->number, Duration(),
            fmt::format(
                "Every point left lies where helium reaches the leak at point {}: seal or bag it, then spray "
                "point {}.",
                shadow->point->number, first.point->number)};
}

std::string pointList(const std::vector<int>& points)
{
    return fmt::format("{} {}", points.size() == 1 ? "point" : "points", fmt::join(points, ", "));
}

bool blames(const SourceFinding& finding, int number)
{
    return std::ranges::find(finding.others, number) != finding.others.end();
}

/// Masked points, gathered under as few seals as possible: the leak that masks most first.
void settleMasked(const Sources& sources, std::vector<SettlingStep>& steps)
{
    std::vector<const SourceFinding*> open;
    for (const SourceFinding& finding : sources.findings) {
        if (finding.verdict == SourceVerdict::Masked)
            open.push_back(&finding);
    }
    while (!open.empty()) {
        int best = 0;
        std::ptrdiff_t most = 0;
        for (const SourceFinding* finding : open) {
            for (const int number : finding->others) {
                const auto count =
                    std::ranges::count_if(open, [&](const SourceFinding* f) { return blames(*f, number); });
                if (count > most) {
                    most = count;
                    best = number;
                }
            }
        }
        SettlingStep step;
        std::vector<const SourceFinding*> left;
        for (const SourceFinding* finding : open) {
            if (most == 0 || blames(*finding, best))
                step.spray.push_back(finding->point);
            else
                left.push_back(finding);
        }
        if (most > 0) {
            step.seal.push_back(best);
            step.how = fmt::format("Seal or bag point {}, then spray {} again.", best, pointList(step.spray));
        } else {
            step.how =
                fmt::format("Wait until the background is down, then spray {} again.", pointList(step.spray));
        }
        steps.push_back(std::move(step));
        open = std::move(left);
    }
}

void settleShared(const Sources& sources, std::vector<SettlingStep>& steps)
{
    for (const SourceFinding& finding : sources.findings) {
        if (finding.verdict != SourceVerdict::Shared || finding.others.empty() ||
            finding.others.front() < finding.point)
            continue;
        steps.push_back(
            {{},
             {finding.point, finding.others.front()},
             fmt::format("Spray points {} and {} again with less helium and a fine tip, each from the side "
                         "away from the other, to place the leak.",
                         finding.point, finding.others.front())});
    }
}

} // namespace

Duration clearingTime(LeakRate signal, LeakRate limit, Duration response)
{
    const double ratio = signal / (kLeftOfLimit * limit);
    return std::max(response, response * std::log(std::max(ratio, 1.0)));
}

NextStep nextStep(const Survey& survey, std::span<const int> order, Duration now)
{
    const Round round(survey, order);
    NextStep step = chooseStep(round);
    const SurveyReading* last = round.last();
    if (step.kind == StepKind::Done || last == nullptr)
        return step;
    const Duration clear = last->end() + clearingTime(LeakRate::fromSi(std::max(last->net().si(), 0.0)),
                                                      survey.limit, survey.response);
    if (clear <= now)
        return step;
    step.wait = clear - now;
    if (step.kind == StepKind::Spray) {
        step.kind = StepKind::Wait;
        step.because =
            fmt::format("The response at point {} has not cleared: wait {:.0f} s, then spray point {}.",
                        last->point, std::ceil(inSeconds(step.wait)), step.point);
    }
    return step;
}

std::vector<SettlingStep> settlingSteps(const Survey& survey, const Sources& sources)
{
    std::vector<SettlingStep> steps;
    settleMasked(sources, steps);
    settleShared(sources, steps);
    std::vector<int> blind;
    std::vector<int> slow;
    for (const SourceFinding& finding : sources.findings) {
        if (finding.tooBlind)
            blind.push_back(finding.point);
        const bool late = std::ranges::any_of(finding.because, [](const std::string& sentence) {
            return sentence.find("short burst of") != std::string::npos;
        });
        if (late)
            slow.push_back(finding.point);
    }
    if (!slow.empty())
        steps.push_back({{},
                         slow,
                         fmt::format("Give {} a short burst of 5 to 10 s: no answer means permeation.",
                                     pointList(slow))});
    if (!blind.empty())
        steps.push_back(
            {{},
             blind,
             fmt::format("Spray {} again with a lower background or a dwell of at least {:.0f} s.",
                         pointList(blind), std::max(3.0, 5.0 * inSeconds(survey.response)))});
    return steps;
}

std::vector<MovedBackground> movedBackgrounds(const Survey& survey)
{
    constexpr double kMoved = 2.0; // times the survey's own level
    constexpr double kTailLeft = 0.01;
    std::vector<double> levels;
    for (const SurveyReading& reading : survey.readings)
        levels.push_back(reading.background.si());
    std::vector<MovedBackground> runs;
    if (levels.size() < 4)
        return runs;
    const auto low = levels.begin() + static_cast<std::ptrdiff_t>(levels.size() / 3);
    std::vector<double> sorted = levels;
    std::nth_element(sorted.begin(), sorted.begin() + (low - levels.begin()), sorted.end());
    const double usual = sorted[static_cast<std::size_t>(low - levels.begin())];
    const double tau = std::max(survey.response.si(), 1e-9);
    double tail = 0.0;
    double clock = inSeconds(survey.readings.front().start);
    std::optional<std::size_t> first;
    std::size_t last = 0;
    const auto close = [&] {
        if (first && last > *first)
            runs.push_back(
                {*first, last,
                 fmt::format("The background stood at up to {:.1f} times its usual level from point {} to "
                             "point {}: these readings may be voided together and sprayed again.",
                             *std::max_element(levels.begin() + static_cast<std::ptrdiff_t>(*first),
                                               levels.begin() + static_cast<std::ptrdiff_t>(last) + 1) /
                                 usual,
                             survey.readings[*first].point, survey.readings[last].point)});
        first.reset();
    };
    for (std::size_t i = 0; i < levels.size(); ++i) {
        const SurveyReading& reading = survey.readings[i];
        // Slow clean-up leaves a hundredth of a response for long: that is a tail, not a moving background.
        tail *= std::exp(-(inSeconds(reading.start) - clock) / (30.0 * tau));
        const bool moved =
            usual > 0.0 && levels[i] > kMoved * usual && levels[i] - usual > 2.0 * kTailLeft * tail;
        if (moved && !reading.isVoid) {
            first = first.value_or(i);
            last = i;
        } else {
            close();
        }
        tail = std::max(tail, reading.net().si());
        clock = inSeconds(reading.start);
    }
    close();
    return runs;
}

} // namespace sealwalk::analysis
