// SPDX-License-Identifier: GPL-3.0-or-later
// What the job before this one left at a point, for who sprays it again.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/analysis/point_matching.h"
#include "ui/session/newest_wins.h"

#include <QObject>

#include <map>

namespace sealwalk::ui {

class JobSession;

/// Worked out beside the window when a job is opened; until then nothing is known.
class LastTime : public QObject
{
    Q_OBJECT

public:
    explicit LastTime(JobSession& session, QObject* parent = nullptr);

    /// "job 12: 3.2e−5 on the chamber", in the unit and gas this job is shown in; empty where that job has no
    /// answer at the point, or the point is not known to be one of its points.
    [[nodiscard]] QString words(model::PointId point) const;

signals:
    void changed();

private:
    struct Left
    {
        model::JobId of; ///< the job it was worked out for
        int number = 0;  ///< of the job before it
        std::map<model::PointId, analysis::PointFinding> findings;
        analysis::KnownPairs known;
    };

    void ask();
    [[nodiscard]] const analysis::PointFinding* findingAt(model::PointId point) const;

    JobSession& m_session;
    Left m_left;
    NewestWins<Left> m_work;
};

} // namespace sealwalk::ui
