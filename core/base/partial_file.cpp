// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/partial_file.h"

#include <unistd.h>

#include <array>
#include <atomic>
#include <utility>

namespace sealwalk {

namespace {

// A signal handler may neither allocate nor lock. More than these at once are not removed by it.
constexpr std::size_t kMost = 32;
std::array<std::atomic<const char*>, kMost>
    g_paths{}; // NOLINT(cppcoreguidelines-avoid-non-const-global-variables)

void replaceFirst(const char* wanted, const char* by)
{
    for (std::atomic<const char*>& slot : g_paths) {
        const char* expected = wanted;
        if (slot.compare_exchange_strong(expected, by))
            return;
    }
}

} // namespace

PartialFile::PartialFile(std::string path)
    : m_path(std::move(path))
{
    replaceFirst(nullptr, m_path.c_str());
}

PartialFile::~PartialFile()
{
    if (!m_isMine)
        return;
    ::unlink(m_path.c_str());
    replaceFirst(m_path.c_str(), nullptr);
}

void PartialFile::handOver()
{
    if (std::exchange(m_isMine, false))
        replaceFirst(m_path.c_str(), nullptr);
}

void removePartialFiles() noexcept
{
    for (const std::atomic<const char*>& slot : g_paths)
        if (const char* path = slot.load())
            ::unlink(path);
}

} // namespace sealwalk
