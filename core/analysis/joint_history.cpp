// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/joint_history.h"

#include "core/analysis/answered.h"
#include "core/analysis/leak_rank.h"

#include <algorithm>
#include <map>
#include <unordered_set>

namespace sealwalk::analysis {

namespace {

using JointSet = std::set<model::JointId>;

const model::JointId* jointOf(const model::Sketch& sketch, model::PointId point)
{
    const model::TestPoint* drawn = sketch.point(point);
    return drawn == nullptr ? nullptr : &drawn->joint;
}

/// A joint that was taken out of the sketch after it was sprayed stays for its readings, all its points
/// retired.
bool isDrawn(const model::Sketch& sketch, model::JointId joint)
{
    bool hasPoints = false;
    for (const model::TestPoint& point : sketch.points) {
        if (point.joint != joint)
            continue;
        if (!point.retired)
            return true;
        hasPoints = true;
    }
    return !hasPoints;
}

/// Two joints that one sketch has side by side are not one, whatever was said of a point that moved over.
bool standTogether(const WorkedJobs& jobs, const JointSet& one, const JointSet& other)
{
    const auto has = [](const model::Sketch& sketch, const JointSet& joints) {
        return std::any_of(sketch.joints.begin(), sketch.joints.end(), [&](const model::Joint& joint) {
            return joints.contains(joint.id) && isDrawn(sketch, joint.id);
        });
    };
    return std::any_of(jobs.begin(), jobs.end(), [&](const auto& worked) {
        return has(worked->job.sketch, one) && has(worked->job.sketch, other);
    });
}

std::vector<JointSet> jointsOver(const WorkedJobs& jobs, const KnownPairs& known)
{
    std::vector<JointSet> groups;
    const auto groupOf = [&](model::JointId joint) {
        return std::find_if(groups.begin(), groups.end(),
                            [&](const JointSet& group) { return group.contains(joint); });
    };
    std::map<model::PointId, model::JointId> jointOfPoint;
    for (const auto& worked : jobs) {
        for (const model::Joint& joint : worked->job.sketch.joints)
            if (groupOf(joint.id) == groups.end())
                groups.push_back({joint.id});
        for (const model::TestPoint& point : worked->job.sketch.points)
            jointOfPoint[point.id] = point.joint;
    }
    for (const auto& [one, other] : known.same) {
        const auto first = jointOfPoint.find(one);
        const auto second = jointOfPoint.find(other);
        if (first == jointOfPoint.end() || second == jointOfPoint.end())
            continue;
        const auto kept = groupOf(first->second);
        const auto taken = groupOf(second->second);
        if (kept == groups.end() || taken == groups.end() || kept == taken ||
            standTogether(jobs, *kept, *taken))
            continue;
        kept->merge(*taken);
        groups.erase(taken);
    }
    return groups;
}

/// What one job adds to the history of a joint.
void addJob(JointHistory& history, const WorkedJob& worked, std::set<model::PointId>& points)
{
    bool isTested = false;
    bool isOver = false;
    for (const bool left : {false, true})
        for (const PointFinding& finding :
             findingsOn(history.ids, worked.job.sketch, worked.findings(left))) {
            if (!isAnswer(finding))
                continue;
            isTested = true;
            isOver = isOver || (!left && finding.verdict == Verdict::Over &&
                                finding.finding != Finding::OtherSource); // not the object's
            if (isRanked(finding) && (!history.largest || outweighs(finding, *history.largest))) {
                history.largest = finding;
                history.largestJob = worked.job.number;
                history.largestAt = worked.job.opened;
            }
        }
    history.tested += isTested ? 1 : 0;
    history.over += isOver ? 1 : 0;
    const auto isHere = [&](model::PointId point) {
        const model::JointId* joint = jointOf(worked.job.sketch, point);
        return joint != nullptr && history.ids.contains(*joint);
    };
    for (const model::TestPoint& point : worked.job.sketch.points)
        if (history.ids.contains(point.joint))
            points.insert(point.id);
    history.repairs += static_cast<int>(
        std::count_if(worked.job.repairs.begin(), worked.job.repairs.end(), [&](const model::Repair& repair) {
            return std::any_of(repair.points.begin(), repair.points.end(), isHere);
        }));
}

bool isWorseJoint(const JointHistory& a, const JointHistory& b)
{
    if (a.over != b.over)
        return a.over > b.over;
    if (a.largest && b.largest && outweighs(*a.largest, *b.largest) != outweighs(*b.largest, *a.largest))
        return outweighs(*a.largest, *b.largest);
    if (a.largest.has_value() != b.largest.has_value())
        return a.largest.has_value();
    return a.name < b.name;
}

} // namespace

std::vector<PointFinding> findingsOn(const std::set<model::JointId>& joints, const model::Sketch& sketch,
                                     const std::vector<PointFinding>& findings)
{
    std::unordered_set<model::PointId> points;
    for (const model::TestPoint& point : sketch.points)
        if (joints.contains(point.joint))
            points.insert(point.id);
    std::vector<PointFinding> found;
    for (const PointFinding& finding : findings)
        if (points.contains(finding.point))
            found.push_back(finding);
    return found;
}

std::set<model::PointId> onePlace(model::PointId point, const KnownPairs& known)
{
    std::set<model::PointId> all{point};
    for (const auto& [one, other] : known.same)
        if (one == point || other == point)
            all.insert({one, other});
    return all;
}

std::optional<Touch> lastTouch(const WorkedJobs& jobs, const std::set<model::PointId>& points)
{
    std::optional<Touch> last;
    const auto names = [&](const std::vector<model::PointId>& list) {
        return std::any_of(list.begin(), list.end(), [&](model::PointId p) { return points.contains(p); });
    };
    for (const auto& worked : jobs)
        for (const model::Repair& repair : worked->job.repairs) {
            const bool repaired = names(repair.points);
            if ((repaired || names(repair.disturbed)) && (!last || last->at <= repair.at))
                last = Touch{repair.at, worked->job.number, repair.by, repair.action, !repaired};
        }
    return last;
}

std::vector<JointHistory> jointHistories(const WorkedJobs& jobs, const KnownPairs& known)
{
    std::vector<JointHistory> histories;
    for (JointSet& joints : jointsOver(jobs, known)) {
        JointHistory history;
        history.ids = std::move(joints);
        std::set<model::PointId> points;
        for (const auto& worked : jobs) {
            history.isDrawn = false;
            for (const model::Joint& joint : worked->job.sketch.joints) {
                if (!history.ids.contains(joint.id))
                    continue;
                const bool isHere = isDrawn(worked->job.sketch, joint.id);
                if (history.isDrawn && !isHere)
                    continue; // its old self beside it in the same sketch
                history.name = joint.name;
                history.kind = joint.kind;
                history.isDrawn = isHere;
            }
            addJob(history, *worked, points);
        }
        history.touched = lastTouch(jobs, points);
        histories.push_back(std::move(history));
    }
    std::stable_sort(histories.begin(), histories.end(), isWorseJoint);
    return histories;
}

} // namespace sealwalk::analysis
