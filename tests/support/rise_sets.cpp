// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/rise_sets.h"

#include <cmath>
#include <numbers>

namespace sealwalk::tests {

analysis::RiseRecord recordOf(const RiseSet& set)
{
    constexpr double kPhi = 0.6180339887498949;
    const analysis::RiseLaw law = set.law();
    analysis::RiseRecord record;
    for (int i = 0; 10.0 * i <= set.length; ++i) {
        const double phase = std::fmod(kPhi * i * i, 1.0) + 0.1;
        record.time.push_back(10.0 * i);
        record.pressure.push_back(law.pressure(10.0 * i) +
                                  set.noise * std::numbers::sqrt2 * std::sin(2.0 * std::numbers::pi * phase));
    }
    return record;
}

} // namespace sealwalk::tests
