// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/survey_unit.h"

#include <fmt/format.h>

namespace sealwalk::exchange {

Result<LeakRate> oneOfUnit(std::string_view unit)
{
    if (unit == "mbar l/s" || unit == "mbar L/s" || unit == "mbar\u00B7l/s" || unit == "mbar.L/s")
        return millibarLitresPerSecond(1.0);
    return fail(ErrorCode::BadInput,
                fmt::format("\"{}\" is no unit of leak rate known here; \"mbar l/s\" is one", unit));
}

} // namespace sealwalk::exchange
