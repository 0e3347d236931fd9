// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/jobs_model.h"

#include "ui/render/icon.h"

#include <algorithm>

namespace sealwalk::ui {

void JobsModel::setRows(std::vector<storage::JobRow> rows)
{
    if (rows == m_rows)
        return;
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

void JobsModel::setFoundIn(FoundIn foundIn)
{
    if (!foundIn && !m_foundIn)
        return;
    m_foundIn = std::move(foundIn);
    m_found.clear();
    if (!m_rows.empty())
        emit dataChanged(index(0, Found), index(rowCount() - 1, Found));
}

QString JobsModel::found(const storage::JobRow& job) const
{
    if (!m_foundIn)
        return {};
    const auto known = m_found.find(job.id);
    return known != m_found.end() ? known->second : m_found.emplace(job.id, m_foundIn(job)).first->second;
}

const storage::JobRow* JobsModel::jobAt(int row) const
{
    const auto index = static_cast<std::size_t>(row);
    return row < 0 || index >= m_rows.size() ? nullptr : &m_rows[index];
}

bool JobsModel::isMarked(model::JobId id) const
{
    return std::any_of(m_marked.begin(), m_marked.end(), [&](const auto& job) { return job.id == id; });
}

void JobsModel::toggleMark(int row)
{
    const storage::JobRow* job = jobAt(row);
    if (job == nullptr)
        return;
    if (isMarked(job->id))
        std::erase_if(m_marked, [&](const auto& other) { return other.id == job->id; });
    else
        m_marked.push_back(*job);
    emit dataChanged(index(row, Number), index(row, Number), {Qt::CheckStateRole});
    emit marksChanged();
}

void JobsModel::clearMarks()
{
    if (m_marked.empty())
        return;
    m_marked.clear();
    if (!m_rows.empty())
        emit dataChanged(index(0, Number), index(rowCount() - 1, Number), {Qt::CheckStateRole});
    emit marksChanged();
}

void JobsModel::setWrong(std::map<model::JobId, QString> wrong)
{
    if (wrong == m_wrong)
        return;
    m_wrong = std::move(wrong);
    if (!m_rows.empty())
        emit dataChanged(index(0, State), index(rowCount() - 1, State));
}

int JobsModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int JobsModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QString JobsModel::text(const storage::JobRow& job, int column) const
{
    switch (column) {
    case Number:
        return QString::number(job.number);
    case Date:
        return QString::fromStdString(job.opened.date());
    case Object: {
        const QString name = QString::fromStdString(job.objectName);
        return job.objectTag.empty() ? name
                                     : name + QStringLiteral("  ") + QString::fromStdString(job.objectTag);
    }
    case Purpose:
        return QString::fromStdString(job.purpose);
    case Found:
        return found(job);
    case State:
        if (m_wrong.contains(job.id))
            return tr("not as signed");
        switch (job.state) {
        case model::JobState::Open:
            return tr("in progress");
        case model::JobState::Submitted:
            return tr("submitted");
        case model::JobState::Returned:
            return tr("sent back");
        case model::JobState::Signed:
            return tr("signed");
        }
        return {};
    case Points:
        return QString::number(job.points);
    case Readings:
        return QString::number(job.readings);
    default:
        return {};
    }
}

QVariant JobsModel::data(const QModelIndex& index, int role) const
{
    const storage::JobRow* job = index.isValid() ? jobAt(index.row()) : nullptr;
    if (job == nullptr)
        return {};
    if (role == Qt::DisplayRole)
        return text(*job, index.column());
    if (role == Qt::ToolTipRole &&
        (index.column() == Object || index.column() == Purpose || index.column() == Found))
        return text(*job, index.column()); // where it is cut
    if (const auto wrong = m_wrong.find(job->id); wrong != m_wrong.end() && index.column() == State) {
        if (role == Qt::DecorationRole)
            return render::icon(QStringLiteral("caution"));
        if (role == Qt::ToolTipRole || role == Qt::AccessibleTextRole)
            return tr("Not as signed: %1").arg(wrong->second);
    }
    if (role == Qt::CheckStateRole && index.column() == Number)
        return isMarked(job->id) ? Qt::Checked : Qt::Unchecked;
    if (role == Qt::TextAlignmentRole && (index.column() == Points || index.column() == Readings))
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    if (role == Qt::AccessibleTextRole && index.column() == Found && found(*job).isEmpty())
        return tr("nothing beside what the row shows");
    if (role == Qt::AccessibleTextRole && index.column() == Number)
        return isMarked(job->id) ? tr("job %1, marked").arg(job->number) : tr("job %1").arg(job->number);
    return {};
}

bool JobsModel::setData(const QModelIndex& index, const QVariant& value, int role)
{
    const storage::JobRow* job = index.isValid() ? jobAt(index.row()) : nullptr;
    if (job == nullptr || role != Qt::CheckStateRole || index.column() != Number)
        return false;
    if ((value.toInt() == Qt::Checked) != isMarked(job->id))
        toggleMark(index.row());
    return true;
}

Qt::ItemFlags JobsModel::flags(const QModelIndex& index) const
{
    const Qt::ItemFlags usual = QAbstractTableModel::flags(index);
    return index.isValid() && index.column() == Number ? usual | Qt::ItemIsUserCheckable : usual;
}

QVariant JobsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Number:
        return tr("Job");
    case Date:
        return tr("Opened");
    case Object:
        return tr("Test object");
    case Purpose:
        return tr("Purpose");
    case Found:
        return tr("Found in");
    case State:
        return tr("State");
    case Points:
        return tr("Points");
    case Readings:
        return tr("Readings");
    default:
        return {};
    }
}

} // namespace sealwalk::ui
