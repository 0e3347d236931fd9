// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/sketch_commands.h"

#include "core/editing/clip.h"
#include "core/editing/points.h"
#include "core/editing/sense.h"
#include "ui/sketch/hit.h"
#include "ui/sketch/place_tools.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/sketch/sketch_words.h"

#include <algorithm>

namespace sealwalk::ui {

void SketchCommands::retireChosen()
{
    if (!m_desk.chosenPoint().isNil())
        m_desk.commit(editing::retire(m_desk.sketch(), m_desk.chosenPoint(), m_desk.withReadings()));
    else if (!m_desk.chosen().empty())
        m_desk.commit(editing::removeJoints(m_desk.sketch(), m_desk.chosen(), m_desk.withReadings()));
    else
        m_desk.say(Severity::Caution,
                   SketchWords::tr("Choose a point or a joint first; Del then retires it."));
}

void SketchCommands::renumber()
{
    const model::Joint* joint = m_desk.chosenJoint();
    const auto edit = joint != nullptr
                          ? editing::renumberJoint(m_desk.sketch(), joint->id, m_desk.withReadings())
                          : editing::renumber(m_desk.sketch(), m_desk.withReadings());
    if (edit && edit->isEmpty())
        m_desk.say(
            Severity::News,
            joint != nullptr
                ? SketchWords::tr("The points of this joint are numbered along its walk already; other "
                                  "numbers: First, then lay them anew.")
                : SketchWords::tr("All points are numbered along the joints already."));
    else
        m_desk.commit(edit);
}

void SketchCommands::reverseSense()
{
    if (const model::Joint* joint = m_desk.chosenJoint())
        m_desk.commit(editing::reverseSense(m_desk.sketch(), joint->id, m_desk.withReadings()));
    else
        m_desk.say(Severity::Caution,
                   SketchWords::tr("Choose the joint first; D then numbers it the other way."));
}

void SketchCommands::startHere(const Hand& hand)
{
    const model::Joint* joint = m_desk.chosenJoint();
    if (joint == nullptr) {
        m_desk.say(
            Severity::Caution,
            SketchWords::tr("Choose the joint first; Shift+D then starts numbering under the cursor."));
        return;
    }
    double along = 0.0;
    if (const model::TestPoint* point = m_desk.sketch().point(m_desk.chosenPoint())) {
        along = point->along;
    } else {
        const geometry::Path path = geometry::outline(joint->shape);
        if (path.length() > 0.0)
            along = std::clamp(path.nearest(hand.place).along / path.length(), 0.0, 1.0);
    }
    m_desk.commit(editing::startAt(m_desk.sketch(), joint->id, along, m_desk.withReadings()));
}

void SketchCommands::addPoint(const Hand& hand)
{
    m_desk.commit(addPointAt(m_desk, hand));
}

void SketchCommands::split(const Hand& hand)
{
    // With a point chosen and the hand elsewhere, that point's own stretch is cut in its middle.
    const model::TestPoint* point = m_desk.sketch().point(m_desk.chosenPoint());
    const bool over = jointNear(m_desk.sketch(), m_desk.sheet(), hand.place, 2.0 * hand.reach).has_value();
    if (point != nullptr && !over)
        m_desk.commit(
            editing::splitStretch(m_desk.sketch(), point->joint, point->along, m_desk.withReadings()));
    else
        m_desk.commit(splitAt(m_desk, hand));
}

void SketchCommands::copy()
{
    if (m_desk.chosen().empty()) {
        m_desk.say(Severity::Caution, SketchWords::tr("Choose joints first; then they can be copied."));
        return;
    }
    m_desk.setClip(editing::copyOf(m_desk.sketch(), m_desk.chosen()));
    m_desk.say(Severity::News, SketchWords::tr("Copied; Ctrl+V puts it on this or another sheet."));
}

void SketchCommands::cut()
{
    if (m_desk.chosen().empty())
        return;
    const editing::Clip clip = editing::copyOf(m_desk.sketch(), m_desk.chosen());
    if (m_desk.commit(editing::removeJoints(m_desk.sketch(), m_desk.chosen(), m_desk.withReadings())))
        m_desk.setClip(clip);
}

void SketchCommands::paste(const Hand& hand)
{
    geometry::Box box;
    for (const model::Joint& joint : m_desk.clip().joints)
        box.add(geometry::outline(joint.shape).bounds());
    // On another sheet at the same place, on the same one a hand's breadth off.
    const bool same = !m_desk.clip().isEmpty() && m_desk.clip().joints.front().sheet == m_desk.sheet();
    const geometry::Vector by =
        same ? geometry::Vector{4.0 * hand.reach, -4.0 * hand.reach} : geometry::Vector{};
    std::vector<model::JointId> ids;
    const Result<editing::Edit> edit =
        editing::paste(m_desk.sketch(), m_desk.clip(), m_desk.sheet(), by, &ids);
    if (m_desk.commit(edit))
        m_desk.choose(ids);
}

void SketchCommands::chooseAll()
{
    std::vector<model::JointId> ids;
    for (const model::Joint* joint : m_desk.sketch().jointsOn(m_desk.sheet()))
        ids.push_back(joint->id);
    m_desk.choose(std::move(ids));
}

void SketchCommands::chooseNext(int step)
{
    const auto joints = m_desk.sketch().jointsOn(m_desk.sheet());
    if (joints.empty())
        return;
    const auto count = static_cast<int>(joints.size());
    int at = step > 0 ? -1 : count;
    for (int i = 0; i < count; ++i)
        if (!m_desk.chosen().empty() && joints[static_cast<std::size_t>(i)]->id == m_desk.chosen().front())
            at = i;
    m_desk.choose({joints[static_cast<std::size_t>((at + step + count) % count)]->id});
}

void SketchCommands::chooseNextPoint(int step)
{
    const model::Joint* joint =
        m_desk.chosen().empty() ? nullptr : m_desk.sketch().joint(m_desk.chosen().front());
    if (joint == nullptr) {
        chooseNext(step);
        return;
    }
    const auto points = editing::pointsInWalk(m_desk.sketch(), *joint);
    if (points.empty())
        return;
    const auto count = static_cast<int>(points.size());
    int at = step > 0 ? -1 : count;
    for (int i = 0; i < count; ++i)
        if (points[static_cast<std::size_t>(i)]->id == m_desk.chosenPoint())
            at = i;
    m_desk.choosePoint(points[static_cast<std::size_t>((at + step + count) % count)]->id);
}

void SketchCommands::group(bool together)
{
    if (!m_desk.chosen().empty())
        m_desk.commit(editing::group(m_desk.sketch(), m_desk.chosen(),
                                     together ? editing::freeGroupWord(m_desk.sketch()) : std::string()));
}

void SketchCommands::toggleLock()
{
    bool locked = false;
    for (const model::JointId id : m_desk.chosen())
        if (const model::Joint* joint = m_desk.sketch().joint(id))
            locked = locked || joint->locked;
    if (!m_desk.chosen().empty())
        m_desk.commit(editing::setLocked(m_desk.sketch(), m_desk.chosen(), !locked));
}

void SketchCommands::nextSheet(int step)
{
    const auto& sheets = m_desk.sketch().sheets;
    const auto count = static_cast<int>(sheets.size());
    for (int i = 0; i < count; ++i)
        if (sheets[static_cast<std::size_t>(i)].id == m_desk.sheet()) {
            m_desk.setSheet(sheets[static_cast<std::size_t>((i + step + count) % count)].id);
            return;
        }
}

} // namespace sealwalk::ui
