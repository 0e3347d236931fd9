// SPDX-License-Identifier: GPL-3.0-or-later
// Who: typed, or chosen from the people known.
#pragma once

#include <QComboBox>
#include <QStringList>

namespace sealwalk::ui {

class PersonField : public QComboBox
{
    Q_OBJECT

public:
    explicit PersonField(const QString& name, QWidget* parent = nullptr);

    void setKnown(const QStringList& names);
    void setPerson(const QString& name);
    [[nodiscard]] QString person() const { return currentText().trimmed(); }

signals:
    void edited(const QString& person);
};

} // namespace sealwalk::ui
