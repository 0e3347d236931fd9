// SPDX-License-Identifier: GPL-3.0-or-later
// The map of the judged findings: sheet tabs, ruler, and the two switches.
#pragma once

#include "ui/session/job_session.h"

#include <QWidget>

class QTabBar;

namespace sealwalk::render {
class DecadeRuler;
class SheetView;
} // namespace sealwalk::render

namespace sealwalk::ui {

class SwitchRow;

class MapPanel : public QWidget
{
    Q_OBJECT

public:
    explicit MapPanel(JobSession& session, QWidget* parent = nullptr);

    /// Draws these findings; the sheet stays unless it is gone.
    void setFindings(const std::vector<analysis::PointFinding>& findings);
    /// Rings a point and turns to its sheet.
    void choose(model::PointId point);
    void chooseSheet(int index);
    /// Dims what is shown under a few words; empty: as usual.
    void setNotice(const QString& text);
    [[nodiscard]] bool echoesTakenOut() const;
    [[nodiscard]] bool asLeft() const;
    void toggleEchoes();
    void toggleStanding();

signals:
    void pointChosen(sealwalk::model::PointId point);
    void switched(); ///< another reading or another standing is wanted

private:
    void refreshTabs();
    void draw();
    void showThreads();

    JobSession& m_session;
    std::vector<analysis::PointFinding> m_findings;
    std::vector<model::SheetId> m_sheets;
    model::PointId m_chosen;
    model::PointId m_hovered; ///< nil: none
    QTabBar* m_tabs;
    render::SheetView* m_view;
    render::DecadeRuler* m_ruler;
    SwitchRow* m_reading;
    SwitchRow* m_standing;
};

} // namespace sealwalk::ui
