// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/sketch_desk.h"

#include "ui/render/core_words.h"
#include "ui/session/job_session.h"
#include "ui/sketch/edit_words.h"

#include <algorithm>

namespace sealwalk::ui {

SketchDesk::SketchDesk(JobSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session)
{
    connect(&session, &JobSession::jobChanged, this, &SketchDesk::takeJob);
    connect(&session, &JobSession::sketchChanged, this, &SketchDesk::takeSketch);
    connect(&session, &JobSession::readingStored, this,
            [this](model::PointId point) { m_withReadings.insert(point); });
    connect(&session, &JobSession::recordsChanged, this, &SketchDesk::takeReadings);
    connect(&session, &JobSession::stateChanged, this, &SketchDesk::sketchChanged);
    connect(&session, &JobSession::selectionChanged, this, [this](model::PointId point) {
        if (point != m_point && sketch().point(point) != nullptr)
            choosePoint(point);
    });
    takeJob();
}

const model::Sketch& SketchDesk::sketch() const
{
    static const model::Sketch kNone;
    return m_session.hasJob() ? m_session.job().sketch : kNone;
}

bool SketchDesk::isOpenForWork() const
{
    return m_session.hasJob() && m_session.job().isOpenForWork();
}

void SketchDesk::takeJob()
{
    m_sheet = {};
    m_chosen.clear();
    m_point = {};
    m_nextName.clear();
    takeReadings();
    if (!sketch().sheets.empty())
        m_sheet = sketch().sheets.front().id;
    emit sheetChanged();
    emit chosenChanged();
    emit sketchChanged();
}

void SketchDesk::takeReadings()
{
    m_withReadings = m_session.hasJob() ? m_session.pointsWithReadings() : editing::PointSet();
}

void SketchDesk::takeSketch()
{
    const model::Sketch& now = sketch();
    if (now.sheet(m_sheet) == nullptr) {
        m_sheet = now.sheets.empty() ? model::SheetId{} : now.sheets.back().id;
        emit sheetChanged();
    }
    const auto gone = [&](model::JointId id) {
        const model::Joint* joint = now.joint(id);
        return joint == nullptr || joint->sheet != m_sheet;
    };
    const std::size_t before = m_chosen.size();
    std::erase_if(m_chosen, gone);
    const bool pointGone = !m_point.isNil() && now.point(m_point) == nullptr;
    if (pointGone)
        m_point = {};
    emit sketchChanged();
    if (before != m_chosen.size() || pointGone)
        emit chosenChanged();
}

void SketchDesk::setSheet(model::SheetId sheet)
{
    if (sheet == m_sheet)
        return;
    m_sheet = sheet;
    m_chosen.clear();
    m_point = {};
    emit sheetChanged();
    emit chosenChanged();
}

const model::Joint* SketchDesk::chosenJoint() const
{
    return m_chosen.size() == 1 ? sketch().joint(m_chosen.front()) : nullptr;
}

bool SketchDesk::isChosen(model::JointId joint) const
{
    return std::find(m_chosen.begin(), m_chosen.end(), joint) != m_chosen.end();
}

void SketchDesk::choose(std::vector<model::JointId> joints)
{
    if (joints == m_chosen && m_point.isNil())
        return;
    m_chosen = std::move(joints);
    m_point = {};
    emit chosenChanged();
}

void SketchDesk::choosePoint(model::PointId id)
{
    const model::TestPoint* point = sketch().point(id);
    const model::Joint* joint = point == nullptr ? nullptr : sketch().joint(point->joint);
    if (joint == nullptr)
        return;
    if (joint->sheet != m_sheet) {
        m_sheet = joint->sheet;
        emit sheetChanged();
    }
    m_chosen = {joint->id};
    m_point = id;
    emit chosenChanged();
    m_session.select(id);
}

void SketchDesk::chooseNothing()
{
    choose({});
}

std::vector<model::JointId> SketchDesk::withGroup(model::JointId id) const
{
    const model::Joint* joint = sketch().joint(id);
    if (joint == nullptr || joint->group.empty())
        return {id};
    std::vector<model::JointId> ids;
    for (const model::Joint& other : sketch().joints)
        if (other.group == joint->group && other.sheet == joint->sheet)
            ids.push_back(other.id);
    return ids;
}

void SketchDesk::setLaying(const editing::Laying& laying)
{
    m_laying = laying;
    emit layingChanged();
}

model::JointKind SketchDesk::kindFor(const geometry::Shape& shape) const
{
    if (std::holds_alternative<geometry::Ring>(shape))
        return m_ringKind;
    if (std::holds_alternative<geometry::RoundedRectangle>(shape))
        return m_boxKind;
    return std::holds_alternative<geometry::Spot>(shape) ? m_spotKind : m_pathKind;
}

void SketchDesk::setKindFor(const geometry::Shape& shape, model::JointKind kind)
{
    if (std::holds_alternative<geometry::Ring>(shape))
        m_ringKind = kind;
    else if (std::holds_alternative<geometry::RoundedRectangle>(shape))
        m_boxKind = kind;
    else if (std::holds_alternative<geometry::Spot>(shape))
        m_spotKind = kind;
    else
        m_pathKind = kind;
}

void SketchDesk::setNextName(std::string name, bool isSetup)
{
    m_nextName = std::move(name);
    m_nextIsSetup = isSetup;
}

bool SketchDesk::commit(const Result<editing::Edit>& edit)
{
    if (!edit) {
        say(Severity::Caution, render::inSentence(edit.error()));
        return false;
    }
    if (edit->isEmpty())
        return true;
    const std::size_t before = bearFirst();
    if (const Status done = m_session.edit(*edit); !done) {
        say(Severity::Error, render::inSentence(done.error()));
        return false;
    }
    if (bearFirst() > before)
        dropFirst(); // it was a laying
    say(Severity::News, editSentence(edit->what), tr("Ctrl+Z takes the whole gesture back"));
    return true;
}

/// How many points bear the first number or mark that is asked for.
std::size_t SketchDesk::bearFirst() const
{
    const std::string mark = m_laying.mark.empty() ? std::string() : editing::markBehind(m_laying.mark, 0);
    const auto& points = sketch().points;
    return static_cast<std::size_t>(
        std::count_if(points.begin(), points.end(), [&](const model::TestPoint& point) {
            return point.number == m_laying.first || (!mark.empty() && point.place == mark);
        }));
}

/// The first number or mark is for one joint; the next one has its own.
void SketchDesk::dropFirst()
{
    editing::Laying laying = m_laying;
    laying.first.reset();
    laying.mark.clear();
    setLaying(laying);
}

void SketchDesk::undo()
{
    const std::string what = m_session.edits().undoText();
    if (const Status done = m_session.undo(); !done)
        say(Severity::Caution, render::inSentence(done.error()));
    else
        say(Severity::News, tr("Undone: %1.").arg(editWords(what)), tr("Ctrl+Shift+Z brings it again"));
}

void SketchDesk::redo()
{
    const std::string what = m_session.edits().redoText();
    if (const Status done = m_session.redo(); !done)
        say(Severity::Caution, render::inSentence(done.error()));
    else
        say(Severity::News, tr("Done again: %1.").arg(editWords(what)));
}

void SketchDesk::setShowsRetired(bool shows)
{
    m_showsRetired = shows;
    emit viewChanged();
}

void SketchDesk::say(Severity severity, const QString& text, const QString& aside)
{
    emit noteRequested(severity, text, aside);
}

} // namespace sealwalk::ui
