// SPDX-License-Identifier: GPL-3.0-or-later
// Why a point is called what it is called: sentences, the reading, the factors from display to chamber.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/report/map_content.h"
#include "ui/session/job_session.h"

#include <QWidget>

class QLabel;
class QTextBrowser;

namespace sealwalk::ui {

class BecausePanel : public QWidget
{
    Q_OBJECT

public:
    explicit BecausePanel(JobSession& session, QWidget* parent = nullptr);
    void setFinding(const analysis::PointFinding* finding, const report::MapScale& scale);

signals:
    void left();

private:
    [[nodiscard]] QString chainOf(const analysis::PointFinding& finding, const report::MapScale& scale) const;

    JobSession& m_session;
    QLabel* m_title;
    QTextBrowser* m_text;
};

} // namespace sealwalk::ui
