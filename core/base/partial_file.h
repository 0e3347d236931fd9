// SPDX-License-Identifier: GPL-3.0-or-later
// Files that are being written under a name of their own, and go away when the work is given up.
#pragma once

#include <string>

namespace sealwalk {

/// A half-written file. It is removed with this object, and by removePartialFiles(), unless it was handed
/// over.
class PartialFile
{
public:
    explicit PartialFile(std::string path);
    PartialFile(const PartialFile&) = delete;
    PartialFile& operator=(const PartialFile&) = delete;
    ~PartialFile();

    [[nodiscard]] const std::string& path() const { return m_path; }
    /// It has got its final name, or is wanted where it is: no longer removed.
    void handOver();

private:
    std::string m_path;
    bool m_isMine = true;
};

/// Removes every half-written file of the process, for one that is told to stop. Safe in a signal handler.
void removePartialFiles() noexcept;

} // namespace sealwalk
