// SPDX-License-Identifier: GPL-3.0-or-later
// Files in and out of the window: histories, job files, backups.
#pragma once

#include <QString>

namespace sealwalk::ui {

class MainWindow;

/// A history or a job file, told apart by its ending.
void openFile(MainWindow& window, const QString& file);
/// Made when it does not exist.
void openHistory(MainWindow& window, const QString& file, bool createWhenMissing);
/// What the program was started with; empty: the user's own history, made when it is not there.
void openAtStart(MainWindow& window, const QString& file);
void chooseAndOpen(MainWindow& window);
void chooseAndCreateHistory(MainWindow& window);
void chooseAndBackUp(MainWindow& window);
void checkHistory(MainWindow& window);

} // namespace sealwalk::ui
