// SPDX-License-Identifier: GPL-3.0-or-later
// Cuts a large survey into blocks that are searched one by one, so that the time grows with the number of
// points and not with its square.
#pragma once

#include "core/analysis/survey.h"

#include <cstddef>
#include <vector>

namespace sealwalk::analysis {

struct SurveyBlock
{
    std::vector<std::size_t> own; ///< points of the whole survey that the block answers for
    /// The own points first, in the order of `own`, then what may have a say in their readings: points close
    /// by and the strongest of the same view. Responses elsewhere are there as void readings: their
    /// tails count.
    Survey survey;
};

/// Blocks that together own every point once; a single one for surveys small enough to be searched in one go,
/// its survey then left empty.
std::vector<SurveyBlock> surveyBlocks(const Survey& survey);

} // namespace sealwalk::analysis
