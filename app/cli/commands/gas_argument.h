// SPDX-License-Identifier: GPL-3.0-or-later
// A gas on the command line: one of the table by name, or any other by its molar mass.
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>

namespace sealwalk::cli {

struct GasArgument
{
    std::string name;       ///< empty when only the molar mass is known
    double molarMass = 0.0; ///< kg/mol
};

/// "helium", "He", "102.03 g/mol"
Result<GasArgument> gasArgument(std::string_view text);

} // namespace sealwalk::cli
