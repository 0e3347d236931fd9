// SPDX-License-Identifier: GPL-3.0-or-later
// The test objects of a history as table rows; the first row stands for all of them.
#pragma once

#include "core/storage/history_store.h"

#include <QAbstractTableModel>

#include <vector>

namespace sealwalk::ui {

class ObjectsModel : public QAbstractTableModel
{
    Q_OBJECT

public:
    enum Column
    {
        Name,
        Last,
        Jobs,
        Temporary,
        ColumnCount
    };

    using QAbstractTableModel::QAbstractTableModel;

    void setRows(std::vector<storage::ObjectRow> rows);
    /// nullptr for the row of all objects.
    [[nodiscard]] const storage::ObjectRow* objectAt(int row) const;
    [[nodiscard]] int rowOf(model::ObjectId id) const; ///< 0 when it is not there

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    [[nodiscard]] QString text(int row, int column) const;

    std::vector<storage::ObjectRow> m_rows;
};

} // namespace sealwalk::ui
