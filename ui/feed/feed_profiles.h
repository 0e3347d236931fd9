// SPDX-License-Identifier: GPL-3.0-or-later
// The user's named feeds, kept with the window's settings.
#pragma once

#include "core/feed/feed_profile.h"

#include <QString>

#include <optional>
#include <vector>

class QSettings;

namespace sealwalk::ui {

/// In order of name. What cannot be read any more is left out.
std::vector<feed::FeedProfile> loadProfiles(QSettings& settings);
void saveProfiles(QSettings& settings, const std::vector<feed::FeedProfile>& profiles);

/// The feed that was on when the window was last used; none: it was off.
std::optional<feed::FeedProfile> lastUsedProfile(QSettings& settings);
void rememberUsedProfile(QSettings& settings, const QString& name); ///< empty: none is used

} // namespace sealwalk::ui
