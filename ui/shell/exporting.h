// SPDX-License-Identifier: GPL-3.0-or-later
// Tables and maps of the open job into files.
#pragma once

namespace sealwalk::ui {

class MainWindow;

/// Asks where to and writes what the file's ending says: table as CSV or XLSX, map as SVG or PNG.
void chooseAndExport(MainWindow& window);

} // namespace sealwalk::ui
