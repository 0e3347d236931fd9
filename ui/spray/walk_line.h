// SPDX-License-Identifier: GPL-3.0-or-later
// The walk in one line, where the window has no room for its panel: how far, how long, what comes.
#pragma once

#include <QWidget>

class QLabel;
class QPushButton;

namespace sealwalk::ui {

class SprayController;

class WalkLine : public QWidget
{
    Q_OBJECT

public:
    explicit WalkLine(const SprayController& controller, QWidget* parent = nullptr);
    /// The button so high; 0: for the mouse.
    void setTargetHeight(int pixels);

signals:
    void orderWanted();

private:
    void refresh();

    const SprayController& m_controller;
    QLabel* m_text;
    QPushButton* m_order;
};

} // namespace sealwalk::ui
