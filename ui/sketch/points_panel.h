// SPDX-License-Identifier: GPL-3.0-or-later
// How points lie along the chosen joint: by number or pitch, from where, in which sense; the chosen point.
#pragma once

#include "core/editing/laying.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace sealwalk::ui {

class Heading;
class NumberField;
class SketchDesk;
class SwitchRow;

class PointsPanel : public QWidget
{
    Q_OBJECT

public:
    explicit PointsPanel(SketchDesk& desk, QWidget* parent = nullptr);
    void refresh();

signals:
    void laid(); ///< the drawing has the next word

private:
    QWidget* pointRow();
    void showCount(double typed);
    void layingEdited(double typed);
    void firstEdited(const QString& typed);
    void showFirst();
    void forgetFirst();
    void lay();
    void reverse(bool clockwise);
    void seenFromEdited();
    void refreshPoint();
    [[nodiscard]] editing::Laying typedLaying() const;

    SketchDesk& m_desk;
    model::JointId m_shownJoint; ///< whose number of points the field started with
    Heading* m_head = nullptr;
    SwitchRow* m_by = nullptr;
    QLabel* m_countName = nullptr;
    NumberField* m_count = nullptr;
    QLabel* m_every = nullptr;
    QLineEdit* m_first = nullptr;
    bool m_firstIsWrong = false;
    QLabel* m_firstSays = nullptr; ///< what becomes of it, or what is wrong with it
    SwitchRow* m_sense = nullptr;
    QComboBox* m_seenFrom = nullptr;
    QPushButton* m_lay = nullptr;
    QPushButton* m_undo = nullptr;
    QWidget* m_pointRow = nullptr;
    QLabel* m_pointName = nullptr;
    QLineEdit* m_place = nullptr;
    QPushButton* m_retire = nullptr;
};

/// Sides a sheet is usually seen from.
QStringList usualSides();

} // namespace sealwalk::ui
