// SPDX-License-Identifier: GPL-3.0-or-later
// Which page stands for which stage.
#pragma once

namespace sealwalk::ui {

class MainWindow;

void composePages(MainWindow& window);

} // namespace sealwalk::ui
