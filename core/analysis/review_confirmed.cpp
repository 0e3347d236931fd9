// SPDX-License-Identifier: GPL-3.0-or-later
// Whether every response over the limit, of every round, answered twice, was judged or was repaired since.
#include "core/analysis/answered.h"
#include "core/analysis/job_findings.h"
#include "core/analysis/repair_progress.h"
#include "core/analysis/review_ground.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

namespace sealwalk::analysis::detail {

namespace {

bool isOver(const PointFinding& finding)
{
    return finding.verdict == Verdict::Over && !finding.judgedByPerson && isLeakWord(finding.finding);
}

bool answered(const model::Reading& reading)
{
    return reading.outcome == model::Outcome::Value || reading.outcome == model::Outcome::AboveRange;
}

/// How often the point had been repaired by then: answers of different states do not confirm each other.
auto stateAt(const model::Job& job, model::PointId point, const Timestamp& at)
{
    return std::count_if(job.repairs.begin(), job.repairs.end(), [&](const model::Repair& repair) {
        return repair.at <= at &&
               std::find(repair.points.begin(), repair.points.end(), point) != repair.points.end();
    });
}

/// Standing answers by point: a big job has thousands, and each is held against those of its own point only.
class Answers
{
public:
    explicit Answers(const ReviewGround& ground)
        : m_job(ground.job)
    {
        for (const PointFinding& finding : ground.findings)
            if (finding.reading)
                m_left.insert(*finding.reading);
        for (const model::Round& round : m_job.rounds)
            for (const model::Reading* reading : m_job.standing(round.id))
                if (answered(*reading))
                    m_byPoint[reading->point].push_back(reading);
    }

    /// Confirmed by who read it, or answered again before anything was done to the point.
    [[nodiscard]] bool isConfirmed(const model::Reading& response) const
    {
        const auto known = m_byPoint.find(response.point);
        if (known == m_byPoint.end())
            return response.confirmed;
        const auto state = stateAt(m_job, response.point, response.at);
        int answers = 0;
        for (const model::Reading* reading : known->second) {
            if (stateAt(m_job, reading->point, reading->at) != state)
                continue;
            if (reading->confirmed)
                return true;
            ++answers;
        }
        return answers > 1;
    }

    /// Whether an answer of the round stands no longer as left and was not confirmed. Working a round out is
    /// a search: only those are worth it.
    [[nodiscard]] bool hasOlder(model::RoundId round) const
    {
        const auto standing = m_job.standing(round);
        return std::any_of(standing.begin(), standing.end(), [&](const model::Reading* reading) {
            return answered(*reading) && !m_left.contains(reading->id) && !isConfirmed(*reading);
        });
    }

    [[nodiscard]] bool isLeft(const PointFinding& finding) const
    {
        return finding.reading && m_left.contains(*finding.reading);
    }

private:
    const model::Job& m_job;
    std::unordered_set<model::ReadingId> m_left;
    std::unordered_map<model::PointId, std::vector<const model::Reading*>> m_byPoint;
};

bool isRepairedAndSprayedSince(const model::Job& job, const model::Reading& response)
{
    return std::any_of(job.repairs.begin(), job.repairs.end(), [&](const model::Repair& repair) {
        return response.at < repair.at &&
               std::find(repair.points.begin(), repair.points.end(), response.point) != repair.points.end() &&
               sprayedSince(job, provableFrom(repair)).contains(response.point);
    });
}

struct Once
{
    std::vector<model::PointId> open;
    std::vector<model::PointId> repaired;
    int responses = 0;
};

void weigh(const ReviewGround& ground, const Answers& answers, const PointFinding& finding, Once& once)
{
    const model::Reading* reading = finding.reading ? ground.job.reading(*finding.reading) : nullptr;
    if (reading == nullptr || !isOver(finding))
        return;
    ++once.responses;
    if (answers.isConfirmed(*reading))
        return;
    auto& list = isRepairedAndSprayedSince(ground.job, *reading) ? once.repaired : once.open;
    if (std::find(list.begin(), list.end(), finding.point) == list.end())
        list.push_back(finding.point);
}

Once answeredOnce(const ReviewGround& ground)
{
    const Answers answers(ground);
    Once once;
    for (const PointFinding& finding : ground.findings) {
        weigh(ground, answers, finding, once);
        once.responses += finding.judgedByPerson && finding.asRead ? 1 : 0;
    }
    for (const model::Round& round : ground.job.rounds)
        if (answers.hasOlder(round.id))
            for (const PointFinding& finding : jobFindings(ground.job, ground.object, round.id))
                if (!answers.isLeft(finding))
                    weigh(ground, answers, finding, once);
    const auto inOrder = [&](std::vector<model::PointId>& points) {
        std::sort(points.begin(), points.end(), [&](model::PointId a, model::PointId b) {
            return ground.job.sketch.point(a)->number < ground.job.sketch.point(b)->number;
        });
    };
    inOrder(once.open);
    inOrder(once.repaired);
    return once;
}

} // namespace

Answer responsesConfirmed(const ReviewGround& ground)
{
    const Once once = answeredOnce(ground);
    if (!once.open.empty())
        return {CheckState::NeedsWord,
                "Answered once only: " + ground.text(once.open) + "; a leak counts when it answers twice.",
                once.open};
    if (!once.repaired.empty())
        return {CheckState::InOrder,
                "Answered once, then repaired and sprayed again: " + ground.text(once.repaired) +
                    "; every other response over the limit answered twice or was judged.",
                once.repaired};
    if (once.responses == 0)
        return {CheckState::InOrder, "No response over the limit."};
    return {CheckState::InOrder, "Every response over the limit answered twice or was judged."};
}

} // namespace sealwalk::analysis::detail
