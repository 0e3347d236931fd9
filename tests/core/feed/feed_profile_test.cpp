// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/feed/feed_profile.h"

#include <gtest/gtest.h>

#include <functional>
#include <limits>

namespace sealwalk::feed {
namespace {

FeedProfile serial()
{
    FeedProfile profile;
    profile.name = "bench detector";
    profile.source.device = "ttyUSB0";
    return profile;
}

FeedSource tcp(const std::string& host, int port)
{
    FeedSource source;
    source.kind = SourceKind::Tcp;
    source.host = host;
    source.port = port;
    return source;
}

FeedSource recorded(const std::string& path, double speed = 1.0, double linesPerSecond = 5.0)
{
    FeedSource source;
    source.kind = SourceKind::File;
    source.path = path;
    source.speed = speed;
    source.linesPerSecond = linesPerSecond;
    return source;
}

struct Row
{
    std::function<void(FeedProfile&)> spoil;
    const char* says;
};

TEST(FeedProfile, OneSentenceForEachFault)
{
    const Row rows[] = {
        {[](FeedProfile& p) { p.name.clear(); }, "needs a name"},
        {[](FeedProfile& p) { p.source.device.clear(); }, "serial port is missing"},
        {[](FeedProfile& p) { p.source.baud = 0; }, "0 baud"},
        {[](FeedProfile& p) { p.source.dataBits = 9; }, "9 data bits"},
        {[](FeedProfile& p) { p.source.stopBits = 3; }, "3 stop bits"},
        {[](FeedProfile& p) { p.source.kind = SourceKind::Tcp; }, "network address is missing"},
        {[](FeedProfile& p) { p.source = tcp("h", 70000); }, "70000"},
        {[](FeedProfile& p) { p.source.kind = SourceKind::Pipe; }, "pipe is missing"},
        {[](FeedProfile& p) { p.source.kind = SourceKind::File; }, "file is missing"},
        {[](FeedProfile& p) { p.source = recorded("a", 0.0); }, "as fast"},
        {[](FeedProfile& p) { p.source = recorded("a", 1.0, 1e9); }, "lines per second"},
        {[](FeedProfile& p) { p.format.column = 0; }, "column of the value is 0"},
        {[](FeedProfile& p) { p.format.column = 65; }, "column of the value is 65"},
        {[](FeedProfile& p) { p.format.timeColumn = 1; }, "same column"},
        {[](FeedProfile& p) { p.format.timeColumn = -1; }, "column of the time is -1"},
        {[](FeedProfile& p) { p.format.byPattern = true; }, "one #"},
        {[](FeedProfile& p) { p.format.unit = "furlong"; }, "furlong"},
        {[](FeedProfile& p) {
             p.format.meaning = Meaning::LinearVolts;
             p.format.factor = 0.0;
         },
         "the factor"},
        {[](FeedProfile& p) {
             p.format.meaning = Meaning::LinearVolts;
             p.format.offset = std::numeric_limits<double>::quiet_NaN();
         },
         "at 0 V"},
        {[](FeedProfile& p) {
             p.format.meaning = Meaning::DecadeVolts;
             p.format.decadesPerVolt = 0.0;
         },
         "decades per volt"},
        {[](FeedProfile& p) {
             p.format.meaning = Meaning::DecadeVolts;
             p.format.exponentAtZero = 99.0;
         },
         "decade at 0 V"},
    };
    ASSERT_TRUE(checkProfile(serial()));
    for (const Row& row : rows) {
        FeedProfile profile = serial();
        row.spoil(profile);
        const Status status = checkProfile(profile);
        ASSERT_FALSE(status) << row.says;
        EXPECT_NE(status.error().message.find(row.says), std::string::npos) << status.error().message;
    }
}

TEST(FeedProfile, NamesItsSource)
{
    EXPECT_EQ(describe(serial().source), "ttyUSB0 at 9600 baud");
    EXPECT_EQ(describe(tcp("192.0.2.7", 4001)), "192.0.2.7:4001");
    EXPECT_EQ(describe(recorded("/data/run7.csv")), "run7.csv");
}

// Property: every word leads back to its value.
TEST(FeedProfile, WordsComeBack)
{
    for (const SourceKind kind : {SourceKind::Serial, SourceKind::Tcp, SourceKind::Pipe, SourceKind::File})
        EXPECT_EQ(sourceKind(wordOf(kind)), kind);
    for (const Parity p : {Parity::None, Parity::Even, Parity::Odd})
        EXPECT_EQ(parity(wordOf(p)), p);
    for (const Separator s : {Separator::Blank, Separator::Comma, Separator::Semicolon, Separator::Tab})
        EXPECT_EQ(separator(wordOf(s)), s);
    for (const Meaning m : {Meaning::Rate, Meaning::LinearVolts, Meaning::DecadeVolts})
        EXPECT_EQ(meaning(wordOf(m)), m);
    EXPECT_FALSE(meaning("ampere"));
}

} // namespace
} // namespace sealwalk::feed
