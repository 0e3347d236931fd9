// SPDX-License-Identifier: GPL-3.0-or-later
// The zip that carries a job. One set of members has exactly one packing, so that any byte which differs from
// it can be noticed; zips packed otherwise (by hand, compressed) are still read.
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace sealwalk::exchange {

struct ArchiveMember
{
    std::string name; ///< see isMemberName()
    std::string bytes;

    bool operator==(const ArchiveMember&) const = default;
};

/// What a reader accepts before it unpacks anything; a zip of a few kilobytes may claim to hold terabytes.
struct ArchiveLimits
{
    std::size_t members = 10'000;
    std::uint64_t memberBytes = std::uint64_t{256} << 20;
    std::uint64_t totalBytes = std::uint64_t{1} << 30;
};

/// Relative paths of lower-case letters, digits, dot, dash, underscore and slash, at most 120 characters, no
/// empty part and none that starts with a dot: nothing that could leave a folder.
bool isMemberName(std::string_view name);

/// The one packing of `members`, in their order: stored, without times, comments or extra fields.
/// Refused: names that are not member names or stand twice, and more than the default limits.
Result<std::string> packArchive(const std::vector<ArchiveMember>& members);

/// The members of any sound zip in the order of its directory. Refused, naming the member: damaged data
/// (checksum), encryption, names as above, anything beyond `limits`.
Result<std::vector<ArchiveMember>> readArchive(std::string_view zip, const ArchiveLimits& limits = {});

} // namespace sealwalk::exchange
