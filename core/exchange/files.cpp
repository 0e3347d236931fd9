// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/files.h"

#include "core/base/partial_file.h"
#include "core/base/uuid.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <memory>
#include <system_error>
#include <utility>

namespace sealwalk::exchange {

namespace {

class Descriptor
{
public:
    explicit Descriptor(int number)
        : m_number(number)
    {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor()
    {
        if (m_number >= 0)
            ::close(m_number);
    }

    [[nodiscard]] int number() const { return m_number; }
    [[nodiscard]] bool isOpen() const { return m_number >= 0; }
    /// Closes now, since a network drive may tell of a full disk only here.
    [[nodiscard]] bool close() { return ::close(std::exchange(m_number, -1)) == 0; }

private:
    int m_number;
};

std::string systemReason(int code)
{
    return std::generic_category().message(code);
}

tl::unexpected<Error> cannotWrite(const std::string& path, int code)
{
    if (code == ENOENT || code == ENOTDIR)
        return fail(ErrorCode::BadInput, path + ": the folder to write to does not exist");
    if (code == EISDIR)
        return fail(ErrorCode::BadInput, path + ": this is a folder; give the name of a file");
    return fail(ErrorCode::MachineFailed, path + ": cannot be written: " + systemReason(code));
}

Status writeAll(int descriptor, const std::string& path, std::string_view bytes)
{
    while (!bytes.empty()) {
        const ssize_t count = ::write(descriptor, bytes.data(), bytes.size());
        if (count < 0 && errno == EINTR)
            continue;
        if (count < 0)
            return cannotWrite(path, errno);
        bytes.remove_prefix(static_cast<std::size_t>(count));
    }
    return {};
}

std::string folderOf(const std::string& path)
{
    const std::size_t slash = path.rfind('/');
    if (slash == std::string::npos)
        return ".";
    return slash == 0 ? "/" : path.substr(0, slash);
}

Status writeDevice(const std::string& path, std::string_view bytes)
{
    Descriptor device(::open(path.c_str(), O_WRONLY | O_CLOEXEC));
    if (!device.isOpen())
        return cannotWrite(path, errno);
    if (Status written = writeAll(device.number(), path, bytes); !written)
        return written;
    if (!device.close())
        return cannotWrite(path, errno);
    return {};
}

/// One file under another name beside its own. A device or pipe has none: it is written at the end.
class Beside
{
public:
    explicit Beside(std::string path)
        : m_path(std::move(path))
        , m_partial(folderOf(m_path) + "/.sealwalk-" + Uuid::random().text())
    {}

    /// Brings all bytes to disk under the other name.
    Status write(std::string_view bytes)
    {
        struct stat about
        {};
        const bool exists = ::stat(m_path.c_str(), &about) == 0;
        if (exists && S_ISDIR(about.st_mode))
            return cannotWrite(m_path, EISDIR);
        if (exists && ::access(m_path.c_str(), W_OK) != 0)
            return cannotWrite(m_path, errno);
        m_isDevice = exists && !S_ISREG(about.st_mode);
        if (m_isDevice) {
            m_bytes = bytes;
            return {};
        }
        constexpr mode_t kAsTheUserWants = 0666; // less the process's mask
        Descriptor file(
            ::open(m_partial.path().c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, kAsTheUserWants));
        if (!file.isOpen())
            return cannotWrite(m_path, errno);
        if (exists && ::fchmod(file.number(), about.st_mode & static_cast<mode_t>(07777)) != 0)
            return cannotWrite(m_path, errno);
        if (Status written = writeAll(file.number(), m_path, bytes); !written)
            return written;
        if (::fsync(file.number()) != 0 || !file.close())
            return cannotWrite(m_path, errno);
        return {};
    }

    Status takeName()
    {
        if (m_isDevice)
            return writeDevice(m_path, m_bytes);
        if (::rename(m_partial.path().c_str(), m_path.c_str()) != 0)
            return cannotWrite(m_path, errno);
        m_partial.handOver();
        // The new name itself must survive a power cut; some file systems cannot sync a folder, and say so.
        const Descriptor directory(::open(folderOf(m_path).c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
        if (directory.isOpen())
            ::fsync(directory.number());
        return {};
    }

private:
    std::string m_path;
    PartialFile m_partial;
    std::string_view m_bytes;
    bool m_isDevice = false;
};

} // namespace

Result<std::string> readFile(const std::string& path, std::uint64_t limit)
{
    const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
    if (!file.isOpen()) {
        if (errno == ENOENT || errno == ENOTDIR)
            return fail(ErrorCode::NotFound, path + ": there is no such file");
        return fail(ErrorCode::MachineFailed, path + ": cannot be read: " + systemReason(errno));
    }
    struct stat about
    {};
    if (::fstat(file.number(), &about) == 0 && S_ISDIR(about.st_mode))
        return fail(ErrorCode::BadInput, path + ": this is a folder; give the name of a file");

    std::string bytes;
    std::array<char, 65536> buffer{};
    while (true) {
        const ssize_t count = ::read(file.number(), buffer.data(), buffer.size());
        if (count < 0 && errno == EINTR)
            continue;
        if (count < 0)
            return fail(ErrorCode::MachineFailed, path + ": cannot be read: " + systemReason(errno));
        if (count == 0)
            return bytes;
        bytes.append(buffer.data(), static_cast<std::size_t>(count));
        if (bytes.size() > limit)
            return fail(ErrorCode::BadInput,
                        fmt::format("{}: the file is longer than {} bytes", path, limit));
    }
}

Status writeFile(const std::string& path, std::string_view bytes)
{
    return writeFiles({{path, bytes}});
}

Status writeFiles(const std::vector<FileToWrite>& files)
{
    std::vector<std::unique_ptr<Beside>> beside;
    for (const FileToWrite& file : files) {
        auto made = std::make_unique<Beside>(file.path);
        if (Status written = made->write(file.bytes); !written)
            return written;
        beside.push_back(std::move(made));
    }
    for (const std::unique_ptr<Beside>& each : beside)
        if (Status named = each->takeName(); !named)
            return named;
    return {};
}

} // namespace sealwalk::exchange
