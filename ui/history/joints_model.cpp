// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/joints_model.h"

#include "core/analysis/leak_rank.h"
#include "core/report/finding_range.h"
#include "core/report/rate_text.h"
#include "ui/render/core_words.h"
#include "ui/widgets/number_display.h"
#include "ui/widgets/rate_delegate.h"

namespace sealwalk::ui {

QString touchText(const std::optional<analysis::Touch>& touch)
{
    if (!touch)
        return {};
    const QString what = render::repairInWords(touch->what);
    QStringList parts{QString::fromStdString(touch->at.date()),
                      touch->disturbed ? JointsModel::tr("disturbed by: %1").arg(what) : what};
    if (!touch->by.empty())
        parts.append(QString::fromStdString(touch->by));
    return JointsModel::tr("%1 (job %2)").arg(parts.join(QStringLiteral(", "))).arg(touch->job);
}

void JointsModel::setRows(std::vector<analysis::JointHistory> rows, const report::ShownUnit& unit)
{
    beginResetModel();
    m_rows = std::move(rows);
    m_unit = unit;
    endResetModel();
}

const analysis::JointHistory* JointsModel::at(int row) const
{
    const auto index = static_cast<std::size_t>(row);
    return row < 0 || index >= m_rows.size() ? nullptr : &m_rows[index];
}

int JointsModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int JointsModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QString JointsModel::text(const analysis::JointHistory& joint, int column) const
{
    switch (column) {
    case Name: {
        const QString name = QString::fromStdString(joint.name);
        return joint.isDrawn ? name : tr("%1, no longer drawn").arg(name);
    }
    case Over:
        return joint.tested == 0 ? tr("never tested") : tr("%1 of %2").arg(joint.over).arg(joint.tested);
    case Largest:
        if (!joint.largest)
            return {};
        if (joint.largest->rate)
            return localised(report::screenRate(m_unit.ofHelium(*joint.largest->rate)));
        if (joint.largest->atLeast)
            return tr("at least %1")
                .arg(localised(report::screenRate(m_unit.ofHelium(*joint.largest->atLeast))));
        if (analysis::isUnsizedLeak(*joint.largest))
            return tr("not sized");
        return tr("below %1").arg(localised(report::screenRate(m_unit.ofHelium(*joint.largest->bound))));
    case Year:
        return joint.largest ? QString::fromStdString(joint.largestAt.date().substr(0, 4)) : QString();
    case Repairs:
        return joint.repairs == 0 ? QString() : QString::number(joint.repairs);
    case Touched:
        return touchText(joint.touched);
    default:
        return {};
    }
}

QVariant JointsModel::data(const QModelIndex& index, int role) const
{
    const analysis::JointHistory* joint = index.isValid() ? at(index.row()) : nullptr;
    if (joint == nullptr)
        return {};
    const std::string range = joint->largest ? report::plainRange(*joint->largest, m_unit) : std::string();
    switch (role) {
    case Qt::DisplayRole:
        return text(*joint, index.column());
    case RateDelegate::RangeRole:
        if (index.column() == Largest && joint->largest)
            return localised(report::rangeBeside(*joint->largest, m_unit));
        return {};
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
        if (index.column() == Over && joint->tested > 0)
            return tr("over the limit in %1 of %n job(s) in which it was tested", nullptr, joint->tested)
                .arg(joint->over);
        if (index.column() == Largest && !range.empty())
            return tr("%1, 95 % range %2, point %3, job %4")
                .arg(text(*joint, Largest), localised(range))
                .arg(joint->largest->number)
                .arg(joint->largestJob);
        return text(*joint, index.column());
    case Qt::TextAlignmentRole:
        if (index.column() == Largest || index.column() == Repairs)
            return QVariant(Qt::AlignRight | Qt::AlignVCenter);
        return {};
    default:
        return {};
    }
}

QVariant JointsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation == Qt::Horizontal && role == Qt::TextAlignmentRole &&
        (section == Largest || section == Repairs))
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Name:
        return tr("Joint");
    case Over:
        return tr("Over the limit");
    case Largest:
        return tr("Largest leak");
    case Year:
        return tr("Year");
    case Repairs:
        return tr("Repairs");
    case Touched:
        return tr("Last touched");
    default:
        return {};
    }
}

} // namespace sealwalk::ui
