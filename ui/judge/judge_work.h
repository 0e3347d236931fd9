// SPDX-License-Identifier: GPL-3.0-or-later
// Balance and load of what Judge shows, worked out behind the window for the ticks of the moment.
#pragma once

#include "core/analysis/job_balance.h"
#include "core/analysis/pressure_rise.h"
#include "ui/session/job_session.h"
#include "ui/session/newest_wins.h"

#include <QObject>

#include <optional>
#include <set>

namespace sealwalk::ui {

struct JudgeFigures
{
    std::optional<analysis::RiseSummary> rise;
    std::optional<analysis::JobBalance> balance;
    std::string problem; ///< why there is no balance
};

class JudgeWork : public QObject
{
    Q_OBJECT

public:
    explicit JudgeWork(JobSession& session, QObject* parent = nullptr);
    [[nodiscard]] const JudgeFigures& figures() const { return m_figures; }
    void request(const std::vector<analysis::PointFinding>& findings, const std::set<model::PointId>& ticked,
                 analysis::Standing standing);

signals:
    void changed();

private:
    JobSession& m_session;
    JudgeFigures m_figures;
    NewestWins<JudgeFigures> m_work;
};

} // namespace sealwalk::ui
