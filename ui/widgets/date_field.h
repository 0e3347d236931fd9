// SPDX-License-Identifier: GPL-3.0-or-later
// A date as one types it: 2026-03-01, 1.3.2026, or the locale's short form; ambiguous forms are refused.
#pragma once

#include <QDate>
#include <QWidget>

#include <optional>

class QLabel;
class QLineEdit;

namespace sealwalk::ui {

/// ISO (2026-03-01), day.month.year (1.3.2026), or the default locale's own short form.
std::optional<QDate> readDate(const QString& text);

class DateField : public QWidget
{
    Q_OBJECT

public:
    explicit DateField(const QString& name, QWidget* parent = nullptr);

    void setDate(std::optional<QDate> date);
    [[nodiscard]] std::optional<QDate> date() const { return m_date; }
    [[nodiscard]] bool isWrong() const { return m_wrong; }
    /// Reads the box as if the cursor had left it.
    void commit() { onEditingFinished(); }
    [[nodiscard]] QLineEdit* field() const { return m_field; }

signals:
    void edited(std::optional<QDate> date);

private:
    void onEditingFinished();

    QLineEdit* m_field = nullptr;
    QLabel* m_below = nullptr;
    std::optional<QDate> m_date;
    bool m_wrong = false;
};

} // namespace sealwalk::ui
