// SPDX-License-Identifier: GPL-3.0-or-later
// The advice beside the walk: what, why, and the two keys that answer it.
#pragma once

#include <QFrame>

class QLabel;
class QPushButton;

namespace sealwalk::ui {

class SprayController;

class AdviceCard : public QFrame
{
    Q_OBJECT

public:
    explicit AdviceCard(SprayController& controller, QWidget* parent = nullptr);
    /// Least height of the two answers, px: larger for gloves.
    void setTargetHeight(int pixels);

private:
    void refresh();

    SprayController& m_controller;
    QLabel* m_icon;
    QLabel* m_title;
    QLabel* m_because;
    QPushButton* m_take;
    QPushButton* m_stay;
};

} // namespace sealwalk::ui
