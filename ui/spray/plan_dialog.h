// SPDX-License-Identifier: GPL-3.0-or-later
// The order of the walk with dwell, wait, time and helium. Sealwalk proposes one; the technician moves rows
// by mouse or keys, and what stands there when the dialog is accepted is the round's order.
#pragma once

#include "core/analysis/job_plan.h"

#include <QDialog>

#include <vector>

class QLabel;
class QTableWidget;

namespace sealwalk::ui {

class JobSession;

class PlanDialog : public QDialog
{
    Q_OBJECT

public:
    /// Of the session's current round; there must be one.
    explicit PlanDialog(JobSession& session, QWidget* parent = nullptr);
    [[nodiscard]] std::vector<model::PointId> order() const;
    /// Moves the chosen row; -1 up, 1 down.
    void moveRow(int by);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void propose();
    void showPlan(const analysis::JobPlan& plan);
    void takeDrop(QEvent* event);
    void reorder(std::size_t from, std::size_t to);

    JobSession& m_session;
    model::RoundId m_round;
    analysis::JobPlan m_plan;
    QTableWidget* m_table;
    QLabel* m_sums;
};

} // namespace sealwalk::ui
