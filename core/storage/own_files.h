// SPDX-License-Identifier: GPL-3.0-or-later
// Which histories this process has open. A process that opens and closes such a file by itself, only to look
// at it, loses all locks that SQLite holds on it, and other programs then take it for free. Source:
// sqlite.org/howtocorrupt.html, "POSIX advisory locks canceled by a separate thread doing close()"
#pragma once

#include <filesystem>
#include <mutex>
#include <utility>

namespace sealwalk::storage {

/// Says that a file is open through SQLite as long as this lives. Make it before the database, end it after.
class OwnFile
{
public:
    OwnFile() = default;
    explicit OwnFile(const std::filesystem::path& file);
    ~OwnFile();
    OwnFile(OwnFile&& other) noexcept;
    OwnFile& operator=(OwnFile&& other) noexcept;
    OwnFile(const OwnFile&) = delete;
    OwnFile& operator=(const OwnFile&) = delete;

    /// Whether `file` still names what was opened: it may have been moved, deleted or replaced since.
    [[nodiscard]] bool isStill(const std::filesystem::path& file) const
    {
        return identityOf(file) == m_identity;
    }

private:
    using Identity = std::pair<unsigned long long, unsigned long long>; ///< device and inode
    friend bool isOwnFile(const std::filesystem::path& file);
    static Identity identityOf(const std::filesystem::path& file);

    Identity m_identity{0, 0}; ///< both 0: none
};

/// Whether some part of this process has the file open; then it is only to be read through SQLite.
bool isOwnFile(const std::filesystem::path& file);

/// Held from the first look at a file until it is known as open, so that no other thread looks in between.
std::mutex& openingMutex();

} // namespace sealwalk::storage
