// SPDX-License-Identifier: GPL-3.0-or-later
// The findings as a table. A thin view: every figure comes from the findings, every word from their
// enumerations.
#pragma once

#include "core/analysis/leak_balance.h"
#include "core/analysis/point_finding.h"
#include "core/model/job.h"
#include "core/report/map_content.h"

#include <QAbstractTableModel>

#include <set>
#include <vector>

namespace sealwalk::ui {

class FindingsModel : public QAbstractTableModel
{
    Q_OBJECT

public:
    enum Column
    {
        PointColumn,
        JointColumn,
        FindingColumn,
        RateColumn,
        RangeColumn,
        LimitColumn,
        ShareColumn,
        RepairColumn
    };
    static constexpr int kColumns = RepairColumn + 1;
    enum Role
    {
        SortRole = Qt::UserRole + 1,
        VerdictRole,
        StateRole,
        PlaceRole,
        GravityRole,
        TemporaryRole,
        ConcededRole,
        TeethRole
    };

    using QAbstractTableModel::QAbstractTableModel;

    /// @param content  of any sheet: scale and unit, and the state each finding is drawn in
    void setFindings(std::vector<analysis::PointFinding> findings, const model::Job& job,
                     const report::MapScale& scale);
    /// Shares of the located sum, by "point N".
    void setBalance(const analysis::LeakBalance& balance);
    [[nodiscard]] const analysis::PointFinding* finding(int row) const;
    [[nodiscard]] int rowOf(model::PointId point) const; ///< -1 when it is not here
    [[nodiscard]] const std::set<model::PointId>& ticked() const { return m_ticked; }
    void untickAll();
    [[nodiscard]] int count(analysis::Verdict verdict) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

signals:
    void ticksChanged();

private:
    [[nodiscard]] QString text(const analysis::PointFinding& finding, int column) const;
    [[nodiscard]] QString findingText(const analysis::PointFinding& finding) const;
    [[nodiscard]] QString rangeText(const analysis::PointFinding& finding) const;
    [[nodiscard]] QString rate(LeakRate helium) const;  ///< in the gas shown
    [[nodiscard]] QString number(LeakRate shown) const; ///< of a rate in the gas shown already
    [[nodiscard]] QVariant sortKey(const analysis::PointFinding& finding, int column) const;
    [[nodiscard]] bool isRepairable(const analysis::PointFinding& finding) const;

    std::vector<analysis::PointFinding> m_findings;
    model::Sketch m_sketch;
    report::MapScale m_scale;
    std::map<std::string, double> m_shares;
    std::set<model::PointId> m_ticked;
};

/// "leak", "echo" … in the language of the window.
QString findingWord(analysis::Finding finding);
QString verdictWord(analysis::Verdict verdict);
/// Order of decision: over first, then cannot say, within with a story, no answer; quiet points last.
int gravityOf(const analysis::PointFinding& finding);

} // namespace sealwalk::ui
