// SPDX-License-Identifier: GPL-3.0-or-later
// What a session keeps, whatever its source does.
#include "tests/ui/feed/longest_gap.h"
#include "ui/feed/feed_words.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>
#include <QTest>

namespace sealwalk::tests {
namespace {

using ui::FeedSession;

TEST(FeedSession, SaysItsStateInWords)
{
    FeedSession session;
    session.setPatience(impatient());
    EXPECT_EQ(ui::feedStateText(session), QStringLiteral("no detector feed"));
    feed::FeedProfile profile = plainProfile(feed::SourceKind::Pipe);
    profile.source.path = "/nowhere/at/all";
    session.start(profile);
    EXPECT_EQ(session.state(), FeedSession::State::Lost);
    EXPECT_TRUE(ui::feedStateText(session).contains(QString::fromStdString(session.lostSince().timeOfDay())));
    EXPECT_TRUE(ui::feedStateSentence(session).contains(session.fault()));
    session.stop();
    EXPECT_EQ(session.state(), FeedSession::State::Off);
    EXPECT_TRUE(session.fault().isEmpty());
}

// Property: units that need the gas take the job's room temperature: amounts at 313 K are more pV flow.
TEST(FeedSession, TakesTheJobsGas)
{
    QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("run.txt")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("1e-9\n");
    file.close();
    feed::FeedProfile profile = plainProfile(feed::SourceKind::File);
    profile.source.path = file.fileName().toStdString();
    profile.format.unit = "mol/s";
    FeedSession session;
    std::vector<double> values;
    for (const double celsius : {20.0, 40.0}) {
        FlowBasis basis;
        basis.gas = degreesCelsius(celsius);
        session.setBasis(basis);
        session.start(profile);
        ASSERT_TRUE(QTest::qWaitFor([&] { return session.state() == FeedSession::State::Ended; }));
        values.push_back(traced(session).back());
    }
    EXPECT_NEAR(values[1] / values[0], 313.15 / 293.15, 1e-6);
}

} // namespace
} // namespace sealwalk::tests
