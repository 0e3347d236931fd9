// SPDX-License-Identifier: GPL-3.0-or-later
// The writing half is our own, because a library may lay the same members out differently in its next
// version, and then every file packed before would look altered. Layout: APPNOTE 6.3
// sections 4.3.7, 4.3.12, 4.3.16.
#include "core/exchange/archive.h"

#include <fmt/format.h>

#include <array>
#include <set>

namespace sealwalk::exchange {

namespace {

constexpr std::uint16_t kVersionNeeded = 10; // 1.0: stored members only
constexpr std::uint16_t kFirstDosDate =
    0x0021; // 1980-01-01, the earliest a zip can say; stands for "no time"
constexpr std::uint32_t kLocalHeader = 0x04034b50;
constexpr std::uint32_t kDirectoryEntry = 0x02014b50;
constexpr std::uint32_t kEndOfDirectory = 0x06054b50;

void append16(std::string& out, std::size_t value)
{
    out.push_back(static_cast<char>(value & 0xff));
    out.push_back(static_cast<char>((value >> 8) & 0xff));
}

void append32(std::string& out, std::size_t value)
{
    append16(out, value & 0xffff);
    append16(out, value >> 16);
}

/// CRC-32 as zip uses it: reflected polynomial 0xedb88320, ones before and after.
std::uint32_t checksum(std::string_view bytes)
{
    static const std::array<std::uint32_t, 256> kTable = [] {
        std::array<std::uint32_t, 256> table{};
        for (std::uint32_t i = 0; i < table.size(); ++i) {
            std::uint32_t value = i;
            for (int bit = 0; bit < 8; ++bit)
                value = (value & 1U) != 0 ? (value >> 1) ^ 0xedb88320U : value >> 1;
            table[i] = value;
        }
        return table;
    }();
    std::uint32_t crc = 0xffffffffU;
    for (const char c : bytes)
        crc = (crc >> 8) ^ kTable[(crc ^ static_cast<std::uint8_t>(c)) & 0xffU];
    return ~crc;
}

/// The fields that local header and directory entry share, from "version needed" to "extra field length".
void appendShared(std::string& out, const ArchiveMember& member, std::uint32_t crc)
{
    append16(out, kVersionNeeded);
    append16(out, 0); // flags
    append16(out, 0); // stored
    append16(out, 0); // time
    append16(out, kFirstDosDate);
    append32(out, crc);
    append32(out, member.bytes.size());
    append32(out, member.bytes.size());
    append16(out, member.name.size());
    append16(out, 0); // extra field
}

Status checkMembers(const std::vector<ArchiveMember>& members)
{
    const ArchiveLimits limits;
    std::set<std::string_view> names;
    std::uint64_t total = 0;
    if (members.size() > limits.members)
        return fail(ErrorCode::BadInput,
                    fmt::format("{} members are too many for a job file; {} may be in one", members.size(),
                                limits.members));
    for (const ArchiveMember& member : members) {
        total += member.bytes.size();
        if (!isMemberName(member.name) || !names.insert(member.name).second)
            return fail(ErrorCode::BadInput,
                        "\"" + member.name +
                            "\" cannot be a job file's member: wrong characters, or there already");
        if (member.bytes.size() > limits.memberBytes || total > limits.totalBytes)
            return fail(
                ErrorCode::BadInput,
                fmt::format("{} makes the job file too large; a member may have {} bytes, all together {}",
                            member.name, limits.memberBytes, limits.totalBytes));
    }
    return {};
}

} // namespace

Result<std::string> packArchive(const std::vector<ArchiveMember>& members)
{
    if (const Status right = checkMembers(members); !right)
        return fail(right.error());

    std::string out;
    std::string directory;
    for (const ArchiveMember& member : members) {
        const std::uint32_t crc = checksum(member.bytes);
        const std::size_t offset = out.size();
        append32(out, kLocalHeader);
        appendShared(out, member, crc);
        out += member.name;
        out += member.bytes;

        append32(directory, kDirectoryEntry);
        append16(directory, kVersionNeeded); // made by
        appendShared(directory, member, crc);
        append16(directory, 0); // comment
        append16(directory, 0); // disk
        append16(directory, 0); // internal attributes
        append32(directory, 0); // external attributes
        append32(directory, offset);
        directory += member.name;
    }
    const std::size_t directoryOffset = out.size();
    out += directory;
    append32(out, kEndOfDirectory);
    append16(out, 0); // this disk
    append16(out, 0); // disk of the directory
    append16(out, members.size());
    append16(out, members.size());
    append32(out, directory.size());
    append32(out, directoryOffset);
    append16(out, 0); // comment
    return out;
}

} // namespace sealwalk::exchange
