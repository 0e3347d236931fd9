// SPDX-License-Identifier: GPL-3.0-or-later
// One JSON value, one text: the canonical form of RFC 8785, which digests and signatures are taken over.
#pragma once

#include "core/base/result.h"

#include <nlohmann/json_fwd.hpp>

#include <string>
#include <string_view>

namespace sealwalk::exchange {

/// Objects and arrays inside one another, at most; job files need nine.
inline constexpr int kDeepestJson = 64;
/// Bytes of a text that is read, at most; a job of 20 000 readings has nine million.
inline constexpr std::size_t kLongestJson = std::size_t{128} << 20;
/// Names and values in it, at most; the same job has half a million.
inline constexpr std::size_t kMostJsonValues = 4'000'000;

/// The canonical text of `value`: no white space, names in order of their UTF-16 units, shortest numbers.
/// Refused: numbers that are not finite, integers beyond ±2^53 (a double cannot hold them all), text that is
/// not UTF-8 (which leaves out lone surrogates), more than kDeepestJson levels. The error names the place.
Result<std::string> canonicalJson(const nlohmann::json& value);

/// A finite number as ECMAScript writes it: the fewest digits that read back as the same double.
/// Source: ECMA-262, Number::toString, as RFC 8785 section 3.2.2.3 requires.
std::string ecmaScriptNumber(double finite);

/// Reads JSON (RFC 8259) as RFC 7493 narrows it: UTF-8, no name twice in one object, no lone surrogates,
/// numbers within a double's range, at most kDeepestJson levels. The error names line and column.
Result<nlohmann::json> parseJson(std::string_view text);

} // namespace sealwalk::exchange
