// SPDX-License-Identifier: GPL-3.0-or-later
// The report of the open job: looked at and printed, or written as PDF.
#pragma once

namespace sealwalk::ui {

class MainWindow;

/// Asks where to; the figures are worked out away from the window.
void chooseAndReport(MainWindow& window);
/// Shows its pages, to be printed or written from there.
void showReport(MainWindow& window);

} // namespace sealwalk::ui
