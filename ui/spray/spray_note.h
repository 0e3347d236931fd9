// SPDX-License-Identifier: GPL-3.0-or-later
// What is being sprayed, kept in a small file beside the history while it lasts: after a crash, a battery
// change or next morning the round goes on at the exact point. It is no record, and in the history itself
// every spray would wake the other windows.
#pragma once

#include "core/base/timestamp.h"
#include "core/model/ids.h"

#include <filesystem>
#include <optional>

namespace sealwalk::ui {

struct SprayNote
{
    model::JobId job;
    int number = 0; ///< of the point
    Timestamp at;   ///< when the spray began
    bool operator==(const SprayNote&) const = default;
};

/// Takes the place of this program's note on that history. A note that cannot be kept costs a hint after a
/// crash, nothing of the record: no error is told.
void keepSprayNote(const std::filesystem::path& history, const SprayNote& note);
/// Removes this program's note on that history.
void dropSprayNote(const std::filesystem::path& history);
/// The note on that job left behind by a program of this machine that runs no more; it is removed. One of a
/// program that still runs is left to it.
std::optional<SprayNote> takeSprayNote(const std::filesystem::path& history, model::JobId job);

} // namespace sealwalk::ui
