// SPDX-License-Identifier: GPL-3.0-or-later
// How wide the columns of a printed table are: figures and short words stay on one line, sentences share the
// rest.
#pragma once

#include <vector>

namespace sealwalk::render {

struct ColumnNeed
{
    double line = 0.0;  ///< px its longest cell takes on one line, edges included
    double head = 0.0;  ///< px its title takes on one line: given where all have room
    double word = 0.0;  ///< px below which a word would be cut
    double share = 1.0; ///< of what is left to columns that break
    bool right = false; ///< figures: kept whole up to a greater width
};

/// One width for each column, together `width`.
std::vector<double> columnWidths(const std::vector<ColumnNeed>& needs, double width);

} // namespace sealwalk::render
