// SPDX-License-Identifier: GPL-3.0-or-later
// A job that something stops goes for review only when somebody says why; the answer goes on record with it.
#pragma once

#include "core/analysis/review_checks.h"

#include <QDialog>

#include <vector>

class QLineEdit;

namespace sealwalk::ui {

class SubmitDialog : public QDialog
{
    Q_OBJECT

public:
    SubmitDialog(const std::vector<analysis::ReviewCheck>& checks, QWidget* parent = nullptr);
    [[nodiscard]] QString reason() const;

private:
    QLineEdit* m_reason;
};

} // namespace sealwalk::ui
