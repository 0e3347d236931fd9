// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/changes_model.h"

#include "core/analysis/joint_history.h"
#include "core/report/finding_range.h"
#include "core/report/rate_text.h"
#include "ui/render/core_words.h"
#include "ui/widgets/number_display.h"
#include "ui/widgets/rate_delegate.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <cmath>

namespace sealwalk::ui {

namespace {

using analysis::Change;
using analysis::Finding;

QString findingText(Finding finding)
{
    switch (finding) {
    case Finding::Leak:
        return ChangesModel::tr("leak");
    case Finding::Shared:
        return ChangesModel::tr("shared");
    case Finding::Echo:
        return ChangesModel::tr("echo");
    case Finding::Masked:
        return ChangesModel::tr("masked");
    case Finding::Permeation:
        return ChangesModel::tr("permeation");
    case Finding::Clear:
        return ChangesModel::tr("clear");
    case Finding::BelowDetectable:
        return ChangesModel::tr("below detectable");
    case Finding::Void:
        return ChangesModel::tr("void");
    case Finding::NotAccessible:
        return ChangesModel::tr("not accessible");
    case Finding::NotTested:
        return ChangesModel::tr("not tested");
    case Finding::NotSprayed:
        return ChangesModel::tr("not sprayed");
    case Finding::OtherSource:
        return ChangesModel::tr("other source");
    case Finding::VirtualLeak:
        return ChangesModel::tr("virtual leak");
    }
    return {};
}

/// Leaks that appeared or grew first, then what fell, then what cannot be told, then the same.
int rank(const analysis::ComparedPoint& point)
{
    switch (point.change) {
    case Change::New:
    case Change::Grown:
    case Change::Gone:
    case Change::Shrunk:
        return 0;
    case Change::NotComparable:
        return 1;
    case Change::Same:
        return 2;
    }
    return 2;
}

} // namespace

QString changeWord(Change change)
{
    switch (change) {
    case Change::New:
        return ChangesModel::tr("new");
    case Change::Gone:
        return ChangesModel::tr("gone");
    case Change::Grown:
        return ChangesModel::tr("grown");
    case Change::Shrunk:
        return ChangesModel::tr("shrunk");
    case Change::Same:
        return ChangesModel::tr("same");
    case Change::NotComparable:
        return ChangesModel::tr("not comparable");
    }
    return {};
}

QString changeSign(Change change)
{
    switch (change) {
    case Change::New:
        return QStringLiteral("+");
    case Change::Gone:
        return QString(QChar(0x2212));
    case Change::Grown:
        return QString(QChar(0x2191));
    case Change::Shrunk:
        return QString(QChar(0x2193));
    case Change::Same:
        return QStringLiteral("=");
    case Change::NotComparable:
        return QString(QChar(0x00D7));
    }
    return {};
}

void ChangesModel::setComparison(analysis::Comparison comparison, const model::Sketch& before,
                                 const model::Sketch& after, const report::ShownUnit& unit)
{
    beginResetModel();
    m_comparison = std::move(comparison);
    m_before = before;
    m_after = after;
    m_unit = unit;
    m_followed.clear();
    arrange();
    endResetModel();
}

void ChangesModel::setShown(const std::set<Change>& kinds)
{
    if (kinds == m_kinds)
        return;
    beginResetModel();
    m_kinds = kinds;
    arrange();
    endResetModel();
}

void ChangesModel::arrange()
{
    m_rows.clear();
    const auto& points = m_comparison.points;
    for (std::size_t i = 0; i < points.size(); ++i)
        if (m_kinds.contains(points[i].change))
            m_rows.push_back(i);
    std::stable_sort(m_rows.begin(), m_rows.end(), [&](std::size_t a, std::size_t b) {
        if (rank(points[a]) != rank(points[b]))
            return rank(points[a]) < rank(points[b]);
        return std::abs(points[a].decades.value_or(0.0)) > std::abs(points[b].decades.value_or(0.0));
    });
}

const analysis::ComparedPoint* ChangesModel::at(int row) const
{
    const auto index = static_cast<std::size_t>(row);
    return row < 0 || index >= m_rows.size() ? nullptr : &m_comparison.points[m_rows[index]];
}

int ChangesModel::rowOf(model::PointId point) const
{
    for (int row = 0; row < rowCount(); ++row)
        if (at(row)->match.after == point || at(row)->match.before == point)
            return row;
    return -1;
}

QString ChangesModel::nameOf(const analysis::ComparedPoint& compared) const
{
    const bool now = compared.match.after.has_value();
    const model::Sketch& sketch = now ? m_after : m_before;
    const model::TestPoint* point = sketch.point(now ? *compared.match.after : *compared.match.before);
    const model::Joint* joint = point == nullptr ? nullptr : sketch.joint(point->joint);
    if (joint == nullptr)
        return {};
    // From which side it is seen stands over the map.
    const std::string whole = model::placeText(sketch, *point);
    const QString place = render::inWords(whole.substr(0, whole.find(',')));
    const QString name = QString::fromStdString(joint->name);
    return place.isEmpty() ? name : QStringLiteral("%1, %2").arg(name, place);
}

void ChangesModel::setFollowed(const std::set<std::size_t>& rows)
{
    m_followed = rows;
    if (!m_rows.empty())
        emit dataChanged(index(0, Point), index(rowCount() - 1, Point), {Qt::CheckStateRole});
}

int ChangesModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int ChangesModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : ColumnCount + static_cast<int>(m_between.size());
}

void ChangesModel::setBetween(analysis::WorkedJobs between, bool asLeft, const analysis::KnownPairs& known)
{
    m_isLeft = asLeft;
    m_known = known;
    if (between.size() != m_between.size()) { // columns come and go; the rows stay where they are
        const int first = ColumnCount;
        if (!m_between.empty()) {
            beginRemoveColumns({}, first, first + static_cast<int>(m_between.size()) - 1);
            m_between.clear();
            endRemoveColumns();
        }
        if (!between.empty()) {
            beginInsertColumns({}, first, first + static_cast<int>(between.size()) - 1);
            m_between = std::move(between);
            endInsertColumns();
        }
        return;
    }
    m_between = std::move(between);
    if (!m_between.empty() && !m_rows.empty())
        emit dataChanged(index(0, ColumnCount), index(rowCount() - 1, columnCount() - 1));
}

std::optional<analysis::PointFinding> ChangesModel::between(const analysis::ComparedPoint& point,
                                                            int column) const
{
    const auto which = static_cast<std::size_t>(column - ColumnCount);
    if (column < ColumnCount || which >= m_between.size())
        return std::nullopt;
    const auto places =
        analysis::onePlace(*(point.match.after ? point.match.after : point.match.before), m_known);
    for (const analysis::PointFinding& finding : m_between[which]->findings(m_isLeft))
        if (places.contains(finding.point))
            return finding;
    return std::nullopt;
}

QString ChangesModel::valueText(const std::optional<analysis::PointFinding>& finding) const
{
    if (!finding)
        return tr("no such point");
    if (finding->rate)
        return localised(report::screenRate(m_unit.ofHelium(*finding->rate)));
    if (finding->atLeast)
        return tr("at least %1").arg(localised(report::screenRate(m_unit.ofHelium(*finding->atLeast))));
    if (finding->bound)
        return tr("below %1").arg(localised(report::screenRate(m_unit.ofHelium(*finding->bound))));
    return findingText(finding->finding);
}

QString ChangesModel::spokenValue(const std::optional<analysis::PointFinding>& finding) const
{
    const std::string range = finding ? report::plainRange(*finding, m_unit) : std::string();
    return range.empty() ? valueText(finding)
                         : tr("%1, 95 % range %2").arg(valueText(finding), localised(range));
}

QString ChangesModel::text(const analysis::ComparedPoint& point, int column) const
{
    switch (column) {
    case Point: {
        const int now = point.after ? point.after->number : 0;
        const int then = point.before ? point.before->number : 0;
        const QString number = now != 0 && then != 0 && now != then
                                   ? QStringLiteral("%1 (%2)").arg(now).arg(then)
                                   : QString::number(now != 0 ? now : then);
        return point.match.isProposal() ? number + QStringLiteral(" ?") : number;
    }
    case Joint:
        return nameOf(point);
    case Then:
        return valueText(point.before);
    case Now:
        return valueText(point.after);
    case Decades:
        if (!point.decades)
            return {};
        return (*point.decades < 0.0 ? QString(QChar(0x2212)) : QStringLiteral("+")) +
               QLocale().toString(std::abs(*point.decades), 'f', 1);
    case Word:
        if (!point.before || !point.after) // there is nothing to compare, which says nothing of a leak
            return changeSign(point.change) + QStringLiteral("  ") +
                   (point.after ? tr("point only now") : tr("point only then"));
        return changeSign(point.change) + QStringLiteral("  ") + changeWord(point.change) +
               (point.atLeast ? tr(", at least") : QString());
    case Remark: {
        QString remark = render::inWords(point.because);
        if (point.match.isProposal())
            remark = tr("matched by %1: Y same place, N another")
                         .arg(point.match.by == analysis::MatchedBy::Place  ? tr("place")
                              : point.match.by == analysis::MatchedBy::Name ? tr("name")
                                                                            : tr("number")) +
                     (remark.isEmpty() ? QString() : QStringLiteral("; ") + remark);
        return remark;
    }
    default:
        return {};
    }
}

QVariant ChangesModel::data(const QModelIndex& index, int role) const
{
    const analysis::ComparedPoint* point = index.isValid() ? at(index.row()) : nullptr;
    if (point == nullptr)
        return {};
    const auto which = m_rows[static_cast<std::size_t>(index.row())];
    if (index.column() >= ColumnCount) {
        const auto finding = between(*point, index.column());
        if (role == Qt::DisplayRole)
            return valueText(finding);
        if (role == Qt::ToolTipRole || role == Qt::AccessibleTextRole)
            return spokenValue(finding);
        if (role == RateDelegate::RangeRole && finding)
            return localised(report::rangeBeside(*finding, m_unit));
        return role == Qt::TextAlignmentRole ? QVariant(Qt::AlignRight | Qt::AlignVCenter) : QVariant();
    }
    switch (role) {
    case Qt::DisplayRole:
        return text(*point, index.column());
    case Qt::ToolTipRole:
        if (index.column() == Then || index.column() == Now)
            return spokenValue(index.column() == Then ? point->before : point->after);
        if (index.column() == Point && point->match.isProposal())
            return text(*point, Remark);
        return index.column() == Joint || index.column() == Word || index.column() == Remark
                   ? QVariant(text(*point, index.column()))
                   : QVariant();
    case RateDelegate::RangeRole: {
        const auto& side = index.column() == Then ? point->before : point->after;
        if ((index.column() != Then && index.column() != Now) || !side)
            return {};
        return localised(report::rangeBeside(*side, m_unit));
    }
    case Qt::TextAlignmentRole:
        if (index.column() == Then || index.column() == Now || index.column() == Decades)
            return QVariant(Qt::AlignRight | Qt::AlignVCenter);
        return {};
    case Qt::AccessibleTextRole:
        if (index.column() == Then || index.column() == Now)
            return spokenValue(index.column() == Then ? point->before : point->after);
        if (index.column() == Delta)
            return text(*point, Decades) + QLatin1Char(' ') + changeWord(point->change);
        return {};
    case ComparedRole:
        return static_cast<qulonglong>(which);
    case Qt::CheckStateRole:
        if (index.column() == Point)
            return m_followed.contains(which) ? Qt::Checked : Qt::Unchecked;
        return {};
    default:
        return {};
    }
}

QVariant ChangesModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation == Qt::Horizontal && role == Qt::TextAlignmentRole &&
        (section == Then || section == Now || section == Decades || section >= ColumnCount))
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    if (const auto which = static_cast<std::size_t>(section - ColumnCount);
        section >= ColumnCount && which < m_between.size())
        return tr("Job %1").arg(m_between[which]->job.number);
    switch (section) {
    case Point:
        return tr("Point");
    case Joint:
        return tr("Joint");
    case Then:
        return tr("Then");
    case Now:
        return tr("Now");
    case Delta:
        return tr("decades −5 … +5");
    case Decades:
        return tr("Change");
    case Word:
        return tr("Says");
    case Remark:
        return tr("Because");
    default:
        return {};
    }
}

} // namespace sealwalk::ui
