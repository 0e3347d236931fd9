// SPDX-License-Identifier: GPL-3.0-or-later
// What came of taking in another history: how many jobs came, went on, were here, were not taken and why.
#pragma once

#include "core/transfer/take_in.h"

#include <QDialog>

#include <vector>

namespace sealwalk::ui {

class MergeSummary : public QDialog
{
    Q_OBJECT

public:
    explicit MergeSummary(const std::vector<transfer::TakenIn>& answers, QWidget* parent = nullptr);

    /// One line for the note line.
    [[nodiscard]] QString headline() const { return m_headline; }

private:
    QString m_headline;
};

} // namespace sealwalk::ui
