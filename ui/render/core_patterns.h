// SPDX-License-Identifier: GPL-3.0-or-later
// What the core can say, as patterns: %1, %2 … stand for what it puts in. One folder of the core each,
// roughly.
#pragma once

#include <span>

namespace sealwalk::render {

std::span<const char* const> findingPatterns();
std::span<const char* const> stepPatterns();
std::span<const char* const> outcomePatterns();
std::span<const char* const> reviewPatterns();
std::span<const char* const> labelPatterns();

} // namespace sealwalk::render
