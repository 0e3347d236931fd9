// SPDX-License-Identifier: GPL-3.0-or-later
// A leak rate on the screen: "4.6e−4" with the decade in strong, spoken in full by a screen reader.
#pragma once

#include <QLabel>

#include <optional>

namespace sealwalk::ui {

class RateLabel : public QLabel
{
    Q_OBJECT

public:
    /// `unit` is said, not shown: it stands at the head of the table or beside the label.
    explicit RateLabel(const QString& unit = {}, QWidget* parent = nullptr);

    void setSaidUnit(const QString& unit);
    /// The number in the unit shown; none: `otherwise`, such as "below 4e−10".
    void setRate(std::optional<double> number, const QString& otherwise = {});

private:
    QString m_unit;
};

} // namespace sealwalk::ui
