// SPDX-License-Identifier: GPL-3.0-or-later
// The moments of a call that have a sound. Each has word, filling and flash beside it: sound is never alone.
#pragma once

namespace sealwalk::ui {

enum class SpraySound
{
    Stored,
    StoredOver, ///< stored, and over the limit
    Go,
    DwellOver,
    Hold,
    FeedLost,
    Refused,
    Attention, ///< look here: something is said in words
};

} // namespace sealwalk::ui
