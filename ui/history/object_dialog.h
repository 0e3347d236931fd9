// SPDX-License-Identifier: GPL-3.0-or-later
// A new test object, or the lasting facts of one: name, tag, place, volume, limits.
#pragma once

#include "core/model/test_object.h"

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

    /// What stands in the fields.
    [[nodiscard]] model::TestObject object() const;

private:
    void tryAccept();

    model::TestObject m_object;
    QLineEdit* m_name = nullptr;
    QLabel* m_nameComplaint = nullptr;
    QLineEdit* m_tag = nullptr;
    QLineEdit* m_place = nullptr;
    QuantityEdit* m_volume = nullptr;
    QuantityEdit* m_pointLimit = nullptr;
    QuantityEdit* m_totalLimit = nullptr;
    QuantityEdit* m_wanted = nullptr;
};

} // namespace sealwalk::ui
