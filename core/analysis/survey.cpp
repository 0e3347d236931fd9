// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/survey.h"

#include <algorithm>

namespace sealwalk::analysis {

std::optional<std::size_t> Survey::indexOf(int number) const
{
    const auto found = std::ranges::find(points, number, &SurveyPoint::number);
    if (found == points.end())
        return std::nullopt;
    return static_cast<std::size_t>(found - points.begin());
}

} // namespace sealwalk::analysis
