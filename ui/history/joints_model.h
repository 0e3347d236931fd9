// SPDX-License-Identifier: GPL-3.0-or-later
// The joints of an object over all its jobs, the worst first.
#pragma once

#include "core/analysis/joint_history.h"
#include "core/report/shown_unit.h"

#include <QAbstractTableModel>

#include <vector>

namespace sealwalk::ui {

class JointsModel : public QAbstractTableModel
{
    Q_OBJECT

public:
    enum Column
    {
        Name,
        Over,
        Largest,
        Year,
        Repairs,
        Touched,
        ColumnCount
    };

    using QAbstractTableModel::QAbstractTableModel;

    void setRows(std::vector<analysis::JointHistory> rows, const report::ShownUnit& unit);
    [[nodiscard]] const analysis::JointHistory* at(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    [[nodiscard]] QString text(const analysis::JointHistory& joint, int column) const;

    std::vector<analysis::JointHistory> m_rows;
    report::ShownUnit m_unit;
};

/// "2025-03-13, replaced seal, N. Name (job 118)"; empty where nobody touched it.
QString touchText(const std::optional<analysis::Touch>& touch);

} // namespace sealwalk::ui
