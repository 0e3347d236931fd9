// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/archive.h"

#include <fmt/format.h>
#include <zip.h>

#include <memory>
#include <set>

namespace sealwalk::exchange {

namespace {

struct CloseArchive
{
    void operator()(zip_t* archive) const { zip_discard(archive); }
};
using Archive = std::unique_ptr<zip_t, CloseArchive>;

struct CloseMember
{
    void operator()(zip_file_t* file) const { zip_fclose(file); }
};
using OpenMember = std::unique_ptr<zip_file_t, CloseMember>;

/// The name as it may be shown: a hostile one could hold anything.
std::string shown(std::string_view name)
{
    std::string text;
    for (const char c : name.substr(0, 60))
        text.push_back(c >= ' ' && c <= '~' ? c : '?');
    return "\"" + text + "\"";
}

Result<Archive> openArchive(std::string_view zip)
{
    if (zip.empty())
        return fail(ErrorCode::ForeignFile, "the file is empty, so it is not a job file");
    zip_error_t error;
    zip_error_init(&error);
    zip_source_t* source = zip_source_buffer_create(zip.data(), zip.size(), 0, &error);
    if (source == nullptr)
        return fail(ErrorCode::MachineFailed, "no memory is left to read the zip");
    Archive archive(zip_open_from_source(source, ZIP_RDONLY, &error));
    if (archive)
        return archive;
    zip_source_free(source);
    const int code = zip_error_code_zip(&error);
    zip_error_fini(&error);
    if (code == ZIP_ER_MEMORY)
        return fail(ErrorCode::MachineFailed, "no memory is left to read the zip");
    if (code == ZIP_ER_NOZIP && zip.substr(0, 2) != "PK")
        return fail(ErrorCode::ForeignFile, "this is not a zip, so it is not a job file");
    return fail(ErrorCode::DamagedFile, "the zip is truncated or its directory is damaged");
}

Result<zip_stat_t> checkedStat(zip_t* archive, zip_uint64_t index, const ArchiveLimits& limits)
{
    zip_stat_t stat;
    zip_stat_init(&stat);
    constexpr zip_uint64_t kNeeded = ZIP_STAT_NAME | ZIP_STAT_SIZE | ZIP_STAT_COMP_METHOD;
    if (zip_stat_index(archive, index, ZIP_FL_ENC_RAW, &stat) != 0 || (stat.valid & kNeeded) != kNeeded)
        return fail(ErrorCode::DamagedFile,
                    fmt::format("entry {} of the zip's directory is damaged", index + 1));
    const std::string name = shown(stat.name);
    if (!isMemberName(stat.name))
        return fail(ErrorCode::BadInput,
                    "the zip's member " + name +
                        " has a name that job files do not use (lower-case letters, digits, . - _ and /)");
    if ((stat.valid & ZIP_STAT_ENCRYPTION_METHOD) != 0 && stat.encryption_method != ZIP_EM_NONE)
        return fail(ErrorCode::BadInput, "the zip's member " + name + " is encrypted; job files are not");
    if (stat.comp_method != ZIP_CM_STORE && stat.comp_method != ZIP_CM_DEFLATE)
        return fail(ErrorCode::BadInput,
                    fmt::format("the zip's member {} is packed by method {}; stored or deflated is right",
                                name, stat.comp_method));
    if (stat.size > limits.memberBytes)
        return fail(ErrorCode::BadInput,
                    fmt::format("the zip's member {} is {} bytes long; at most {} are read", name, stat.size,
                                limits.memberBytes));
    return stat;
}

Result<std::string> readMember(zip_t* archive, zip_uint64_t index, const zip_stat_t& stat)
{
    const auto damaged = [&] {
        return fail(ErrorCode::DamagedFile,
                    std::string(stat.name) + " is damaged: its bytes do not match its checksum or length");
    };
    const OpenMember file(zip_fopen_index(archive, index, 0));
    if (!file)
        return damaged();
    std::string bytes(stat.size, '\0');
    std::size_t done = 0;
    while (done < bytes.size()) {
        const zip_int64_t count = zip_fread(file.get(), bytes.data() + done, bytes.size() - done);
        if (count <= 0)
            return damaged();
        done += static_cast<std::size_t>(count);
    }
    // The checksum is compared only when the reader runs into the end.
    char beyond = 0;
    if (zip_fread(file.get(), &beyond, 1) != 0)
        return damaged();
    return bytes;
}

} // namespace

bool isMemberName(std::string_view name)
{
    constexpr std::size_t kLongest = 120;
    if (name.empty() || name.size() > kLongest || name.back() == '/')
        return false;
    bool partStart = true;
    for (const char c : name) {
        if (partStart && (c == '/' || c == '.'))
            return false;
        const bool plain =
            (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '.' || c == '-' || c == '_';
        if (!plain && c != '/')
            return false;
        partStart = c == '/';
    }
    return true;
}

Result<std::vector<ArchiveMember>> readArchive(std::string_view zip, const ArchiveLimits& limits)
{
    const Result<Archive> archive = openArchive(zip);
    if (!archive)
        return fail(archive.error());
    const zip_int64_t count = zip_get_num_entries(archive->get(), 0);
    if (count < 0 || static_cast<std::size_t>(count) > limits.members)
        return fail(ErrorCode::BadInput,
                    fmt::format("the zip has {} members; at most {} are read", count, limits.members));

    std::vector<ArchiveMember> members;
    std::set<std::string> names;
    std::uint64_t total = 0;
    for (zip_uint64_t i = 0; i < static_cast<zip_uint64_t>(count); ++i) {
        const Result<zip_stat_t> stat = checkedStat(archive->get(), i, limits);
        if (!stat)
            return fail(stat.error());
        total += stat->size;
        if (total > limits.totalBytes)
            return fail(
                ErrorCode::BadInput,
                fmt::format("the zip's members are longer than {} bytes together", limits.totalBytes));
        if (!names.insert(stat->name).second)
            return fail(ErrorCode::DamagedFile, "the zip has two members named " + shown(stat->name));
        Result<std::string> bytes = readMember(archive->get(), i, *stat);
        if (!bytes)
            return fail(bytes.error());
        members.push_back({stat->name, std::move(*bytes)});
    }
    return members;
}

} // namespace sealwalk::exchange
