// SPDX-License-Identifier: GPL-3.0-or-later
// A new test object, or the lasting facts of one: name, tag, place, volume, limits.
#pragma once

#include "core/model/test_object.h"
#include "core/storage/history_store.h"

#include <QDialog>

class QLabel;
class QLineEdit;
class QPushButton;

namespace sealwalk::ui {

class QuantityEdit;

class ObjectDialog : public QDialog
{
    Q_OBJECT

public:
    explicit ObjectDialog(const model::TestObject& object, QWidget* parent = nullptr);

    /// The names and tags that other objects have: one of them is not given again.
    void setTaken(const std::vector<storage::ObjectEntry>& taken) { m_taken = taken; }

    /// What stands in the fields.
    [[nodiscard]] model::TestObject object() const;

signals:
    /// The same object may stand in the history under another entry.
    void sameObjectWanted();

private:
    void tryAccept();
    [[nodiscard]] QString complaint() const; ///< of the name; empty: none

    model::TestObject m_object;
    std::vector<storage::ObjectEntry> m_taken;
    QLineEdit* m_name = nullptr;
    QLabel* m_nameComplaint = nullptr;
    QLineEdit* m_tag = nullptr;
    QLineEdit* m_place = nullptr;
    QuantityEdit* m_volume = nullptr;
    QuantityEdit* m_pointLimit = nullptr;
    QuantityEdit* m_totalLimit = nullptr;
    QuantityEdit* m_wanted = nullptr;
    QuantityEdit* m_airSpeed = nullptr;
    QuantityEdit* m_blankOff = nullptr;
};

} // namespace sealwalk::ui
