// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/setup_outlook.h"

#include "core/analysis/job_factor.h"
#include "core/flow/response.h"

#include <cmath>
#include <limits>

namespace sealwalk::analysis {

namespace {

constexpr double kLittleHelium =
    0.5; // less than this reaches the detector: the parallel pump is worth a look
constexpr double kWeakFactor = 0.5;
constexpr double kSecondsPerMinute = 60.0;

std::optional<double> shareOf(const model::Setup& setup, std::optional<Volume> volume)
{
    if (!setup.auxiliarySpeed || !setup.detectorSpeed || *setup.detectorSpeed <= PumpingSpeed())
        return std::nullopt;
    if (volume && setup.hoseDiameter && setup.hoseLength) {
        flow::ResponseOptions options;
        options.volume = *volume;
        options.pump = *setup.detectorSpeed;
        options.auxiliary = *setup.auxiliarySpeed;
        options.hoseDiameter = setup.hoseDiameter;
        options.hoseLength = setup.hoseLength;
        options.linePressure = setup.linePressure.value_or(pascals(0.0));
        options.temperature = setup.roomTemperature;
        if (const auto summary = flow::respond(options))
            return summary->share;
    }
    return flow::detectorShare(*setup.detectorSpeed, *setup.auxiliarySpeed);
}

/// The place where the least can be told from the limit: what holds there holds for the whole walk.
const PlaceSensitivity* worst(const std::vector<PlaceSensitivity>& places)
{
    const PlaceSensitivity* result = nullptr;
    double least = std::numeric_limits<double>::infinity();
    for (const PlaceSensitivity& place : places) {
        if (!place.smallestDetectable)
            continue;
        const double limit = place.limit ? place.limit->si() : 1.0;
        const double margin = limit / place.smallestDetectable->si();
        if (result == nullptr || margin < least) {
            result = &place;
            least = margin;
        }
    }
    return result;
}

Remedy remedyFor(const model::Job& job, const SetupOutlook& outlook, const PlaceSensitivity& place)
{
    const auto background = detail::backgroundAt(job, Timestamp{std::numeric_limits<std::int64_t>::max(), 0});
    if (background) {
        const double drift = std::abs(background->driftPerSecond.si()) * outlook.timing.dwell.si();
        if (drift > job.setup.noiseFactor * background->noise.si())
            return Remedy::WatchLonger;
    }
    if (outlook.heliumToDetector && *outlook.heliumToDetector < kLittleHelium)
        return Remedy::ThrottleParallel;
    return place.factor.factor < kWeakFactor ? Remedy::CalibrateNearer : Remedy::QuietenDetector;
}

void judge(const model::Job& job, const PlaceSensitivity& place, SetupOutlook& outlook)
{
    outlook.smallestDetectable = place.smallestDetectable;
    outlook.worstPlace = place.place;
    outlook.limit = place.limit;
    if (!place.limit || *place.smallestDetectable <= LeakRate())
        return;
    outlook.margin = *place.limit / *place.smallestDetectable;
    outlook.outlook = *outlook.margin >= kGoodMargin    ? Outlook::GoodToStart
                      : *outlook.margin >= kLeastMargin ? Outlook::StartWithCare
                                                        : Outlook::CannotPass;
    if (outlook.outlook != Outlook::GoodToStart)
        outlook.remedy = remedyFor(job, outlook, place);
}

} // namespace

bool isParallelSpeedUnknown(const model::Setup& setup)
{
    return !setup.auxiliarySpeed && setup.connection.find("parallel") != std::string::npos;
}

SetupOutlook setupOutlook(const model::Job& job, const model::TestObject& object)
{
    const model::Setup& setup = job.setup;
    SetupOutlook outlook;
    outlook.timing = sprayTiming(job, object);
    outlook.dwellShare = flow::riseFraction(outlook.timing.dwell, outlook.timing.response);
    outlook.heliumToDetector = shareOf(setup, setup.volume ? setup.volume : object.volume);
    outlook.parallelSpeedUnknown = isParallelSpeedUnknown(setup);
    outlook.limit = setup.pointLimit;
    for (const model::Calibration* check : job.standingCalibrations())
        outlook.shareIsInFactor =
            outlook.shareIsInFactor || check->kind == model::CalibrationKind::SystemCheck;

    const auto places = sensitivities(job, object, outlook.timing.dwell);
    outlook.needsCalibration = places.empty();
    outlook.needsBackground =
        !detail::backgroundAt(job, Timestamp{std::numeric_limits<std::int64_t>::max(), 0}).has_value();
    const PlaceSensitivity* place = worst(places);
    if (place == nullptr && !places.empty())
        place = &places.front(); // without a background the check still says what it saw
    if (place != nullptr && outlook.shareIsInFactor)
        outlook.shownOfLeak = place->factor.factor;
    if (place != nullptr && place->smallestDetectable)
        judge(job, *place, outlook);

    outlook.points = static_cast<int>(job.sketch.activePoints().size());
    outlook.walk = walkTime(outlook.timing, outlook.points);
    if (setup.heliumFlow)
        outlook.heliumLitres =
            *setup.heliumFlow * inSeconds(outlook.timing.dwell) * outlook.points / kSecondsPerMinute;
    return outlook;
}

} // namespace sealwalk::analysis
