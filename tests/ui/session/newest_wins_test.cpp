// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session/newest_wins.h"

#include <gtest/gtest.h>

#include <QTest>

#include <atomic>
#include <thread>
#include <vector>

namespace sealwalk::ui {
namespace {

TEST(NewestWins, DeliversTheNewestAnswerOnly)
{
    std::vector<int> delivered;
    std::atomic<bool> open = false;
    NewestWins<int> work([&](int answer) { delivered.push_back(answer); });
    work.request([&open] {
        while (!open)
            std::this_thread::sleep_for(std::chrono::milliseconds(1));
        return 1;
    });
    work.request([] { return 2; });
    work.request([] { return 3; });
    open = true;
    EXPECT_TRUE(QTest::qWaitFor([&] { return !delivered.empty(); }));
    EXPECT_EQ(delivered, std::vector<int>{3});
    EXPECT_FALSE(work.isBusy());
}

// Regression: requests that come faster than they are answered left the map without any answer.
TEST(NewestWins, TellsOvertakenAnswersWhereAskedTo)
{
    std::vector<int> delivered;
    std::atomic<bool> open = false;
    NewestWins<int> work([&](int answer) { delivered.push_back(answer); },
                         NewestWins<int>::Overtaken::Delivered);
    work.request([&open] {
        while (!open)
            std::this_thread::sleep_for(std::chrono::milliseconds(1));
        return 1;
    });
    work.request([] { return 2; });
    work.request([] { return 3; });
    open = true;
    EXPECT_TRUE(QTest::qWaitFor([&] { return delivered.size() == 2; }));
    EXPECT_EQ(delivered, (std::vector<int>{1, 3}));
    // What was dropped is not told all the same.
    open = false;
    work.request([&open] {
        while (!open)
            std::this_thread::sleep_for(std::chrono::milliseconds(1));
        return 4;
    });
    work.drop();
    work.request([] { return 5; });
    open = true;
    EXPECT_TRUE(QTest::qWaitFor([&] { return !work.isBusy(); }));
    EXPECT_EQ(delivered, (std::vector<int>{1, 3, 5}));
}

// Property: a snapshot is taken once per piece of work, when that begins, however often it was asked for.
TEST(NewestWins, PreparesWhatIsWorkedOnOnly)
{
    std::vector<int> delivered;
    NewestWins<int> work([&](int answer) { delivered.push_back(answer); });
    int state = 0;
    int snapshots = 0;
    for (state = 1; state < 9; ++state)
        work.requestOf([&] {
            ++snapshots;
            return [snapshot = state] { return snapshot; };
        });
    ASSERT_TRUE(QTest::qWaitFor([&] { return !work.isBusy(); }));
    EXPECT_EQ(snapshots, 2);
    EXPECT_EQ(delivered, std::vector{9}) << "the state when the second began";
}

TEST(NewestWins, DropsWhatNobodyWantsAnyMore)
{
    int answers = 0;
    NewestWins<int> work([&](int) { ++answers; });
    work.request([] { return 1; });
    work.drop();
    EXPECT_TRUE(QTest::qWaitFor([&] { return !work.isBusy(); }));
    EXPECT_EQ(answers, 0);
    work.request([] { return 2; });
    EXPECT_TRUE(QTest::qWaitFor([&] { return answers == 1; }));
    work.request([] { return 3; });
    work.requestOf([]() -> NewestWins<int>::Work {
        ADD_FAILURE() << "a snapshot for work that nobody wants";
        return [] { return 4; };
    });
    work.drop();
    EXPECT_TRUE(QTest::qWaitFor([&] { return !work.isBusy(); }));
    EXPECT_EQ(answers, 1);
}

TEST(NewestWins, MayDieWhileItsWorkRuns)
{
    std::atomic<int> runs = 0;
    {
        NewestWins<int> work([](int) { FAIL() << "delivered to the dead"; });
        work.request([&runs] {
            std::this_thread::sleep_for(std::chrono::milliseconds(20));
            return ++runs;
        });
    }
    EXPECT_EQ(runs, 1);
}

} // namespace
} // namespace sealwalk::ui
