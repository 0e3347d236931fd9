// SPDX-License-Identifier: GPL-3.0-or-later
// What a paper sheet says of all its readings: its day, and how long was sprayed.
#pragma once

#include "core/base/timestamp.h"
#include "core/quantities/kinds.h"

#include <QDate>
#include <QDialog>

#include <optional>

class QLabel;

namespace sealwalk::ui {

class DateField;
class QuantityEdit;

class PaperDialog : public QDialog
{
    Q_OBJECT

public:
    explicit PaperDialog(QWidget* parent = nullptr);
    /// The day of the job, where that lies before today.
    void proposeDay(const Timestamp& opened);
    [[nodiscard]] QDate day() const;
    /// None: the sheet does not say.
    [[nodiscard]] std::optional<Duration> dwell() const;
    void accept() override;

private:
    DateField* m_day;
    QuantityEdit* m_dwell;
    QLabel* m_complaint;
};

} // namespace sealwalk::ui
