// SPDX-License-Identifier: GPL-3.0-or-later
// A few words side by side of which one holds: "As found | As left".
#pragma once

#include <QStringList>
#include <QWidget>

#include <vector>

class QAbstractButton;
class QButtonGroup;
class QHBoxLayout;

namespace sealwalk::ui {

class SwitchRow : public QWidget
{
    Q_OBJECT

public:
    explicit SwitchRow(const QString& name, const QStringList& words = {}, QWidget* parent = nullptr);

    void setWords(const QStringList& words);
    void setCurrent(int index);
    [[nodiscard]] int current() const;
    [[nodiscard]] int count() const;
    [[nodiscard]] QAbstractButton* button(int index) const;

signals:
    void currentChanged(int index);

private:
    QString m_name;
    QHBoxLayout* m_row = nullptr;
    QButtonGroup* m_group = nullptr;
};

} // namespace sealwalk::ui
