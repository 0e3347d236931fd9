// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/figure.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::report {

void fitAxis(Axis& axis, const std::vector<double>& values, bool fromZero)
{
    double low = 0.0;
    double high = 0.0;
    bool any = false;
    for (const double value : values) {
        if (!std::isfinite(value) || (axis.logarithmic && value <= 0.0))
            continue;
        low = any ? std::min(low, value) : value;
        high = any ? std::max(high, value) : value;
        any = true;
    }
    if (!any)
        return;
    if (axis.logarithmic) {
        axis.low = std::pow(10.0, std::floor(std::log10(low)));
        axis.high = std::pow(10.0, std::ceil(std::log10(high)));
        if (axis.high <= axis.low)
            axis.high = axis.low * 10.0;
        return;
    }
    if (fromZero)
        low = std::min(low, 0.0);
    const double room = high > low ? (high - low) * 0.06 : std::max(std::abs(high) * 0.1, 1e-30);
    axis.low = fromZero && low == 0.0 ? 0.0 : low - room;
    axis.high = high + room;
}

} // namespace sealwalk::report
