// SPDX-License-Identifier: GPL-3.0-or-later
// Heads of sections and rows of a form, all to one measure.
#pragma once

#include <QString>
#include <QWidget>

#include <vector>

class QHBoxLayout;
class QLabel;

namespace sealwalk::ui {

/// "Calibration            reference leak RL-11": a title and a quiet word at the right.
class Heading : public QWidget
{
    Q_OBJECT

public:
    explicit Heading(const QString& title, const QString& aside = {}, QWidget* parent = nullptr);
    void setAside(const QString& aside);
    void setTitle(const QString& title);

private:
    QLabel* m_title = nullptr;
    QLabel* m_aside = nullptr;
};

/// A label of fixed width, the field, then whatever stands behind it. The first field is the label's buddy.
QWidget* formRow(const QString& label, const std::vector<QWidget*>& fields, QWidget* parent = nullptr);

/// Quiet text: unit behind a field, remark under a figure. `role` is a word of the style sheet.
QLabel* quietLabel(const QString& text, QWidget* parent = nullptr,
                   const QString& role = QStringLiteral("soft"));

} // namespace sealwalk::ui
