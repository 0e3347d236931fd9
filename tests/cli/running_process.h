// SPDX-License-Identifier: GPL-3.0-or-later
// A program that is talked to line by line while it runs, and may be killed.
#pragma once

#include <sys/types.h>

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace sealwalk::tests {

class RunningProcess
{
public:
    /// Starts `arguments[0]` with the rest.
    explicit RunningProcess(const std::vector<std::string>& arguments);
    RunningProcess(const RunningProcess&) = delete;
    RunningProcess& operator=(const RunningProcess&) = delete;
    ~RunningProcess();

    /// Writes to its stdin; false when it no longer listens.
    bool write(const std::string& text);
    /// The next whole line of its stdout; none at its end or after `patience`.
    std::optional<std::string> line(std::chrono::milliseconds patience = std::chrono::seconds(20));
    /// Everything it still has to say on stdout, after it has ended; a last line without its end is left out.
    std::vector<std::string> rest();
    void kill();

private:
    bool readMore(int patienceMilliseconds);
    std::optional<std::string> takeLine();

    pid_t m_child = -1;
    int m_in = -1;
    int m_out = -1;
    std::string m_buffer;
};

} // namespace sealwalk::tests
