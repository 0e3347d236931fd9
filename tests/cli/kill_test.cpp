// SPDX-License-Identifier: GPL-3.0-or-later
// Nothing that was answered as stored is lost when the program is killed in the middle of its work.
#include "core/storage/history_store.h"
#include "tests/cli/running_process.h"
#include "tests/core/storage/opened_history.h"
#include "tests/core/storage/scratch_folder.h"
#include "tests/support/process.h"

#include <fmt/format.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <filesystem>
#include <iostream>
#include <random>
#include <thread>

namespace sealwalk::tests {
namespace {

using storage::HistoryStore;

/// The reading that is sent as number `n` of all: every field follows from it.
std::string lineOf(int n)
{
    return fmt::format("{{\"point\":{},\"at\":\"2026-03-17T14:{:02}:{:02}.{:03}+01:00\",\"background\":3e-10,"
                       "\"peak\":{},\"dwell_s\":6,\"condition\":\"at rest\",\"remark\":\"reading {}\"}}\n",
                       n % 4 + 1, n / 60 % 60, n % 60, n % 1000, 1e-9 * (n + 1), n);
}

void expectWhole(const model::Job& job, const model::Reading& reading, int n)
{
    EXPECT_EQ(reading.remark, fmt::format("reading {}", n));
    EXPECT_EQ(reading.point, job.sketch.points[static_cast<std::size_t>(n % 4)].id);
    EXPECT_DOUBLE_EQ(inMillibarLitresPerSecond(*reading.peak), 1e-9 * (n + 1));
    EXPECT_DOUBLE_EQ(inMillibarLitresPerSecond(*reading.background), 3e-10);
    EXPECT_DOUBLE_EQ(reading.dwell->si(), 6.0);
}

/// Feeds readings as fast as they are answered, kills `moment` after the start or the first answer; @return
/// numbers answered as stored
std::vector<std::int64_t> feedAndKill(const std::filesystem::path& file, std::chrono::microseconds moment,
                                      bool waitForFirst, int& sent)
{
    RunningProcess log({std::string(SEALWALK_BIN) + "/sealwalk-cli", "--history", file.string(), "log", "1",
                        "1", "--stdin"});
    std::vector<std::int64_t> stored;
    const auto note = [&](const std::string& answer) {
        stored.push_back(nlohmann::json::parse(answer).at("stored").get<std::int64_t>());
    };
    // Several lines ahead, so that the kill meets it while it writes and not while it waits.
    constexpr int kAhead = 40;
    std::string ahead;
    for (int i = 0; i < kAhead; ++i)
        ahead += lineOf(sent++);
    EXPECT_TRUE(log.write(ahead));
    if (waitForFirst)
        if (const auto first = log.line())
            note(*first);
    std::this_thread::sleep_for(moment);
    log.kill();
    for (const std::string& answer : log.rest())
        note(answer);
    return stored;
}

// Property: SIGKILL at 200 random moments. Every reading answered is there, whole, in its place; the history
// is sound.
TEST(Kill, LosesNoReadingThatWasAnsweredAsStored)
{
    const ScratchFolder folder;
    const std::filesystem::path file = folder / "a.sealwalk";
    model::Job job;
    {
        const OpenedHistory opened(file);
        job = opened.job;
    }
    std::mt19937 random(20260317);
    std::uniform_int_distribution<int> moments(0, 40000); // µs after the start or the first answer
    constexpr int kKills = 200;
    int sent = 0;
    int killedAtWork = 0;
    std::int64_t known = 0;
    for (int kill = 0; kill < kKills; ++kill) {
        const int before = sent;
        const auto answered =
            feedAndKill(file, std::chrono::microseconds(moments(random)), kill % 2 == 0, sent);
        const HistoryStore store = openAt(file, HistoryStore::Mode::ReadWrite);
        const auto readings = store.readingsAfter(job.id, known);
        ASSERT_TRUE(readings) << readings.error().message;
        ASSERT_GE(readings->size(), answered.size()) << "kill " << kill;
        killedAtWork += readings->size() < 40 ? 1 : 0;
        for (std::size_t i = 0; i < answered.size(); ++i)
            EXPECT_EQ((*readings)[i].sequence, answered[i]);
        for (std::size_t i = 0; i < readings->size(); ++i) {
            EXPECT_EQ((*readings)[i].sequence, ++known);
            expectWhole(job, (*readings)[i], before + static_cast<int>(i));
        }
        if (kill % 20 == 0) {
            EXPECT_EQ(store.check(), std::vector<std::string>{}) << "kill " << kill;
        }
    }
    const HistoryStore store = openAt(file, HistoryStore::Mode::ReadOnly);
    EXPECT_EQ(store.check(), std::vector<std::string>{});
    EXPECT_EQ(store.readingsAfter(job.id, 0)->size(), static_cast<std::size_t>(known));
    EXPECT_GT(killedAtWork, kKills / 2) << "most kills should meet it at work";
    std::cout << fmt::format("{} kills, {} of them at work, {} readings kept\n", kKills, killedAtWork, known);
}

// Regression: Ctrl-C left what was half written, under names nobody knows. A pipe that nobody reads holds the
// work while a workbook stands beside its name.
TEST(Interrupt, LeavesNothingHalfWritten)
{
    const ScratchFolder folder;
    const std::string history = (folder / "demo.sealwalk").string();
    ASSERT_EQ(runCli({"demo", "-o", history}).status, 0);
    const std::filesystem::path out = folder / "out";
    std::filesystem::create_directory(out);
    const std::string pipe = (out / "pipe.csv").string();
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    const auto filesOut = [&] {
        return std::distance(std::filesystem::directory_iterator(out), std::filesystem::directory_iterator());
    };
    const std::string program = std::string(SEALWALK_BIN) + "/sealwalk-cli";
    const std::string book = (out / "book.xlsx").string();
    const pid_t child = ::fork();
    ASSERT_GE(child, 0);
    if (child == 0) {
        std::signal(SIGINT, SIG_DFL); // work in the background is started with it ignored, which is respected
        ::execl(program.c_str(), program.c_str(), "--history", history.c_str(), "table", "164", "--csv",
                pipe.c_str(), "--xlsx", book.c_str(), nullptr);
        ::_exit(127);
    }
    constexpr int kPatience = 6000;
    for (int i = 0; i < kPatience && filesOut() < 2; ++i)
        std::this_thread::sleep_for(std::chrono::milliseconds(10));
    EXPECT_EQ(filesOut(), 2) << "the workbook under its other name";
    ::kill(child, SIGINT);
    int status = 0;
    ::waitpid(child, &status, 0);
    ASSERT_TRUE(WIFEXITED(status));
    EXPECT_EQ(WEXITSTATUS(status), 128 + SIGINT);
    EXPECT_EQ(filesOut(), 1) << "the pipe alone";
}

} // namespace
} // namespace sealwalk::tests
