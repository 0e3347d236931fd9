// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/slow_rise.h"

#include "core/analysis/finding_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sealwalk::analysis {

namespace {

// A leak answers within its response time; the first trace through the thinnest rings takes minutes. A clean
// system notices 0.1 % of the plateau, so one minute is the earliest worth suspecting.
constexpr double kPermeationFrom = 60.0;        // s
constexpr double kPermeationInResponses = 10.0; // slow systems: later still
// After two and a half response times a leak has all but reached its plateau, so its first clear rise came
// before; a hand with a watch is not surer than five seconds.
constexpr double kLeakWithinResponses = 2.5;
constexpr double kLeakWithin = 5.0; // s
constexpr double kBurstResponses = 4.0;
// A burst is short when permeation cannot have answered yet.
constexpr double kBurst = 15.0;  // s
constexpr double kAnswers = 3.0; // standard deviations

/// s
double permeationFrom(double response)
{
    return std::max(kPermeationFrom, kPermeationInResponses * response);
}

} // namespace

Duration permeationTimeLag(Length thickness, double diffusivity)
{
    return seconds(thickness.si() * thickness.si() / (6.0 * diffusivity));
}

double permeationBuildUp(Length thickness, double diffusivity, Duration after)
{
    if (after.si() <= 0.0)
        return 0.0;
    const double pace = diffusivity * after.si() / (thickness.si() * thickness.si());
    // The series in exp(-n^2) converges slowly at first; its image series takes over there.
    constexpr double kEarly = 0.1;
    double sum = 0.0;
    if (pace < kEarly) {
        for (int n = 0; n < 6; ++n)
            sum += std::exp(-(2.0 * n + 1.0) * (2.0 * n + 1.0) / (4.0 * pace));
        return 2.0 / std::sqrt(std::numbers::pi * pace) * sum;
    }
    for (int n = 1; n < 20; ++n)
        sum += (n % 2 == 1 ? -1.0 : 1.0) * std::exp(-n * n * std::numbers::pi * std::numbers::pi * pace);
    return std::clamp(1.0 + 2.0 * sum, 0.0, 1.0);
}

Duration longestDelay(const Survey& survey, int point)
{
    Duration longest;
    for (const SurveyReading& reading : survey.readings) {
        if (reading.point == point && !reading.isVoid && reading.delay)
            longest = std::max(longest, *reading.delay);
    }
    return longest;
}

bool isLate(Duration delay, Duration response)
{
    return inSeconds(delay) > std::max(kLeakWithinResponses * inSeconds(response), kLeakWithin) &&
           inSeconds(delay) < permeationFrom(inSeconds(response));
}

bool isAsLateAsPermeation(Duration delay, Duration response)
{
    return !(inSeconds(delay) < permeationFrom(inSeconds(response)));
}

SlowRise slowRise(const Survey& survey, int point, LeakRate noise)
{
    const Duration delay = longestDelay(survey, point);
    if (isLate(delay, survey.response))
        return SlowRise::SlowPath;
    const double response = inSeconds(survey.response);
    if (inSeconds(delay) < permeationFrom(response))
        return SlowRise::Prompt;
    for (const SurveyReading& reading : survey.readings) {
        const bool burst = reading.dwell.si() <= std::max(kBurst, kBurstResponses * response);
        if (reading.point == point && !reading.isVoid && burst && !reading.delay &&
            reading.net() < kAnswers * noise)
            return SlowRise::Permeation;
    }
    return SlowRise::Suspected;
}

std::string slowRiseWords(SlowRise rise, Duration delay, const std::vector<int>& stronger)
{
    switch (rise) {
    case SlowRise::Prompt:
        return {};
    case SlowRise::SlowPath:
        return fmt::format(
            "The first rise came {:.0f} s after the helium, later than this system answers: a leak in "
            "series behind a space, or helium that drifted to {}. Spray {} again with less flow, and bag "
            "this one, before it is taken apart.",
            inSeconds(delay),
            stronger.empty() ? "another joint" : "the larger leak at " + pointsWords(stronger, "or"),
            stronger.empty() ? "beside it" : pointsWords(stronger, "or"));
    case SlowRise::Suspected:
        return fmt::format(
            "The first rise came {:.0f} s after the helium, as late as permeation through an elastomer: "
            "give it a short burst of 5 to 10 s; no answer means permeation.",
            inSeconds(delay));
    case SlowRise::Permeation:
        return fmt::format(
            "The first rise came {:.0f} s after the helium and a short burst got no answer: helium "
            "permeates through the seal, there is no open leak.",
            inSeconds(delay));
    }
    return {};
}

std::string lateEchoWords(SlowRise rise, Duration delay)
{
    if (rise != SlowRise::SlowPath)
        return {};
    return fmt::format("The first rise came {:.0f} s after the helium, as late as helium that has to drift.",
                       inSeconds(delay));
}

} // namespace sealwalk::analysis
