// SPDX-License-Identifier: GPL-3.0-or-later
// A named pipe whose writers come and go.
#include "tests/ui/feed/longest_gap.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QFile>
#include <QTemporaryDir>
#include <QTest>
#include <QThread>

#include <csignal>

namespace sealwalk::tests {
namespace {

using ui::FeedSession;

class PipeFeed : public ::testing::Test
{
protected:
    void SetUp() override
    {
        std::signal(SIGPIPE, SIG_IGN);
        path = folder.filePath(QStringLiteral("detector")).toStdString();
        ASSERT_EQ(::mkfifo(path.c_str(), 0600), 0);
        profile = plainProfile(feed::SourceKind::Pipe);
        profile.source.path = path;
        session.setPatience(impatient());
    }

    /// A writer that does not wait; needs a reader.
    [[nodiscard]] int writer() const
    {
        int descriptor = -1;
        EXPECT_TRUE(QTest::qWaitFor([&] {
            descriptor = ::open(path.c_str(), O_WRONLY | O_NONBLOCK);
            return descriptor >= 0;
        }));
        return descriptor;
    }

    static void say(int descriptor, std::string_view bytes)
    {
        EXPECT_EQ(::write(descriptor, bytes.data(), bytes.size()), static_cast<ssize_t>(bytes.size()));
    }

    QTemporaryDir folder;
    std::string path;
    feed::FeedProfile profile;
    FeedSession session;
    LongestGap gap;
};

// Property: the writer may go in the middle of a line and another may come; only whole lines count.
TEST_F(PipeFeed, WritersComeAndGo)
{
    session.start(profile);
    EXPECT_EQ(session.state(), FeedSession::State::Connecting) << "opening does not wait for a writer";
    const int first = writer();
    say(first, "1e-9\n2e-9\n3.7");
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.linesRead() == 2; }));
    ::close(first);
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.state() == FeedSession::State::Lost; }));
    EXPECT_EQ(session.linesRefused(), 1) << "\"3.7\" was cut off";
    const int second = writer();
    say(second, "4e-9\n");
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.linesRead() == 3; }));
    EXPECT_TRUE(session.isLive());
    EXPECT_NEAR(traced(session).back(), 4e-9, 1e-15);
    ::close(second);
    EXPECT_LT(gap.report("pipe, writers come and go"), kGrossBlock);
}

// Property: a writer that never pauses does not take the window.
TEST_F(PipeFeed, AFloodLeavesTheWindowAlive)
{
    session.start(profile);
    const int descriptor = writer();
    const std::string piece = QByteArray("1.5e-9\n").repeated(2000).toStdString();
    int turns = 0;
    QTimer flood;
    QObject::connect(&flood, &QTimer::timeout, &session, [&] {
        ++turns;
        while (::write(descriptor, piece.data(), piece.size()) == static_cast<ssize_t>(piece.size())) {
        }
    });
    flood.start(0);
    QTest::qWait(600);
    EXPECT_GT(turns, 5);
    EXPECT_GT(session.linesRead(), 10'000);
    flood.stop();
    ::close(descriptor);
    EXPECT_LT(gap.report("pipe, flood"), kGrossBlock);
}

// Regression: what came while the window waited for a disk was stamped with one moment, and a rise of seconds
// stood on the trace as a step.
TEST_F(PipeFeed, WhatCameWhileTheWindowWasAwayIsSpreadOverThatTime)
{
    session.start(profile);
    const int descriptor = writer();
    say(descriptor, "1e-9\n");
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.linesRead() == 1; }));
    const double before = session.now();
    for (int i = 1; i <= 20; ++i) {
        say(descriptor, QByteArray::number(i).append("e-9\n").toStdString());
        QThread::msleep(50); // the event loop stands still
    }
    const double after = session.now();
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.linesRead() == 21; }));
    double last = session.trace()->timeAt(0);
    for (std::size_t i = 1; i < session.trace()->size(); ++i) {
        const double time = session.trace()->timeAt(i);
        const double came = before + (after - before) * static_cast<double>(i) / 20.0;
        EXPECT_NEAR(time, came, 0.3) << i;
        EXPECT_GE(time, last);
        last = time;
    }
    ::close(descriptor);
}

TEST_F(PipeFeed, RefusesWhatIsNoPipe)
{
    QFile file(folder.filePath(QStringLiteral("plain.txt")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.close();
    profile.source.path = file.fileName().toStdString();
    session.start(profile);
    EXPECT_EQ(session.state(), FeedSession::State::Lost);
    EXPECT_TRUE(session.fault().contains(QStringLiteral("no pipe"))) << session.fault().toStdString();
    profile.source.path = folder.filePath(QStringLiteral("missing")).toStdString();
    session.start(profile);
    EXPECT_TRUE(session.fault().contains(QStringLiteral("there is no pipe")))
        << session.fault().toStdString();
    // It may be made later.
    ASSERT_EQ(::mkfifo(profile.source.path.c_str(), 0600), 0);
    path = profile.source.path;
    const int descriptor = writer();
    say(descriptor, "1e-9\n");
    EXPECT_TRUE(QTest::qWaitFor([&] { return session.isLive(); }));
    ::close(descriptor);
}

} // namespace
} // namespace sealwalk::tests
