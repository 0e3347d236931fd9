// SPDX-License-Identifier: GPL-3.0-or-later
// Every repair of the job, the open ones first, with before and after side by side; temporary ones of earlier
// jobs beneath. Enter opens one.
#pragma once

#include "core/model/repair.h"

#include <QWidget>

#include <vector>

class QLabel;
class QTableWidget;

namespace sealwalk::ui {

class JobSession;

class RepairsPanel : public QWidget
{
    Q_OBJECT

public:
    explicit RepairsPanel(JobSession& session, QWidget* parent = nullptr);
    void refresh();
    /// Of this job, in the order shown.
    [[nodiscard]] const std::vector<model::RepairId>& shown() const { return m_shown; }

signals:
    void editWanted(sealwalk::model::RepairId repair);
    void proofWanted(sealwalk::model::RepairId repair); ///< the round that proves it
    void left();

private:
    void addRow(const model::Repair& repair);
    void addCarried();
    [[nodiscard]] const model::RepairId* chosen() const;
    [[nodiscard]] QString totalsText() const;

    JobSession& m_session;
    QTableWidget* m_table;
    QLabel* m_unit;
    QLabel* m_totals;
    std::vector<model::RepairId> m_shown;
};

} // namespace sealwalk::ui
