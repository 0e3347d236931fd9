// SPDX-License-Identifier: GPL-3.0-or-later
// What the report asks for besides the measurement: parties, papers, what is left out, other instruments.
#pragma once

#include "core/model/job.h"
#include "core/model/test_object.h"

#include <QDialog>

#include <vector>

class QCheckBox;
class QLineEdit;
class QVBoxLayout;

namespace sealwalk::ui {

class DateField;

class PapersDialog : public QDialog
{
    Q_OBJECT

public:
    PapersDialog(const model::Setup& setup, const model::TestObject& object, QWidget* parent = nullptr);

    /// Writes what was changed here, and only that: the rest may have been changed elsewhere while this was
    /// open.
    void applyTo(model::Setup& setup) const;
    void applyTo(model::TestObject& object) const;

private:
    struct InstrumentRow
    {
        QLineEdit* what = nullptr;
        QLineEdit* identity = nullptr;
        DateField* due = nullptr;
    };

    QLineEdit* addLine(QVBoxLayout& column, const QString& label, const QString& name,
                       const std::string& kept, const QString& example);
    void addInstruments(QVBoxLayout& column);
    [[nodiscard]] std::vector<model::Instrument> instruments() const;
    void tryAccept();

    model::Setup m_setup; ///< as it came
    model::TestObject m_object;
    QLineEdit* m_customer = nullptr;
    QLineEdit* m_witness = nullptr;
    QLineEdit* m_drawing = nullptr;
    QLineEdit* m_procedure = nullptr;
    QLineEdit* m_excluded = nullptr;
    QLineEdit* m_bottle = nullptr;
    QLineEdit* m_noCheckAfter = nullptr;
    QCheckBox* m_dried = nullptr;
    QCheckBox* m_zero = nullptr;
    std::vector<InstrumentRow> m_instruments;
};

} // namespace sealwalk::ui
