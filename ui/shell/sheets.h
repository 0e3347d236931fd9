// SPDX-License-Identifier: GPL-3.0-or-later
// What holds for every sheet of the window, whichever stage shows it.
#pragma once

class QWidget;

namespace sealwalk::ui {

/// Every sheet in view, about its middle.
void zoomSheets(QWidget& window, double factor);
/// Every sheet in view, whole.
void fitSheets(QWidget& window);
/// Sheets below `part` in paper, or in the program's theme.
void dressSheets(QWidget& part, bool inPaper);

} // namespace sealwalk::ui
