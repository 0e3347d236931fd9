// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/own_files.h"

#include <sys/stat.h>

#include <set>

namespace sealwalk::storage {
namespace {

struct Known
{
    std::mutex mutex;
    std::multiset<std::pair<unsigned long long, unsigned long long>> open;
};

Known& known()
{
    static Known it; // one per process, as the locks are
    return it;
}

} // namespace

OwnFile::Identity OwnFile::identityOf(const std::filesystem::path& file)
{
    struct ::stat status = {};
    if (::stat(file.c_str(), &status) != 0)
        return {0, 0};
    return {status.st_dev, status.st_ino};
}

OwnFile::OwnFile(const std::filesystem::path& file)
    : m_identity(identityOf(file))
{
    const std::lock_guard lock(known().mutex);
    known().open.insert(m_identity);
}

OwnFile::~OwnFile()
{
    if (m_identity == Identity{0, 0})
        return;
    const std::lock_guard lock(known().mutex);
    if (const auto here = known().open.find(m_identity); here != known().open.end())
        known().open.erase(here);
}

OwnFile::OwnFile(OwnFile&& other) noexcept
    : m_identity(std::exchange(other.m_identity, {0, 0}))
{}

OwnFile& OwnFile::operator=(OwnFile&& other) noexcept
{
    std::swap(m_identity, other.m_identity);
    return *this;
}

bool isOwnFile(const std::filesystem::path& file)
{
    const auto identity = OwnFile::identityOf(file);
    if (identity.second == 0)
        return false;
    const std::lock_guard lock(known().mutex);
    return known().open.contains(identity);
}

std::mutex& openingMutex()
{
    static std::mutex mutex;
    return mutex;
}

} // namespace sealwalk::storage
