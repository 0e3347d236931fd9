// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/search_list.h"
#include "tests/core/storage/opened_history.h"
#include "tests/core/storage/scratch_folder.h"

#include <SQLiteCpp/Database.h>
#include <gtest/gtest.h>

namespace sealwalk::tests {
namespace {

// Property: one row per thing a job can be found by, and some that must not find it.
TEST(Search, FindsAJobByEverythingPeopleType)
{
    const ScratchFolder folder;
    storage::HistoryStore store = openAt(folder / "a.sealwalk", storage::HistoryStore::Mode::Create);
    ASSERT_TRUE(store.importJob(sampleObject(), wholeJob(), {samplePicture()}));
    const std::pair<const char*, std::size_t> table[] = {
        {"", 1},
        {"ÄLTESTE", 1},
        {"älteste kam", 1},
        {"t-0042", 1},
        {"hall", 1},
        {"yearly", 1},
        {"2026-03", 1},
        {"118", 1},
        {"ada", 1},
        {"BROOK", 1},
        {"permeation", 1},
        {"nick", 1},
        {"door seal", 1},
        {"door zzz", 0},
        {"%", 0},
        {"_", 0},
        {"2025", 0},
        {"  hall\t3 ", 1},
        {"signed", 1},
        {"o'clock\"--", 0},
        {"concession", 1},
        {"next stop", 1},
        {"temporary", 1},
        {"epoxy", 1},
        {"within", 1},
        {"not accessible", 1},
        {"behind frame", 1},
        {"hose", 1},
        {"rises slowly", 1},
    };
    for (const auto& row : table) {
        const auto found = store.jobs(row.first);
        ASSERT_TRUE(found) << row.first;
        EXPECT_EQ(found->size(), row.second) << row.first;
    }
    EXPECT_EQ(store.objects("ältes")->size(), 1U);
    EXPECT_EQ(store.objects("nothing")->size(), 0U);
}

// Property: where a word stands that the row does not show; the line as it was written, once.
TEST(Search, TellsWhereAWordStands)
{
    const ScratchFolder folder;
    storage::HistoryStore store = openAt(folder / "a.sealwalk", storage::HistoryStore::Mode::Create);
    ASSERT_TRUE(store.importJob(sampleObject(), wholeJob(), {samplePicture()}));
    using Lines = std::vector<std::string>;
    const std::pair<const char*, Lines> table[] = {
        {"", {}},
        {"118", {}},
        {"yearly älteste", {}},
        {"door SEAL", {"Door seal"}},
        {"yearly epoxy", {"epoxy"}},
        {"epoxy concession", {"epoxy", "concession"}},
        {"behind frame", {"behind frame"}},
        {"epoxy nowhere", {}},
    };
    const auto rows = store.jobs();
    ASSERT_TRUE(rows);
    for (const auto& [typed, expected] : table) {
        const auto found = store.foundIn(rows->front(), {typed});
        ASSERT_TRUE(found) << typed;
        EXPECT_EQ(*found, expected) << typed;
    }
    // Of several ways to search the first that has all its words, as the search itself.
    EXPECT_EQ(store.foundIn(rows->front(), {"epoxy undicht", "epoxy concession"}).value(),
              (Lines{"epoxy", "concession"}));
    EXPECT_EQ(store.foundIn(rows->front(), {"yearly", "epoxy"}).value(), Lines{}) << "the row shows it";
}

// Property
TEST(Search, KnowsWhoJoinedWhileTheJobWentOn)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    model::Reading reading = sampleReading(opened.round.id, opened.job.sketch.points[0].id);
    reading.by = "Zoë";
    EXPECT_EQ(opened.store.jobs("zoë")->size(), 0U);
    ASSERT_TRUE(opened.store.addReading(opened.job.id, reading));
    EXPECT_EQ(opened.store.jobs("ZOË")->size(), 1U);
    EXPECT_EQ(opened.store.jobs()->front().readings, 1);
}

// Regression: what had just been recorded at a point, marked void or noted of a pressure rise was not found,
// when its author was known; the list stays the one that is made of the record.
TEST(Search, FindsWhatWasJustRecorded)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    const auto& points = opened.job.sketch.points;
    model::Reading reading = sampleReading(opened.round.id, points[0].id);
    const model::Reading first = opened.store.addReading(opened.job.id, reading).value();
    reading.id = model::ReadingId::create();
    reading.remark = "Frost on the Flange\nand a hiss";
    ASSERT_TRUE(opened.store.addReading(opened.job.id, reading));
    reading.id = model::ReadingId::create();
    reading.outcome = model::Outcome::NotAccessible;
    reading.reason = "behind the cable tray";
    reading.peak.reset();
    ASSERT_TRUE(opened.store.addReading(opened.job.id, reading));
    model::VoidMark mark;
    mark.reading = first.id;
    mark.reason = "probe slipped";
    mark.by = reading.by;
    ASSERT_TRUE(opened.store.addVoid(opened.job.id, {mark}));
    model::RiseTest rise;
    rise.id = model::RiseTestId::create();
    rise.at = moment(50);
    rise.times = {0, 1};
    rise.pressures = {1, 2};
    rise.by = reading.by;
    rise.note = "pump oil was changed";
    ASSERT_TRUE(opened.store.addRiseTest(opened.job.id, rise));
    model::Calibration check;
    check.id = model::CalibrationId::create();
    check.at = moment(51);
    check.by = reading.by;
    check.note = "valve was throttled";
    check.place = "gauge port";
    ASSERT_TRUE(opened.store.addCalibration(opened.job.id, check));
    model::ReviewEntry word;
    word.id = model::ReviewId::create();
    word.step = model::ReviewStep::Remark;
    word.by = reading.by;
    word.at = moment(52);
    word.text = "Reached with the long lance?";
    ASSERT_TRUE(opened.store.addReview(opened.job.id, word));
    for (const char* typed : {"throttled", "gauge port", "long lance", "frost on the flange", "hiss",
                              "not accessible", "cable tray", "void", "probe slipped", "oil was changed"})
        EXPECT_EQ(opened.store.jobs(typed)->size(), 1U) << typed;
    EXPECT_EQ(opened.store.jobs()->front().readings, 3);
    EXPECT_EQ(opened.store.check(), std::vector<std::string>{});
}

// Property: a list of an earlier release gets the words of today at the next opening to write; one that
// somebody bent is told as what it is, and made anew.
TEST(Search, MakesItsListAnew)
{
    const ScratchFolder folder;
    const auto file = folder / "a.sealwalk";
    {
        storage::HistoryStore store = openAt(file, storage::HistoryStore::Mode::Create);
        ASSERT_TRUE(store.importJob(sampleObject(), wholeJob(), {samplePicture()}));
    }
    {
        SQLite::Database database(file.string(), SQLite::OPEN_READWRITE);
        ASSERT_EQ(database.exec("DELETE FROM setting WHERE name = 'search list'"), 1);
        ASSERT_EQ(database.exec("UPDATE job_summary SET words = replace(words, 'epoxy', '')"), 1);
    }
    EXPECT_EQ(openAt(file, storage::HistoryStore::Mode::ReadOnly).jobs("epoxy")->size(), 0U);
    EXPECT_EQ(openAt(file, storage::HistoryStore::Mode::ReadWrite).jobs("epoxy")->size(), 1U);
    const auto beside = openAt(file, storage::HistoryStore::Mode::ReadOnly).checkBeside(wholeJob().id);
    for (const char* bent : {"UPDATE job_summary SET readings = 77",
                             "UPDATE job_summary SET words = words || 'x'", "DELETE FROM job_summary"}) {
        {
            SQLite::Database database(file.string(), SQLite::OPEN_READWRITE);
            ASSERT_EQ(database.exec(bent), 1);
        }
        storage::HistoryStore store = openAt(file, storage::HistoryStore::Mode::ReadWrite);
        const auto problems = store.check().value();
        ASSERT_EQ(problems.size(), 1U) << bent;
        EXPECT_NE(problems.front().find("the history's own list"), std::string::npos) << problems.front();
        EXPECT_EQ(store.checkBeside(wholeJob().id), beside) << "it says nothing of the job";
        ASSERT_TRUE(storage::makeSearchListAnew(file));
        EXPECT_EQ(store.check(), std::vector<std::string>{}) << bent;
        EXPECT_EQ(store.jobs("epoxy")->size(), 1U) << bent;
    }
}

// Property: newest first, each with its counts.
TEST(Search, ListsJobsNewestFirst)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    ASSERT_TRUE(opened.store.createJob(sampleObject().id, "older", moment(-9000)));
    ASSERT_TRUE(opened.store.createJob(sampleObject().id, "newer", moment(9000)));
    const auto rows = opened.store.jobs();
    ASSERT_TRUE(rows);
    ASSERT_EQ(rows->size(), 3U);
    EXPECT_EQ((*rows)[0].purpose, "newer");
    EXPECT_EQ((*rows)[2].purpose, "older");
    EXPECT_EQ((*rows)[1].points, 4);
    EXPECT_EQ(opened.store.objects()->front().jobs, 3);
    EXPECT_EQ(opened.store.objects()->front().lastOpened, moment(9000));
}

// Property: named while nothing was done: no later concession, no later permanent repair at the point.
TEST(Search, NamesConcessionsAtTheirEnd)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    const auto& points = opened.job.sketch.points;
    model::Concession first;
    first.id = model::ConcessionId::create();
    first.points = {points[0].id, points[1].id};
    first.grantedBy = "Cleo";
    first.until = moment(5000);
    first.reason = "spare part ordered";
    first.by = "Brook";
    first.at = moment(10);
    ASSERT_TRUE(opened.store.addConcession(opened.job.id, first));
    const auto ending = [&](int day) {
        return opened.store.concessionsEndingBy(moment(day), sampleObject().id).value();
    };
    EXPECT_TRUE(ending(4999).empty());
    ASSERT_EQ(ending(5000).size(), 1U);
    EXPECT_EQ(ending(5000).front().concession, first);
    EXPECT_EQ(ending(5000).front().jobNumber, opened.job.number);
    EXPECT_EQ(ending(5000).front().objectName, sampleObject().name);
    EXPECT_EQ(opened.store.concessionsEndingBy(moment(5000))->size(), 1U) << "of all objects";

    model::Concession again = first;
    again.id = model::ConcessionId::create();
    again.points = {points[0].id};
    again.until = moment(9000);
    again.at = moment(20);
    ASSERT_TRUE(opened.store.addConcession(opened.job.id, again));
    ASSERT_EQ(ending(5000).size(), 1U);
    EXPECT_EQ(ending(5000).front().concession.points, std::vector{points[1].id});
    model::Repair made;
    made.id = model::RepairId::create();
    made.points = {points[1].id};
    made.action = "new seal";
    made.at = moment(30);
    ASSERT_TRUE(opened.store.putRepair(opened.job.id, made));
    EXPECT_EQ(ending(5000).size(), 1U) << "regression: a repair ended it before the point was sprayed again";
    model::Reading sprayed = sampleReading(opened.round.id, points[1].id);
    sprayed.at = moment(40);
    sprayed.outcome = model::Outcome::NoResponse;
    sprayed.peak.reset();
    const model::Reading stored = opened.store.addReading(opened.job.id, sprayed).value();
    EXPECT_TRUE(ending(5000).empty());
    EXPECT_EQ(ending(9000).size(), 1U);
    ASSERT_TRUE(opened.store.addVoid(opened.job.id, {{stored.id, "the wrong point", "Ada", moment(41)}}));
    EXPECT_EQ(ending(5000).size(), 1U);
}

// Regression: a concession was told of for ever, also when its point had been retired, found within by a
// person, or measured in a later job that was signed.
TEST(Search, NamesNoConcessionThatALaterJobDealtWith)
{
    for (const char* how : {"measured", "retired", "judged"}) {
        const ScratchFolder folder;
        OpenedHistory opened(folder / "a.sealwalk");
        const model::PointId point = opened.job.sketch.points[0].id;
        model::Concession leave;
        leave.id = model::ConcessionId::create();
        leave.points = {point};
        leave.grantedBy = "Cleo";
        leave.until = moment(5000);
        leave.reason = "spare part ordered";
        leave.at = moment(10);
        ASSERT_TRUE(opened.store.addConcession(opened.job.id, leave));
        model::Reading covered = sampleReading(opened.round.id, point);
        covered.at = moment(12);
        ASSERT_TRUE(opened.store.addReading(opened.job.id, covered)) << "what the concession is for";
        opened.sign();
        const auto ending = [&] { return opened.store.concessionsEndingBy(moment(5000))->size(); };
        ASSERT_EQ(ending(), 1U) << how;
        model::Job next = opened.store.createJob(sampleObject().id, "a year on", moment(3000)).value();
        EXPECT_EQ(ending(), 1U) << how;
        model::Round round;
        round.points = {point};
        round.opened = moment(3001);
        round = opened.store.addRound(next.id, round).value();
        if (how == std::string("retired")) {
            for (model::TestPoint& one : next.sketch.points)
                one.retired = one.retired || one.id == point;
            ASSERT_TRUE(opened.store.saveSketch(next.id, next.sketch, next.sketch.revision));
        } else if (how == std::string("judged")) {
            model::Judgement verdict;
            verdict.id = model::JudgementId::create();
            verdict.point = point;
            verdict.round = round.id;
            verdict.verdict = "within";
            verdict.reason = "an echo of the flange beside";
            verdict.at = moment(3100);
            ASSERT_TRUE(opened.store.addJudgement(next.id, verdict));
        } else {
            model::Reading measured = sampleReading(round.id, point);
            measured.at = moment(3002);
            ASSERT_TRUE(opened.store.addReading(next.id, measured));
            EXPECT_EQ(ending(), 1U) << "whether it is within is not decided yet";
            opened.job = next;
            opened.sign();
        }
        EXPECT_EQ(ending(), 0U) << how;
    }
}

// Property: from an earlier job's temporary repair until a later one makes it good.
TEST(Search, CountsTemporaryRepairsUntilTheyAreMadeGood)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    model::Repair patch;
    patch.id = model::RepairId::create();
    patch.points = {opened.job.sketch.points[0].id};
    patch.action = "filler";
    patch.permanent = false;
    patch.owner = "Cleo";
    patch.due = moment(90000);
    ASSERT_TRUE(opened.store.putRepair(opened.job.id, patch));
    opened.sign();
    EXPECT_EQ(opened.store.objects()->front().openTemporaryRepairs, 1);
    const auto waiting = opened.store.openTemporaryRepairs(sampleObject().id);
    ASSERT_TRUE(waiting);
    ASSERT_EQ(waiting->size(), 1U);
    EXPECT_EQ(waiting->front().repair, patch);
    EXPECT_EQ(waiting->front().jobNumber, opened.job.number);
    const model::Job next = *opened.store.createJob(sampleObject().id, "again", moment(100000));
    model::Repair weld;
    weld.id = model::RepairId::create();
    weld.points = patch.points;
    weld.action = "re-weld";
    weld.makesGood = {patch.id};
    ASSERT_TRUE(opened.store.putRepair(next.id, weld));
    EXPECT_EQ(opened.store.objects()->front().openTemporaryRepairs, 0);
    EXPECT_EQ(opened.store.openTemporaryRepairs(sampleObject().id)->size(), 0U);
}

} // namespace
} // namespace sealwalk::tests
