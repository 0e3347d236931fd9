// SPDX-License-Identifier: GPL-3.0-or-later
// What was done to a joint, with the caution that belongs to it. A temporary repair needs owner and date.
#pragma once

#include "core/model/job.h"

#include <QDialog>

#include <optional>

class QComboBox;
class QDialogButtonBox;
class QLabel;
class QLineEdit;
class QRadioButton;
class QSpinBox;

namespace sealwalk::ui {

class DateField;
class JobSession;
class PhotoStrip;

class RepairDialog : public QDialog
{
    Q_OBJECT

public:
    RepairDialog(JobSession& session, const std::vector<model::PointId>& points, QWidget* parent = nullptr);
    /// One that is on record, to be looked at, completed or given photos.
    RepairDialog(JobSession& session, const model::Repair& known, QWidget* parent = nullptr);
    [[nodiscard]] model::Repair repair() const;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void refresh();
    void proposeForAction();
    [[nodiscard]] bool mendsSetup() const;
    [[nodiscard]] bool isBolted() const;
    void tryAccept();
    void fill();
    void fit();
    /// What the re-test calls besides the points repaired: what was disturbed with them, and what only they
    /// hid.
    [[nodiscard]] std::vector<model::PointId> alsoToSpray() const;

    JobSession& m_session;
    const model::Job& m_job;
    std::optional<model::Repair> m_known;
    std::vector<model::PointId> m_points;
    QComboBox* m_defect;
    QComboBox* m_action;
    QLineEdit* m_material;
    QLineEdit* m_doneBy;
    QLineEdit* m_torque;
    QRadioButton* m_permanent;
    QRadioButton* m_temporary;
    QLineEdit* m_owner;
    DateField* m_due;
    QSpinBox* m_cureHours;
    QLineEdit* m_disturbed;
    QLineEdit* m_note;
    PhotoStrip* m_photos;
    QLabel* m_caution;
    QLabel* m_complaint;
    QDialogButtonBox* m_buttons;
};

} // namespace sealwalk::ui
