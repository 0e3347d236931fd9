// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/calendar_day.h"
#include "core/base/timestamp.h"

#include <gtest/gtest.h>

namespace sealwalk {
namespace {

// Published: the examples of RFC 3339 section 5.8 (a profile of ISO 8601).
TEST(Timestamp, ReadsThePublishedExamples)
{
    EXPECT_EQ(Timestamp::parse("1985-04-12T23:20:50.52Z")->utcMilliseconds, 482196050520);
    // "39 minutes and 57 seconds after the 16th hour of December 19th, 1996 with an offset of -08:00"
    EXPECT_EQ(Timestamp::parse("1996-12-19T16:39:57-08:00")->utcMilliseconds,
              Timestamp::parse("1996-12-20T00:39:57Z")->utcMilliseconds);
    EXPECT_EQ(Timestamp::parse("1937-01-01T12:00:27.87+00:20")->offsetMinutes, 20);
}

// Property: text and value are one, before and after 1970, with any offset.
TEST(Timestamp, TextReadsBackAsTheSameValue)
{
    for (std::int64_t moment = -3'000'000'000'000; moment < 3'000'000'000'000; moment += 77'777'777'777) {
        for (const int offset : {-720, -210, 0, 60, 345, 840}) {
            const Timestamp at{moment, offset};
            EXPECT_EQ(Timestamp::parse(at.text()).value(), at) << at.text();
        }
    }
}

TEST(Timestamp, KeepsTheClockOnTheWall)
{
    const auto at = Timestamp::parse("2026-03-01T00:30:00.000+01:00").value();
    EXPECT_EQ(at.date(), "2026-03-01");
    EXPECT_EQ(at.timeOfDay(), "00:30:00");
}

TEST(Timestamp, RefusesWhatIsNotATimeWithItsOffset)
{
    for (const char* bad :
         {"", "2026-03-01", "2026-03-01T14:05:09", "2026-02-30T14:05:09Z", "2026-03-01T24:00:00Z",
          "2026-03-01T14:60:00Z", "2026-03-01T14:05:09.Z", "2026-03-01T14:05:09+1:00", "01.03.2026 14:05",
          "2026-03-01T14:05:09Zulu", "2026-03-01T14:05:61Z"})
        EXPECT_FALSE(Timestamp::parse(bad).has_value()) << bad;
    EXPECT_FALSE(Timestamp::parseDate("2026-13-01").has_value());
    EXPECT_FALSE(Timestamp::parseDate("2026-01-01T00").has_value());
}

TEST(Timestamp, NowIsAfterThisWasWritten)
{
    EXPECT_GT(Timestamp::now(), Timestamp::parse("2026-01-01T00:00:00Z").value());
}

// Regression: what was due on a day was over from that day's midnight UTC on, west of Greenwich from the
// evening before.
TEST(CalendarDay, IsPastOnlyOnceTheDayHasEndedOnTheWall)
{
    struct Row
    {
        const char* moment;
        bool isPast;
    };
    const Timestamp due = Timestamp::parseDate("2026-03-17").value();
    for (const Row& row : {Row{"2026-03-16T20:00:00-07:00", false}, Row{"2026-03-17T00:00:01+00:00", false},
                           Row{"2026-03-17T23:59:59+01:00", false}, Row{"2026-03-17T22:00:00-07:00", false},
                           Row{"2026-03-18T00:00:01+13:00", true}, Row{"2027-01-01T00:00:00Z", true}})
        EXPECT_EQ(isPast(due, Timestamp::parse(row.moment).value()), row.isPast) << row.moment;
}

// Regression: a folder without permission and a locked file were "bad input".
TEST(ExitStatus, IsThreeWhereTheMachineIsInTheWay)
{
    for (const ErrorCode code : {ErrorCode::MachineFailed, ErrorCode::ReadOnly, ErrorCode::Busy})
        EXPECT_EQ(exitStatus(code), 3);
    for (const ErrorCode code : {ErrorCode::BadInput, ErrorCode::NotFound, ErrorCode::NotAllowed})
        EXPECT_EQ(exitStatus(code), 2);
}

} // namespace
} // namespace sealwalk
