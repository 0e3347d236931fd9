// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/feed/longest_gap.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

#include <QFile>
#include <QTemporaryDir>
#include <QTest>

namespace sealwalk::tests {
namespace {

using ui::FeedSession;

class FileFeed : public ::testing::Test
{
protected:
    void SetUp() override
    {
        profile = plainProfile(feed::SourceKind::File);
        profile.source.path = folder.filePath(QStringLiteral("run.csv")).toStdString();
        profile.format.separator = feed::Separator::Comma;
        session.setPatience(impatient());
    }

    void write(const QByteArray& bytes) const
    {
        QFile file(QString::fromStdString(profile.source.path));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }

    bool ends()
    {
        return QTest::qWaitFor([&] { return session.state() == FeedSession::State::Ended; }, 10000);
    }

    QTemporaryDir folder;
    feed::FeedProfile profile;
    FeedSession session;
    LongestGap gap;
};

// Property: the whole file is played, heading aside; the end cut off in the middle of a value is no value.
TEST_F(FileFeed, PlaysATruncatedFileToItsEnd)
{
    QByteArray bytes("time,rate\n");
    for (int i = 0; i < 500; ++i)
        bytes += QByteArray::number(i * 0.1) + ',' + QByteArray::number(i + 1) + "e-12\n";
    write(bytes + "50.0,5.0");
    profile.format.column = 2;
    profile.format.timeColumn = 1;
    profile.source.speed = 1000.0;
    session.start(profile);
    ASSERT_TRUE(ends());
    const auto values = traced(session);
    ASSERT_EQ(values.size(), 500u);
    EXPECT_NEAR(values.back(), 500e-12, 1e-15);
    EXPECT_EQ(session.linesRefused(), 2);
    EXPECT_LT(gap.report("file"), kGrossBlock);
}

// Property: at its own pace a file takes its own time, and ten times as fast a tenth.
TEST_F(FileFeed, KeepsThePaceOfItsTimes)
{
    write("100.0,1e-9\n100.2,2e-9\n100.4,3e-9\n");
    profile.format.column = 2;
    profile.format.timeColumn = 1;
    session.start(profile);
    ASSERT_TRUE(ends());
    ASSERT_EQ(session.trace()->size(), 3u);
    EXPECT_GE(session.trace()->timeAt(2) - session.trace()->timeAt(0), 0.35);
    profile.source.speed = 100.0;
    const double begun = session.now();
    session.start(profile);
    ASSERT_TRUE(ends());
    ASSERT_EQ(session.trace()->size(), 6u) << "the trace goes on";
    EXPECT_GE(session.trace()->timeAt(3), begun);
}

TEST_F(FileFeed, PlaysWithoutTimesAtTheGivenPace)
{
    write("1e-9\n2e-9\n3e-9\n4e-9\n5e-9\n");
    profile.source.linesPerSecond = 20.0;
    session.start(profile);
    ASSERT_TRUE(ends());
    EXPECT_EQ(session.trace()->size(), 5u);
    EXPECT_GE(session.trace()->timeAt(4) - session.trace()->timeAt(0), 0.15);
}

// Property: nothing that would keep the window waiting is opened as a file.
TEST_F(FileFeed, RefusesWhatIsNoFile)
{
    const QString pipe = folder.filePath(QStringLiteral("pipe"));
    ASSERT_EQ(::mkfifo(qPrintable(pipe), 0600), 0);
    for (const QString& path :
         {pipe, folder.path(), QStringLiteral("/dev/zero"), folder.filePath(QStringLiteral("none"))}) {
        profile.source.path = path.toStdString();
        session.start(profile);
        EXPECT_EQ(session.state(), FeedSession::State::Lost) << path.toStdString();
        EXPECT_FALSE(session.fault().isEmpty());
    }
}

TEST_F(FileFeed, AnEmptyFileIsOver)
{
    write({});
    session.start(profile);
    ASSERT_TRUE(ends());
    EXPECT_TRUE(session.trace()->isEmpty());
}

} // namespace
} // namespace sealwalk::tests
