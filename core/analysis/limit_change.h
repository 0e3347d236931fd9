// SPDX-License-Identifier: GPL-3.0-or-later
// A limit that is changed once readings are there is told in the record: it should have been agreed before.
#pragma once

#include "core/model/job.h"

#include <optional>
#include <string>
#include <string_view>

namespace sealwalk::analysis {

/// What such a remark names as its check.
inline constexpr std::string_view kLimitChange = "limit changed";

/// The sentence for the record when `after` sets other limits than `job` has and readings are there; none
/// otherwise.
std::optional<std::string> limitChangeWords(const model::Job& job, const model::Setup& after);

} // namespace sealwalk::analysis
