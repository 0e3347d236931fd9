// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cli/running_process.h"

#include "core/base/contract.h"

#include <fcntl.h>
#include <poll.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <csignal>

namespace sealwalk::tests {

RunningProcess::RunningProcess(const std::vector<std::string>& arguments)
{
    std::signal(SIGPIPE, SIG_IGN);
    std::array<int, 2> in{};
    std::array<int, 2> out{};
    SEALWALK_EXPECT(::pipe2(in.data(), O_CLOEXEC) == 0 && ::pipe2(out.data(), O_CLOEXEC) == 0);
    m_child = ::fork();
    SEALWALK_EXPECT(m_child >= 0);
    if (m_child == 0) {
        ::dup2(in[0], STDIN_FILENO);
        ::dup2(out[1], STDOUT_FILENO);
        std::vector<char*> raw;
        for (const std::string& argument : arguments)
            raw.push_back(const_cast<char*>(argument.c_str()));
        raw.push_back(nullptr);
        ::execv(raw[0], raw.data());
        ::_exit(127);
    }
    ::close(in[0]);
    ::close(out[1]);
    m_in = in[1];
    m_out = out[0];
}

RunningProcess::~RunningProcess()
{
    kill();
    ::close(m_in);
    ::close(m_out);
}

void RunningProcess::kill()
{
    if (m_child < 0)
        return;
    ::kill(m_child, SIGKILL);
    ::waitpid(m_child, nullptr, 0);
    m_child = -1;
}

bool RunningProcess::write(const std::string& text)
{
    return ::write(m_in, text.data(), text.size()) == static_cast<ssize_t>(text.size());
}

bool RunningProcess::readMore(int patienceMilliseconds)
{
    pollfd end{m_out, POLLIN, 0};
    if (::poll(&end, 1, patienceMilliseconds) <= 0)
        return false;
    std::array<char, 4096> bytes{};
    const ssize_t count = ::read(m_out, bytes.data(), bytes.size());
    if (count <= 0)
        return false;
    m_buffer.append(bytes.data(), static_cast<std::size_t>(count));
    return true;
}

std::optional<std::string> RunningProcess::takeLine()
{
    const std::size_t end = m_buffer.find('\n');
    if (end == std::string::npos)
        return std::nullopt;
    std::string line = m_buffer.substr(0, end);
    m_buffer.erase(0, end + 1);
    return line;
}

std::optional<std::string> RunningProcess::line(std::chrono::milliseconds patience)
{
    for (;;) {
        if (auto found = takeLine())
            return found;
        if (!readMore(static_cast<int>(patience.count())))
            return std::nullopt;
    }
}

std::vector<std::string> RunningProcess::rest()
{
    while (readMore(2000)) {
    }
    std::vector<std::string> lines;
    while (auto found = takeLine())
        lines.push_back(*found);
    return lines;
}

} // namespace sealwalk::tests
