// SPDX-License-Identifier: GPL-3.0-or-later
// The walk beside the sheet: how far, what came, what comes.
#pragma once

#include "ui/spray/walk_model.h"

#include <QWidget>

class QLabel;
class QListView;

namespace sealwalk::ui {

/// Solid as far as the walk has come, dashed from there.
class WalkThread : public QWidget
{
public:
    explicit WalkThread(QWidget* parent = nullptr);
    void setShare(double share);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    double m_share = 0.0;
};

class AdviceCard;
class KeyLegend;

class WalkPanel : public QWidget
{
    Q_OBJECT

public:
    WalkPanel(JobSession& session, SprayController& controller, QWidget* parent = nullptr);
    [[nodiscard]] AdviceCard& advice() const { return *m_advice; }
    [[nodiscard]] KeyLegend& legend() const { return *m_legend; }

signals:
    void orderWanted();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void refresh();
    void showCalled();

    JobSession& m_session;
    SprayController& m_controller;
    WalkModel* m_model;
    QLabel* m_count;
    QLabel* m_timeLeft;
    WalkThread* m_thread;
    QListView* m_list;
    AdviceCard* m_advice;
    KeyLegend* m_legend;
};

} // namespace sealwalk::ui
