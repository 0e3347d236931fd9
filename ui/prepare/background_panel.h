// SPDX-License-Identifier: GPL-3.0-or-later
// The background watched: trace, level, noise, drift.
#pragma once

#include "core/base/error.h"
#include "core/model/measurement.h"

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

class BackgroundPanel : public QWidget
{
    Q_OBJECT

public:
    explicit BackgroundPanel(JobSession& session, QWidget* parent = nullptr);
    void refresh();
    void enterBackground();

signals:
    void failed(const sealwalk::Error& error);

private:
    void showWatch(int index);
    void voidWatch();
    void showNotes(const model::MeasurementVoid* mark, QStringList notes);

    JobSession& m_session;
    Heading* m_heading = nullptr;
    render::PlotView* m_plot = nullptr;
    QLabel* m_figures = nullptr;
    QLabel* m_notes = nullptr;
    QPushButton* m_watch = nullptr;
    RecordsRow* m_records = nullptr;
};

} // namespace sealwalk::ui
