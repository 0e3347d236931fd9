// SPDX-License-Identifier: GPL-3.0-or-later
// Everything Ctrl+K can go to.
#pragma once

#include "ui/shell/go_to.h"

#include <vector>

namespace sealwalk::ui {

class MainWindow;

/// Points and joints of the open job, the objects of the history, then `commands`.
std::vector<Destination> destinations(MainWindow& window, std::vector<Destination> commands);

} // namespace sealwalk::ui
