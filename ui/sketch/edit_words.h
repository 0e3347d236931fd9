// SPDX-License-Identifier: GPL-3.0-or-later
// What the core says of edits of the sketch and of what is often forgotten, in the window's language.
#pragma once

#include <QString>

#include <string>
#include <string_view>

namespace sealwalk::ui {

/// "Port 3 moved" as the window says it. What no pattern knows stays as it is; names of joints do always.
QString editWords(std::string_view what);
/// The same as a sentence: with a capital in front and a full stop behind.
QString editSentence(std::string_view what);

/// A reminder's "what": "valve seat, tested across with the valve shut".
QString reminderWords(std::string_view what);
/// What its joint would be called: "Valve seat". For editing::reminders() as well.
std::string reminderName(std::string_view name);

} // namespace sealwalk::ui
