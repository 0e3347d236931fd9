// SPDX-License-Identifier: GPL-3.0-or-later
// The findings of a survey small enough to be searched in one go.
#pragma once

#include "core/analysis/source_search.h"
#include "core/analysis/sources.h"

namespace sealwalk::analysis {

/// One finding for each point of `survey`, which must be consistent.
Sources blockFindings(const Survey& survey, const SearchEffort& effort);

} // namespace sealwalk::analysis
