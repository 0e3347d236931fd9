// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/storage/scratch_folder.h"

#include "core/base/contract.h"

#include <cstdlib>
#include <fstream>
#include <iterator>

namespace sealwalk::tests {

ScratchFolder::ScratchFolder()
{
    std::string pattern = (std::filesystem::temp_directory_path() / "sealwalk-test-XXXXXX").string();
    SEALWALK_EXPECT(::mkdtemp(pattern.data()) != nullptr);
    m_path = pattern;
}

ScratchFolder::~ScratchFolder()
{
    std::error_code ignored;
    std::filesystem::permissions(m_path, std::filesystem::perms::owner_all, ignored);
    std::filesystem::remove_all(m_path, ignored);
}

std::string bytesOf(const std::filesystem::path& file)
{
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

void writeBytes(const std::filesystem::path& file, const std::string& bytes)
{
    std::ofstream out(file, std::ios::binary | std::ios::trunc);
    out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
}

} // namespace sealwalk::tests
