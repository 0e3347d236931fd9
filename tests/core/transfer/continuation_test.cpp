// SPDX-License-Identifier: GPL-3.0-or-later
// A job that was worked on at two computers and comes back.
#include "core/exchange/continuation.h"
#include "core/exchange/job_import.h"
#include "core/transfer/hand_out.h"
#include "core/transfer/take_in.h"
#include "tests/core/storage/scratch_folder.h"
#include "tests/support/signed_job.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace sealwalk::tests {
namespace {

using exchange::JobFile;
using exchange::Standing;
using storage::HistoryStore;
using transfer::Outcome;

constexpr std::uint64_t kSeed = 31;

/// What `file` was some work ago.
JobFile earlier(JobFile file)
{
    model::Job& job = file.record.job;
    job.readings.resize(job.readings.size() - 3);
    std::erase_if(job.voids,
                  [&](const model::VoidMark& mark) { return job.reading(mark.reading) == nullptr; });
    job.judgements.clear();
    job.concessions.clear();
    job.signatures.clear();
    job.review.clear();
    job.state = model::JobState::Open;
    for (model::Round& round : job.rounds)
        round.closed.reset();
    job.setup.purpose = "as it was asked for";
    job.sketch.revision -= 1;
    return file;
}

model::Reading another(const model::Job& job)
{
    model::Reading reading = job.readings.back();
    reading.id = model::ReadingId::create();
    reading.corrects.reset();
    reading.sequence += 1;
    reading.by = "the other one";
    return reading;
}

class ContinuedJob : public testing::Test
{
protected:
    ContinuedJob()
        : m_store(HistoryStore::open(m_folder / "a.sealwalk", HistoryStore::Mode::Create).value())
    {}

    transfer::TakenIn take(const JobFile& file)
    {
        return transfer::takeIn(m_store, file,
                                exchange::verifyRecord(file.record, exchange::namesOf(file.pictures)))
            .value();
    }
    bool holds(const JobFile& file)
    {
        const auto record = transfer::loadRecord(m_store, file.record.job.id);
        return record && exchange::isSameJob(*record, file.record);
    }

    ScratchFolder m_folder;
    HistoryStore m_store;
    model::Person m_reviewer = exchange::testPerson("Rhea Quill", "reviewer");
    JobFile m_later = exchange::signedFile(kSeed, m_reviewer);
    JobFile m_before = earlier(m_later);
};

// Property: whatever was added elsewhere is here afterwards, the job the same as in the file, byte for byte.
// Regression: it was refused as "differs".
TEST_F(ContinuedJob, ComesBackWithAllThatWasAdded)
{
    ASSERT_TRUE(m_store.putPerson(m_reviewer));
    EXPECT_EQ(take(m_before).outcome, Outcome::Came);
    const transfer::TakenIn taken = take(m_later);
    EXPECT_EQ(taken.outcome, Outcome::WentOn) << taken.done;
    for (const char* said : {"3 readings", "submitted", "approved", "1 signature", "set-up changed"})
        EXPECT_NE(taken.done.find(said), std::string::npos) << said << " in " << taken.done;
    EXPECT_TRUE(holds(m_later));
    EXPECT_EQ(transfer::verifyIn(m_store, taken.job)->problems, std::vector<std::string>{});
    EXPECT_EQ(take(m_later).outcome, Outcome::Known);
    const transfer::TakenIn back = take(m_before);
    EXPECT_EQ(back.outcome, Outcome::Known) << back.done;
    EXPECT_NE(back.done.find("further on here"), std::string::npos) << back.done;
    EXPECT_TRUE(holds(m_later));
}

// Property: a number given here stays.
TEST_F(ContinuedJob, KeepsTheNumberItHasHere)
{
    model::Job first;
    first.id = model::JobId::create();
    first.number = m_before.record.job.number;
    first.object = m_before.record.object.id;
    first.opened = m_before.record.job.opened;
    ASSERT_TRUE(m_store.importJob(m_before.record.object, first, {}));
    EXPECT_TRUE(take(m_before).isRenumbered);
    const int number = m_store.job(m_before.record.job.id)->number;
    EXPECT_EQ(take(m_later).outcome, Outcome::WentOn);
    EXPECT_EQ(m_store.job(m_before.record.job.id)->number, number);
    EXPECT_TRUE(holds(m_later));
}

// Property: what went on in both places is told and left alone.
TEST_F(ContinuedJob, ThatForkedIsRefused)
{
    JobFile here = m_before;
    here.record.job.readings.push_back(another(here.record.job));
    ASSERT_EQ(take(here).outcome, Outcome::Came);
    const transfer::TakenIn taken = take(m_later);
    EXPECT_EQ(taken.outcome, Outcome::NotTaken);
    ASSERT_FALSE(taken.result.problems.empty());
    EXPECT_NE(taken.result.problems.back().find("went on in both places: they differ in readings"),
              std::string::npos)
        << taken.result.problems.back();
    EXPECT_TRUE(holds(here));
}

// Property: nothing tells which of two set-ups is the later one.
TEST_F(ContinuedJob, WithAnotherSetupAloneIsRefused)
{
    ASSERT_EQ(take(m_before).outcome, Outcome::Came);
    JobFile other = m_before;
    other.record.job.setup.purpose = "another";
    EXPECT_EQ(take(other).outcome, Outcome::NotTaken);
    other.record.job.sketch.revision += 1; // but a drawing that went on does
    EXPECT_EQ(take(other).outcome, Outcome::WentOn);
    EXPECT_TRUE(holds(other));
}

// Property: a signed job takes signed amendments, and nothing else.
TEST_F(ContinuedJob, ThatIsSignedGoesOnInAmendmentsOnly)
{
    ASSERT_EQ(take(m_later).outcome, Outcome::Came);
    JobFile amended = m_later;
    amended.record.job.review.push_back(exchange::turn(model::ReviewStep::Amendment, m_reviewer.name));
    JobFile remarked = m_later;
    remarked.record.job.review.push_back(exchange::turn(model::ReviewStep::Remark, m_reviewer.name));
    JobFile worked = m_later;
    worked.record.job.readings.push_back(another(worked.record.job));
    for (const JobFile& file : {amended, remarked, worked}) {
        EXPECT_EQ(take(file).outcome, Outcome::NotTaken);
        EXPECT_TRUE(holds(m_later));
    }
    amended.record.job.signatures.push_back(
        exchange::signJob(amended.record, exchange::namesOf(amended.pictures), m_reviewer,
                          exchange::kTestPassphrase,
                          {"amendment", "the gauge read too high", amended.record.job.review.back().at})
            .value());
    const transfer::TakenIn taken = take(amended);
    EXPECT_EQ(taken.outcome, Outcome::WentOn) << taken.done;
    EXPECT_TRUE(holds(amended));
    EXPECT_EQ(transfer::verifyIn(m_store, taken.job)->problems, std::vector<std::string>{});
}

// Property: what another window stored meanwhile is not written over, and a bad continuation changes nothing.
TEST_F(ContinuedJob, IsOneTransaction)
{
    ASSERT_EQ(take(m_before).outcome, Outcome::Came);
    const model::Job here = m_store.job(m_before.record.job.id).value();
    model::Job stale = here;
    stale.setup.purpose = "as another window had it";
    EXPECT_EQ(m_store.continueJob(stale, m_later.record.job, m_later.pictures).error().code,
              ErrorCode::Conflict);
    model::Job bad = m_later.record.job;
    bad.readings.back().point = model::PointId::create();
    EXPECT_FALSE(m_store.continueJob(here, bad, m_later.pictures));
    model::Job shorter = m_later.record.job;
    shorter.calibrations.clear();
    shorter.readings.erase(shorter.readings.begin());
    EXPECT_FALSE(m_store.continueJob(here, shorter, m_later.pictures));
    EXPECT_EQ(m_store.job(here.id), here);
}

// Property: of two random histories of one job the longer goes on from the shorter, whatever the job.
TEST(Continuation, IsFoundForAnyJob)
{
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const JobFile later = exchange::unsignedFile(seed);
        if (later.record.job.readings.size() < 4)
            continue;
        const JobFile before = earlier(later);
        EXPECT_EQ(exchange::compareRecords(before.record, later.record).standing, Standing::Further) << seed;
        EXPECT_EQ(exchange::compareRecords(later.record, before.record).standing, Standing::Behind) << seed;
        EXPECT_EQ(exchange::compareRecords(later.record, later.record).standing, Standing::Same) << seed;
    }
}

} // namespace
} // namespace sealwalk::tests
