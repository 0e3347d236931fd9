// SPDX-License-Identifier: GPL-3.0-or-later
// People as they stand in a record: one name, or several in one field.
#pragma once

#include <string_view>

namespace sealwalk::analysis {

/// Whether `field` names the person: alone, or among others ("Ada Lind, Bo Quill", "A. Lind / owner",
/// "A. Lind and B. Quill"). Capitals make no difference; part of a name is no name.
bool namesPerson(std::string_view field, std::string_view person);

} // namespace sealwalk::analysis
