// SPDX-License-Identifier: GPL-3.0-or-later
// When a job was approved: what could run out or was due is looked at as it stood then.
#pragma once

#include "core/model/job.h"

#include <optional>

namespace sealwalk::analysis {

/// The approval of a signed job; none while it is not signed.
std::optional<Timestamp> approvalOf(const model::Job& job);

} // namespace sealwalk::analysis
