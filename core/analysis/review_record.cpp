// SPDX-License-Identifier: GPL-3.0-or-later
// Checks of what was sprayed and read.
#include "core/analysis/earlier_delay.h"
#include "core/analysis/job_factor.h"
#include "core/analysis/review_ground.h"
#include "core/analysis/slips.h"
#include "core/analysis/spray_timing.h"
#include "core/analysis/walk.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <iterator>
#include <map>
#include <unordered_set>

namespace sealwalk::analysis::detail {

namespace {

/// What the display usually showed in a round; none with fewer than five readings.
std::optional<LeakRate> usuallyShown(const model::Job& job,
                                     const std::vector<const model::Reading*>& readings)
{
    constexpr std::size_t kFewest = 5;
    std::vector<LeakRate> shown;
    for (const model::Reading* reading : readings) {
        if (const auto value = reading->peak ? reading->peak : reading->background)
            shown.push_back(*value);
        else if (const auto watch = detail::backgroundAt(job, reading->at);
                 watch && reading->outcome == model::Outcome::NoResponse)
            shown.push_back(watch->level);
    }
    if (shown.size() < kFewest)
        return std::nullopt;
    const auto middle = shown.begin() + static_cast<std::ptrdiff_t>(shown.size() / 2);
    std::nth_element(shown.begin(), middle, shown.end());
    return *middle;
}

/// A single answer a thousand times above what the round showed elsewhere: a large leak, or a wrong exponent.
bool isAlone(const model::Reading& reading, const std::optional<LeakRate>& usual)
{
    constexpr double kFar = 1000.0;
    return usual && usual->si() > 0.0 && *reading.peak > kFar * *usual;
}

/// Points with a reading dated far from the middle one of its round: most often a slip in a date that was typed
/// from paper.
std::vector<model::PointId> datedElsewhere(const std::vector<const model::Reading*>& readings)
{
    constexpr std::size_t kFewest = 3;
    constexpr std::int64_t kWeek = std::int64_t{7} * 24 * 3600 * 1000; // a round is a day's work, or a few
    std::vector<model::PointId> points;
    if (readings.size() < kFewest)
        return points;
    std::vector<std::int64_t> times;
    for (const model::Reading* reading : readings)
        times.push_back(reading->at.utcMilliseconds);
    const auto middle = times.begin() + static_cast<std::ptrdiff_t>(times.size() / 2);
    std::nth_element(times.begin(), middle, times.end());
    for (const model::Reading* reading : readings)
        if (std::abs(reading->at.utcMilliseconds - *middle) > kWeek &&
            std::find(points.begin(), points.end(), reading->point) == points.end())
            points.push_back(reading->point);
    return points;
}

int standingAnswers(const model::Job& job, model::PointId point)
{
    int answers = 0;
    for (const model::Round& round : job.rounds)
        for (const model::Reading* reading : job.standing(round.id))
            if (reading->point == point && reading->outcome == model::Outcome::Value)
                ++answers;
    return answers;
}

/// "36 (behind the pump frame)"; many are named without their reasons.
std::string reasonedText(const ReviewGround& ground, const std::vector<model::PointId>& points)
{
    constexpr std::size_t kMost = 4;
    if (points.size() > kMost)
        return ground.text(points);
    std::string text;
    for (const PointFinding& finding : ground.findings) {
        if (std::find(points.begin(), points.end(), finding.point) == points.end())
            continue;
        const model::Reading* reading = finding.reading ? ground.job.reading(*finding.reading) : nullptr;
        text += (text.empty() ? "" : ", ") + std::to_string(finding.number);
        if (reading != nullptr && !reading->reason.empty())
            text += " (" + reading->reason + ")";
    }
    return text;
}

} // namespace

Answer everyPointHasState(const ReviewGround& ground)
{
    if (ground.findings.empty())
        return {CheckState::Stops, "There are no points."};
    std::vector<Answer> found;
    const auto note = [&](CheckState state, const char* says, const std::vector<model::PointId>& points) {
        if (!points.empty())
            found.push_back({state, says + ground.text(points) + ".", points});
    };
    note(CheckState::Stops, "Not sprayed, and no reason given: ",
         ground.pointsWhere([](const PointFinding& f) { return f.finding == Finding::NotSprayed; }));
    note(CheckState::Stops, "Void and not repeated: ", ground.pointsWhere([](const PointFinding& f) {
        return f.finding == Finding::Void;
    }));
    const auto leftOut = ground.pointsWhere([](const PointFinding& f) {
        return f.finding == Finding::NotAccessible || f.finding == Finding::NotTested;
    });
    if (!leftOut.empty())
        found.push_back({CheckState::NeedsWord,
                         "Left out with a reason: " + reasonedText(ground, leftOut) + ".", leftOut});
    return answerOf(std::move(found), {CheckState::InOrder,
                                       fmt::format("All {} points have an answer.", ground.findings.size())});
}

Answer kindsPresent(const ReviewGround& ground)
{
    const auto& joints = ground.job.sketch.joints;
    if (std::none_of(joints.begin(), joints.end(), [](const model::Joint& j) { return j.isSetup; }))
        return {CheckState::NeedsWord,
                "No joint of the test set-up is on the sketch; its own leaks would be read as the object's."};
    const auto isSetup = [&](const model::Reading& reading) {
        return ground.job.sketch.isOfSetup(reading.point);
    };
    const auto& readings = ground.job.readings;
    const auto firstOfSetup = std::find_if(readings.begin(), readings.end(), isSetup);
    const auto firstOfObject = std::find_if_not(readings.begin(), readings.end(), isSetup);
    if (firstOfSetup != readings.end() && firstOfObject < firstOfSetup)
        return {
            CheckState::NeedsWord,
            "The test set-up was sprayed after joints of the object; what was read before may be its leak.",
            {firstOfSetup->point}};
    return {CheckState::InOrder, "The test set-up is on the sketch."};
}

Answer readingsWhole(const ReviewGround& ground)
{
    const SprayTiming timing = sprayTiming(ground.job, ground.object);
    const EarlierDelays delays(ground.job, timing.response);
    // One matter for each kind of gap, and for each dwell: the figures of one point hold for no other.
    std::map<std::pair<Gap, std::string>, Answer> open;
    for (const PointFinding& finding : ground.findings) {
        const model::Reading* reading = finding.reading ? ground.job.reading(*finding.reading) : nullptr;
        if (reading == nullptr)
            continue;
        const auto before = delays.before(*reading);
        for (const Gap gap : gapsOf(*reading, timing.response, before)) {
            std::string words = gapWords(gap, *reading, timing, before);
            Answer& matter = open[{gap, words}];
            matter.sentence = std::move(words);
            matter.points.push_back(finding.point);
        }
    }
    std::vector<Answer> found;
    for (const auto& [gap, matter] : open)
        found.push_back({CheckState::NeedsWord,
                         fmt::format("{}: {}.", matter.sentence, ground.text(matter.points)), matter.points});
    return answerOf(std::move(found),
                    {CheckState::InOrder, "Every reading that counts has its background and enough dwell."});
}

Answer permeationProven(const ReviewGround& ground)
{
    const auto points = ground.pointsWhere([&](const PointFinding& finding) {
        if (finding.finding != Finding::Permeation)
            return false;
        const model::Reading* reading = finding.reading ? ground.job.reading(*finding.reading) : nullptr;
        return reading == nullptr || !reading->delay;
    });
    if (!points.empty())
        return {CheckState::NeedsWord,
                "Called permeation without a recorded delay: " + ground.text(points) + ".", points};
    const bool any =
        !ground.pointsWhere([](const PointFinding& f) { return f.finding == Finding::Permeation; }).empty();
    return {CheckState::InOrder,
            any ? "Delay recorded wherever permeation is claimed." : "Permeation is claimed nowhere."};
}

Answer correctedCompared(const ReviewGround& ground)
{
    const auto points = ground.pointsWhere([](const PointFinding& f) {
        const bool answered = f.finding == Finding::Leak || f.finding == Finding::Shared;
        return answered && f.asRead && !f.rate && !f.bound && !f.atLeast && !f.judgedByPerson;
    });
    if (!points.empty())
        return {CheckState::NeedsWord, "Only the shown value is known at " + ground.text(points) + ".",
                points};
    return {CheckState::InOrder, "Every figure compared with the limit is on the chamber, with its range."};
}

Answer noOutliers(const ReviewGround& ground)
{
    std::vector<model::PointId> points;
    std::vector<model::PointId> dated;
    for (const model::Round& round : ground.job.rounds) {
        const auto standing = ground.job.standing(round.id);
        std::ranges::copy(datedElsewhere(standing), std::back_inserter(dated));
        const auto usual = usuallyShown(ground.job, standing);
        const SlipCheck slips(ground.job, round.id);
        for (const model::Reading* reading : standing)
            if (reading->outcome == model::Outcome::Value && reading->peak && !reading->confirmed &&
                ((isAlone(*reading, usual) && standingAnswers(ground.job, reading->point) < 2) ||
                 slips.doubt(reading->point, *reading->peak, reading->background)) &&
                std::find(points.begin(), points.end(), reading->point) == points.end())
                points.push_back(reading->point);
    }
    std::vector<Answer> found;
    if (!points.empty())
        found.push_back({CheckState::NeedsWord,
                         "Look again at the number typed for " + ground.text(points) + ".", points});
    if (!dated.empty())
        found.push_back({CheckState::NeedsWord,
                         "Dated more than a week from the other readings of the round: " +
                             ground.text(dated) + ".",
                         dated});
    return answerOf(std::move(found), {CheckState::InOrder, "No value stands a thousand times off."});
}

Answer conditionsCovered(const ReviewGround& ground)
{
    std::vector<model::PointId> points;
    std::map<model::Condition, std::unordered_set<model::PointId>> sprayed; // in whichever round
    for (const model::Round& round : ground.job.rounds)
        for (const model::Reading* reading : ground.job.standing(round.id))
            sprayed[reading->condition].insert(reading->point);
    for (const model::Round& round : ground.job.rounds) {
        if (round.kind != model::RoundKind::AsFound)
            continue;
        for (const WalkStep& step : walk(ground.job, round.id))
            if (!step.isDone() && step.condition != model::Condition::AtRest &&
                !sprayed[step.condition].contains(step.point))
                points.push_back(step.point);
    }
    if (!points.empty())
        return {CheckState::Stops,
                "Asked for in another condition and not sprayed so: " + ground.text(points) + ".", points};
    return {CheckState::InOrder, "Every joint was sprayed in the conditions it asks for."};
}

namespace {

/// A sentence's own stop follows.
std::string withoutStop(std::string words)
{
    while (words.ends_with('.'))
        words.pop_back();
    return words;
}

/// Each takes what was worked out with it along: worth a look.
std::vector<Answer> voidMeasurements(const model::Job& job)
{
    std::vector<Answer> found;
    const auto add = [&](const auto& measurement, std::string_view what) {
        if (const model::MeasurementVoid* mark = job.voidOf(measurement.id.uuid()))
            found.push_back(
                {CheckState::NeedsWord,
                 fmt::format("The {} of {} {} is void: {}.", what, measurement.at.date(),
                             measurement.at.timeOfDay().substr(0, 5), withoutStop(mark->reason))});
    };
    for (const model::Calibration& check : job.calibrations)
        add(check, model::name(check.kind));
    for (const model::BackgroundWatch& watch : job.backgrounds)
        add(watch, "background watch");
    for (const model::RiseTest& test : job.riseTests)
        add(test, "pressure rise");
    return found;
}

} // namespace

Answer changesReasoned(const ReviewGround& ground)
{
    int changed = 0;
    std::vector<model::PointId> without;
    for (const model::Reading& reading : ground.job.readings) {
        if (!reading.corrects)
            continue;
        ++changed;
        if (reading.reason.empty())
            without.push_back(reading.point);
    }
    std::vector<Answer> found = voidMeasurements(ground.job);
    if (!without.empty())
        found.insert(found.begin(), {CheckState::NeedsWord,
                                     "Corrected without a reason: " + ground.text(without) + ".", without});
    const bool nothing = changed == 0 && ground.job.voids.empty();
    return answerOf(std::move(found),
                    {CheckState::InOrder,
                     nothing
                         ? std::string("Nothing was corrected or made void.")
                         : fmt::format("{} corrected, {} void; the old entries stay, each with its reason.",
                                       changed, ground.job.voids.size())});
}

} // namespace sealwalk::analysis::detail
