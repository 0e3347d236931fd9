// SPDX-License-Identifier: GPL-3.0-or-later
// A pseudo-terminal stands for the serial port: it splits, floods, and is pulled out.
#include "tests/ui/feed/longest_gap.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <pty.h>
#include <unistd.h>

#include <QTest>

#include <array>

namespace sealwalk::tests {
namespace {

using ui::FeedSession;

/// The instrument's end of a line.
class Instrument
{
public:
    Instrument()
    {
        std::array<char, 128> name{};
        int slave = -1;
        if (::openpty(&m_master, &slave, name.data(), nullptr, nullptr) == 0) {
            m_name = name.data();
            ::fcntl(m_master, F_SETFL, ::fcntl(m_master, F_GETFL) | O_NONBLOCK);
            ::close(slave);
        }
    }
    ~Instrument() { unplug(); }
    Instrument(const Instrument&) = delete;
    Instrument& operator=(const Instrument&) = delete;

    [[nodiscard]] const std::string& name() const { return m_name; }
    /// Bytes taken; fewer when the line is full.
    ssize_t say(std::string_view bytes) const { return ::write(m_master, bytes.data(), bytes.size()); }
    void unplug()
    {
        if (m_master >= 0)
            ::close(m_master);
        m_master = -1;
    }

private:
    int m_master = -1;
    std::string m_name;
};

class SerialFeed : public ::testing::Test
{
protected:
    void SetUp() override
    {
        ASSERT_FALSE(instrument.name().empty());
        profile = plainProfile(feed::SourceKind::Serial);
        profile.source.device = instrument.name();
        session.setPatience(impatient());
    }

    feed::FeedProfile profile;
    Instrument instrument;
    FeedSession session;
    LongestGap gap;
};

// Property: a line split anywhere is one value; the piece before the first end of line is none.
TEST_F(SerialFeed, ReadsLinesHoweverTheyComeInPieces)
{
    session.start(profile);
    EXPECT_EQ(session.state(), FeedSession::State::Connecting);
    for (const char* piece : {"9e-9\r\n", "1.", "5e", "-9", "\r", "\n2e-9\r\n", "3e-", "9\r\n"}) {
        instrument.say(piece);
        QTest::qWait(15);
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.linesRead() == 3; }));
    const auto values = traced(session);
    EXPECT_NEAR(values[0], 1.5e-9, 1e-15);
    EXPECT_NEAR(values[1], 2e-9, 1e-15);
    EXPECT_NEAR(values[2], 3e-9, 1e-15);
    EXPECT_TRUE(session.isLive());
    EXPECT_LT(gap.report("serial, pieces"), kGrossBlock);
}

// Property: pulled out, the port is lost at once and tried again; nothing that came before is lost.
TEST_F(SerialFeed, NoticesThePortGoingAway)
{
    session.start(profile);
    instrument.say("x\n1e-9\n2e-9\n");
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.linesRead() == 2; }));
    instrument.unplug();
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.state() == FeedSession::State::Lost; }));
    EXPECT_FALSE(session.fault().isEmpty());
    EXPECT_TRUE(session.lostSince().isSet());
    EXPECT_FALSE(session.latest().has_value()) << "an old value is not the present one";
    QTest::qWait(150); // several tries on a port that is not there
    EXPECT_EQ(session.state(), FeedSession::State::Lost);
    EXPECT_EQ(session.trace()->size(), 2u);
    EXPECT_LT(gap.report("serial, unplugged"), kGrossBlock);
}

// Property: a flood of garbage is worked off while the loop turns, and values after it are read.
TEST_F(SerialFeed, SurvivesAFloodOfGarbage)
{
    session.start(profile);
    std::string garbage(4000, '\xfe');
    garbage += std::string(10, '\0') + "\nnonsense\n";
    qint64 sent = 0;
    for (int i = 0; i < 300; ++i) {
        sent += std::max<ssize_t>(0, instrument.say(garbage));
        QTest::qWait(1);
    }
    EXPECT_GT(sent, 100'000);
    QTest::qWait(50);
    instrument.say("\n7e-9\n");
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.linesRead() == 1; }));
    EXPECT_NEAR(traced(session).back(), 7e-9, 1e-15);
    EXPECT_GT(session.linesRefused(), 0);
    EXPECT_LE(session.recentLines().size(), FeedSession::kLinesRemembered);
    EXPECT_LT(gap.report("serial, garbage"), kGrossBlock);
}

TEST_F(SerialFeed, SaysWhatIsWrongWithAPort)
{
    profile.source.device = "/dev/sealwalk-no-such-port";
    session.start(profile);
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.state() == FeedSession::State::Lost; }));
    EXPECT_TRUE(session.fault().contains(QStringLiteral("sealwalk-no-such-port")))
        << session.fault().toStdString();
}

} // namespace
} // namespace sealwalk::tests
