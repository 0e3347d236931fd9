// SPDX-License-Identifier: GPL-3.0-or-later
// The first 100 bytes of an SQLite file, read without SQLite, so that a file that is not ours is never
// touched. Source: "Database File Format", section 1.3, sqlite.org/fileformat2.html
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <filesystem>

namespace sealwalk::storage {

struct FileHead
{
    bool empty = false; ///< no byte in it
    bool isSqlite = false;
    std::int64_t size = 0;     ///< bytes on disk
    std::int64_t promised = 0; ///< bytes its head says it has; 0 when it does not say
    std::uint32_t pages = 0;   ///< its head counts
    std::uint32_t applicationId = 0;
    std::uint32_t userVersion = 0;
};

Result<FileHead> readFileHead(const std::filesystem::path& file);

} // namespace sealwalk::storage
