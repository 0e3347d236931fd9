// SPDX-License-Identifier: GPL-3.0-or-later
// The words of the spray stage, translated: states, conditions, reasons.
#pragma once

#include "core/model/reading.h"
#include "ui/spray/spray_controller.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace sealwalk::ui {

/// GO, SPRAY, READ, WAIT, HOLD.
QString stateWord(CallState state);
/// What to do in that state, in a few words.
QString stateHint(CallState state);
QString conditionWord(model::Condition condition);
/// What a reading without a figure says.
QString outcomeWord(model::Outcome outcome);
/// What O, then 1 … 9 chooses, in that order.
const std::vector<model::Condition>& otherConditions();
/// The reasons and conditions behind the digits of a prompt.
QStringList choicesFor(SprayController::Prompt prompt);
/// Two remarks as one; either may be empty.
std::string bothWords(const std::string& first, const std::string& second);
/// How long the rest of the walk takes, about.
QString timeLeftText(const SprayController& controller);

} // namespace sealwalk::ui
