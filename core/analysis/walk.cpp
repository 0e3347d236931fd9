// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/walk.h"

#include <algorithm>
#include <functional>
#include <unordered_map>
#include <unordered_set>
#include <utility>

namespace sealwalk::analysis {

namespace {

using Key = std::pair<model::PointId, model::Condition>;

struct KeyHash
{
    std::size_t operator()(const Key& key) const
    {
        return std::hash<model::PointId>()(key.first) + static_cast<std::size_t>(key.second);
    }
};

std::vector<model::Condition> conditionsOf(const model::Joint& joint)
{
    std::vector<model::Condition> conditions;
    for (const std::string& word : joint.requiredConditions)
        if (const auto condition = model::fromName<model::Condition>(word))
            conditions.push_back(*condition);
    if (conditions.empty())
        conditions.push_back(model::Condition::AtRest);
    return conditions;
}

} // namespace

std::vector<WalkStep> walk(const model::Job& job, model::RoundId roundId)
{
    const model::Round* round = job.round(roundId);
    if (round == nullptr)
        return {};

    std::unordered_map<Key, const model::Reading*, KeyHash> standing;
    standing.reserve(round->points.size());
    for (const model::Reading* reading : job.standing(roundId))
        standing[{reading->point, reading->condition}] = reading;
    std::unordered_set<Key, KeyHash> later; // two repairs may call the same point, and a new round goes first
    for (auto other = job.rounds.rbegin(); other != job.rounds.rend() && other->id != roundId; ++other)
        for (const model::Reading* reading : job.standing(other->id))
            later.insert({reading->point, reading->condition});
    std::unordered_set<model::ReadingId> voided;
    for (const model::VoidMark& mark : job.voids)
        voided.insert(mark.reading);
    std::unordered_set<Key, KeyHash> hadVoid;
    if (!voided.empty())
        for (const model::Reading& reading : job.readings)
            if (reading.round == roundId && voided.contains(reading.id))
                hadVoid.insert({reading.point, reading.condition});

    std::unordered_map<model::PointId, const model::TestPoint*> points;
    points.reserve(job.sketch.points.size());
    for (const model::TestPoint& point : job.sketch.points)
        points.emplace(point.id, &point);
    std::unordered_map<model::JointId, std::vector<model::Condition>> conditions;
    conditions.reserve(job.sketch.joints.size());
    for (const model::Joint& joint : job.sketch.joints)
        conditions.emplace(joint.id, conditionsOf(joint));

    // Few are answered in a condition nobody asked for; only these are looked through for it.
    std::unordered_set<model::PointId> answeredBesides;
    for (const auto& [key, reading] : standing) {
        const auto point = points.find(key.first);
        const auto wanted = point == points.end() ? conditions.end() : conditions.find(point->second->joint);
        if (wanted != conditions.end() &&
            std::find(wanted->second.begin(), wanted->second.end(), key.second) == wanted->second.end())
            answeredBesides.insert(key.first);
    }

    std::vector<WalkStep> steps;
    steps.reserve(round->points.size());
    for (const model::PointId id : round->points) {
        const auto point = points.find(id);
        if (point == points.end() || point->second->retired)
            continue;
        const auto wanted = conditions.find(point->second->joint);
        if (wanted == conditions.end())
            continue;
        for (const model::Condition condition : wanted->second) {
            const auto reading = standing.find({id, condition});
            steps.push_back({id, point->second->number, condition,
                             reading == standing.end() ? nullptr : reading->second,
                             hadVoid.contains({id, condition}), true,
                             reading == standing.end() && later.contains({id, condition})});
        }
        if (!answeredBesides.contains(id))
            continue;
        for (const auto& [condition, name] : model::EnumNames<model::Condition>::table) {
            const bool isAsked =
                std::find(wanted->second.begin(), wanted->second.end(), condition) != wanted->second.end();
            const auto reading = isAsked ? standing.end() : standing.find({id, condition});
            if (reading != standing.end())
                steps.push_back({id, point->second->number, condition, reading->second, false, false, false});
        }
    }
    return steps;
}

std::vector<SkippedPoint> skippedPoints(const model::Job& job, model::RoundId roundId)
{
    const model::Round* round = job.round(roundId);
    std::vector<SkippedPoint> found;
    if (round == nullptr)
        return found;
    for (const model::ReviewEntry& entry : job.review) {
        if (entry.check != kSkipped || !entry.point || entry.at < round->opened)
            continue;
        std::erase_if(found, [&](const SkippedPoint& earlier) { return earlier.point == *entry.point; });
        const bool isReadSince =
            std::any_of(job.readings.begin(), job.readings.end(), [&](const model::Reading& reading) {
                return reading.round == roundId && reading.point == *entry.point && !(reading.at < entry.at);
            });
        const bool isCalled =
            std::find(round->points.begin(), round->points.end(), *entry.point) != round->points.end();
        if (isCalled && !isReadSince)
            found.push_back({*entry.point, entry.text});
    }
    return found;
}

std::optional<WalkStep> nextCall(const std::vector<WalkStep>& steps, model::PointId after,
                                 const std::vector<model::PointId>& skipped)
{
    const auto isSkipped = [&](const WalkStep& step) {
        return std::find(skipped.begin(), skipped.end(), step.point) != skipped.end();
    };
    // The last step of the point just done, so that its other conditions come first.
    std::size_t start = 0;
    for (std::size_t i = 0; i < steps.size(); ++i)
        if (steps[i].point == after) {
            start = i;
            break;
        }
    for (const bool takeSkipped : {false, true})
        for (std::size_t i = 0; i < steps.size(); ++i) {
            const WalkStep& step = steps[(start + i) % steps.size()];
            if (!step.isDone() && isSkipped(step) == takeSkipped)
                return step;
        }
    return std::nullopt;
}

std::vector<OpenRound> openRounds(const model::Job& job)
{
    std::vector<OpenRound> open;
    for (auto round = job.rounds.rbegin(); round != job.rounds.rend(); ++round) {
        const std::vector<WalkStep> steps = walk(job, round->id);
        const auto left =
            std::count_if(steps.begin(), steps.end(), [](const WalkStep& step) { return !step.isDone(); });
        if (left > 0)
            open.push_back({&*round, static_cast<int>(left)});
    }
    return open;
}

model::RoundId roundCalling(const model::Job& job, model::PointId point, model::RoundId current)
{
    const auto calls = [&](const model::Round& round) {
        return std::find(round.points.begin(), round.points.end(), point) != round.points.end();
    };
    if (const model::Round* round = job.round(current); round != nullptr && calls(*round))
        return current;
    const auto latest = std::find_if(job.rounds.rbegin(), job.rounds.rend(), calls);
    return latest == job.rounds.rend() ? model::RoundId() : latest->id;
}

} // namespace sealwalk::analysis
