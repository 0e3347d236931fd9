// SPDX-License-Identifier: GPL-3.0-or-later
// The pressure-rise test: record in, leak apart from outgassing out, with its plot.
#pragma once

#include "core/analysis/pressure_rise.h"
#include "core/base/error.h"
#include "core/model/job.h"
#include "ui/session/newest_wins.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace sealwalk::render {
class PlotView;
}

namespace sealwalk::ui {

class Heading;
class JobSession;
class RecordsRow;

class RisePanel : public QWidget
{
    Q_OBJECT

public:
    explicit RisePanel(JobSession& session, QWidget* parent = nullptr);
    void refresh();
    void enterRise();

signals:
    void failed(const sealwalk::Error& error);
    void judged(); ///< the figures of the record shown are there

private:
    using Answer = Result<analysis::RiseSummary>;

    void showTest(int index);
    void voidTest();
    void deliver(const Answer& answer);

    JobSession& m_session;
    Heading* m_heading = nullptr;
    render::PlotView* m_plot = nullptr;
    QLabel* m_verdict = nullptr;
    QLabel* m_figures = nullptr;
    QLabel* m_advice = nullptr;
    RecordsRow* m_records = nullptr;
    QPushButton* m_enter = nullptr;
    model::RiseTestId m_asked; ///< being judged or shown
    std::optional<Volume> m_askedVolume;
    NewestWins<Answer> m_work;
};

} // namespace sealwalk::ui
