// SPDX-License-Identifier: GPL-3.0-or-later
// The zone of the clock on the wall, as it is printed beside a time.
#pragma once

#include "core/base/timestamp.h"

#include <string>

namespace sealwalk {

/// "UTC+01:00".
std::string zoneText(const Timestamp& at);

} // namespace sealwalk
