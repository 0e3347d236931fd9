// SPDX-License-Identifier: GPL-3.0-or-later
// Text as it is compared where capitals make no difference: searches, names of people.
#pragma once

#include <string>
#include <string_view>

namespace sealwalk {

/// Lower case for the alphabets the trade writes in: Latin, Greek, Cyrillic.
std::string folded(std::string_view text);

} // namespace sealwalk
