// SPDX-License-Identifier: GPL-3.0-or-later
// Checks of our own contracts. A broken one is a bug; it stops the program in release builds too, because a
// wrong number is worse than a stop.
#pragma once

namespace sealwalk {

/// Ends the process with `what` on stderr.
[[noreturn]] void contractBroken(const char* what, const char* file, int line);

} // namespace sealwalk

#define SEALWALK_EXPECT(condition)                                                                           \
    do {                                                                                                     \
        if (!(condition))                                                                                    \
            ::sealwalk::contractBroken(#condition, __FILE__, __LINE__);                                      \
    } while (false)
