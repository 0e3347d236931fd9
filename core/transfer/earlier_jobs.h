// SPDX-License-Identifier: GPL-3.0-or-later
// What a job inherits from the jobs before it on the same object.
#pragma once

#include "core/model/job.h"
#include "core/storage/history_store.h"

#include <optional>
#include <vector>

namespace sealwalk::transfer {

/// The latest job of the object that was opened before this one; none when there is none, or it cannot be
/// read.
std::optional<model::Job> jobBefore(const storage::HistoryStore& store, const model::Job& job);

/// Temporary repairs of earlier jobs of the object that nothing has made good yet (in a signed job: that
/// nothing had made good at its approval), with the job each was done in.
std::vector<storage::OpenRepair> repairsLeftOpen(const storage::HistoryStore& store, const model::Job& job);
/// The repairs alone, as maps and reports take them.
std::vector<model::Repair> carriedRepairs(const storage::HistoryStore& store, const model::Job& job);

} // namespace sealwalk::transfer
