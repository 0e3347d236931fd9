// SPDX-License-Identifier: GPL-3.0-or-later
// How a line is read and what its number means, as fields.
#pragma once

#include "core/feed/line_format.h"

#include <QWidget>

class QComboBox;
class QLineEdit;
class QSpinBox;
class QStackedWidget;

namespace sealwalk::ui {

class FormatForm : public QWidget
{
    Q_OBJECT

public:
    explicit FormatForm(QWidget* parent = nullptr);
    void setFormat(const feed::LineFormat& format);
    /// What is no number is not-a-number here, for checkFormat() to say.
    [[nodiscard]] feed::LineFormat format() const;

signals:
    void changed();

private:
    QLineEdit* numberField(const QString& name, const char* object);
    void refresh();

    QComboBox* m_where;
    QStackedWidget* m_pages;
    QSpinBox* m_column;
    QComboBox* m_separator;
    QLineEdit* m_pattern;
    QSpinBox* m_time;
    QComboBox* m_meaning;
    QComboBox* m_unit;
    QLineEdit* m_factor;
    QLineEdit* m_offset;
    QLineEdit* m_decades;
    QLineEdit* m_zero;
    QWidget* m_linear;
    QWidget* m_logarithmic;
};

} // namespace sealwalk::ui
