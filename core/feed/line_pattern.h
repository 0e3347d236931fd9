// SPDX-License-Identifier: GPL-3.0-or-later
// A line with a hole in it: where among other text the number stands. Simple on purpose: whoever set up an
// instrument can write it, and no line and no pattern can make it slow.
#pragma once

#include "core/base/result.h"

#include <optional>
#include <string_view>

namespace sealwalk::feed {

/// One '#' stands for the number, '*' for any text, a blank for one or more blanks or tabs; everything else
/// for itself. "now * # mbar*" finds 2.9e-4 in "now at
/// 2.9e-4 mbar l/s".
inline constexpr char kNumberSign = '#';
inline constexpr char kAnyTextSign = '*';
inline constexpr std::size_t kLongestPattern = 120;

/// Refuses a pattern without its one '#', or too long, with what would be right.
Status checkPattern(std::string_view pattern);

/// The number's own text when the whole of `line` (blanks at its ends aside) fits the pattern; none when it
/// does not. Of several that fit, the first. For a pattern that passed checkPattern().
std::optional<std::string_view> numberIn(std::string_view line, std::string_view pattern);

} // namespace sealwalk::feed
