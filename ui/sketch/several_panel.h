// SPDX-License-Identifier: GPL-3.0-or-later
// Several chosen joints: grouped, locked, repeated, mirrored, turned.
#pragma once

#include <QWidget>

class QLabel;
class QPushButton;

namespace sealwalk::ui {

class Heading;
class SketchDesk;

class SeveralPanel : public QWidget
{
    Q_OBJECT

public:
    explicit SeveralPanel(SketchDesk& desk, QWidget* parent = nullptr);
    void refresh();

private:
    SketchDesk& m_desk;
    Heading* m_head = nullptr;
    QPushButton* m_group = nullptr;
    QPushButton* m_lock = nullptr;
    bool m_grouped = false;
    bool m_locked = false;
};

} // namespace sealwalk::ui
