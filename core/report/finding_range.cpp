// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/finding_range.h"

#include "core/report/rate_text.h"
#include "core/report/shown_unit.h"

namespace sealwalk::report {

std::optional<ShownGas::Range> rangeOf(const analysis::PointFinding& finding, const ShownGas& gas)
{
    if (!finding.rate || !finding.low || !finding.high)
        return std::nullopt;
    return gas.range(*finding.rate, *finding.low, *finding.high);
}

std::string rangeBeside(const analysis::PointFinding& finding, const ShownUnit& unit)
{
    const auto range = rangeOf(finding, unit.gas);
    return range
               ? rangeBeside(unit.ofHelium(*finding.rate), unit.number(range->low), unit.number(range->high))
               : std::string();
}

std::string plainRange(const analysis::PointFinding& finding, const ShownUnit& unit)
{
    const auto range = rangeOf(finding, unit.gas);
    return range ? plainRange(unit.number(range->low), unit.number(range->high)) : std::string();
}

} // namespace sealwalk::report
