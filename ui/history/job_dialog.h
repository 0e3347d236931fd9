// SPDX-License-Identifier: GPL-3.0-or-later
// A new job: on which object, why, who logs, and since when.
#pragma once

#include "core/storage/history_store.h"

#include <QDialog>

#include <functional>
#include <optional>
#include <vector>

class QComboBox;

namespace sealwalk::ui {

class MomentField;
class PersonField;

class JobDialog : public QDialog
{
    Q_OBJECT

public:
    JobDialog(const std::vector<storage::ObjectRow>& objects, model::ObjectId chosen, const QString& logger,
              const QStringList& people, QWidget* parent = nullptr);
    /// What the object's latest job was for, offered until something else is chosen; empty: none is known.
    void offerPurpose(const std::function<QString(model::ObjectId)>& ofLastJob);

    [[nodiscard]] model::ObjectId object() const;
    [[nodiscard]] QString purpose() const;
    [[nodiscard]] QString logger() const;
    /// When the work began, typed for a job that was written on paper; none: now.
    [[nodiscard]] std::optional<Timestamp> begun() const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void tryAccept();

    std::vector<model::ObjectId> m_ids;
    QComboBox* m_object = nullptr;
    QComboBox* m_purpose = nullptr;
    PersonField* m_logger = nullptr;
    MomentField* m_begun = nullptr;
};

} // namespace sealwalk::ui
