// SPDX-License-Identifier: GPL-3.0-or-later
// What the round left open: the shortest list of sprays that settles it, one key from being the next round,
// and runs of readings taken while the background moved, voided together. Hidden while nothing is open.
#pragma once

#include "core/analysis/open_ends.h"
#include "ui/session/job_session.h"
#include "ui/session/newest_wins.h"
#include "ui/widgets/note.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QPushButton;

namespace sealwalk::ui {

class OpenEndsBar : public QWidget
{
    Q_OBJECT

public:
    explicit OpenEndsBar(JobSession& session, QWidget* parent = nullptr);

    /// Works out behind the window what the current round left open.
    void refresh();
    /// Makes the chosen list the next round.
    void openNextRound();
    /// Asks for the reason and voids the chosen run; its points are called again.
    void voidRun();
    [[nodiscard]] const analysis::OpenEnds& ends() const { return m_ends; }

signals:
    void noteRequested(sealwalk::ui::Severity severity, const QString& text);
    void failed(const sealwalk::Error& error);
    void sprayWanted(); ///< a round was opened, or points are called again
    void nameWanted();  ///< a void stands under a name, and nobody is named at this window yet
    void changed();     ///< what is open was worked out

private:
    void showEnds(analysis::OpenEnds ends);
    [[nodiscard]] QString numbersOf(const std::vector<model::PointId>& points) const;
    [[nodiscard]] std::vector<model::PointId> pointsOf(const analysis::MovedRun& run) const;
    [[nodiscard]] QString wordsOf(const analysis::OpenEnd& end) const;
    [[nodiscard]] model::RoundId round() const;

    JobSession& m_session;
    analysis::OpenEnds m_ends;
    model::RoundId m_of; ///< the round m_ends is of
    NewestWins<std::pair<model::RoundId, analysis::OpenEnds>> m_work;
    QWidget* m_settleRow;
    QComboBox* m_settle;
    QPushButton* m_open;
    QWidget* m_movedRow;
    QComboBox* m_moved;
    QPushButton* m_void;
};

} // namespace sealwalk::ui
