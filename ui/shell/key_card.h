// SPDX-License-Identifier: GPL-3.0-or-later
// The keys of this stage, laid over the page until F1 or Esc takes them away.
#pragma once

#include "ui/shell/stage.h"

#include <QFrame>
#include <QPointer>

namespace sealwalk::ui {

class KeyCard : public QFrame
{
    Q_OBJECT

public:
    /// Covers `page` and goes with it.
    KeyCard(Stage stage, QWidget* page);

    /// Goes, and gives the keyboard back to what had it before.
    void leave();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    QPointer<QWidget> m_before;
};

} // namespace sealwalk::ui
