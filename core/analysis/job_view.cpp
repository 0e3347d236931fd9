// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/job_view.h"

#include "core/analysis/decision.h"
#include "core/analysis/job_factor.h"
#include "core/analysis/spray_timing.h"
#include "core/flow/response.h"
#include "core/quantities/number_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <unordered_set>

namespace sealwalk::analysis {

namespace {

constexpr double kUnknownDwell = 0.04; // relative, standard: engineering judgement

std::string shown(LeakRate rate)
{
    return roundedText(inMillibarLitresPerSecond(rate), 2) + " mbar l/s";
}

model::JointId jointOf(const model::Job& job, model::PointId point)
{
    const model::TestPoint* known = job.sketch.point(point);
    return known != nullptr ? known->joint : model::JointId{};
}

// The share of the final signal the dwell showed; none when it was too short to size anything.
std::optional<FactorUsed> dwellFactor(const model::Job& job, const model::TestObject& object,
                                      const model::Reading& reading, std::vector<std::string>& because)
{
    const auto response = detail::responseOf(job, object, jointOf(job, reading.point), reading.at);
    if (!reading.dwell || !response)
        return FactorUsed{"dwell", 1.0, kUnknownDwell, false,
                          reading.dwell ? "response time not known, full signal assumed"
                          : reading.outcome == model::Outcome::NoResponse ? "dwell not recorded"
                          : response && response->time > kShortestSpray
                              ? "dwell not recorded, full signal taken for the lower end"
                              : "dwell not recorded, full signal assumed"};
    const auto correction = flow::correctDwell(*reading.dwell, response->time, response->relativeUncertainty);
    if (!correction) {
        because.push_back(correction.error().message);
        return std::nullopt;
    }
    return FactorUsed{"dwell", 1.0 / correction->fraction, correction->relativeUncertainty, false,
                      fmt::format("{} s at a response time of {} s, {}", trimmedText(reading.dwell->si(), 3),
                                  trimmedText(response->time.si(), 3), response->from)};
}

// A spray that was not clocked is taken to have given the full signal, so it drifted as long as that takes.
Duration dwellAssumed(const model::Job& job, const model::TestObject& object, const model::Reading& reading)
{
    constexpr double kResponses = 3.0; // 95 %
    if (reading.dwell)
        return *reading.dwell;
    const auto response = detail::responseOf(job, object, jointOf(job, reading.point), reading.at);
    return response ? kResponses * response->time : Duration();
}

/// What a spray that nobody timed leaves open. An unknown dwell never speaks better of a point than a short
/// known one.
struct Untimed
{
    double bound = 1.0;         ///< what would have shown, times this
    double value = 1.0;         ///< a leak as many times as large may have shown no more
    bool provesNothing = false; ///< so short a spray by the clock would not be sized either
    Duration response;
};

Untimed untimed(const model::Job& job, const model::TestObject& object, const model::Reading& reading)
{
    Untimed left;
    const auto response = reading.dwell
                              ? std::nullopt
                              : detail::responseOf(job, object, jointOf(job, reading.point), reading.at);
    if (!response)
        return left;
    left.response = response->time;
    // What would have shown is said as of the shortest spray that goes unmarked, one response time, and no
    // longer than a hand that passes takes.
    left.bound = 1.0 / flow::riseFraction(std::min(response->time, kShortestSpray), response->time);
    // A value is read until it stands; on a system slower than a hand that may have been long before.
    if (response->time > kShortestSpray) {
        left.value = 1.0 / flow::riseFraction(kShortestSpray, response->time);
        left.provesNothing = !flow::correctDwell(kShortestSpray, response->time, 0.0);
    }
    return left;
}

// Everything about the reading but its peak. None of the factors: `because` says why.
struct Ground
{
    CorrectionOptions options;
    bool hasNoise = false;
    bool sizeable = false;
};

Ground groundOf(const model::Job& job, const model::TestObject& object, const model::Reading& reading,
                std::vector<std::string>& because)
{
    Ground ground;
    CorrectionOptions& options = ground.options;
    options.background = reading.background.value_or(LeakRate{});
    options.dwell = dwellAssumed(job, object, reading);
    options.noiseFactor = job.setup.noiseFactor;
    if (const auto watch = detail::backgroundAt(job, reading.at)) {
        ground.hasNoise = true;
        // Helium that hangs in the line makes the display restless in proportion: a background risen since
        // the watch hides more. Engineering rule, no source.
        double risen = 1.0;
        if (reading.background && watch->level.si() > 0.0)
            risen = std::max(1.0, *reading.background / watch->level);
        options.noise = watch->noise * risen;
        options.driftPerSecond = LeakRate::fromSi(std::abs(watch->driftPerSecond.si()));
        if (risen > 2.0)
            because.push_back(fmt::format("the background was {} times that of the last quiet watch",
                                          trimmedText(risen, 2)));
    } else {
        because.emplace_back("no quiet watch of the background: what could have been seen is not known");
    }
    const auto factors = detail::factorsFor(job, jointOf(job, reading.point), reading.at, because);
    const auto dwell = dwellFactor(job, object, reading, because);
    const double share = job.setup.heliumShare.si();
    if (!(share > 0.0))
        because.emplace_back("the helium share of the spray is not above zero");
    if (!factors || !dwell || !(share > 0.0))
        return ground;
    options.factors = *factors;
    options.factors.push_back(*dwell);
    options.factors.push_back({"helium share", 1.0 / share, job.setup.heliumShareUncertainty, false,
                               trimmedText(share * 100.0, 3) + " % helium at the joint"});
    ground.sizeable = true;
    return ground;
}

void judgeBound(CorrectedReading& result, LeakRate bound)
{
    result.below = bound;
    if (!result.limit)
        return;
    result.verdict = bound <= *result.limit ? Verdict::Within : Verdict::CannotSay;
    if (result.verdict == Verdict::CannotSay)
        result.because.push_back("what could have been seen at that moment, " + shown(bound) +
                                 ", is above the limit, " + shown(*result.limit));
}

void judgeRate(CorrectedReading& result, const CorrectedRate& corrected, double unseen)
{
    result.rate = corrected.rate;
    result.low = corrected.low;
    result.high = unseen * corrected.high;
    result.unseen = unseen;
    if (unseen > 1.0)
        result.because.push_back(fmt::format("{}{} times as large would have shown as much after {} s",
                                             kUntimedValueReason, trimmedText(unseen, 2),
                                             trimmedText(inSeconds(kShortestSpray), 2)));
    if (!result.limit)
        return;
    const auto decision = decide({corrected.rate, corrected.uncertainty(), *result.limit});
    if (!decision)
        return;
    result.verdict = decision->verdict;
    result.conformance = decision->conformance;
    if (result.verdict == Verdict::Within && unseen > 1.0 && *result.high > *result.limit) {
        result.verdict = Verdict::CannotSay;
        result.conformance.reset(); // it speaks of the figure alone
    }
}

void judgeAboveRange(CorrectedReading& result, const CorrectedRate& corrected)
{
    result.atLeast = corrected.low;
    if (!result.limit)
        return;
    const auto decision = decide({corrected.rate, corrected.uncertainty(), *result.limit});
    result.verdict = decision && decision->verdict == Verdict::Over ? Verdict::Over : Verdict::CannotSay;
    result.because.emplace_back("more than the detector can show");
}

void sizeUp(const model::Job& job, const model::TestObject& object, const model::Reading& reading,
            CorrectedReading& result)
{
    Ground ground = groundOf(job, object, reading, result.because);
    const bool nothingSeen = reading.outcome == model::Outcome::NoResponse;
    if (!nothingSeen && !reading.peak) {
        result.because.emplace_back("the reading has no value");
        return;
    }
    if (!nothingSeen && !reading.background && !job.setup.zeroOn) {
        result.because.emplace_back("the background just before was not recorded; zero is taken");
    }
    ground.options.peak = nothingSeen ? ground.options.background : *reading.peak;
    if (!nothingSeen)
        result.net = ground.options.peak - ground.options.background;
    if (!ground.sizeable) {
        result.verdict = result.limit ? Verdict::CannotSay : Verdict::NoAnswer;
        return;
    }
    const auto corrected = correctRate(ground.options);
    if (!corrected) {
        result.because.push_back(corrected.error().message);
        result.verdict = result.limit ? Verdict::CannotSay : Verdict::NoAnswer;
        return;
    }
    result.factors = corrected->factors;
    result.relativeUncertainty = corrected->relativeUncertainty;
    result.sharedUncertainty = corrected->sharedUncertainty;
    result.ownUncertainty = corrected->ownUncertainty;
    const Untimed left = untimed(job, object, reading);
    const LeakRate detectable = corrected->smallestDetectable * left.bound;
    if (ground.hasNoise)
        result.smallestDetectable = detectable;
    if (reading.outcome == model::Outcome::AboveRange)
        return judgeAboveRange(result, *corrected);
    if (!nothingSeen && corrected->net.si() > 0.0 && (corrected->detected || !ground.hasNoise))
        return judgeRate(result, *corrected, left.value);
    if (!ground.hasNoise) {
        result.verdict = result.limit ? Verdict::CannotSay : Verdict::NoAnswer;
        return;
    }
    if (left.provesNothing) {
        result.because.push_back(fmt::format(
            "spray not timed: {} s, what a hand gives at the least, prove nothing at a response time "
            "of {} s",
            trimmedText(inSeconds(kShortestSpray), 2), trimmedText(inSeconds(left.response), 3)));
        result.verdict = result.limit ? Verdict::CannotSay : Verdict::NoAnswer;
        return;
    }
    if (left.bound > 1.0)
        result.because.emplace_back(kUntimedSprayReason);
    judgeBound(result, nothingSeen ? detectable : std::max(detectable, corrected->high * left.bound));
}

// The relative standard uncertainty that belongs to a spread of the logarithm.
double relativeOf(double spread)
{
    return std::sqrt(std::expm1(spread * spread));
}

std::string besideText(Beside beside)
{
    switch (beside) {
    case Beside::Nothing:
        break;
    case Beside::Setup:
        return "belongs to the test set-up, not to the object";
    case Beside::OtherCondition:
        return "was found only in another condition";
    }
    return {};
}

LocatedLeak locatedLeak(const model::Job& job, const model::TestObject& object, const PointFinding& finding)
{
    LocatedLeak leak;
    leak.label = fmt::format("point {}", finding.number);
    leak.helium = *finding.rate;
    leak.beside = besideText(besideOf(job, finding));
    double below = 0.0;
    double above = 0.0;
    // 95 % is two spreads either side.
    if (finding.low && finding.low->si() > 0.0)
        below = relativeOf(0.5 * std::log(*finding.rate / *finding.low));
    if (finding.high)
        above = relativeOf(0.5 * std::log(*finding.high / *finding.rate));
    if (finding.reading)
        if (const model::Reading* reading = job.reading(*finding.reading)) {
            const CorrectedReading corrected = correctedReading(job, object, *reading);
            leak.sharedUncertainty = corrected.sharedUncertainty;
            below = std::max(below, corrected.relativeUncertainty);
            above = std::max(above, corrected.relativeUncertainty);
        }
    const auto without = [&](double all) {
        return std::sqrt(std::max(0.0, all * all - leak.sharedUncertainty * leak.sharedUncertainty));
    };
    leak.ownUncertainty = without(below);
    leak.ownAbove = without(above);
    return leak;
}

} // namespace

CorrectedReading correctedReading(const model::Job& job, const model::TestObject& object,
                                  const model::Reading& reading)
{
    CorrectedReading result;
    result.reading = reading.id;
    result.point = reading.point;
    result.outcome = reading.outcome;
    result.condition = reading.condition;
    result.limit = job.limitOf(reading.point);
    for (const model::VoidMark& mark : job.voids) {
        if (mark.reading != reading.id)
            continue;
        result.isVoid = true;
        result.because.push_back("void: " + mark.reason);
    }
    if (result.isVoid)
        return result;
    if (reading.outcome == model::Outcome::NotAccessible || reading.outcome == model::Outcome::NotTested) {
        result.because.push_back(std::string(model::name(reading.outcome)) + ": " + reading.reason);
        return result;
    }
    sizeUp(job, object, reading, result);
    return result;
}

std::vector<CorrectedReading> correctedReadings(const model::Job& job, const model::TestObject& object,
                                                model::RoundId round)
{
    std::unordered_set<model::ReadingId> corrected;
    for (const model::Reading& reading : job.readings)
        if (reading.corrects)
            corrected.insert(*reading.corrects);
    std::vector<CorrectedReading> all;
    for (const model::Reading& reading : job.readings)
        if (reading.round == round && !corrected.contains(reading.id))
            all.push_back(correctedReading(job, object, reading));
    return all;
}

flow::ChannelConditions channelConditions(const model::Setup& setup)
{
    flow::ChannelConditions conditions;
    conditions.length = setup.leakPath;
    conditions.temperature = setup.roomTemperature;
    return conditions;
}

bool isOpenAtRest(model::Condition condition)
{
    switch (condition) {
    case model::Condition::AtRest:
    case model::Condition::Wet:
    case model::Condition::Dried:
    case model::Condition::Taped:
    case model::Condition::Bagged:
    case model::Condition::Other:
        return true;
    case model::Condition::Flexed:
    case model::Condition::Extended:
    case model::Condition::Angle:
    case model::Condition::Hot:
    case model::Condition::Cold:
    case model::Condition::Open:
    case model::Condition::HalfOpen:
    case model::Condition::Shut:
        return false;
    }
    return true;
}

Beside besideOf(const model::Job& job, const PointFinding& finding)
{
    if (job.sketch.isOfSetup(finding.point))
        return Beside::Setup;
    return isOpenAtRest(finding.condition) ? Beside::Nothing : Beside::OtherCondition;
}

std::optional<LeakAsAir> asAir(const model::Job& job, const model::TestObject& object,
                               const PointFinding& finding)
{
    if (!finding.rate || !(finding.rate->si() > 0.0))
        return std::nullopt;
    const LocatedLeak leak = locatedLeak(job, object, finding);
    const auto balance = balanceLeaks(std::span(&leak, 1), std::nullopt, channelConditions(job.setup));
    if (!balance)
        return std::nullopt;
    return balance->leaks.front();
}

std::vector<LocatedLeak> locatedLeaks(const model::Job& job, const model::TestObject& object,
                                      std::span<const PointFinding> findings)
{
    std::vector<LocatedLeak> located;
    std::unordered_set<model::PointId> counted;
    for (const PointFinding& finding : findings) {
        const bool leaks = finding.finding == Finding::Leak || finding.finding == Finding::Shared;
        if (!leaks || !finding.rate || !(finding.rate->si() > 0.0))
            continue;
        const bool partnerCounted = finding.finding == Finding::Shared &&
                                    std::any_of(finding.of.begin(), finding.of.end(),
                                                [&](model::PointId p) { return counted.contains(p); });
        if (partnerCounted)
            continue;
        counted.insert(finding.point);
        located.push_back(locatedLeak(job, object, finding));
    }
    return located;
}

Result<LeakBalance> jobBalance(const model::Job& job, const model::TestObject& object,
                               std::span<const PointFinding> findings, const std::optional<RiseTotal>& total)
{
    return balanceLeaks(locatedLeaks(job, object, findings), total, channelConditions(job.setup));
}

} // namespace sealwalk::analysis
