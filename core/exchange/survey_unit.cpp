// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/survey_unit.h"

#include "core/quantities/leak_rate_unit.h"

namespace sealwalk::exchange {

Result<LeakRate> oneOfUnit(std::string_view unit)
{
    const Result<Unit> read = readUnit(unit, UnitKind::LeakRates);
    if (!read)
        return fail(read.error());
    constexpr double kHeliumMolarMass = 4.002602e-3; // kg/mol: a survey is of helium
    FlowBasis basis;
    basis.molarMass = kHeliumMolarMass;
    return leakRate(1.0, *read, basis);
}

} // namespace sealwalk::exchange
