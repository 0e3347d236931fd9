// SPDX-License-Identifier: GPL-3.0-or-later
// The report of the open job as PDF.
#pragma once

namespace sealwalk::ui {

class MainWindow;

/// Asks where to; the figures are worked out away from the window.
void chooseAndReport(MainWindow& window);

} // namespace sealwalk::ui
