// SPDX-License-Identifier: GPL-3.0-or-later
// Limits of single joint kinds, where they differ from the job's.
#pragma once

#include "core/model/job.h"

#include <QDialog>

#include <map>

namespace sealwalk::ui {

class QuantityEdit;

class KindLimitsDialog : public QDialog
{
    Q_OBJECT

public:
    KindLimitsDialog(const model::Setup& setup, const model::Sketch& sketch, QWidget* parent = nullptr);
    [[nodiscard]] std::map<model::JointKind, LeakRate> limits() const;

private:
    void tryAccept();

    std::map<model::JointKind, QuantityEdit*> m_edits;
};

} // namespace sealwalk::ui
