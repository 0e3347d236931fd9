// SPDX-License-Identifier: GPL-3.0-or-later
// What the people of a history said of points that were drawn anew and of objects that were entered twice.
#pragma once

#include "core/analysis/point_matching.h"
#include "core/storage/history_store.h"

#include <string>
#include <vector>

namespace sealwalk::transfer {

/// All that was said in this history, whichever two jobs were compared then: a pair holds for every job that
/// has its points, and what is one with the same third point is one.
Result<analysis::KnownPairs> knownPairs(const storage::HistoryStore& store);

/// Stores that both points of `pair` are one place; said while these two jobs were compared.
Status sayTheyAreOne(storage::HistoryStore& store, model::JobId before, model::JobId after,
                     const analysis::PointPair& pair);
/// Stores that the points of `pair` are two places.
Status sayTheyAreTwo(storage::HistoryStore& store, model::JobId before, model::JobId after,
                     const analysis::PointPair& pair);

/// Adds what was said in another history, when that one is merged into this. Answers what could not be added,
/// one sentence each; the rest is.
std::vector<std::string> takePairs(storage::HistoryStore& store, const storage::HistoryStore& from);

/// The same for entries that are one object, where both are here and this history says nothing else of them.
std::vector<std::string> takeSameObjects(storage::HistoryStore& store, const storage::HistoryStore& from);

} // namespace sealwalk::transfer
