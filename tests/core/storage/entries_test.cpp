// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/storage/opened_history.h"
#include "tests/core/storage/scratch_folder.h"
#include "tests/support/random_job.h"

#include <gtest/gtest.h>

#include <limits>

namespace sealwalk::tests {
namespace {

using namespace model;
using storage::HistoryStore;

// Property: any consistent job comes back field by field.
TEST(Entries, RoundTripAnyJob)
{
    const ScratchFolder folder;
    HistoryStore store = openAt(folder / "a.sealwalk", HistoryStore::Mode::Create);
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        RandomJob sample = randomJob(seed);
        sample.job.number = 1000 + static_cast<int>(seed);
        const Status taken = store.importJob(sample.object, sample.job, {});
        ASSERT_TRUE(taken) << seed << ": " << taken.error().message;
        EXPECT_EQ(store.job(sample.job.id), sample.job) << seed;
        EXPECT_EQ(store.object(sample.object.id), sample.object) << seed;
    }
}

// Property: nothing of a refused record is stored.
TEST(Entries, RefuseWhatDoesNotBelong)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    const Job before = *opened.store.job(opened.job.id);
    const PointId point = opened.job.sketch.points[0].id;
    Reading stranger = sampleReading(RoundId::create(), point);
    EXPECT_EQ(opened.store.addReading(opened.job.id, stranger).error().code, ErrorCode::NotFound);
    stranger = sampleReading(opened.round.id, PointId::create());
    EXPECT_EQ(opened.store.addReading(opened.job.id, stranger).error().code, ErrorCode::NotFound);
    stranger = sampleReading(opened.round.id, point);
    stranger.corrects = ReadingId::create();
    EXPECT_EQ(opened.store.addReading(opened.job.id, stranger).error().code, ErrorCode::NotFound);
    stranger = sampleReading(opened.round.id, point);
    stranger.peak = LeakRate::fromSi(std::numeric_limits<double>::quiet_NaN());
    EXPECT_EQ(opened.store.addReading(opened.job.id, stranger).error().code, ErrorCode::BadInput);
    EXPECT_EQ(opened.store.addReading(JobId::create(), stranger).error().code, ErrorCode::NotFound);
    EXPECT_FALSE(opened.store.addVoid(opened.job.id, {{ReadingId::create(), "why", "Ada", moment(1)}}));
    stranger = sampleReading(opened.round.id, point);
    stranger.shielded = {PointId::create()};
    EXPECT_EQ(opened.store.addReading(opened.job.id, stranger).error().code, ErrorCode::NotFound);
    stranger.shielded = {point};
    EXPECT_EQ(opened.store.addReading(opened.job.id, stranger).error().code, ErrorCode::BadInput);
    BackgroundWatch watch = wholeJob().backgrounds[0];
    watch.swing = millibarLitresPerSecond(1e-10);
    EXPECT_FALSE(opened.store.addBackground(opened.job.id, watch)) << "a series has no swing";
    watch.swing.reset();
    watch.times.pop_back();
    EXPECT_FALSE(opened.store.addBackground(opened.job.id, watch));
    RiseTest rise = wholeJob().riseTests[0];
    rise.temperatures.pop_back();
    EXPECT_FALSE(opened.store.addRiseTest(opened.job.id, rise));
    Repair repair = wholeJob().repairs[0];
    repair.due.reset();
    EXPECT_FALSE(opened.store.putRepair(opened.job.id, repair)) << "temporary without a date";
    EXPECT_EQ(*opened.store.job(opened.job.id), before);
}

// Property: a batch of marks is one transaction.
TEST(Entries, AVoidBatchIsWholeOrNothing)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    const Reading reading = opened.add();
    EXPECT_FALSE(opened.store.addVoid(opened.job.id, {{reading.id, "moved", "Ada", moment(1)},
                                                      {ReadingId::create(), "moved", "Ada", moment(1)}}));
    EXPECT_TRUE(opened.store.job(opened.job.id)->voids.empty());
    EXPECT_TRUE(opened.store.addVoid(opened.job.id, {{reading.id, "moved", "Ada", moment(1)}}));
    EXPECT_EQ(opened.store.job(opened.job.id)->voids.size(), 1U);
}

// Property
TEST(Entries, KeepReadingsWhileTheSketchIsDrawnAnew)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    const Reading reading = opened.add(2);
    Sketch without = opened.job.sketch;
    without.points.erase(without.points.begin() + 1);
    const auto refused = opened.store.saveSketch(opened.job.id, without, 2);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::NotAllowed);
    EXPECT_NE(refused.error().message.find("point 2"), std::string::npos) << refused.error().message;
    Reading beside = sampleReading(opened.round.id, reading.point);
    beside.shielded = {opened.job.sketch.points[2].id};
    const auto taped = opened.store.addReading(opened.job.id, beside);
    ASSERT_TRUE(taped);
    Sketch untaped = opened.job.sketch;
    untaped.points.erase(untaped.points.begin() + 2);
    EXPECT_FALSE(opened.store.saveSketch(opened.job.id, untaped, 2)) << "a reading says it was taped off";
    Sketch retired = opened.job.sketch;
    retired.points[1].retired = true;
    retired.points.erase(retired.points.begin()); // called in the round, but without a reading
    ASSERT_TRUE(opened.store.saveSketch(opened.job.id, retired, 2));
    const Job job = *opened.store.job(opened.job.id);
    EXPECT_EQ(job.readings, (std::vector<Reading>{reading, *taped}));
    EXPECT_EQ(job.rounds[0].points, std::vector<PointId>{reading.point});
    // Taken back, the round calls the point again.
    ASSERT_TRUE(opened.store.saveSketch(opened.job.id, opened.job.sketch, 3));
    EXPECT_EQ(opened.store.job(opened.job.id)->rounds[0].points, opened.round.points);
}

// Property
TEST(Entries, RefuseASketchThatBreaksItsPromises)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    Sketch twice = opened.job.sketch;
    twice.points[1].number = twice.points[0].number;
    const auto refused = opened.store.saveSketch(opened.job.id, twice, 2);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::BadInput);
    EXPECT_EQ(opened.store.job(opened.job.id)->sketch, opened.job.sketch);
}

// Property
TEST(Entries, ImportGivesAnotherNumberWhenItsOwnIsTaken)
{
    const ScratchFolder folder;
    HistoryStore store = openAt(folder / "a.sealwalk", HistoryStore::Mode::Create);
    Job first = wholeJob();
    first.openedAs = 0;
    ASSERT_TRUE(store.importJob(sampleObject(), first, {samplePicture()}));
    EXPECT_EQ(store.importJob(sampleObject(), first, {}).error().code, ErrorCode::Conflict);
    Job second = first;
    second.id = fixedId<JobId>(6);
    ASSERT_TRUE(store.importJob(sampleObject(), second, {}));
    const Job stored = *store.job(second.id);
    EXPECT_EQ(stored.number, 119);
    EXPECT_EQ(stored.openedAs, 118);
    EXPECT_EQ(*store.findJob("119"), second.id);
    EXPECT_EQ(*store.findJob(second.id.text()), second.id);
    EXPECT_EQ(store.findJob("7").error().code, ErrorCode::NotFound);
    EXPECT_EQ(store.findJob("seven").error().code, ErrorCode::BadInput);
}

// Property: a refused import leaves nothing, not even its object.
TEST(Entries, ImportIsWholeOrNothing)
{
    const ScratchFolder folder;
    HistoryStore store = openAt(folder / "a.sealwalk", HistoryStore::Mode::Create);
    Job job = wholeJob();
    job.readings[1].round = RoundId::create();
    EXPECT_FALSE(store.importJob(sampleObject(), job, {samplePicture()}));
    job = wholeJob();
    job.readings[1].sequence = 1;
    EXPECT_FALSE(store.importJob(sampleObject(), job, {}));
    Picture wrong = samplePicture();
    wrong.bytes.push_back('d');
    EXPECT_FALSE(store.importJob(sampleObject(), wholeJob(), {wrong}));
    EXPECT_TRUE(store.objects()->empty());
    EXPECT_TRUE(store.jobs()->empty());
    EXPECT_FALSE(store.picture(samplePicture().sha256));
}

// Published: FIPS 180-4, SHA-256 of "abc".
TEST(Entries, PicturesAreNamedByTheirContent)
{
    const ScratchFolder folder;
    HistoryStore store = openAt(folder / "a.sealwalk", HistoryStore::Mode::Create);
    EXPECT_EQ(store.addPicture(samplePicture().bytes, "png"), samplePicture().sha256);
    EXPECT_EQ(store.addPicture(samplePicture().bytes, "png"), samplePicture().sha256) << "twice is once";
    EXPECT_EQ(store.picture(samplePicture().sha256), samplePicture());
    EXPECT_FALSE(store.addPicture({}, "png"));
}

// Property
// Regression: trace and reading were two transactions; a failed try left a trace without a reading for ever.
TEST(Entries, AReadingAndItsTraceAreStoredTogetherOrNotAtAll)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    const PointId point = opened.job.sketch.points[0].id;
    const storage::Trace trace{{0.0, 0.25}, {1e-9F, 2e-9F}};
    Reading refused = sampleReading(opened.round.id, PointId::create());
    refused.trace = "1 first";
    EXPECT_FALSE(opened.store.addReading(opened.job.id, refused, trace));
    EXPECT_TRUE(opened.store.traces(opened.job.id)->empty());
    Reading reading = sampleReading(opened.round.id, point);
    reading.trace = "1 first";
    const std::size_t before = opened.store.job(opened.job.id)->readings.size();
    EXPECT_FALSE(opened.store.addReading(opened.job.id, reading, storage::Trace{{0.0}, {}}));
    EXPECT_EQ(opened.store.job(opened.job.id)->readings.size(), before);
    const auto stored = opened.store.addReading(opened.job.id, reading, trace);
    ASSERT_TRUE(stored);
    EXPECT_TRUE(stored->trace.starts_with("1 first sha256:"));
    EXPECT_EQ(opened.store.trace(opened.job.id, stored->trace), trace);
    EXPECT_EQ(opened.store.checkBeside(opened.job.id), std::vector<std::string>{});
}

TEST(Entries, TracesPeopleAndSettingsComeBack)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    ASSERT_TRUE(opened.store.addTrace(opened.job.id, "t-1", {0.0, 0.25}, {1e-9F, 2e-9F}));
    EXPECT_EQ(opened.store.trace(opened.job.id, "t-1"), (storage::Trace{{0.0, 0.25}, {1e-9F, 2e-9F}}));
    EXPECT_FALSE(opened.store.trace(opened.job.id, "t-2"));
    const auto traces = opened.store.traces(opened.job.id);
    ASSERT_TRUE(traces);
    EXPECT_EQ(traces->size(), 1U);
    HistoryStore elsewhere = openAt(folder / "b.sealwalk", HistoryStore::Mode::Create);
    ASSERT_TRUE(elsewhere.importJob(sampleObject(), *opened.store.job(opened.job.id), {}, *traces));
    EXPECT_EQ(elsewhere.traces(opened.job.id), *traces) << "they come along into another history";
    Person person;
    person.id = fixedId<PersonId>(9);
    person.name = "Brook";
    ASSERT_TRUE(opened.store.putPerson(person));
    person.publicKey = std::string(64, 'a');
    ASSERT_TRUE(opened.store.putPerson(person)) << "a first key";
    EXPECT_EQ(opened.store.people(), std::vector<Person>{person});
    Person other = person;
    other.publicKey = std::string(64, 'b');
    EXPECT_EQ(opened.store.putPerson(other).error().code, ErrorCode::Conflict);
    person.active = false;
    EXPECT_TRUE(opened.store.putPerson(person));
    EXPECT_TRUE(opened.store.putPerson(person, "Ada"));
    std::vector<std::string> told;
    const auto entries = opened.store.personEntries();
    ASSERT_TRUE(entries);
    for (const PersonEntry& entry : *entries)
        told.push_back(entry.what + " by " + entry.by);
    EXPECT_EQ(told, (std::vector<std::string>{"added by ", "got a signing key by ", "left by "}))
        << "what changed nothing is no entry";
    EXPECT_EQ(opened.store.setting("language"), "");
    ASSERT_TRUE(opened.store.putSetting("language", "de"));
    ASSERT_TRUE(opened.store.putSetting("language", "en"));
    EXPECT_EQ(opened.store.setting("language"), "en");
}

// Regression: one byte in Latin-1 was stored; from then on the job could be neither signed nor packed, and a
// reading is never taken back.
TEST(Entries, RefuseTextThatIsNotUtf8)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    const Job before = *opened.store.job(opened.job.id);
    Reading reading = sampleReading(opened.round.id, opened.job.sketch.points[0].id);
    reading.by = "M\xfcller";
    const auto stored = opened.store.addReading(opened.job.id, reading);
    ASSERT_FALSE(stored);
    EXPECT_EQ(stored.error().code, ErrorCode::BadInput);
    EXPECT_NE(stored.error().message.find("UTF-8"), std::string::npos) << stored.error().message;
    ReviewEntry remark = reviewEntry(ReviewStep::Remark);
    remark.text = "\xf6";
    EXPECT_EQ(opened.store.addReview(opened.job.id, remark).error().code, ErrorCode::BadInput);
    model::Setup setup = before.setup;
    setup.detector = "\xff";
    EXPECT_EQ(opened.store.saveSetup(opened.job.id, setup).error().code, ErrorCode::BadInput);
    EXPECT_EQ(*opened.store.job(opened.job.id), before);
    reading.by = "M\u00fcller";
    EXPECT_TRUE(opened.store.addReading(opened.job.id, reading));
}

// Property: a void mark names a measurement of its job, once, with a reason, while the job is open for work.
TEST(Entries, AMeasurementIsMadeVoidOnce)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    const RiseTest rise = wholeJob().riseTests[0];
    ASSERT_TRUE(opened.store.addRiseTest(opened.job.id, rise));
    MeasurementVoid mark{MeasurementId::create(), "the valve was not shut", "Ada", moment(9)};
    EXPECT_EQ(opened.store.addMeasurementVoid(opened.job.id, mark).error().code, ErrorCode::NotFound);
    mark.measurement = MeasurementId(rise.id.uuid());
    MeasurementVoid bare = mark;
    bare.reason.clear();
    EXPECT_EQ(opened.store.addMeasurementVoid(opened.job.id, bare).error().code, ErrorCode::BadInput);
    ASSERT_TRUE(opened.store.addMeasurementVoid(opened.job.id, mark));
    EXPECT_FALSE(opened.store.addMeasurementVoid(opened.job.id, mark)) << "void already";
    EXPECT_EQ(opened.store.job(opened.job.id)->voidMeasurements, std::vector<MeasurementVoid>{mark});
    EXPECT_EQ(opened.store.check(), std::vector<std::string>{});
    const auto found = opened.store.jobs("valve was not shut");
    ASSERT_TRUE(found);
    EXPECT_EQ(found->size(), 1U);
}

} // namespace
} // namespace sealwalk::tests
