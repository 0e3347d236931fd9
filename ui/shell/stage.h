// SPDX-License-Identifier: GPL-3.0-or-later
// The six stages of a job, in the order of the work.
#pragma once

#include <QString>

#include <array>

namespace sealwalk::ui {

enum class Stage
{
    Prepare,
    Sketch,
    Spray,
    Judge,
    SignOff,
    History,
};

inline constexpr std::array<Stage, 6> kStages{Stage::Prepare, Stage::Sketch,  Stage::Spray,
                                              Stage::Judge,   Stage::SignOff, Stage::History};

QString stageTitle(Stage stage);
/// The name of its icon.
QString stageIcon(Stage stage);
/// A stable word for settings.
QString stageKey(Stage stage);

} // namespace sealwalk::ui
