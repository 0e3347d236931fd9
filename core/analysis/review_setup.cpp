// SPDX-License-Identifier: GPL-3.0-or-later
// Checks of what was prepared.
#include "core/analysis/background_series.h"
#include "core/analysis/job_view.h"
#include "core/analysis/limit_change.h"
#include "core/analysis/named_people.h"
#include "core/analysis/review_ground.h"
#include "core/analysis/setup_outlook.h"
#include "core/analysis/spray_timing.h"
#include "core/base/calendar_day.h"

#include <fmt/format.h>

#include <algorithm>
#include <limits>
#include <set>

namespace sealwalk::analysis::detail {

namespace {

/// The watches that readings lean on: the last before each, the first for those before any. One that was made
/// anew before the walk began is none of them. Without readings the last.
std::vector<const model::BackgroundWatch*> watchesThatServe(const model::Job& job)
{
    std::vector<const model::BackgroundWatch*> ordered = job.standingBackgrounds();
    std::stable_sort(ordered.begin(), ordered.end(),
                     [](const auto* a, const auto* b) { return a->at < b->at; });
    std::set<std::size_t> serving;
    for (const model::Reading& reading : job.readings) {
        const auto after = std::find_if(ordered.begin(), ordered.end(),
                                        [&](const auto* watch) { return reading.at < watch->at; });
        if (!job.isVoid(reading.id))
            serving.insert(
                static_cast<std::size_t>(std::max<std::ptrdiff_t>(0, after - ordered.begin() - 1)));
    }
    if (serving.empty() && !ordered.empty())
        serving.insert(ordered.size() - 1);
    std::vector<const model::BackgroundWatch*> watches;
    for (const std::size_t index : serving)
        watches.push_back(ordered[index]);
    return watches;
}

} // namespace

Answer rightObject(const ReviewGround& ground)
{
    std::vector<Answer> found;
    if (ground.object.name.empty() || ground.object.tag.empty())
        found.push_back(
            {CheckState::NeedsWord, "The object has no tag; a report on it could be taken for another's."});
    if (ground.job.setup.procedure.empty())
        found.push_back({CheckState::NeedsWord, "No procedure is named."});
    return answerOf(std::move(found),
                    {CheckState::InOrder,
                     fmt::format("{} {}, procedure {}, sketch revision {}.", ground.object.name,
                                 ground.object.tag, ground.job.setup.procedure, ground.job.sketch.revision)});
}

Answer limitAgreed(const ReviewGround& ground)
{
    const model::Setup& setup = ground.job.setup;
    if (!setup.pointLimit && setup.kindLimits.empty())
        return {CheckState::Stops, "No limit is set; nothing can be accepted or rejected."};
    std::string doubts;
    const auto& review = ground.job.review;
    const auto changed = std::find_if(review.rbegin(), review.rend(), [](const model::ReviewEntry& entry) {
        return entry.check == kLimitChange;
    });
    if (changed != review.rend())
        doubts = changed->text;
    if (setup.limitAgreedBy.empty())
        doubts += std::string(doubts.empty() ? "" : " ") + "Nobody is named who agreed the limit.";
    const bool byTester = std::any_of(
        ground.job.readings.begin(), ground.job.readings.end(), [&](const model::Reading& reading) {
            return !setup.limitAgreedBy.empty() && namesPerson(setup.limitAgreedBy, reading.by);
        });
    if (byTester)
        doubts += std::string(doubts.empty() ? "" : " ") + "The limit was agreed by who tested.";
    if (!doubts.empty())
        return {CheckState::NeedsWord, doubts};
    return {CheckState::InOrder, fmt::format("Agreed by {}, as {}, in {}.", setup.limitAgreedBy,
                                             model::name(setup.gasBasis), setup.unit)};
}

Answer referenceInDate(const ReviewGround& ground)
{
    const auto calibrations = ground.job.standingCalibrations();
    if (calibrations.empty())
        return {CheckState::Stops,
                "No check with a reference leak stands; readings have no figure on the chamber."};
    const auto isOutOfDate = [](const model::Calibration& check) {
        return check.leak.dueDate && isPast(*check.leak.dueDate, check.at);
    };
    // One that was no good and is not void is made good by a later one in its place.
    const auto isMadeGood = [&](const model::Calibration& check) {
        return std::any_of(calibrations.begin(), calibrations.end(), [&](const model::Calibration* later) {
            return later->at > check.at && later->place == check.place && later->kind == check.kind &&
                   later->moment == check.moment && !isOutOfDate(*later);
        });
    };
    std::string madeGood;
    for (const model::Calibration* check : calibrations) {
        if (!isOutOfDate(*check))
            continue;
        const std::string said = fmt::format("Reference leak {} was past its date of {}", check->leak.serial,
                                             check->leak.dueDate->date());
        if (!isMadeGood(*check))
            return {CheckState::Stops, said + "."};
        madeGood = said + "; the check was made again with one in date.";
    }
    if (!madeGood.empty())
        return {CheckState::NeedsWord, madeGood};
    for (const model::Calibration* check : calibrations)
        if (check->leak.certificate.empty() || !check->leak.certificateDate.isSet())
            return {CheckState::NeedsWord,
                    fmt::format("Reference leak {} has no certificate in the record.", check->leak.serial)};
    return {CheckState::InOrder,
            fmt::format("Reference leak {}, certificate {} of {}.", calibrations.front()->leak.serial,
                        calibrations.front()->leak.certificate,
                        calibrations.front()->leak.certificateDate.date())};
}

Answer sensitiveEnough(const ReviewGround& ground)
{
    const SprayTiming timing = sprayTiming(ground.job, ground.object);
    const auto places = sensitivities(ground.job, ground.object, timing.dwell);
    if (places.empty())
        return {CheckState::Stops, "The smallest detectable leak is not known."};
    for (const PlaceSensitivity& place : places) {
        if (place.cannotPass)
            return {
                CheckState::Stops,
                fmt::format("At {}, {}.", place.place.empty() ? "the object" : place.place, place.advice)};
        if (!place.smallestDetectable)
            return {CheckState::NeedsWord,
                    "Without a quiet watch of the background nobody knows what could be seen."};
    }
    // What the last watch can see says nothing of points sprayed while less could be seen.
    if (const auto blind = ground.pointsWhere([](const PointFinding& f) {
            return f.finding == Finding::BelowDetectable && f.bound && !f.judgedByPerson;
        });
        !blind.empty())
        return {CheckState::NeedsWord,
                "Sprayed while a leak of the size of the limit could not be seen: " + ground.text(blind) +
                    ".",
                blind};
    for (const PlaceSensitivity& place : places)
        if (place.limit && *place.limit < kLeastMargin * *place.smallestDetectable)
            return {
                CheckState::NeedsWord,
                fmt::format("At {}: {}.", place.place.empty() ? "the object" : place.place, place.advice)};
    const auto margin = [](const PlaceSensitivity& place) {
        return place.limit ? *place.limit / *place.smallestDetectable
                           : std::numeric_limits<double>::infinity();
    };
    const auto worst = std::min_element(places.begin(), places.end(),
                                        [&](const auto& a, const auto& b) { return margin(a) < margin(b); });
    return {CheckState::InOrder, worst->advice};
}

Answer backgroundQuiet(const ReviewGround& ground)
{
    if (ground.job.standingBackgrounds().empty())
        return {CheckState::NeedsWord, "No background watch stands."};
    const auto serving = watchesThatServe(ground.job);
    std::vector<Answer> found;
    for (const model::BackgroundWatch* watch : serving) {
        const auto summary = summariseBackground(*watch);
        if (!summary)
            found.push_back({CheckState::NeedsWord,
                             "A background watch cannot be used: " + summary.error().message + "."});
        else if (!summary->warnings.empty())
            found.push_back({CheckState::NeedsWord, "Background watch of " + watch->at.timeOfDay() + ": " +
                                                        summary->warnings.front() + "."});
    }
    return answerOf(std::move(found), {CheckState::InOrder, fmt::format("{} quiet watch{}.", serving.size(),
                                                                        serving.size() == 1 ? "" : "es")});
}

Answer objectDry(const ReviewGround& ground)
{
    if (!ground.job.setup.dried)
        return {CheckState::NeedsWord,
                "It is not recorded that the object was dry (Prepare, Papers); liquid plugs leaks."};
    return {CheckState::InOrder, "Recorded as dry."};
}

Answer deviationsApproved(const ReviewGround& ground)
{
    std::vector<model::PointId> without;
    for (const model::Concession& concession : ground.job.concessions)
        if (concession.grantedBy.empty() || concession.reason.empty())
            without.insert(without.end(), concession.points.begin(), concession.points.end());
    std::vector<Answer> found;
    if (!without.empty())
        found.push_back({CheckState::Stops,
                         "A concession for " + ground.text(without) + " names nobody or no reason.",
                         without});
    for (const model::Concession& concession : ground.job.concessions)
        if (concession.until && isPast(*concession.until, ground.options.now))
            found.push_back({CheckState::NeedsWord,
                             "A concession ran out on " + concession.until->date() + ".", concession.points});
    const std::size_t count = ground.job.concessions.size();
    return answerOf(std::move(found),
                    {CheckState::InOrder,
                     count == 0   ? std::string("No concessions.")
                     : count == 1 ? std::string("One concession, with name and reason.")
                                  : fmt::format("{} concessions, each with name and reason.", count)});
}

Answer testerQualified(const ReviewGround& ground)
{
    std::set<std::string> testers;
    for (const model::Reading& reading : ground.job.readings)
        testers.insert(reading.by);
    std::string unknown;
    for (const std::string& name : testers) {
        const auto person = std::find_if(ground.options.people.begin(), ground.options.people.end(),
                                         [&](const model::Person& p) { return p.name == name; });
        if (person == ground.options.people.end() || person->qualification.empty())
            unknown +=
                (unknown.empty() ? "" : ", ") + (name.empty() ? std::string("somebody unnamed") : name);
    }
    if (!unknown.empty())
        return {CheckState::NeedsWord, "No qualification is recorded for " + unknown + "."};
    return {CheckState::InOrder, testers.empty() ? "No readings yet." : "Qualifications are on record."};
}

Answer sheetsReadable(const ReviewGround& ground)
{
    for (const model::Sheet& sheet : ground.job.sketch.sheets)
        if (sheet.seenFrom.empty())
            return {CheckState::NeedsWord,
                    "Sheet " + sheet.name +
                        " does not say which side it is seen from; clock positions can be read wrong."};
    if (ground.job.sketch.sheets.empty())
        return {CheckState::Stops, "There is no sheet."};
    return {CheckState::InOrder,
            ground.job.sketch.sheets.size() == 1
                ? std::string("One sheet, with its side.")
                : fmt::format("{} sheets, each with its side.", ground.job.sketch.sheets.size())};
}

} // namespace sealwalk::analysis::detail
