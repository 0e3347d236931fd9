// SPDX-License-Identifier: GPL-3.0-or-later
// Why a run of readings is void: one field, one Enter.
#pragma once

#include <QDialog>

class QLineEdit;

namespace sealwalk::ui {

class VoidRunDialog : public QDialog
{
    Q_OBJECT

public:
    /// @param what   "points 43, 44 and 45"
    /// @param because  the core's sentence
    VoidRunDialog(const QString& what, const QString& because, QWidget* parent = nullptr);
    [[nodiscard]] QString reason() const;

private:
    QLineEdit* m_reason;
};

} // namespace sealwalk::ui
