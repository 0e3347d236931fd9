// SPDX-License-Identifier: GPL-3.0-or-later
// Teaches the program a presenter: choose a button's row, press the button.
#pragma once

#include "ui/spray/presenter.h"

#include <QDialog>

class QLabel;
class QPushButton;

namespace sealwalk::ui {

class PresenterDialog : public QDialog
{
    Q_OBJECT

public:
    explicit PresenterDialog(const PresenterKeys& keys, QWidget* parent = nullptr);
    [[nodiscard]] const PresenterKeys& keys() const { return m_keys; }

    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void learn(PresenterButton button);
    void refresh();

    PresenterKeys m_keys;
    std::optional<PresenterButton> m_learning;
    std::array<QPushButton*, kPresenterButtons.size()> m_rows{};
    std::array<QLabel*, kPresenterButtons.size()> m_sends{};
    QLabel* m_hint;
};

} // namespace sealwalk::ui
