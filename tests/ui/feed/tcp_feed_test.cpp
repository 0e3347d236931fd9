// SPDX-License-Identifier: GPL-3.0-or-later
// A server that stalls, splits lines, sends garbage, goes away and comes back.
#include "tests/ui/feed/longest_gap.h"

#include <gtest/gtest.h>

#include <QTcpServer>
#include <QTcpSocket>
#include <QTest>

namespace sealwalk::tests {
namespace {

using ui::FeedSession;

class TcpFeed : public ::testing::Test
{
protected:
    void SetUp() override
    {
        ASSERT_TRUE(server.listen(QHostAddress::LocalHost));
        profile = plainProfile(feed::SourceKind::Tcp);
        profile.source.host = "127.0.0.1";
        profile.source.port = server.serverPort();
        session.setPatience(impatient());
    }

    /// The server's end of the next connection, after the end of a line that began before.
    QTcpSocket* accepted()
    {
        EXPECT_TRUE(QTest::qWaitFor([&] { return server.hasPendingConnections(); }));
        QTcpSocket* peer = server.nextPendingConnection();
        peer->write("7\n");
        return peer;
    }

    bool reads(qint64 lines)
    {
        return QTest::qWaitFor([&] { return session.linesRead() >= lines; });
    }

    QTcpServer server;
    feed::FeedProfile profile;
    FeedSession session;
    LongestGap gap;
};

// Property: of a thousand values sent in odd pieces with garbage between, every one arrives, in order.
TEST_F(TcpFeed, LosesNothingInPiecesAndGarbage)
{
    session.start(profile);
    QTcpSocket* peer = accepted();
    QByteArray stream;
    for (int i = 1; i <= 1000; ++i) {
        stream += QByteArray::number(i) + "e-12\r\n";
        if (i % 7 == 0)
            stream += QByteArray("\xff\xfe\0OVER\n", 8);
        if (i % 100 == 0)
            stream += QByteArray(3000, 'z') + '\n';
    }
    for (qsizetype at = 0, length = 1; at < stream.size(); at += length, length = 1 + (length * 7 + 3) % 61) {
        peer->write(stream.mid(at, length));
        peer->flush();
        if (at % 5 == 0)
            QTest::qWait(0);
    }
    ASSERT_TRUE(reads(1000));
    const auto values = traced(session);
    ASSERT_EQ(values.size(), 1000u);
    for (std::size_t i = 0; i < values.size(); ++i)
        ASSERT_NEAR(values[i], static_cast<double>(i + 1) * 1e-12, 1e-15);
    EXPECT_TRUE(QTest::qWaitFor([&] { return session.linesRefused() == 142 + 10; }))
        << session.linesRefused();
    EXPECT_LT(gap.report("tcp, pieces and garbage"), kGrossBlock);
}

// Property: a server that hangs up and comes back is found again; its values go on, nothing before is lost,
// and a line cut off by the loss is not taken for a value.
TEST_F(TcpFeed, ComesBackByItself)
{
    session.start(profile);
    QTcpSocket* peer = accepted();
    peer->write("1e-9\n2e-9\n3.5");
    ASSERT_TRUE(reads(2));
    const quint16 port = server.serverPort();
    server.close();
    peer->abort();
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.state() == FeedSession::State::Lost; }));
    EXPECT_EQ(session.linesRead(), 2);
    const Timestamp since = session.lostSince();
    QTest::qWait(200);
    EXPECT_EQ(session.state(), FeedSession::State::Lost);
    EXPECT_EQ(session.lostSince(), since) << "tries in between do not hide how long it is gone";
    ASSERT_TRUE(server.listen(QHostAddress::LocalHost, port));
    accepted()->write("4e-9\n");
    ASSERT_TRUE(reads(3));
    EXPECT_TRUE(session.isLive());
    EXPECT_TRUE(session.fault().isEmpty());
    const auto values = traced(session);
    ASSERT_EQ(values.size(), 3u);
    EXPECT_NEAR(values[2], 4e-9, 1e-15);
    EXPECT_LT(gap.report("tcp, gone and back"), kGrossBlock);
}

// Regression: the tail of a line that was under way, "7" of "5.2e-7", was read as a value of 7.
TEST_F(TcpFeed, TheRestOfALineIsNoValue)
{
    session.start(profile);
    accepted()->write("5.2e-7\n"); // after the "7" of another
    ASSERT_TRUE(reads(1));
    server.close(); // nobody else is called
    QTest::qWait(50);
    ASSERT_EQ(session.trace()->size(), 1u);
    EXPECT_NEAR(traced(session).front(), 5.2e-7, 1e-13);
    EXPECT_EQ(session.linesRefused(), 0);
}

// Property: a server that says nothing is told from one that talks, and called anew: a cable pulled out of
// the network sends no goodbye.
TEST_F(TcpFeed, ASilentServerIsNoticedAndCalledAnew)
{
    session.start(profile);
    QTcpSocket* peer = accepted();
    peer->write("1e-9\n");
    ASSERT_TRUE(reads(1));
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.state() == FeedSession::State::Silent; }));
    EXPECT_FALSE(session.latest().has_value());
    accepted()->write("2e-9\n");
    ASSERT_TRUE(reads(2));
    EXPECT_TRUE(session.isLive());
    EXPECT_LT(gap.report("tcp, silent"), kGrossBlock);
}

// Property: a detector that speaks seldom is not called silent between its words.
TEST_F(TcpFeed, ASlowServerIsNotSilent)
{
    session.start(profile);
    QTcpSocket* peer = accepted();
    peer->write("1e-9\n");
    ASSERT_TRUE(reads(1));
    QTest::qWait(200);
    peer->write("2e-9\n");
    ASSERT_TRUE(reads(2));
    QTest::qWait(450); // longer than the 300 ms of a talkative one, shorter than three gaps
    EXPECT_TRUE(session.isLive());
    EXPECT_TRUE(QTest::qWaitFor([&] { return session.state() == FeedSession::State::Silent; }));
}

// Property: lines that cannot be read are no feed, however many come.
TEST_F(TcpFeed, UnreadableLinesAreSilence)
{
    session.start(profile);
    QTcpSocket* peer = accepted();
    QTimer talk;
    QObject::connect(&talk, &QTimer::timeout, peer, [&] { peer->write("ERROR 17\n"); });
    talk.start(20);
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.state() == FeedSession::State::Silent; }));
    EXPECT_TRUE(session.fault().contains(QStringLiteral("read"))) << session.fault().toStdString();
    EXPECT_GT(session.linesRefused(), 0);
}

// Property: a server that hangs up on everybody is not called without pause.
TEST_F(TcpFeed, ADoorThatShutsIsNotBeatenDown)
{
    int calls = 0;
    QObject::connect(&server, &QTcpServer::newConnection, &server, [&] {
        ++calls;
        server.nextPendingConnection()->abort();
    });
    session.start(profile);
    QTest::qWait(600);
    EXPECT_GT(calls, 1);
    EXPECT_LT(calls, 15); // 20, 40, 80, 100, 100 … ms between
    session.stop();
    QTest::qWait(100); // a call that was on its way when it was turned off still arrives
    const int then = calls;
    QTest::qWait(250);
    EXPECT_EQ(calls, then) << "off is off";
}

TEST_F(TcpFeed, SaysWhatIsWrongWithAnAddress)
{
    server.close();
    session.start(profile);
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.state() == FeedSession::State::Lost; }));
    EXPECT_TRUE(session.fault().contains(QStringLiteral("listens"))) << session.fault().toStdString();
}

// Property: a session may go away in the middle of everything.
TEST_F(TcpFeed, MayBeDroppedAtAnyMoment)
{
    for (int i = 0; i < 20; ++i) {
        FeedSession brief;
        brief.setPatience(impatient());
        QObject::connect(&brief, &FeedSession::sampled, &brief, &FeedSession::stop);
        brief.start(profile);
        QTcpSocket* peer = accepted();
        peer->write(QByteArray("1e-9\n").repeated(i * 100));
        if (i % 3 == 0)
            peer->abort();
        QTest::qWait(i % 5);
        if (i % 2 == 0)
            brief.start(profile);
        delete peer;
        while (server.hasPendingConnections())
            delete server.nextPendingConnection();
    }
}

} // namespace
} // namespace sealwalk::tests
