// SPDX-License-Identifier: GPL-3.0-or-later
// What changed between two jobs, as table rows: the largest change first.
#pragma once

#include "core/analysis/comparison.h"
#include "core/analysis/worked_job.h"
#include "core/model/sketch.h"
#include "core/report/shown_unit.h"

#include <QAbstractTableModel>

#include <set>
#include <vector>

namespace sealwalk::ui {

class ChangesModel : public QAbstractTableModel
{
    Q_OBJECT

public:
    enum Column
    {
        Point,
        Joint,
        Then,
        Now,
        Delta, ///< the bar, by the delegate
        Decades,
        Word,
        Remark,
        ColumnCount ///< and then one for each job between
    };
    enum Role
    {
        ComparedRole = Qt::UserRole, ///< the row's index into the comparison
    };

    using QAbstractTableModel::QAbstractTableModel;

    void setComparison(analysis::Comparison comparison, const model::Sketch& before,
                       const model::Sketch& after, const report::ShownUnit& unit);
    /// Jobs beside the two, the oldest first: a column each, after those of this enumeration.
    void setBetween(analysis::WorkedJobs between, bool asLeft, const analysis::KnownPairs& known);
    void setShown(const std::set<analysis::Change>& kinds);
    [[nodiscard]] const analysis::Comparison& comparison() const { return m_comparison; }
    [[nodiscard]] const analysis::ComparedPoint* at(int row) const;
    [[nodiscard]] int rowOf(model::PointId point) const; ///< by either side; -1 when it is not shown
    [[nodiscard]] QString nameOf(const analysis::ComparedPoint& point) const;

    /// Points followed on the course; of the view.
    void setFollowed(const std::set<std::size_t>& rows);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    void arrange();
    [[nodiscard]] QString text(const analysis::ComparedPoint& point, int column) const;
    [[nodiscard]] std::optional<analysis::PointFinding> between(const analysis::ComparedPoint& point,
                                                                int column) const;
    [[nodiscard]] QString valueText(const std::optional<analysis::PointFinding>& finding) const;
    [[nodiscard]] QString spokenValue(const std::optional<analysis::PointFinding>& finding) const;

    analysis::Comparison m_comparison;
    model::Sketch m_before;
    model::Sketch m_after;
    report::ShownUnit m_unit;
    analysis::WorkedJobs m_between;
    bool m_isLeft = false; ///< what is shown of those
    analysis::KnownPairs m_known;
    std::set<analysis::Change> m_kinds;
    std::set<std::size_t> m_followed;
    std::vector<std::size_t> m_rows; ///< indices into the comparison
};

/// "grown", and the sign before it: "↑".
QString changeWord(analysis::Change change);
QString changeSign(analysis::Change change);

} // namespace sealwalk::ui
