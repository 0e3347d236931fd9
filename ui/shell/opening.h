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
/// The user's own, made when it is not there.
void openOwnHistory(MainWindow& window);
/// What the program was started with; empty: the user's own history, made when it is not there.
void openAtStart(MainWindow& window, const QString& file);
void chooseAndOpen(MainWindow& window);
/// Writes the open job as a job file.
void chooseAndPack(MainWindow& window);
/// Writes the demo history, all invented, beside the user's own and opens it.
void openDemo(MainWindow& window);
/// A new object whose first sheet lies over a picture.
void startFromPicture(MainWindow& window);
void chooseAndCreateHistory(MainWindow& window);
void chooseAndBackUp(MainWindow& window);
void checkHistory(MainWindow& window);

} // namespace sealwalk::ui
