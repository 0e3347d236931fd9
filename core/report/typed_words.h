// SPDX-License-Identifier: GPL-3.0-or-later
// What people typed, told apart from the report's own words: those may be said in another language, these
// stay as they are.
#pragma once

#include <span>
#include <string>
#include <string_view>

namespace sealwalk::report {

/// Around typed words. Not characters: Unicode keeps them for a program's own use, so that no text holds
/// them.
inline constexpr std::string_view kTypedBegin = "\uFDD0";
inline constexpr std::string_view kTypedEnd = "\uFDD1";

/// The words with marks around them; nothing stays nothing.
std::string typed(const std::string& words);
/// The same, but a word of the program's own list stays one.
std::string typedUnless(const std::string& words, std::span<const std::string_view> own);
std::string withoutMarks(std::string text);

} // namespace sealwalk::report
