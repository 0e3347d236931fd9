// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/process.h"

#include <poll.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <climits>
#include <csignal>
#include <cstdlib>

namespace sealwalk::tests {

namespace {

struct Pipe
{
    int read = -1;
    int write = -1;
};

Pipe makePipe()
{
    std::array<int, 2> ends{-1, -1};
    if (pipe(ends.data()) != 0)
        std::abort();
    return {ends[0], ends[1]};
}

[[noreturn]] void becomeChild(const std::vector<std::string>& arguments, Pipe in, Pipe out, Pipe err)
{
    dup2(in.read, STDIN_FILENO);
    dup2(out.write, STDOUT_FILENO);
    dup2(err.write, STDERR_FILENO);
    for (const int end : {in.read, in.write, out.read, out.write, err.read, err.write})
        close(end);
    std::vector<char*> raw;
    for (const std::string& argument : arguments)
        raw.push_back(const_cast<char*>(argument.c_str()));
    raw.push_back(nullptr);
    execv(raw[0], raw.data());
    _exit(127);
}

/// Reads what is there; false at the end of the stream.
bool drain(int end, std::string& into)
{
    std::array<char, 8192> buffer{};
    const ssize_t count = read(end, buffer.data(), buffer.size());
    if (count <= 0)
        return false;
    into.append(buffer.data(), static_cast<std::size_t>(count));
    return true;
}

} // namespace

ProcessResult runProcess(const std::vector<std::string>& arguments, const std::string& input)
{
    std::signal(SIGPIPE, SIG_IGN);
    const Pipe in = makePipe();
    const Pipe out = makePipe();
    const Pipe err = makePipe();
    const pid_t child = fork();
    if (child == 0)
        becomeChild(arguments, in, out, err);
    close(in.read);
    close(out.write);
    close(err.write);

    ProcessResult result;
    std::size_t written = 0;
    bool inputOpen = true;
    bool outOpen = true;
    bool errOpen = true;
    while (outOpen || errOpen) {
        if (inputOpen && written == input.size()) {
            close(in.write);
            inputOpen = false;
        }
        std::array<pollfd, 3> ends{{{outOpen ? out.read : -1, POLLIN, 0},
                                    {errOpen ? err.read : -1, POLLIN, 0},
                                    {inputOpen ? in.write : -1, POLLOUT, 0}}};
        poll(ends.data(), ends.size(), -1);
        if (ends[0].revents != 0)
            outOpen = drain(out.read, result.out);
        if (ends[1].revents != 0)
            errOpen = drain(err.read, result.err);
        if (ends[2].revents != 0) {
            // No more than a pipe takes without blocking, or both sides wait for each other.
            const std::size_t chunk = std::min<std::size_t>(PIPE_BUF, input.size() - written);
            const ssize_t count = write(in.write, input.data() + written, chunk);
            written = count > 0 ? written + static_cast<std::size_t>(count) : input.size();
        }
    }
    if (inputOpen)
        close(in.write);
    close(out.read);
    close(err.read);
    int status = 0;
    waitpid(child, &status, 0);
    result.status = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
    return result;
}

ProcessResult runCli(std::vector<std::string> arguments, const std::string& input)
{
    arguments.insert(arguments.begin(), std::string(SEALWALK_BIN) + "/sealwalk-cli");
    return runProcess(arguments, input);
}

} // namespace sealwalk::tests
