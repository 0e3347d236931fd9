// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/files.h"
#include "core/storage/history_store.h"
#include "tests/support/job_file_at_once.h"
#include "tests/support/signed_job.h"
#include "tests/support/temporary_history.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

namespace sealwalk::tests {
namespace {

constexpr std::uint64_t kSeed = 31;

std::filesystem::path besides(const TemporaryHistory& history, const char* name)
{
    return history.file().parent_path() / name;
}

// Property: what one history writes another takes in whole, once.
TEST(SessionJobFiles, GoFromOneHistoryToAnother)
{
    TemporaryHistory from;
    from.startJob(6);
    const auto file = besides(from, "job.sealjob");
    ASSERT_TRUE(writeOpenJob(from.session, file).has_value());

    TemporaryHistory to;
    QSignalSpy changed(&to.session, &ui::JobSession::historyChanged);
    const auto taken = takeJobFile(to.session, file);
    ASSERT_TRUE(taken.has_value()) << taken.error().message;
    EXPECT_EQ(taken->outcome, transfer::Outcome::Came);
    EXPECT_EQ(changed.count(), 1);
    ASSERT_TRUE(to.session.openJob(taken->job).has_value());
    EXPECT_TRUE(to.session.job().sketch == from.session.job().sketch);

    const auto again = takeJobFile(to.session, file);
    ASSERT_TRUE(again.has_value()) << again.error().message;
    EXPECT_EQ(again->outcome, transfer::Outcome::Known);
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(to.session.history().jobs()->size(), 1U);
}

TEST(SessionJobFiles, WhatWasChangedAfterSigningStaysOutside)
{
    TemporaryHistory history;
    exchange::JobFile forged = exchange::signedFile(kSeed, exchange::testPerson("Rhea", "reviewer"));
    forged.record.job.readings[0].by = "somebody else";
    const auto file = besides(history, "forged.sealjob");
    ASSERT_TRUE(exchange::writeFile(file.string(), exchange::packJobFile(forged).value()).has_value());
    const auto taken = takeJobFile(history.session, file);
    ASSERT_FALSE(taken.has_value());
    EXPECT_EQ(taken.error().code, ErrorCode::DamagedFile);
    EXPECT_NE(taken.error().message.find("forged.sealjob: "), std::string::npos) << taken.error().message;
    EXPECT_TRUE(history.session.history().jobs()->empty());

    EXPECT_EQ(takeJobFile(history.session, besides(history, "none.sealjob")).error().code,
              ErrorCode::NotFound);
}

} // namespace
} // namespace sealwalk::tests
