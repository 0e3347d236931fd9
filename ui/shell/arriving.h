// SPDX-License-Identifier: GPL-3.0-or-later
// Jobs that come from elsewhere: a job file, or everything of another history.
#pragma once

#include "core/transfer/take_in.h"

#include <QString>

#include <filesystem>

namespace sealwalk::ui {

class MainWindow;

/// Takes in what was read of a job file and opens it. Where the job is here and went on in the file it tells
/// what that would add, and asks.
void takeInFile(MainWindow& window, const std::filesystem::path& file, Result<transfer::Checked> checked);

/// Takes every job of another history into the open one, beside the window, and sums up what came of it.
void chooseAndMerge(MainWindow& window);
/// The same of a history that is chosen already.
void mergeHistory(MainWindow& window, const std::filesystem::path& from);

} // namespace sealwalk::ui
