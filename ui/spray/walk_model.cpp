// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/walk_model.h"

#include "core/model/point_numbers.h"
#include "core/report/rate_text.h"
#include "core/report/shown_unit.h"
#include "ui/render/core_words.h"
#include "ui/spray/spray_words.h"

#include <algorithm>

namespace sealwalk::ui {

WalkModel::WalkModel(const JobSession& session, const SprayController& controller, QObject* parent)
    : QAbstractListModel(parent)
    , m_session(session)
    , m_controller(controller)
    , m_steps(controller.walk())
{
    for (const auto signal : {&JobSession::sketchChanged, &JobSession::jobChanged})
        connect(&session, signal, this, &WalkModel::forgetPlaces);
}

int WalkModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_steps.size());
}

void WalkModel::refresh()
{
    const auto& steps = m_controller.walk();
    const bool sameCalls = std::equal(
        steps.begin(), steps.end(), m_steps.begin(), m_steps.end(),
        [](const auto& a, const auto& b) { return a.point == b.point && a.condition == b.condition; });
    if (sameCalls) {
        // Every digit typed comes by here, and a view lays out all rows it is told of: only those from the
        // first to the last that changed.
        const auto same = [](const auto& a, const auto& b) {
            return a.reading == b.reading && a.wasVoid == b.wasVoid && a.isReadLater == b.isReadLater;
        };
        const auto first = std::mismatch(steps.begin(), steps.end(), m_steps.begin(), same).first;
        const auto last = std::mismatch(steps.rbegin(), steps.rend(), m_steps.rbegin(), same).first.base();
        const int from = static_cast<int>(first - steps.begin());
        const int to = static_cast<int>(last - steps.begin()) - 1;
        m_steps = steps;
        if (from <= to)
            emit dataChanged(index(from), index(to));
        return;
    }
    beginResetModel();
    m_steps = steps;
    endResetModel();
}

int WalkModel::calledRow() const
{
    const auto called = std::find_if(m_steps.begin(), m_steps.end(),
                                     [this](const analysis::WalkStep& step) { return isCalled(step); });
    return called == m_steps.end() ? -1 : static_cast<int>(called - m_steps.begin());
}

QString WalkModel::answerOf(const analysis::WalkStep& step) const
{
    if (step.isReadLater)
        return tr("done later");
    if (step.reading == nullptr)
        return step.wasVoid ? tr("void, again") : !skipReasonOf(step).isEmpty() ? tr("later") : QString();
    switch (step.reading->outcome) {
    case model::Outcome::NoResponse:
        return tr("no resp.");
    case model::Outcome::NotAccessible:
        return tr("no access");
    case model::Outcome::NotTested:
        return tr("not tested");
    case model::Outcome::Value:
    case model::Outcome::AboveRange:
        break;
    }
    if (!step.reading->peak)
        return {};
    const model::Setup& setup = m_session.job().setup;
    const QString rate = render::inFigures(
        report::screenRate(report::shownUnit(setup, setup.detectorUnit).number(*step.reading->peak)));
    return step.reading->outcome == model::Outcome::AboveRange ? QStringLiteral("> ") + rate : rate;
}

WalkModel::Sign WalkModel::signOf(const analysis::WalkStep& step) const
{
    if (step.isReadLater)
        return Elsewhere;
    if (step.reading == nullptr)
        return step.wasVoid ? Void : !skipReasonOf(step).isEmpty() ? PutOff : Open;
    switch (step.reading->outcome) {
    case model::Outcome::NoResponse:
        return NoResponse;
    case model::Outcome::NotAccessible:
        return NotAccessible;
    case model::Outcome::NotTested:
        return NotTested;
    case model::Outcome::AboveRange:
        return AboveRange;
    case model::Outcome::Value:
        break;
    }
    const analysis::PointFinding* finding = m_session.finding(step.point);
    return finding != nullptr && finding->verdict == analysis::Verdict::Over ? Over : Value;
}

const WalkModel::Place& WalkModel::placeIn(const analysis::WalkStep& step) const
{
    if (const auto known = m_places.find(step.point); known != m_places.end())
        return known->second;
    const model::Sketch& sketch = m_session.job().sketch;
    const model::TestPoint* point = sketch.point(step.point);
    const model::Joint* joint = point == nullptr ? nullptr : sketch.joint(point->joint);
    Place place;
    if (point != nullptr)
        place.words = render::inWords(model::placeOnSheet(sketch, *point));
    if (joint != nullptr)
        place.joint = QString::fromStdString(joint->name);
    return m_places.emplace(step.point, std::move(place)).first->second;
}

void WalkModel::forgetPlaces()
{
    m_places.clear();
    if (!m_steps.empty())
        emit dataChanged(index(0), index(rowCount() - 1));
}

QString WalkModel::placeOf(const analysis::WalkStep& step) const
{
    QStringList words;
    if (const QString reason = skipReasonOf(step); !reason.isEmpty())
        words << reason;
    if (step.condition != model::Condition::AtRest)
        words << conditionWord(step.condition);
    if (const QString& place = placeIn(step).words; !place.isEmpty())
        words << place;
    return words.join(QStringLiteral(", "));
}

QString WalkModel::jointOf(const analysis::WalkStep& step) const
{
    return placeIn(step).joint;
}

bool WalkModel::isCalled(const analysis::WalkStep& step) const
{
    const auto& call = m_controller.call();
    return call && step.point == call->point && step.condition == call->condition;
}

QString WalkModel::skipReasonOf(const analysis::WalkStep& step) const
{
    return step.reading == nullptr ? m_controller.skipReason(step.point) : QString();
}

QString WalkModel::gapsOf(const analysis::WalkStep& step) const
{
    return step.reading == nullptr ? QString() : m_controller.gapsInWords(*step.reading);
}

QString WalkModel::spoken(const analysis::WalkStep& step, const QString& joint) const
{
    const QString answer = answerOf(step);
    const QString reason = skipReasonOf(step);
    QString words = tr("Point %1, %2, %3")
                        .arg(step.number)
                        .arg(joint, answer.isEmpty()   ? tr("not sprayed")
                                    : reason.isEmpty() ? answer
                                                       : tr("comes later: %1").arg(reason));
    if (step.condition != model::Condition::AtRest)
        words += QStringLiteral(", ") + conditionWord(step.condition);
    if (const QString gaps = gapsOf(step); !gaps.isEmpty())
        words += QStringLiteral(", ") + tr("marked: %1").arg(gaps);
    return words;
}

QVariant WalkModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount() || !m_session.hasJob())
        return {};
    const analysis::WalkStep& step = m_steps[static_cast<std::size_t>(index.row())];
    switch (role) {
    case NumberRole:
        return step.number;
    case JointRole:
        return jointOf(step);
    case PlaceRole:
        return placeOf(step);
    case AnswerRole:
        return answerOf(step);
    case SignRole:
        return signOf(step);
    case GapsRole:
        return gapsOf(step);
    case Qt::ToolTipRole: {
        QStringList lines{jointOf(step)}; // the row may have cut them
        for (const QString& line : {placeOf(step), gapsOf(step)})
            if (!line.isEmpty())
                lines << line;
        if (!gapsOf(step).isEmpty())
            lines.last() = tr("marked: %1").arg(lines.last());
        return lines.join(QLatin1Char('\n'));
    }
    case IsCalledRole:
        return isCalled(step);
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole:
        return spoken(step, jointOf(step));
    default:
        return {};
    }
}

WalkModel::Row WalkModel::row(int row) const
{
    if (row < 0 || row >= rowCount() || !m_session.hasJob())
        return {};
    const analysis::WalkStep& step = m_steps[static_cast<std::size_t>(row)];
    return {QString::number(step.number),
            jointOf(step),
            placeOf(step),
            answerOf(step),
            signOf(step),
            gapsOf(step),
            isCalled(step)};
}

} // namespace sealwalk::ui
