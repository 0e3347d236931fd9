// SPDX-License-Identifier: GPL-3.0-or-later
// One field of the stage strip: icon, name, how far, and the thread.
#pragma once

#include "ui/shell/stage_progress.h"

#include <QAbstractButton>

namespace sealwalk::ui {

class StageField : public QAbstractButton
{
    Q_OBJECT

public:
    static constexpr int kWidth = 166;

    explicit StageField(Stage stage, QWidget* parent = nullptr);

    [[nodiscard]] Stage stage() const { return m_stage; }
    [[nodiscard]] const StageProgress& progress() const { return m_progress; }
    void setProgress(const StageProgress& progress);

    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Stage m_stage;
    StageProgress m_progress;
};

} // namespace sealwalk::ui
