// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/objects_model.h"

#include <algorithm>

namespace sealwalk::ui {

void ObjectsModel::setRows(std::vector<storage::ObjectRow> rows)
{
    if (rows == m_rows)
        return;
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

const storage::ObjectRow* ObjectsModel::objectAt(int row) const
{
    const auto index = static_cast<std::size_t>(row - 1);
    return row < 1 || index >= m_rows.size() ? nullptr : &m_rows[index];
}

int ObjectsModel::rowOf(model::ObjectId id) const
{
    const auto found =
        std::find_if(m_rows.begin(), m_rows.end(), [&](const auto& row) { return row.has(id); });
    return found == m_rows.end() ? 0 : static_cast<int>(found - m_rows.begin()) + 1;
}

int ObjectsModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size()) + 1;
}

int ObjectsModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QString ObjectsModel::text(int row, int column) const
{
    const storage::ObjectRow* object = objectAt(row);
    if (object == nullptr)
        return column == Name ? tr("All objects") : QString();
    switch (column) {
    case Name: {
        const QString name = QString::fromStdString(object->name);
        return object->tag.empty() ? name : name + QStringLiteral("  ") + QString::fromStdString(object->tag);
    }
    case Last:
        return object->lastOpened ? QString::fromStdString(object->lastOpened->date()) : tr("no job yet");
    case Jobs:
        return QString::number(object->jobs);
    case Temporary:
        return object->openTemporaryRepairs == 0 ? QString() : QString::number(object->openTemporaryRepairs);
    default:
        return {};
    }
}

QVariant ObjectsModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid())
        return {};
    if (role == Qt::DisplayRole)
        return text(index.row(), index.column());
    if (role == Qt::TextAlignmentRole && (index.column() == Jobs || index.column() == Temporary))
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    if (role == Qt::ToolTipRole) {
        const storage::ObjectRow* object = objectAt(index.row());
        if (object == nullptr)
            return {};
        QStringList parts{text(index.row(), Name)}; // also where it is cut
        if (!object->place.empty())
            parts << QString::fromStdString(object->place);
        for (const storage::ObjectEntry& other : object->others)
            parts << tr("also entered as %1")
                         .arg(QString::fromStdString(other.name + "  " + other.tag).trimmed());
        return parts.join(QStringLiteral(" \u00B7 "));
    }
    // The first row stands for all of them, and has nothing of its own in the other columns.
    if (role == Qt::AccessibleTextRole && objectAt(index.row()) == nullptr)
        return text(index.row(), Name);
    if (role == Qt::AccessibleTextRole && index.column() == Temporary)
        return tr("%n open temporary repair(s)", nullptr,
                  objectAt(index.row()) == nullptr ? 0 : objectAt(index.row())->openTemporaryRepairs);
    return {};
}

QVariant ObjectsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation == Qt::Horizontal && role == Qt::ToolTipRole && section == Temporary)
        return tr("temporary repairs that nothing has made good yet");
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Name:
        return tr("Test object");
    case Last:
        return tr("Last job");
    case Jobs:
        return tr("Jobs");
    case Temporary:
        return tr("Temporary");
    default:
        return {};
    }
}

} // namespace sealwalk::ui
