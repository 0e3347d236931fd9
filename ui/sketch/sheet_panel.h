// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet itself, while no joint is chosen: name, side, size, where up is, the picture underneath.
#pragma once

#include "core/model/sketch.h"

#include <QWidget>

#include <functional>

class QCheckBox;
class QComboBox;
class QLineEdit;
class QPushButton;

namespace sealwalk::ui {

class NumberField;
class SketchDesk;

class SheetPanel : public QWidget
{
    Q_OBJECT

public:
    explicit SheetPanel(SketchDesk& desk, QWidget* parent = nullptr);
    void refresh();

signals:
    void pictureWanted();

private:
    void change(const std::function<void(model::Sheet&)>& change);

    SketchDesk& m_desk;
    QLineEdit* m_name = nullptr;
    QComboBox* m_seenFrom = nullptr;
    NumberField* m_width = nullptr;
    NumberField* m_height = nullptr;
    QComboBox* m_up = nullptr;
    QCheckBox* m_plan = nullptr;
    QCheckBox* m_retired = nullptr;
    QPushButton* m_picture = nullptr;
    QPushButton* m_remove = nullptr;
};

} // namespace sealwalk::ui
