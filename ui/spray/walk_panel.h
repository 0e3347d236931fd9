// SPDX-License-Identifier: GPL-3.0-or-later
// The walk beside the sheet: how far, what came, what comes.
#pragma once

#include "ui/spray/walk_model.h"

#include <QWidget>

class QLabel;
class QListView;
class QPushButton;

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
class WalkDelegate;

class WalkPanel : public QWidget
{
    Q_OBJECT

public:
    WalkPanel(JobSession& session, SprayController& controller, QWidget* parent = nullptr);
    [[nodiscard]] AdviceCard& advice() const { return *m_advice; }
    [[nodiscard]] KeyLegend& legend() const { return *m_legend; }
    /// Rows and buttons for fingers, so high; 0: for the mouse.
    void setTargetHeight(int pixels);

signals:
    void orderWanted();
    void keyPressed(int key); ///< a field that stands for a key was touched

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void refresh();
    void showWaiting();
    void showCalled();
    void paintChangedRows();
    void placeFoot();
    QWidget* makeTouchKeys();

    JobSession& m_session;
    SprayController& m_controller;
    WalkModel* m_model;
    QLabel* m_count;
    QLabel* m_timeLeft;
    QLabel* m_waiting; ///< rounds besides the one on show that are not at their end
    WalkThread* m_thread;
    QListView* m_list;
    AdviceCard* m_advice;
    KeyLegend* m_legend;
    WalkDelegate* m_rows;
    QPushButton* m_order;
    QWidget* m_touchKeys; ///< in place of the legend
    bool m_isTouch = false;
    std::unordered_map<int, WalkModel::Row> m_shown; ///< rows in view, as they were last painted
};

} // namespace sealwalk::ui
