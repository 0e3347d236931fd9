// SPDX-License-Identifier: GPL-3.0-or-later
// A folder for one test, gone afterwards.
#pragma once

#include <filesystem>
#include <string>

namespace sealwalk::tests {

class ScratchFolder
{
public:
    ScratchFolder();
    ScratchFolder(const ScratchFolder&) = delete;
    ScratchFolder& operator=(const ScratchFolder&) = delete;
    ~ScratchFolder();

    [[nodiscard]] const std::filesystem::path& path() const { return m_path; }
    [[nodiscard]] std::filesystem::path operator/(const std::string& name) const { return m_path / name; }

private:
    std::filesystem::path m_path;
};

/// The bytes of a file.
std::string bytesOf(const std::filesystem::path& file);
void writeBytes(const std::filesystem::path& file, const std::string& bytes);

} // namespace sealwalk::tests
