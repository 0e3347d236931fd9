// SPDX-License-Identifier: GPL-3.0-or-later
// Taking everything over from another history, such as that of a second laptop.
#pragma once

#include "core/storage/history_store.h"

#include <vector>

namespace sealwalk::storage {

struct Merged
{
    std::vector<model::JobId> taken; ///< jobs that were not here; see Job::openedAs for changed numbers
    std::vector<model::JobId> same;  ///< here already, record for record
    std::vector<model::JobId>
        different;  ///< here already, but not the same: both went on; left as they are here
    int people = 0; ///< added; their keys can check signatures here, but not sign
};

/// Jobs with their objects, pictures and traces, job by job: what was taken before a failure stays.
/// Nothing that is here is changed. `from` may be open to read only.
Result<Merged> mergeHistory(HistoryStore& into, const HistoryStore& from);

} // namespace sealwalk::storage
