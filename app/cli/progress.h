// SPDX-License-Identifier: GPL-3.0-or-later
// What a person at a terminal sees of long work, and how it stops when they press Ctrl-C.
#pragma once

#include <string>

namespace sealwalk::cli {

/// A line on stderr that says what is worked on and for how long, once it takes longer than a moment; only
/// when stderr is a terminal. It is wiped away before anything else is printed, and with this object.
class Progress
{
public:
    explicit Progress(const std::string& command);
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;
    ~Progress();

    /// Ends the line of whatever work is going on.
    static void wipe();
};

/// From here on Ctrl-C, a closed terminal and a polite request to end remove what is half written and end the
/// process with 128 + the signal's number. What was answered as stored stays stored.
void stopCleanlyOnSignals();

} // namespace sealwalk::cli
