// SPDX-License-Identifier: GPL-3.0-or-later
// What a feed's state is called.
#pragma once

#include "ui/feed/feed_session.h"

#include <QString>

namespace sealwalk::ui {

/// For the corner of the window: "feed live", "feed lost since 14:32:05".
QString feedStateText(const FeedSession& feed);
/// A sentence with the reason: "The feed of bench detector is lost since 14:32:05: the other side hung up."
QString feedStateSentence(const FeedSession& feed);

} // namespace sealwalk::ui
