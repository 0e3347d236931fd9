// SPDX-License-Identifier: GPL-3.0-or-later
// One check with a reference leak: its certificate, what the display said, what follows.
#pragma once

#include "core/model/job.h"
#include "core/quantities/units.h"

#include <QDialog>
#include <QElapsedTimer>

#include <optional>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace sealwalk::ui {

class DateField;
class MomentField;
class Heading;
class PersonField;
class QuantityEdit;

class CalibrationDialog : public QDialog
{
    Q_OBJECT

public:
    /// Takes the certificate of the job's last check over, so that it is typed once; in a job without one
    /// that of `before`, the object's job before, and says so.
    CalibrationDialog(const model::Job& job, const std::optional<model::Job>& before, const QString& logger,
                      QWidget* parent = nullptr);

    [[nodiscard]] model::Calibration calibration() const;

private:
    void buildLeak(QVBoxLayout& column);
    void buildReading(QVBoxLayout& column);
    void showLeak(const model::Calibration& last);
    void showLast(const std::optional<model::Job>& before);
    void showFactor();
    void toggleClock();
    void tryAccept();
    QuantityEdit* edit(const QString& name, const Unit& unit);

    const model::Job& m_job;
    Heading* m_leakHeading = nullptr;
    QComboBox* m_kind = nullptr;
    QComboBox* m_moment = nullptr;
    MomentField* m_measured = nullptr;
    QLineEdit* m_serial = nullptr;
    QLineEdit* m_certificate = nullptr;
    QuantityEdit* m_value = nullptr;
    DateField* m_date = nullptr;
    DateField* m_due = nullptr;
    QuantityEdit* m_certifiedAt = nullptr;
    QuantityEdit* m_coefficient = nullptr;
    QCheckBox* m_linear = nullptr;
    QuantityEdit* m_loss = nullptr;
    QuantityEdit* m_uncertainty = nullptr;
    QuantityEdit* m_room = nullptr;
    QuantityEdit* m_shown = nullptr;
    QuantityEdit* m_background = nullptr;
    QuantityEdit* m_response = nullptr;
    QuantityEdit* m_cleanUp = nullptr;
    QLineEdit* m_place = nullptr;
    QLineEdit* m_note = nullptr;
    QComboBox* m_joint = nullptr;
    PersonField* m_by = nullptr;
    QLabel* m_follows = nullptr;
    QPushButton* m_clockButton = nullptr;
    QElapsedTimer m_clock;
};

} // namespace sealwalk::ui
