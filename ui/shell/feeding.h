// SPDX-License-Identifier: GPL-3.0-or-later
// The detector's feed in the window: set up, started with the window, shown in the corner, given to the
// round.
#pragma once

namespace sealwalk::ui {

class MainWindow;
class SprayPage;

/// Listens to the feed, gives it to the round and starts the one that ran last.
void joinFeed(MainWindow& window, SprayPage& spray);
/// The dialog that sets one up.
void setUpFeed(MainWindow& window);

} // namespace sealwalk::ui
