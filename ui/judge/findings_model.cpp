// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/judge/findings_model.h"

#include "core/analysis/answered.h"
#include "core/analysis/leak_rank.h"
#include "core/model/point_numbers.h"
#include "core/report/finding_range.h"
#include "core/report/map_builder.h"
#include "core/report/rate_text.h"
#include "ui/render/core_words.h"

#include <QLocale>

#include <algorithm>

namespace sealwalk::ui {

using analysis::Finding;
using analysis::PointFinding;
using analysis::Verdict;

void FindingsModel::setFindings(std::vector<PointFinding> findings, const model::Job& job,
                                const report::MapScale& scale)
{
    beginResetModel();
    m_findings = std::move(findings);
    m_sketch = job.sketch;
    m_scale = scale;
    std::set<model::PointId> kept;
    for (const PointFinding& finding : m_findings)
        if (m_ticked.contains(finding.point) && isRepairable(finding))
            kept.insert(finding.point);
    m_ticked = std::move(kept);
    endResetModel();
}

void FindingsModel::setBalance(const analysis::LeakBalance& balance)
{
    m_shares.clear();
    for (const analysis::LeakAsAir& leak : balance.leaks)
        if (leak.inSum())
            m_shares[leak.label] = leak.share;
    if (!m_findings.empty())
        emit dataChanged(index(0, ShareColumn), index(rowCount() - 1, ShareColumn));
}

const PointFinding* FindingsModel::finding(int row) const
{
    return row < 0 || row >= rowCount() ? nullptr : &m_findings[static_cast<std::size_t>(row)];
}

int FindingsModel::rowOf(model::PointId point) const
{
    for (std::size_t i = 0; i < m_findings.size(); ++i)
        if (m_findings[i].point == point)
            return static_cast<int>(i);
    return -1;
}

void FindingsModel::untickAll()
{
    if (m_ticked.empty())
        return;
    m_ticked.clear();
    emit dataChanged(index(0, RepairColumn), index(rowCount() - 1, RepairColumn));
    emit ticksChanged();
}

int FindingsModel::count(Verdict verdict) const
{
    return static_cast<int>(std::count_if(m_findings.begin(), m_findings.end(),
                                          [&](const PointFinding& f) { return f.verdict == verdict; }));
}

int FindingsModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_findings.size());
}

int FindingsModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : kColumns;
}

QString FindingsModel::rate(LeakRate helium) const
{
    return render::inFigures(report::screenRate(m_scale.shown(helium)));
}

QString FindingsModel::number(LeakRate shown) const
{
    return render::inFigures(report::screenRate(m_scale.number(shown)));
}

QString FindingsModel::findingText(const PointFinding& finding) const
{
    QString text = findingWord(finding.finding);
    QStringList others;
    for (const model::PointId other : finding.of)
        if (const model::TestPoint* point = m_sketch.point(other))
            others << QString::number(point->number);
    if (!others.isEmpty()) {
        const QString list = others.join(QStringLiteral(", "));
        text = finding.finding == Finding::Echo     ? tr("echo of %1").arg(list)
               : finding.finding == Finding::Masked ? tr("masked by %1").arg(list)
               : finding.finding == Finding::Shared ? tr("shared with %1").arg(list)
                                                    : text;
    }
    if (finding.condition != model::Condition::AtRest && finding.reading)
        text += QStringLiteral(", ") + render::inWords(std::string(model::name(finding.condition)));
    if (finding.temporaryRepair)
        text += tr(", held by a fix");
    if (finding.concession)
        text += tr(", conceded");
    if (finding.awaitsRetest)
        text += tr(", awaits re-test");
    return finding.judgedByPerson ? text + tr(" (judged)") : text;
}

QString FindingsModel::rangeText(const PointFinding& finding) const
{
    if (const auto range = report::rangeOf(finding, m_scale.gas))
        return number(range->low) + QStringLiteral(" … ") + number(range->high);
    if (finding.bound) {
        const QString bound = rate(*finding.bound);
        return finding.finding == Finding::Echo ? tr("own part below %1").arg(bound)
                                                : tr("below %1").arg(bound);
    }
    if (finding.atLeast)
        return tr("at least %1").arg(rate(*finding.atLeast));
    if (finding.asRead)
        return tr("%1 as shown").arg(rate(*finding.asRead));
    return {};
}

QString FindingsModel::text(const PointFinding& finding, int column) const
{
    const model::TestPoint* point = m_sketch.point(finding.point);
    const model::Joint* joint = point == nullptr ? nullptr : m_sketch.joint(point->joint);
    switch (column) {
    case PointColumn:
        return QString::number(finding.number);
    case JointColumn:
        return joint == nullptr ? QString() : QString::fromStdString(joint->name);
    case FindingColumn:
        return findingText(finding);
    case RateColumn:
        return finding.rate ? rate(*finding.rate) : QStringLiteral("–");
    case RangeColumn:
        return rangeText(finding);
    case LimitColumn:
        return verdictWord(finding.verdict);
    case ShareColumn: {
        const auto share = m_shares.find("point " + std::to_string(finding.number));
        if (share != m_shares.end())
            return tr("%1 %").arg(
                QLocale().toString(share->second * 100.0, 'f', share->second < 0.095 ? 1 : 0));
        return finding.verdict == Verdict::NoAnswer || finding.finding == Finding::Masked
                   ? QStringLiteral("?")
                   : QStringLiteral("–");
    }
    default:
        return {};
    }
}

QVariant FindingsModel::sortKey(const PointFinding& finding, int column) const
{
    const auto value = [](const std::optional<LeakRate>& rate) { return rate ? rate->si() : -1.0; };
    switch (column) {
    case PointColumn:
        return finding.number;
    case RateColumn:
        return value(analysis::sizeOf(finding));
    case RangeColumn:
        return value(finding.high ? finding.high : finding.atLeast ? finding.atLeast : finding.bound);
    case LimitColumn:
        // within one gravity the larger leak comes first
        return gravityOf(finding) * 1e6 - std::max(value(finding.rate), value(finding.asRead));
    default:
        return text(finding, column);
    }
}

bool FindingsModel::isRepairable(const PointFinding& finding) const
{
    return analysis::isLeakWord(finding.finding);
}

QVariant FindingsModel::data(const QModelIndex& index, int role) const
{
    const PointFinding* found = finding(index.row());
    if (found == nullptr)
        return {};
    switch (role) {
    case Qt::DisplayRole:
        return text(*found, index.column());
    case Qt::AccessibleTextRole:
        return headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString() + QLatin1Char(' ') +
               text(*found, index.column());
    case Qt::CheckStateRole:
        if (index.column() == RepairColumn && isRepairable(*found))
            return m_ticked.contains(found->point) ? Qt::Checked : Qt::Unchecked;
        return {};
    case Qt::TextAlignmentRole:
        return index.column() == RateColumn || index.column() == ShareColumn
                   ? QVariant(Qt::AlignRight | Qt::AlignVCenter)
                   : QVariant(Qt::AlignLeft | Qt::AlignVCenter);
    case SortRole:
        return sortKey(*found, index.column());
    case VerdictRole:
        return static_cast<int>(found->verdict);
    case GravityRole:
        return gravityOf(*found);
    case StateRole:
        return static_cast<int>(report::stateOf(*found));
    case TemporaryRole:
        return found->temporaryRepair;
    case ConcededRole:
        return found->concession;
    case TeethRole:
        return static_cast<int>(found->verdict == Verdict::Over        ? report::Teeth::Full
                                : found->verdict == Verdict::CannotSay ? report::Teeth::Few
                                                                       : report::Teeth::None);
    case PlaceRole:
    case Qt::ToolTipRole: {
        const model::TestPoint* point = m_sketch.point(found->point);
        if (role == PlaceRole)
            return point == nullptr ? QString() : render::inWords(model::placeOnSheet(m_sketch, *point));
        const QString place =
            point == nullptr ? QString() : render::inWords(model::placeText(m_sketch, *point));
        QStringList lines{data(index.siblingAtColumn(FindingColumn), Qt::DisplayRole).toString(),
                          data(index.siblingAtColumn(JointColumn), Qt::DisplayRole).toString(), place};
        if (found->concededUntil)
            lines << tr("conceded until %1").arg(QString::fromStdString(found->concededUntil->date()));
        lines.removeAll(QString());
        return lines.join(QLatin1Char('\n')); // the cells may have cut them
    }
    default:
        return {};
    }
}

bool FindingsModel::setData(const QModelIndex& index, const QVariant& value, int role)
{
    const PointFinding* found = finding(index.row());
    if (found == nullptr || role != Qt::CheckStateRole || index.column() != RepairColumn ||
        !isRepairable(*found))
        return false;
    if (value.toInt() == Qt::Checked)
        m_ticked.insert(found->point);
    else
        m_ticked.erase(found->point);
    emit dataChanged(index, index);
    emit ticksChanged();
    return true;
}

QVariant FindingsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation == Qt::Horizontal && role == Qt::TextAlignmentRole)
        return section == RateColumn || section == ShareColumn ? QVariant(Qt::AlignRight | Qt::AlignVCenter)
                                                               : QVariant(Qt::AlignLeft | Qt::AlignVCenter);
    if (orientation == Qt::Horizontal && role == Qt::ToolTipRole && section == ShareColumn)
        return tr("of all located leaks together, as air; –: none of its own, or it leaks only in another condition; "
                  "?: not known");
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case PointColumn:
        return tr("Point");
    case JointColumn:
        return tr("Joint");
    case FindingColumn:
        return tr("Finding");
    case RateColumn:
        return m_scale.gas.isAir() ? tr("Rate, air") : tr("Rate, He");
    case RangeColumn:
        return tr("95 % range");
    case LimitColumn:
        return m_scale.limit ? tr("Against %1").arg(rate(*m_scale.limit)) : tr("Against limit");
    case ShareColumn:
        return tr("Share");
    case RepairColumn:
        return tr("Repair");
    default:
        return {};
    }
}

Qt::ItemFlags FindingsModel::flags(const QModelIndex& index) const
{
    const PointFinding* found = finding(index.row());
    if (found == nullptr)
        return QAbstractTableModel::flags(index);
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    if (index.column() == RepairColumn && isRepairable(*found))
        flags |= Qt::ItemIsUserCheckable;
    return flags;
}

} // namespace sealwalk::ui
