// SPDX-License-Identifier: GPL-3.0-or-later
// Whole files in and out: read with a limit, written so that the name holds either the old bytes or all the
// new.
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace sealwalk::exchange {

/// The bytes of the file at `path`. Refused: no such file (NotFound), a folder or more than `limit` bytes
/// (BadInput), no permission or a read error (MachineFailed).
Result<std::string> readFile(const std::string& path, std::uint64_t limit = std::uint64_t{2} << 30);

/// Writes beside `path` first, brings that to disk, then renames; on failure the old file, or none, is left.
/// A device or pipe is written directly. Disk full and no permission are MachineFailed.
Status writeFile(const std::string& path, std::string_view bytes);

struct FileToWrite
{
    std::string path;
    std::string_view bytes; ///< must outlive the call
};

/// Several files as one: all of them are on disk under other names before the first takes its own, so that a
/// bad name or a full disk leaves none. A link is replaced by the file itself.
Status writeFiles(const std::vector<FileToWrite>& files);

} // namespace sealwalk::exchange
