// SPDX-License-Identifier: GPL-3.0-or-later
// The session's verbs of drawing: each is one durable step.
#include "core/storage/history_store.h"
#include "ui/session/job_session.h"

#include <utility>

namespace sealwalk::ui {

Status JobSession::takeSketchStep(const editing::Edit& edit,
                                  void (editing::EditHistory::*remember)(editing::Edit))
{
    model::Sketch changed = m_job->sketch;
    Result<editing::Edit> inverse = editing::apply(changed, edit, pointsWithReadings());
    if (!inverse)
        return fail(inverse.error());
    if (inverse->isEmpty())
        return {};
    const Result<int> revision = history().saveSketch(m_job->id, changed, m_job->sketch.revision);
    if (!revision)
        return fail(revision.error());
    m_job->sketch = std::move(changed);
    m_job->sketch.revision = *revision;
    // Remembered before anybody hears of it: who hears asks what can be undone.
    (m_edits.*remember)(std::move(*inverse));
    return afterStoring({}, &JobSession::sketchChanged);
}

Status JobSession::edit(const editing::Edit& edit)
{
    if (!m_job)
        return fail(ErrorCode::NotAllowed, "no job is open; open or start one first");
    return takeSketchStep(edit, &editing::EditHistory::performed);
}

Status JobSession::undo()
{
    if (!m_job || !m_edits.canUndo())
        return fail(ErrorCode::NotFound, "there is nothing to undo");
    return takeSketchStep(editing::Edit(*m_edits.nextUndo()), &editing::EditHistory::undone);
}

Status JobSession::redo()
{
    if (!m_job || !m_edits.canRedo())
        return fail(ErrorCode::NotFound, "there is nothing to redo");
    return takeSketchStep(editing::Edit(*m_edits.nextRedo()), &editing::EditHistory::redone);
}

std::unordered_set<model::PointId> JobSession::pointsWithReadings() const
{
    std::unordered_set<model::PointId> points = m_readElsewhere;
    if (m_job)
        for (const model::Reading& reading : m_job->readings)
            points.insert(reading.point);
    return points;
}

void JobSession::takeReadElsewhere()
{
    m_readElsewhere.clear();
    // Unreadable here is unreadable for the job too, which then says so; an edit is checked again when
    // stored.
    if (const auto read = history().pointsRead(m_job->object))
        m_readElsewhere.insert(read->begin(), read->end());
}

} // namespace sealwalk::ui
