// SPDX-License-Identifier: GPL-3.0-or-later
// A history with one job, its sketch of four points and one round: where most tests begin.
#pragma once

#include "core/storage/history_store.h"
#include "tests/core/storage/samples.h"

#include <filesystem>

namespace sealwalk::tests {

/// The history at `file`; breaks the test when it does not open.
storage::HistoryStore openAt(const std::filesystem::path& file, storage::HistoryStore::Mode mode);

struct OpenedHistory
{
    explicit OpenedHistory(const std::filesystem::path& file);

    model::Reading add(int number = 1);
    /// Submits and signs the job.
    void sign();

    storage::HistoryStore store;
    model::Job job;
    model::Round round;
};

} // namespace sealwalk::tests
