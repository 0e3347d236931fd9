// SPDX-License-Identifier: GPL-3.0-or-later
// Number and unit in one box: "120 l", "0,12 m3", or the number alone in the usual unit, which is then put
// behind it. What was typed with a unit stays as typed; below it stands the value in the usual unit when that
// differs, or what is wrong with the entry.
#pragma once

#include "core/quantities/leak_rate_unit.h"
#include "core/quantities/units.h"

#include <QWidget>

#include <optional>

class QLabel;
class QLineEdit;

namespace sealwalk::ui {

class QuantityEdit : public QWidget
{
    Q_OBJECT

public:
    /// What may be entered, in SI. Bounds are those of the model, not of good practice.
    struct Range
    {
        std::optional<double> above = std::nullopt;   ///< greater than this
        std::optional<double> atLeast = std::nullopt; ///< or equal
        std::optional<double> atMost = std::nullopt;
    };

    /// A quantity in `unit`, which also stands for a bare number.
    QuantityEdit(const QString& name, const Unit& unit, QWidget* parent = nullptr);
    /// A plain number; `suffix` is only said, never typed.
    QuantityEdit(const QString& name, const QString& suffix, QWidget* parent = nullptr);
    ~QuantityEdit() override;

    void setUnit(const Unit& unit);
    void setFlowBasis(const FlowBasis& basis);
    void setRange(const Range& range);
    /// Instead of the unit.
    void setPlaceholder(const QString& text);
    /// Room for a number and its unit; the message below may be wider.
    void setFieldWidth(int pixels);

    /// Shows a value that came from elsewhere. Text that already means this value is left as it was typed.
    void setSi(std::optional<double> si);
    [[nodiscard]] std::optional<double> si() const { return m_si; }
    [[nodiscard]] QString text() const;
    /// What a person typed, without the unit that was put behind a bare number.
    [[nodiscard]] QString typed() const;
    /// Whether what stands in the box cannot be taken; si() is then still the last good value.
    [[nodiscard]] bool isWrong() const { return !m_complaint.isEmpty(); }
    [[nodiscard]] QString complaint() const { return m_complaint; }
    [[nodiscard]] QLineEdit* field() const { return m_field; }

    /// Reads the box as if the cursor had left it.
    void commit();

signals:
    /// A value was entered, other than the one before; none: the box was emptied.
    void edited(std::optional<double> si);

private:
    void build(const QString& name);
    void onEditingFinished();
    [[nodiscard]] bool isBare(const QString& typed) const;
    void showUnit(double si);
    [[nodiscard]] Result<double> read(const QString& text) const;
    [[nodiscard]] QString explained(const QString& typed, const Error& error) const;
    [[nodiscard]] QString shown(double si) const;
    [[nodiscard]] QString outOfRange(double si) const;
    void showBelow();

    QLineEdit* m_field = nullptr;
    QLabel* m_below = nullptr;
    std::optional<Unit> m_unit; ///< none: a plain number
    QString m_suffix;
    FlowBasis m_basis;
    Range m_range;
    std::optional<double> m_si;
    QString m_complaint;
    QString m_typedBare;   ///< the number behind which the unit was put; empty: none
    bool m_narrow = false; ///< the field has a width of its own
};

} // namespace sealwalk::ui
