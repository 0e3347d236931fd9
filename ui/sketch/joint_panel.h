// SPDX-License-Identifier: GPL-3.0-or-later
// What the chosen joint is: name, kind, material, what it asks for.
#pragma once

#include "core/model/sketch.h"

#include <QWidget>

#include <functional>

class QCheckBox;
class QComboBox;
class QLineEdit;

namespace sealwalk::ui {

class Heading;
class NumberField;
class SketchDesk;

class JointPanel : public QWidget
{
    Q_OBJECT

public:
    explicit JointPanel(SketchDesk& desk, QWidget* parent = nullptr);
    void refresh();

private:
    void change(const std::function<void(model::Joint&)>& change);
    void showLimit(const model::Joint& joint);

    SketchDesk& m_desk;
    QLineEdit* m_name = nullptr;
    QComboBox* m_kind = nullptr;
    QLineEdit* m_material = nullptr;
    NumberField* m_cord = nullptr;
    Heading* m_head = nullptr;
    QComboBox* m_conditions = nullptr;
    QCheckBox* m_setup = nullptr;
    QCheckBox* m_locked = nullptr;
    QCheckBox* m_smooth = nullptr;
};

} // namespace sealwalk::ui
