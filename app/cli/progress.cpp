// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/progress.h"

#include "core/base/partial_file.h"

#include <signal.h>
#include <unistd.h>

#include <atomic>
#include <chrono>
#include <condition_variable>
#include <csignal>
#include <mutex>
#include <string_view>
#include <thread>

namespace sealwalk::cli {

namespace {

constexpr std::string_view kWipe = "\r\033[K";
constexpr std::chrono::milliseconds kMoment{700};
constexpr int kSignalBase = 128;

struct Line
{
    std::mutex mutex;
    std::condition_variable ended;
    bool isOver = true;
    std::thread writer;
};

Line& line()
{
    static Line only;
    return only;
}

std::atomic<bool> g_isShown{false}; // NOLINT(cppcoreguidelines-avoid-non-const-global-variables)

void print(std::string_view text) noexcept
{
    [[maybe_unused]] const ssize_t ignored = ::write(STDERR_FILENO, text.data(), text.size());
}

void write(const std::string& command)
{
    const auto began = std::chrono::steady_clock::now();
    Line& shared = line();
    std::unique_lock lock(shared.mutex);
    auto patience = kMoment;
    while (!shared.ended.wait_for(lock, patience, [&] { return shared.isOver; })) {
        const auto seconds =
            std::chrono::duration_cast<std::chrono::seconds>(std::chrono::steady_clock::now() - began);
        print(std::string(kWipe) + command + ": working, " + std::to_string(seconds.count()) +
              " s; Ctrl-C stops it");
        g_isShown = true;
        patience = std::chrono::seconds(1);
    }
}

extern "C" void onSignal(int number)
{
    removePartialFiles();
    if (g_isShown)
        print(kWipe);
    ::_exit(kSignalBase + number);
}

} // namespace

Progress::Progress(const std::string& command)
{
    if (::isatty(STDERR_FILENO) == 0)
        return;
    line().isOver = false;
    line().writer = std::thread(write, command);
}

Progress::~Progress()
{
    wipe();
}

void Progress::wipe()
{
    Line& shared = line();
    if (!shared.writer.joinable())
        return;
    {
        const std::lock_guard lock(shared.mutex);
        shared.isOver = true;
    }
    shared.ended.notify_all();
    shared.writer.join();
    if (g_isShown.exchange(false))
        print(kWipe);
}

void stopCleanlyOnSignals()
{
    struct sigaction action = {};
    action.sa_handler = onSignal;
    for (const int number : {SIGINT, SIGTERM, SIGHUP}) {
        struct sigaction before = {};
        ::sigaction(number, nullptr, &before);
        if (before.sa_handler != SIG_IGN) // nohup
            ::sigaction(number, &action, nullptr);
    }
}

} // namespace sealwalk::cli
