// SPDX-License-Identifier: GPL-3.0-or-later
// A field for one number, with decimal comma or point; what is no number goes back to what it was.
#pragma once

#include <QLineEdit>

#include <optional>

namespace sealwalk::ui {

class NumberField : public QLineEdit
{
    Q_OBJECT

public:
    NumberField(const QString& name, int width, QWidget* parent = nullptr);

    /// Refuses fractions: counts and point numbers have none.
    void setWhole(bool whole) { m_whole = whole; }
    void setNumber(std::optional<double> number);
    [[nodiscard]] std::optional<double> number() const { return m_number; }

signals:
    /// Another number was entered; none: the field was emptied.
    void edited(std::optional<double> number);
    /// What stands in the field at this moment, while it is typed.
    void typing(double number);
    void refused(const QString& sentence);

private:
    void finish();
    bool m_whole = false;
    std::optional<double> m_number;
};

/// A number without grouping and needless zeros, in the default locale: "1200", "12.5".
QString plainNumber(double number);

/// A number as it is typed, with decimal comma or point; none when it is no finite number.
std::optional<double> readNumber(const QString& text);

} // namespace sealwalk::ui
