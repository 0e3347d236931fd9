// SPDX-License-Identifier: GPL-3.0-or-later
// The keys of this moment, as small caps with words: what the next press would do. They can be clicked too.
#pragma once

#include <QString>
#include <QWidget>

#include <vector>

namespace sealwalk::ui {

struct LegendKey
{
    QString cap;  ///< "Enter", "N"
    QString word; ///< "store"
    int key = 0;  ///< Qt::Key sent when clicked
    bool isOn = false;
    bool operator==(const LegendKey&) const = default;
};

class KeyLegend : public QWidget
{
    Q_OBJECT

public:
    explicit KeyLegend(QWidget* parent = nullptr);
    /// Rows of keys, left to right.
    void setKeys(const std::vector<std::vector<LegendKey>>& rows);

signals:
    void pressed(int key);

private:
    std::vector<std::vector<LegendKey>> m_rows;
};

} // namespace sealwalk::ui
