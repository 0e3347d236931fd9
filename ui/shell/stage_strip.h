// SPDX-License-Identifier: GPL-3.0-or-later
// The dark strip under the menu: what is being worked on, and the stages.
#pragma once

#include "ui/shell/stage.h"
#include "ui/shell/stage_progress.h"

#include <QWidget>

#include <optional>
#include <vector>

class QHBoxLayout;

namespace sealwalk::ui {

class StageField;

class StageStrip : public QWidget
{
    Q_OBJECT

public:
    explicit StageStrip(QWidget* parent = nullptr);

    /// Shows a field for the stage; without this there is none.
    void addStage(Stage stage);
    /// @param wrong  what keeps the job from being what was signed
    void setObjectAndJob(const QString& object, const QString& job, const QString& wrong = {});
    void setProgress(Stage stage, const StageProgress& progress);
    void setUsable(Stage stage, bool usable);
    /// No field is chosen when the page shown is none of the stages'.
    void setCurrent(std::optional<Stage> stage);
    [[nodiscard]] StageField* field(Stage stage) const; ///< nullptr when there is none

signals:
    void stageChosen(Stage stage);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::vector<StageField*> m_fields;
    QHBoxLayout* m_row = nullptr;
    QString m_object;
    QString m_job;
    QString m_wrong;
};

} // namespace sealwalk::ui
