// SPDX-License-Identifier: GPL-3.0-or-later
// The verdict on the set-up: the limit as a level line, one sentence, one remark.
#pragma once

#include "core/analysis/setup_outlook.h"

#include <QWidget>

class QLabel;

namespace sealwalk::ui {

class VerdictBox : public QWidget
{
    Q_OBJECT

public:
    explicit VerdictBox(QWidget* parent = nullptr);
    /// @param begun  readings were made with it: nobody is told to start any more
    void setOutlook(const analysis::SetupOutlook& outlook, bool begun = false);
    [[nodiscard]] QString sentence() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    analysis::SetupOutlook m_outlook;
    bool m_begun = false;
    QLabel* m_sentence = nullptr;
    QLabel* m_remark = nullptr;
};

} // namespace sealwalk::ui
