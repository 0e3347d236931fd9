// SPDX-License-Identifier: GPL-3.0-or-later
// Above the sheet: its tabs, a new sheet, how strongly the picture underneath shows, its scale.
#pragma once

#include <QWidget>

class QLabel;
class QPushButton;
class QSlider;
class QTabBar;
class QToolButton;

namespace sealwalk::ui {

class SketchDesk;

class SheetBar : public QWidget
{
    Q_OBJECT

public:
    explicit SheetBar(SketchDesk& desk, QWidget* parent = nullptr);

signals:
    void newSheetWanted();
    void scaleWanted();
    void fitWanted();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void refresh();
    void opacityChosen();

    SketchDesk& m_desk;
    QTabBar* m_tabs = nullptr;
    QToolButton* m_new = nullptr;
    QToolButton* m_fit = nullptr;
    QLabel* m_opacityName = nullptr;
    QSlider* m_opacity = nullptr;
    QPushButton* m_scale = nullptr;
    bool m_refreshing = false;
};

} // namespace sealwalk::ui
