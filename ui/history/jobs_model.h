// SPDX-License-Identifier: GPL-3.0-or-later
// The jobs of a history as table rows, newest first. Marks are of the view: they choose what is compared.
#pragma once

#include "core/storage/history_store.h"

#include <QAbstractTableModel>

#include <functional>
#include <map>
#include <vector>

namespace sealwalk::ui {

class JobsModel : public QAbstractTableModel
{
    Q_OBJECT

public:
    enum Column
    {
        Number,
        Date,
        Object,
        Purpose,
        Found, ///< where the words searched for stand; empty where the other columns show them
        State,
        Points,
        Readings,
        ColumnCount
    };

    using QAbstractTableModel::QAbstractTableModel;

    using FoundIn = std::function<QString(const storage::JobRow&)>;

    void setRows(std::vector<storage::JobRow> rows);
    /// Asked once for each row that comes into view, until the next search; none: nothing is searched for.
    void setFoundIn(FoundIn foundIn);
    [[nodiscard]] const storage::JobRow* jobAt(int row) const;

    /// In the order they were marked; marks outlive a search that hides the row.
    [[nodiscard]] const std::vector<storage::JobRow>& marked() const { return m_marked; }
    void toggleMark(int row);
    void clearMarks();
    /// Signed jobs whose record is not what was signed, with the reason.
    void setWrong(std::map<model::JobId, QString> wrong);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

signals:
    void marksChanged();

private:
    [[nodiscard]] QString text(const storage::JobRow& job, int column) const;
    [[nodiscard]] QString found(const storage::JobRow& job) const;
    [[nodiscard]] bool isMarked(model::JobId id) const;

    std::vector<storage::JobRow> m_rows;
    std::vector<storage::JobRow> m_marked;
    std::map<model::JobId, QString> m_wrong;
    FoundIn m_foundIn;
    mutable std::map<model::JobId, QString> m_found; ///< as far as asked
};

} // namespace sealwalk::ui
