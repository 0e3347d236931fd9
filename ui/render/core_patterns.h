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
std::span<const char* const> repairPatterns();

// What only a report says; its short words may stand for something else on the screen.
std::span<const char* const> reportHeads();
std::span<const char* const> reportFacts();
std::span<const char* const> reportClaims();
std::span<const char* const> reportCells();
std::span<const char* const> reportPictures();
std::span<const char* const> reportJoints();

// Refusals: the messages of Error, and the words they are put together of.
std::span<const char* const> numberRefusals();
std::span<const char* const> typedRefusals();
std::span<const char* const> sketchRefusals();
std::span<const char* const> feedRefusals();
std::span<const char* const> flowRefusals();
std::span<const char* const> checkRefusals();
std::span<const char* const> fileRefusals();
std::span<const char* const> storageRefusals();
std::span<const char* const> signingRefusals();

} // namespace sealwalk::render
