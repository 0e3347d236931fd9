// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/file_head.h"

#include <array>
#include <cerrno>
#include <fstream>
#include <string_view>

namespace sealwalk::storage {
namespace {

constexpr std::size_t kHeadBytes = 100;
constexpr std::string_view kMagic{"SQLite format 3\0", 16};

using Bytes = std::array<char, kHeadBytes>;

std::uint32_t bigEndian(const Bytes& bytes, std::size_t at, std::size_t count)
{
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < count; ++i)
        value = (value << 8U) | static_cast<unsigned char>(bytes[at + i]);
    return value;
}

} // namespace

Result<FileHead> readFileHead(const std::filesystem::path& file)
{
    std::ifstream in(file, std::ios::binary);
    if (!in)
        return fail(ErrorCode::MachineFailed, file.string() + ": may not be read; give it read permission");
    Bytes bytes{};
    in.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    const auto got = static_cast<std::size_t>(in.gcount());
    FileHead head;
    head.empty = got == 0;
    std::error_code problem;
    const auto size = std::filesystem::file_size(file, problem);
    head.size = problem ? static_cast<std::int64_t>(got) : static_cast<std::int64_t>(size);
    head.isSqlite = got == kHeadBytes && std::string_view(bytes.data(), kMagic.size()) == kMagic;
    if (!head.isSqlite)
        return head;
    constexpr std::uint32_t kPageSize65536 = 1;
    const std::uint32_t pageSize =
        bigEndian(bytes, 16, 2) == kPageSize65536 ? 65536 : bigEndian(bytes, 16, 2);
    head.pages = bigEndian(bytes, 28, 4);
    // The count is valid only when the writer that last changed the file also wrote it.
    if (bigEndian(bytes, 24, 4) == bigEndian(bytes, 92, 4))
        head.promised = static_cast<std::int64_t>(pageSize) * head.pages;
    head.userVersion = bigEndian(bytes, 60, 4);
    head.applicationId = bigEndian(bytes, 68, 4);
    return head;
}

} // namespace sealwalk::storage
