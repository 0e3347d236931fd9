// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/clock_zone.h"

#include <fmt/format.h>

#include <cstdlib>

namespace sealwalk {

std::string zoneText(const Timestamp& at)
{
    constexpr int kMinutes = 60; // of an hour
    const int minutes = std::abs(at.offsetMinutes);
    return fmt::format("UTC{}{:02}:{:02}", at.offsetMinutes < 0 ? '-' : '+', minutes / kMinutes,
                       minutes % kMinutes);
}

} // namespace sealwalk
