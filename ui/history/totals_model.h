// SPDX-License-Identifier: GPL-3.0-or-later
// The whole object, job by job: as found, and as left where something was repaired. The oldest first.
#pragma once

#include "core/analysis/object_totals.h"
#include "core/report/shown_unit.h"

#include <QAbstractTableModel>

#include <vector>

namespace sealwalk::ui {

class TotalsModel : public QAbstractTableModel
{
    Q_OBJECT

public:
    enum Column
    {
        Job,
        Date,
        State,
        Sprayed,
        Sum,
        Rise,
        Base,
        ColumnCount
    };

    using QAbstractTableModel::QAbstractTableModel;

    void setRows(std::vector<analysis::ObjectTotal> rows, const report::ShownUnit& unit);
    [[nodiscard]] const std::vector<analysis::ObjectTotal>& rows() const { return m_rows; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    [[nodiscard]] QString sumText(const analysis::LeakSum& leaks) const;
    [[nodiscard]] QString text(const analysis::ObjectTotal& total, int column) const;
    [[nodiscard]] std::string rangeOf(const analysis::ObjectTotal& total, int column, bool spoken) const;

    std::vector<analysis::ObjectTotal> m_rows;
    report::ShownUnit m_unit;
};

} // namespace sealwalk::ui
