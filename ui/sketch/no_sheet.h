// SPDX-License-Identifier: GPL-3.0-or-later
// In place of the sheet while there is none: how to begin.
#pragma once

#include <QWidget>

class QLabel;
class QPushButton;

namespace sealwalk::ui {

class SketchDesk;

class NoSheet : public QWidget
{
    Q_OBJECT

public:
    explicit NoSheet(SketchDesk& desk, QWidget* parent = nullptr);
    void refresh();

signals:
    void newSheetWanted();
    void pictureWanted();

private:
    SketchDesk& m_desk;
    QLabel* m_text = nullptr;
    QPushButton* m_new = nullptr;
    QPushButton* m_picture = nullptr;
};

} // namespace sealwalk::ui
