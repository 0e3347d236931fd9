// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/stage_progress.h"

#include "core/analysis/setup_outlook.h"
#include "core/storage/history_store.h"
#include "ui/session/job_session.h"

#include <QCoreApplication>

#include <algorithm>
#include <unordered_set>

namespace sealwalk::ui {

namespace {

using Thread = StageProgress::Thread;

QString tr(const char* text, const char* comment = nullptr, int count = -1)
{
    return QCoreApplication::translate("sealwalk::ui", text, comment, count);
}

StageProgress prepare(const JobSession& session)
{
    const model::Job& job = session.job();
    if (!job.setup.pointLimit && job.setup.kindLimits.empty())
        return {tr("limit missing"), Thread::NotBegun, 0.0};
    if (job.standingCalibrations().empty())
        return {tr("calibration missing"), Thread::UnderWay, 0.5};
    if (job.standingBackgrounds().empty())
        return {tr("background missing"), Thread::UnderWay, 0.75};
    if (analysis::setupOutlook(job, session.object()).outlook == analysis::Outlook::CannotPass)
        return {tr("too blind to pass"), Thread::Open, 1.0};
    return {tr("set up"), Thread::Done, 1.0};
}

StageProgress sketch(const JobSession& session)
{
    const model::Sketch& drawing = session.job().sketch;
    const int points = static_cast<int>(drawing.activePoints().size());
    if (points == 0)
        return {drawing.sheets.empty() ? tr("no sheet yet") : tr("no points yet"), Thread::NotBegun, 0.0};
    return {tr("%n point(s), ", nullptr, points) +
                tr("%n sheet(s)", nullptr, static_cast<int>(drawing.sheets.size())),
            Thread::Done, 1.0};
}

/// A point that a later round called as well was sprayed there.
std::vector<const model::Round*> sinceRound(const model::Job& job, const model::Round& round)
{
    std::vector<const model::Round*> rounds;
    for (const model::Round& each : job.rounds)
        if (each.number >= round.number)
            rounds.push_back(&each);
    return rounds;
}

StageProgress spray(const JobSession& session)
{
    const model::Round* round = session.currentRound();
    if (round == nullptr)
        return {tr("not begun"), Thread::NotBegun, 0.0};
    const model::Job& job = session.job();
    const auto answeredIn = [&](const std::vector<const model::Round*>& rounds) {
        std::unordered_set<model::PointId> answered;
        for (const model::Round* each : rounds)
            for (const model::Reading* reading : job.standing(each->id))
                answered.insert(reading->point);
        return answered;
    };
    const auto progress = [](const QString& words, const auto& points, const auto& answered) {
        const auto done = std::count_if(points.begin(), points.end(),
                                        [&](model::PointId point) { return answered.contains(point); });
        const auto all = static_cast<long>(points.size());
        const double share = all == 0 ? 0.0 : static_cast<double>(done) / static_cast<double>(all);
        const Thread thread = done == 0 ? Thread::NotBegun : done == all ? Thread::Done : Thread::UnderWay;
        return StageProgress{words.arg(done).arg(all), thread, share};
    };
    const bool isOnly = job.rounds.size() == 1;
    StageProgress inRound =
        progress(isOnly ? tr("%1 of %2 points") : tr("round %1: %2 of %3").arg(round->number), round->points,
                 answeredIn(sinceRound(job, *round)));
    if (inRound.thread != Thread::Done)
        return inRound;
    // A short round that is done says nothing of the points it did not call.
    std::vector<const model::Round*> every;
    for (const model::Round& each : job.rounds)
        every.push_back(&each);
    std::vector<model::PointId> points;
    for (const model::TestPoint* point : job.sketch.activePoints())
        points.push_back(point->id);
    return progress(tr("%1 of %2 points"), points, answeredIn(every));
}

StageProgress judge(const JobSession& session)
{
    // The job as it stands, not only what the last round called.
    const auto& findings = session.asLeft().empty() ? session.findings() : session.asLeft();
    const auto count = [&](analysis::Verdict verdict) {
        return static_cast<int>(std::count_if(findings.begin(), findings.end(),
                                              [&](const auto& f) { return f.verdict == verdict; }));
    };
    const bool sprayed = std::any_of(findings.begin(), findings.end(), [](const auto& f) {
        return f.finding != analysis::Finding::NotSprayed;
    });
    if (!sprayed)
        return {tr("not begun"), Thread::NotBegun, 0.0};
    const int over = count(analysis::Verdict::Over);
    const int unsure = count(analysis::Verdict::CannotSay);
    if (over + unsure > 0)
        return {tr("%1 over, %2 cannot say").arg(over).arg(unsure), Thread::Open, 1.0};
    const int none = count(analysis::Verdict::NoAnswer);
    if (none > 0)
        return {tr("%n without answer", nullptr, none), Thread::Open, 1.0};
    if (const int apart = count(analysis::Verdict::NotCounted); apart > 0)
        return {tr("within, %n not counted", nullptr, apart), Thread::Done, 1.0};
    return {tr("all within"), Thread::Done, 1.0};
}

StageProgress signOff(const JobSession& session)
{
    switch (session.job().state) {
    case model::JobState::Open:
        return {tr("draft"), Thread::NotBegun, 0.0};
    case model::JobState::Submitted:
        return {tr("submitted"), Thread::UnderWay, 0.5};
    case model::JobState::Returned:
        return {tr("sent back"), Thread::Open, 1.0};
    case model::JobState::Signed:
        return {tr("signed"), Thread::Done, 1.0};
    }
    return {};
}

StageProgress history(const JobSession& session)
{
    if (!session.hasHistory())
        return {};
    if (!session.hasJob()) {
        const auto objects = session.history().objects();
        const int count = objects ? static_cast<int>(objects->size()) : 0;
        return count == 0 ? StageProgress{}
                          : StageProgress{tr("%n object(s)", nullptr, count), Thread::Done, 1.0};
    }
    const auto jobs = session.history().jobsOf(session.object().id);
    const int earlier = jobs ? static_cast<int>(jobs->size()) - 1 : 0;
    if (earlier <= 0)
        return {tr("first job"), Thread::NotBegun, 0.0};
    return {tr("%n other job(s)", nullptr, earlier), Thread::Done, 1.0};
}

} // namespace

StageProgress progressOf(Stage stage, const JobSession& session)
{
    if (stage == Stage::History)
        return history(session);
    if (!session.hasJob())
        return {};
    switch (stage) {
    case Stage::Prepare:
        return prepare(session);
    case Stage::Sketch:
        return sketch(session);
    case Stage::Spray:
        return spray(session);
    case Stage::Judge:
        return judge(session);
    case Stage::SignOff:
        return signOff(session);
    case Stage::History:
        break;
    }
    return {};
}

} // namespace sealwalk::ui
