// SPDX-License-Identifier: GPL-3.0-or-later
// The unit a survey file names.
#pragma once

#include "core/base/result.h"
#include "core/quantities/kinds.h"

#include <string_view>

namespace sealwalk::exchange {

/// The leak rate that is 1 in `unit`. Error: BadInput for what is no unit of leak rate.
Result<LeakRate> oneOfUnit(std::string_view unit);

} // namespace sealwalk::exchange
