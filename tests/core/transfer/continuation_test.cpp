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
#include <utility>
#include <vector>

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
    job.setup = {}; // filled in later
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
    EXPECT_NE(taken.result.problems.back().find("they differ in readings"), std::string::npos)
        << taken.result.problems.back();
    EXPECT_TRUE(holds(here));
}

// Property: a measurement that was made void elsewhere comes back so; two marks that differ are no
// continuation.
TEST_F(ContinuedJob, BringsTheMarkOfAMeasurementThatIsVoid)
{
    auto& calibrations = m_before.record.job.calibrations;
    m_before.record.job.voidMeasurements.clear();
    if (calibrations.empty()) {
        calibrations.emplace_back();
        calibrations.back().id = model::CalibrationId::create();
    }
    ASSERT_EQ(take(m_before).outcome, Outcome::Came);
    const auto marked = [&](const char* reason) {
        JobFile file = m_before;
        file.record.job.voidMeasurements = {
            {model::MeasurementId(calibrations.front().id.uuid()), reason, "Ada", file.record.job.opened}};
        return file;
    };
    const transfer::TakenIn taken = take(marked("typed a decade off"));
    EXPECT_EQ(taken.outcome, Outcome::WentOn) << taken.done;
    EXPECT_NE(taken.done.find("1 void mark of a measurement"), std::string::npos) << taken.done;
    EXPECT_TRUE(holds(marked("typed a decade off")));
    EXPECT_EQ(take(marked("leak was shut")).outcome, Outcome::NotTaken);
}

// Property: nothing tells which of two set-ups is the later one; what was only filled in is.
TEST_F(ContinuedJob, WithAnotherSetupIsRefused)
{
    m_before.record.job.setup.purpose = "as it was asked for";
    m_before.record.job.setup.customer.clear();
    ASSERT_EQ(take(m_before).outcome, Outcome::Came);
    JobFile other = m_before;
    other.record.job.setup.purpose = "another";
    EXPECT_EQ(take(other).outcome, Outcome::NotTaken);
    other.record.job.sketch.revision += 1; // a drawing that went on says nothing of the set-up
    EXPECT_EQ(take(other).outcome, Outcome::NotTaken);
    JobFile filled = m_before;
    filled.record.job.setup.customer = "the mill";
    filled.record.job.setup.instruments.push_back({"gauge", "G-7", std::nullopt});
    EXPECT_EQ(take(filled).outcome, Outcome::WentOn);
    EXPECT_TRUE(holds(filled));
    EXPECT_EQ(take(m_before).outcome, Outcome::Known);
}

/// One way in which both places may have gone on, beside the readings that one of them has more.
struct BothWays
{
    const char* name;
    exchange::Part part;
    void (*here)(model::Job&);
    void (*there)(model::Job&); ///< and readings
};

void drawPoint(model::Job& job)
{
    model::Sketch& sketch = job.sketch;
    model::TestPoint point = sketch.points.back();
    point.id = model::PointId::create();
    point.number = ++sketch.lastNumber;
    point.along /= 2;
    sketch.points.push_back(point);
    ++sketch.revision;
}
void renameJoint(model::Job& job)
{
    job.sketch.joints.front().name += " of the door";
    ++job.sketch.revision;
}
void asItWas(model::Job& /*unused*/) {}

const std::vector<BothWays> kBothWays{
    {"drawn in both, as often", exchange::Part::Sketch, drawPoint, renameJoint},
    {"drawn in both, there more often", exchange::Part::Sketch, drawPoint,
     [](model::Job& job) {
         renameJoint(job);
         renameJoint(job);
     }},
    {"drawn here", exchange::Part::Sketch, drawPoint, asItWas},
    {"a limit here", exchange::Part::Setup,
     [](model::Job& job) { job.setup.pointLimit = pascalCubicMetresPerSecond(1e-9); }, asItWas},
    {"a limit there", exchange::Part::Setup, asItWas,
     [](model::Job& job) { job.setup.pointLimit = pascalCubicMetresPerSecond(1e-9); }},
    {"filled in here", exchange::Part::Setup, [](model::Job& job) { job.setup.customer = "the mill"; },
     asItWas},
    {"a repair here", exchange::Part::Repairs, [](model::Job& job) { job.repairs.back().action = "epoxy"; },
     asItWas},
    {"a repair there", exchange::Part::Repairs, asItWas,
     [](model::Job& job) { job.repairs.back().action = "epoxy"; }},
    {"an order here", exchange::Part::RoundOrder,
     [](model::Job& job) {
         auto& points = job.rounds.front().points;
         std::reverse(points.begin(), points.end());
     },
     asItWas},
};

/// A job with work of every kind, as two computers had it at first.
JobFile inBothPlaces()
{
    for (std::uint64_t seed = kSeed;; ++seed) {
        JobFile file = earlier(exchange::unsignedFile(seed));
        model::Job& job = file.record.job;
        if (job.repairs.empty() || job.rounds.empty() || job.readings.size() < 2 || job.sketch.joints.empty())
            continue;
        job.setup.pointLimit = pascalCubicMetresPerSecond(1e-8);
        job.setup.customer.clear();
        job.rounds.front().points.clear();
        for (const model::TestPoint& point : job.sketch.points)
            job.rounds.front().points.push_back(point.id);
        if (job.rounds.front().points.size() > 1)
            return file;
    }
}

// Regression: where one place had readings more, its set-up, sketch, repairs and round orders took the place
// of the other's; the other way round they went without a word.
TEST_F(ContinuedJob, ThatWasChangedInBothPlacesIsRefusedWhoeverHasMoreReadings)
{
    for (const BothWays& c : kBothWays) {
        JobFile here = inBothPlaces();
        JobFile there = here;
        here.record.job.id = there.record.job.id = model::JobId::create();
        c.here(here.record.job);
        c.there(there.record.job);
        there.record.job.readings.push_back(another(there.record.job));
        for (const auto& [first, second] : {std::pair(&here, &there), std::pair(&there, &here)}) {
            ScratchFolder folder;
            HistoryStore store =
                HistoryStore::open(folder / "a.sealwalk", HistoryStore::Mode::Create).value();
            const auto taken = [&](const JobFile& file) {
                return transfer::takeIn(store, file,
                                        exchange::verifyRecord(file.record, exchange::namesOf(file.pictures)))
                    .value();
            };
            ASSERT_EQ(taken(*first).outcome, Outcome::Came) << c.name;
            const model::Job before = store.job(first->record.job.id).value();
            const transfer::TakenIn answer = taken(*second);
            EXPECT_EQ(answer.outcome, Outcome::NotTaken) << c.name << ": " << answer.done;
            EXPECT_EQ(answer.continuation.standing, Standing::Forked) << c.name;
            EXPECT_EQ(answer.continuation.differs, c.part) << c.name;
            EXPECT_EQ(store.job(before.id).value(), before) << c.name;
        }
    }
}

// Property: the everyday way: sprayed at the other computer and only there, where the drawing went on too.
TEST_F(ContinuedJob, ThatWentOnAtOnePlaceOnlyIsTakenWithAllOfIt)
{
    const JobFile here = inBothPlaces();
    JobFile there = here;
    model::Job& job = there.record.job;
    ASSERT_EQ(take(here).outcome, Outcome::Came);
    job.readings.push_back(another(job));
    EXPECT_EQ(take(there).outcome, Outcome::WentOn);
    EXPECT_TRUE(holds(there));
    drawPoint(job);
    job.repairs.back().note = job.repairs.back().note.empty() ? "held since" : job.repairs.back().note;
    job.setup.customer = "the mill";
    job.setup.roomTemperature = degreesCelsius(23.0);
    job.readings.push_back(another(job));
    const transfer::TakenIn taken = take(there);
    const bool isRoomKnown = here.record.job.setup.roomTemperature != model::Setup{}.roomTemperature;
    EXPECT_EQ(taken.outcome, isRoomKnown ? Outcome::NotTaken : Outcome::WentOn) << taken.done;
    if (isRoomKnown) { // a temperature that was entered is not written over
        job.setup.roomTemperature = here.record.job.setup.roomTemperature;
        EXPECT_EQ(take(there).outcome, Outcome::WentOn);
    }
    EXPECT_TRUE(holds(there));
}

// Property: numbers that were given here are not given again, also where the later record does not know them.
TEST_F(ContinuedJob, NeverCountsPointNumbersBack)
{
    JobFile here = inBothPlaces();
    JobFile there = here;
    here.record.job.sketch.lastNumber += 5; // drawn in another job of the object, or taken out again
    ASSERT_EQ(take(here).outcome, Outcome::Came);
    there.record.job.readings.push_back(another(there.record.job));
    ASSERT_EQ(take(there).outcome, Outcome::WentOn);
    EXPECT_EQ(m_store.job(here.record.job.id)->sketch.lastNumber, here.record.job.sketch.lastNumber);
    EXPECT_EQ(take(there).outcome, Outcome::Known);
}

// Property: a signature covers the last number too; where that is lower than what was given here and no other
// job keeps the higher one, the job is refused.
TEST_F(ContinuedJob, ThatWasSignedBelowANumberGivenHereIsRefused)
{
    ASSERT_TRUE(m_store.putPerson(m_reviewer));
    JobFile here = m_before;
    here.record.job.sketch.lastNumber += 5;
    ASSERT_EQ(take(here).outcome, Outcome::Came);
    const auto refused = transfer::takeIn(
        m_store, m_later, exchange::verifyRecord(m_later.record, exchange::namesOf(m_later.pictures)));
    EXPECT_FALSE(refused);
    EXPECT_TRUE(holds(here));
    ASSERT_TRUE(m_store.createJob(here.record.object.id, "another", here.record.job.opened));
    EXPECT_EQ(take(m_later).outcome, Outcome::WentOn);
    EXPECT_TRUE(holds(m_later));
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
