// SPDX-License-Identifier: GPL-3.0-or-later
// The detector's last minute under the call; without a feed, the way to set one up.
#pragma once

#include "ui/spray/spray_controller.h"

#include <QWidget>

class QLabel;

namespace sealwalk::render {
class PlotView;
}

namespace sealwalk::ui {

class LiveTrace : public QWidget
{
    Q_OBJECT

public:
    LiveTrace(JobSession& session, SprayController& controller, QWidget* parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override { return {440, 150}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {140, 40}; }
    [[nodiscard]] render::PlotView& plot() const { return *m_plot; }

signals:
    void feedWanted(); ///< to set one up

private:
    void refresh();
    void refreshLimit();

    JobSession& m_session;
    SprayController& m_controller;
    render::PlotView* m_plot;
    QLabel* m_none; ///< without a feed
    std::optional<LeakRate> m_limit;
};

} // namespace sealwalk::ui
