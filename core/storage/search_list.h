// SPDX-License-Identifier: GPL-3.0-or-later
// The list that searches use, which a history keeps beside its records and can make anew from them.
#pragma once

#include "core/base/result.h"

#include <filesystem>

namespace sealwalk::storage {

/// Makes the list of a history anew; what HistoryStore::check() says of it is gone then. No record is
/// changed. A history of an earlier release, whose list lacks words, gets it by itself when it is opened to
/// write.
Status makeSearchListAnew(const std::filesystem::path& file);

} // namespace sealwalk::storage
