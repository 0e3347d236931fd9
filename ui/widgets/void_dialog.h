// SPDX-License-Identifier: GPL-3.0-or-later
// Why something recorded is void: one field, one Enter.
#pragma once

#include <QDialog>

class QLineEdit;

namespace sealwalk::ui {

struct VoidQuestion
{
    QString title;
    QString text;      ///< what would be void, and what follows
    QString suggested; ///< a reason to take or to type over; may be empty
    QString agree;     ///< the button that does it
};

class VoidDialog : public QDialog
{
    Q_OBJECT

public:
    explicit VoidDialog(const VoidQuestion& question, QWidget* parent = nullptr);
    /// Never empty once accepted.
    [[nodiscard]] QString reason() const;

private:
    QLineEdit* m_reason;
};

} // namespace sealwalk::ui
