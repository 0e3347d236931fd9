// SPDX-License-Identifier: GPL-3.0-or-later
// A pressure-rise record typed, pasted or taken from a file, and when it was made.
#pragma once

#include "core/model/job.h"

#include <QDialog>

#include <initializer_list>
#include <optional>

class QComboBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace sealwalk::ui {

class MomentField;
class QuantityEdit;

class RiseDialog : public QDialog
{
    Q_OBJECT

public:
    /// @param volume  of all that is shut off together, to say what a record comes to; none: not known
    explicit RiseDialog(const model::Job& job, std::optional<Volume> volume = {}, QWidget* parent = nullptr);
    [[nodiscard]] model::RiseTest test() const;

private:
    QComboBox* unitBox(const QString& name, std::initializer_list<const char*> units);
    void read();
    void takeFile();
    void tryAccept();

    std::optional<Volume> m_volume;
    model::RiseTest m_test;
    std::optional<Timestamp> m_repaired; ///< the last time
    MomentField* m_measured = nullptr;
    QPlainTextEdit* m_values = nullptr;
    QWidget* m_unitRow = nullptr; ///< for numbers without a head line
    QComboBox* m_timeUnit = nullptr;
    QComboBox* m_pressureUnit = nullptr;
    QComboBox* m_moment = nullptr;
    QuantityEdit* m_base = nullptr;
    QLineEdit* m_gauge = nullptr;
    QLabel* m_says = nullptr;
    QPushButton* m_keep = nullptr;
};

} // namespace sealwalk::ui
