// SPDX-License-Identifier: GPL-3.0-or-later
// UTF-8 as RFC 3629 has it: no overlong forms, no surrogates, nothing above U+10FFFF.
#pragma once

#include <string>
#include <string_view>

namespace sealwalk {

/// Whether all of `text` is well-formed UTF-8.
bool isUtf8(std::string_view text);

/// `text`, which must be UTF-8, in UTF-16 units.
std::u16string utf16Of(std::string_view text);

} // namespace sealwalk
