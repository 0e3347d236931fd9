// SPDX-License-Identifier: GPL-3.0-or-later
// What was done to a joint, with the caution that belongs to it. A temporary repair needs owner and date.
#pragma once

#include "core/model/job.h"

#include <QDialog>

class QComboBox;
class QDateEdit;
class QDialogButtonBox;
class QLabel;
class QLineEdit;
class QRadioButton;
class QSpinBox;

namespace sealwalk::ui {

class RepairDialog : public QDialog
{
    Q_OBJECT

public:
    RepairDialog(const model::Job& job, const std::vector<model::PointId>& points, QWidget* parent = nullptr);
    [[nodiscard]] model::Repair repair() const;
    /// Whether the round that proves it is opened at once.
    [[nodiscard]] static QStringList defects();
    [[nodiscard]] static QStringList actions();

private:
    void refresh();
    [[nodiscard]] std::vector<model::PointId> neighbours() const;

    const model::Job& m_job;
    std::vector<model::PointId> m_points;
    QComboBox* m_defect;
    QComboBox* m_action;
    QLineEdit* m_material;
    QRadioButton* m_permanent;
    QRadioButton* m_temporary;
    QLineEdit* m_owner;
    QDateEdit* m_due;
    QSpinBox* m_cureHours;
    QLineEdit* m_disturbed;
    QLineEdit* m_note;
    QLabel* m_caution;
    QLabel* m_complaint;
    QDialogButtonBox* m_buttons;
};

} // namespace sealwalk::ui
