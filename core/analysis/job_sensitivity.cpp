// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/job_factor.h"
#include "core/analysis/job_view.h"
#include "core/analysis/setup_outlook.h"
#include "core/flow/response.h"
#include "core/quantities/number_text.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace sealwalk::analysis {

namespace {

std::string shown(LeakRate rate)
{
    return roundedText(inMillibarLitresPerSecond(rate), 2) + " mbar l/s";
}

// The last usable check of each place.
std::vector<const model::Calibration*> latestChecks(const model::Job& job, model::CalibrationKind kind)
{
    std::vector<const model::Calibration*> latest;
    for (const model::Calibration* check : job.standingCalibrations()) {
        if (check->kind != kind || !detail::factorOf(job, *check))
            continue;
        const auto same = std::find_if(latest.begin(), latest.end(), [&](const model::Calibration* known) {
            return known->place == check->place && known->joints == check->joints;
        });
        if (same == latest.end())
            latest.push_back(check);
        else if (check->at >= (*same)->at)
            *same = check;
    }
    return latest;
}

// The lowest limit of the joints a check serves; of the whole job when it serves all.
std::optional<LeakRate> lowestLimit(const model::Job& job, const model::Calibration& check)
{
    std::optional<LeakRate> lowest;
    for (const model::TestPoint* point : job.sketch.activePoints()) {
        const bool served = check.joints.empty() || std::find(check.joints.begin(), check.joints.end(),
                                                              point->joint) != check.joints.end();
        const auto limit = job.limitOf(point->id);
        if (served && limit && (!lowest || *limit < *lowest))
            lowest = limit;
    }
    return lowest ? lowest : job.setup.pointLimit;
}

std::optional<LeakRate> smallestSeenBy(const model::Job& job, const model::TestObject& object,
                                       model::JointId joint, Duration dwell)
{
    const Timestamp now{std::numeric_limits<std::int64_t>::max(), 0};
    std::vector<std::string> notes;
    const auto factors = detail::factorsFor(job, joint, now, notes);
    const auto background = detail::backgroundAt(job, now);
    const double share = job.setup.heliumShare.si();
    if (!factors || !background || !(share > 0.0))
        return std::nullopt;
    DetectableOptions options;
    for (const FactorUsed& factor : *factors)
        options.factor /= factor.multiplier;
    options.noise = background->noise;
    options.driftPerSecond = LeakRate::fromSi(std::abs(background->driftPerSecond.si()));
    options.dwell = dwell;
    options.noiseFactor = job.setup.noiseFactor;
    options.heliumShare = share;
    if (const auto response = detail::responseOf(job, object, joint, now)) {
        // A far place answers more slowly and is sprayed for longer: three response times, as everywhere.
        options.dwell = std::max(dwell, 3.0 * response->time);
        const auto correction =
            flow::correctDwell(options.dwell, response->time, response->relativeUncertainty);
        if (!correction)
            return std::nullopt;
        options.riseFraction = correction->fraction;
    }
    const auto smallest = smallestDetectable(options);
    return smallest ? std::optional(*smallest) : std::nullopt;
}

void advise(PlaceSensitivity& place)
{
    if (!place.smallestDetectable)
        place.advice = "watch the background for a minute, and dwell long enough, to learn what can be seen";
    else if (!place.limit)
        place.advice = "set the limit before the first reading";
    else if (*place.smallestDetectable > *place.limit) {
        place.cannotPass = true;
        place.advice = "the smallest detectable leak, " + shown(*place.smallestDetectable) +
                       ", is above the limit: nothing can be passed with this set-up";
    } else {
        // As Prepare says it: one bar, one sentence.
        const double margin = *place.limit / *place.smallestDetectable;
        const std::string times = trimmedText(margin, 2);
        place.advice = margin >= kGoodMargin ? "good to start: limit " + times + " times what can be seen"
                       : margin >= kLeastMargin
                           ? "start with care: limit only " + times + " times what can be seen"
                           : "limit only " + times + " times what can be seen, 3 are needed";
    }
}

} // namespace

std::vector<CheckView> checks(const model::Job& job)
{
    std::vector<const model::Calibration*> ordered = job.standingCalibrations();
    std::stable_sort(ordered.begin(), ordered.end(),
                     [](const model::Calibration* a, const model::Calibration* b) { return a->at < b->at; });
    std::vector<CheckView> views;
    for (std::size_t i = 0; i < ordered.size(); ++i) {
        const model::Calibration& check = *ordered[i];
        CheckView view;
        view.calibration = check.id;
        if (const auto reference = detail::referenceOf(check)) {
            view.reference = reference->rate;
            view.notes = reference->warnings;
        }
        const auto factor = detail::factorOf(job, check);
        if (!factor) {
            view.notes.push_back(factor.error().message);
            views.push_back(std::move(view));
            continue;
        }
        view.factor = *factor;
        for (std::size_t j = i; j-- > 0;) {
            const model::Calibration& earlier = *ordered[j];
            if (earlier.kind != check.kind || earlier.place != check.place || !views[j].factor)
                continue;
            const FactorChange change = compareFactors(*views[j].factor, *factor);
            if (check.moment == model::CalibrationMoment::Before) {
                view.step = change; // a new set-up: the change is wanted, not a drift to be explained
            } else {
                view.change = change;
                view.notes.push_back(change.advice);
            }
            break;
        }
        views.push_back(std::move(view));
    }
    return views;
}

std::vector<PlaceSensitivity> sensitivities(const model::Job& job, const model::TestObject& object,
                                            Duration dwell)
{
    // A leak on the object says all; one on the detector serves only when there is no other.
    auto latest = latestChecks(job, model::CalibrationKind::SystemCheck);
    if (latest.empty())
        latest = latestChecks(job, model::CalibrationKind::DetectorCheck);
    std::vector<PlaceSensitivity> places;
    for (const model::Calibration* check : latest) {
        PlaceSensitivity place;
        place.place = check->place;
        place.joints = check->joints;
        place.factor = detail::factorOf(job, *check).value();
        place.limit = lowestLimit(job, *check);
        place.smallestDetectable = smallestSeenBy(
            job, object, check->joints.empty() ? model::JointId{} : check->joints.front(), dwell);
        advise(place);
        places.push_back(std::move(place));
    }
    return places;
}

} // namespace sealwalk::analysis
