// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/range_widening.h"

#include "core/analysis/finding_words.h"

#include <fmt/format.h>

namespace sealwalk::analysis {

std::string wideningWords(const PointFinding& finding, LeakRate ofReading, std::string_view unit)
{
    constexpr double kWorthNaming = 1.25; // two digits hide less
    if (!finding.rate || !finding.high || !(*finding.high > kWorthNaming * ofReading))
        return {};
    return fmt::format("{} {}; it ends at {} because a probe that passed too fast or beside the leak shows less "
                       "than there is.",
                       kWideningReason, rateWords(ofReading, unit), rateWords(*finding.high, unit));
}

} // namespace sealwalk::analysis
