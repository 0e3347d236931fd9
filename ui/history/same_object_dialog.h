// SPDX-License-Identifier: GPL-3.0-or-later
// Which entries of the history are one object: ticked by a person, after the same chamber was entered on two
// computers or under two names.
#pragma once

#include "core/storage/history_store.h"

#include <QDialog>

#include <vector>

class QLineEdit;
class QListWidget;
class QPushButton;

namespace sealwalk::ui {

class SameObjectDialog : public QDialog
{
    Q_OBJECT

public:
    /// @param objects  all of the history; `of` is one of them
    SameObjectDialog(const std::vector<storage::ObjectRow>& objects, model::ObjectId of,
                     QWidget* parent = nullptr);

    /// Newly said to be the same object.
    [[nodiscard]] std::vector<model::ObjectId> joined() const;
    /// No longer.
    [[nodiscard]] std::vector<model::ObjectId> parted() const;

private:
    void addEntry(const storage::ObjectEntry& entry, int jobs, bool isSame);
    void filter(const QString& typed);
    void onTick();
    [[nodiscard]] std::vector<model::ObjectId> changed(Qt::CheckState to) const;

    QLineEdit* m_filter = nullptr;
    QListWidget* m_list = nullptr;
    QPushButton* m_store = nullptr;
    std::vector<model::ObjectId> m_ids; ///< by row
    std::vector<bool> m_wereSame;
};

} // namespace sealwalk::ui
