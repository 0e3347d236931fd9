// SPDX-License-Identifier: GPL-3.0-or-later
// Where papers of a job go: the folder of last time, under a name that says object and job.
#pragma once

#include <QString>

namespace sealwalk::ui {

class MainWindow;

/// "…/BC2-job-164.pdf". @param ending  with its dot
QString proposedFile(MainWindow& window, const QString& ending);
void rememberFolder(MainWindow& window, const QString& file);

} // namespace sealwalk::ui
