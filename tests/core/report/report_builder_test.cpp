// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/claim.h"
#include "core/analysis/round_summary.h"
#include "core/report/map_builder.h"
#include "core/report/rate_text.h"
#include "core/report/report_builder.h"
#include "core/storage/history_store.h"
#include "demo/history/demo_history.h"
#include "tests/support/jobs.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <set>

namespace sealwalk::report {
namespace {

/// All words of a report, block by block.
std::string wordsOf(const ReportContent& content)
{
    std::string all = content.title + '\n' + content.subtitle + '\n' + content.state + '\n' +
                      content.statement.headline + '\n' + content.statement.text + '\n';
    for (const Section& section : content.sections) {
        all += section.title + " | " + section.note + '\n';
        for (const Block& block : section.blocks) {
            if (const auto* list = std::get_if<FactList>(&block)) {
                for (const Fact& fact : list->facts)
                    all += fact.label + ": " + fact.value + '\n';
                for (const std::string& label : list->missing)
                    all += "Not recorded: " + label + '\n';
            }
            if (const auto* table = std::get_if<ReportTable>(&block)) {
                for (const auto& row : table->rows)
                    for (const Cell& cell : row)
                        all += cell.text + ' ' + cell.small + " | ";
                all += table->rows.empty() ? table->empty + '\n' : "\n";
            }
            if (const auto* paragraph = std::get_if<Paragraph>(&block))
                all += paragraph->text + '\n';
            if (const auto* bars = std::get_if<BarBlock>(&block))
                for (const Paragraph& words : bars->words)
                    all += words.text + '\n';
            if (const auto* setup = std::get_if<SetupBlock>(&block))
                all += setup->sketch.spoken() + '\n';
            if (const auto* lines = std::get_if<SignatureBlock>(&block))
                for (const SignatureLine& line : lines->lines)
                    all += line.role + ' ' + line.name + ' ' + line.small + '\n';
        }
    }
    return all;
}

bool says(const std::string& all, const std::string& words)
{
    return all.find(words) != std::string::npos;
}

struct DemoJobs : testing::Test
{
    static void SetUpTestSuite()
    {
        s_file = std::filesystem::temp_directory_path() /
                 ("sealwalk-report-" + std::to_string(::getpid()) + ".sealwalk");
        std::filesystem::remove(s_file);
        ASSERT_TRUE(demo::writeDemoHistory(s_file));
    }
    static void TearDownTestSuite() { std::filesystem::remove(s_file); }

    static model::Job job(const std::string& number, model::TestObject& object)
    {
        const auto store = storage::HistoryStore::open(s_file, storage::HistoryStore::Mode::ReadOnly);
        model::Job loaded = store->job(store->findJob(number).value()).value();
        object = store->object(loaded.object).value();
        return loaded;
    }

    static std::filesystem::path s_file;
};
std::filesystem::path DemoJobs::s_file;

// Regression: what was signed named the points of this job's temporary repairs, what was printed those of
// earlier jobs too.
TEST_F(DemoJobs, WhatIsSignedIsWhatIsPrinted)
{
    model::TestObject object;
    const model::Job before = DemoJobs::job("118", object);
    const model::Job job = DemoJobs::job("164", object);
    ReportOptions options;
    options.now = Timestamp::parseDate("2026-03-20").value();
    for (const model::Repair& repair : before.repairs)
        if (!repair.permanent && !repair.madeGoodBy)
            options.carried.push_back(repair);
    ASSERT_FALSE(options.carried.empty());
    const auto left = analysis::summarise(job, object, analysis::Standing::AsLeft);
    const std::string signedText = analysis::approvalStatement(job, left, options.carried, false);
    EXPECT_TRUE(says(reportOf(job, object, options).statement.text, inPrint(signedText))) << signedText;
    EXPECT_NE(signedText, analysis::approvalStatement(job, left, {}, false)) << "the earlier job's is named";
    for (const model::Repair& repair : options.carried)
        for (const model::PointId point : repair.points)
            EXPECT_TRUE(says(signedText.substr(signedText.find("Held by a temporary repair")),
                             std::to_string(job.sketch.point(point)->number)));
}

// Property: every group of fields a leak test report must have is there, by its words.
TEST_F(DemoJobs, TheReportHasEveryGroupOfFields)
{
    model::TestObject object;
    const model::Job job = DemoJobs::job("164", object);
    ReportOptions options;
    options.lastJob = DemoJobs::job("118", object);
    options.digest = std::string(64, 'a');
    options.now = Timestamp::parseDate("2026-03-20").value();
    const ReportContent content = reportOf(job, object, options);
    const std::string all = wordsOf(content);
    for (const char* words : {"Test object",
                              "Customer: the coating workshop (invented)",
                              "Witness: nobody named",
                              "Serial, drawing: ",
                              "Purpose",
                              "Volume",
                              "Included",
                              "Excluded",
                              "Limit, one point",
                              "Limit, total",
                              "Limit agreed by",
                              "Gas basis",
                              "Procedure",
                              "Technique",
                              "Condition",
                              "Room",
                              "Tracer gas",
                              "Detector",
                              "Connected",
                              "Other instruments",
                              "Smallest detectable",
                              "Tester",
                              "Findings that need a decision",
                              "Balance, as air",
                              "Signatures",
                              "Leak map",
                              "Repairs",
                              "Pressure rise",
                              "Set-up | drawn from what was stated",
                              "pump in parallel, 80 l/s helium; detector LD-04",
                              "Calibration and background",
                              "All points",
                              "Not tested",
                              "Void and corrected",
                              "Compared with the last job",
                              "Every reading, as recorded",
                              "Review, turn by turn",
                              "Cautions",
                              "reviewer not yet",
                              "all data invented",
                              "not accessible",
                              "masked by 17",
                              "SHA-256"})
        EXPECT_TRUE(says(all, words)) << words;
    EXPECT_EQ(content.statement.verdict, analysis::Verdict::Over);
    EXPECT_TRUE(says(content.statement.headline, "Not accepted"));
    // The wording claims no more than was tested.
    EXPECT_FALSE(says(all, "no leaks"));
    EXPECT_FALSE(says(all, "No leaks"));
    EXPECT_TRUE(says(content.statement.text, "under the conditions recorded"));
    EXPECT_TRUE(says(content.statement.text, "Nothing is claimed"));
    int maps = 0;
    for (const Section& section : content.sections)
        for (const Block& block : section.blocks)
            maps += std::holds_alternative<MapBlock>(block) ? 1 : 0;
    EXPECT_EQ(maps, static_cast<int>(job.sketch.sheets.size()));
}

// Property: a witness who was named and did not sign is printed as that; of a signer the report says since
// when they belong to the history and who added them, or that this is not recorded.
TEST_F(DemoJobs, WitnessAndSignersAreAccountedFor)
{
    model::TestObject object;
    model::Job job = DemoJobs::job("118", object);
    job.setup.witness = "Jo Marsh";
    ASSERT_FALSE(job.signatures.empty());
    const model::Signature& signature = job.signatures.front();
    EXPECT_TRUE(
        says(wordsOf(reportOf(job, object, {})), "witness Jo Marsh named with the job, has not signed"));
    ReportOptions options;
    model::Person person;
    person.id = signature.person;
    person.name = signature.name;
    person.since = Timestamp::parseDate("2024-05-02").value();
    options.people = {person};
    EXPECT_TRUE(says(wordsOf(reportOf(job, object, options)),
                     "in this history since 2024-05-02, who added them is not recorded"));
    options.personEntries = {{person.id, "left", "Eve", person.since},
                             {person.id, "added", "Ines Marl", person.since}};
    EXPECT_TRUE(says(wordsOf(reportOf(job, object, options)), "since 2024-05-02, added by Ines Marl"));
    options.people.front().id = model::PersonId::create();
    EXPECT_TRUE(says(wordsOf(reportOf(job, object, options)), "not among the people of this history"));
}

// Regression: two jobs with different limits were compared without a word of it.
TEST_F(DemoJobs, AnotherLimitThanLastTimeIsSaid)
{
    model::TestObject object;
    model::Job job = DemoJobs::job("164", object);
    ReportOptions options;
    options.lastJob = DemoJobs::job("118", object);
    EXPECT_FALSE(says(wordsOf(reportOf(job, object, options)), "judged by its own limit"));
    job.setup.pointLimit = millibarLitresPerSecond(5e-6);
    EXPECT_TRUE(
        says(wordsOf(reportOf(job, object, options)),
             "Each job is judged by its own limit, job 118 → job 164; for one joint: 1.0 × 10⁻⁶ mbar·l/s → "
             "5.0 × 10⁻⁶ mbar·l/s."));
}

// Regression: the statement named two floors, one below which nothing was seen and a lower one to which it
// claimed.
TEST_F(DemoJobs, TheStatementHasOneFloor)
{
    for (const char* number : {"118", "164"}) {
        model::TestObject object;
        const model::Job job = DemoJobs::job(number, object);
        const std::string text = reportOf(job, object, {}).statement.text;
        const std::string above = "No response above ";
        const std::size_t at = text.find(above);
        ASSERT_NE(at, std::string::npos) << text;
        const std::string floor = text.substr(at + above.size(), text.find(" mbar", at) - at - above.size());
        EXPECT_TRUE(says(text, "or below " + floor + ".")) << text;
    }
}

// Property: a signed job says so, names who signed, and shows the repair before and after.
TEST_F(DemoJobs, ASignedJobNamesItsSigners)
{
    model::TestObject object;
    const model::Job job = DemoJobs::job("118", object);
    const ReportContent content = reportOf(job, object, {});
    const std::string all = wordsOf(content);
    EXPECT_EQ(content.state, "signed");
    ASSERT_FALSE(job.signatures.empty());
    EXPECT_TRUE(says(all, job.signatures.front().name + " signed: "));
    EXPECT_TRUE(says(all, "There is no earlier job"));
    for (const model::Repair& repair : job.repairs)
        EXPECT_TRUE(says(all, repair.action)) << repair.action;
}

// Regression: the turns of the review named questions by their inner words: on the check "whole".
TEST_F(DemoJobs, AWordIsPrintedBesideItsQuestion)
{
    model::TestObject object;
    model::Job job = DemoJobs::job("118", object);
    model::ReviewEntry word;
    word.step = model::ReviewStep::Remark;
    word.check = "dry";
    word.text = "baked before";
    job.review.push_back(word);
    const std::string all = wordsOf(reportOf(job, object, {}));
    EXPECT_TRUE(says(all, "on \"Object dry, nothing plugged?\""));
    EXPECT_FALSE(says(all, "on the check"));
}

// Regression: a person's verdict was printed without what it stood over, and in the findings without its
// reason.
TEST_F(DemoJobs, AVerdictByAPersonIsPrintedBesideTheComputedOne)
{
    model::TestObject object;
    model::Job job = DemoJobs::job("118", object);
    const auto left = analysis::summarise(job, object, analysis::Standing::AsLeft);
    const auto leak = std::find_if(left.begin(), left.end(), [](const analysis::PointFinding& f) {
        return f.finding == analysis::Finding::Leak && f.reading;
    });
    ASSERT_NE(leak, left.end());
    const std::string word(model::name(leak->finding));
    const std::string limit(model::name(leak->verdict));
    model::Judgement judgement;
    judgement.point = leak->point;
    judgement.round = job.reading(*leak->reading)->round;
    judgement.finding = "other source";
    judgement.verdict = "within";
    judgement.reason = "the detector's own hose";
    judgement.by = "I. Behrend";
    job.judgements.push_back(judgement);
    const std::string all = wordsOf(reportOf(job, object, {}));
    EXPECT_TRUE(says(all, "within by I. Behrend; worked out: " + limit)) << all;
    EXPECT_TRUE(says(all, "other source judged by I. Behrend: the detector's own hose; worked out: " + word));
    EXPECT_TRUE(says(all, "| " + word + ", " + limit + "  | the detector's own hose"));
    // A second verdict stands over what was worked out, not over the first one.
    judgement.finding = "permeation";
    job.judgements.push_back(judgement);
    EXPECT_TRUE(says(wordsOf(reportOf(job, object, {})),
                     "permeation judged by I. Behrend: the detector's own hose; worked out: " + word));
}

// Property: a point accepted by concession says until when, in table and map.
TEST_F(DemoJobs, AConcessionIsMarkedAndSaysUntilWhen)
{
    model::TestObject object;
    model::Job job = DemoJobs::job("118", object);
    const model::TestPoint* point = job.sketch.activePoints().front();
    model::Concession concession;
    concession.points = {point->id};
    concession.grantedBy = "I. Behrend";
    concession.reason = "rubber for metal next year";
    concession.until = Timestamp::parseDate("2099-06-01").value();
    job.concessions.push_back(concession);
    EXPECT_TRUE(says(wordsOf(reportOf(job, object, {})), "by concession until 2099-06-01"));
    const auto left = analysis::summarise(job, object, analysis::Standing::AsLeft);
    for (const model::Sheet& sheet : job.sketch.sheets)
        for (const MapStretch& stretch : mapOf(job, object, sheet.id, left).stretches) {
            EXPECT_EQ(stretch.conceded, stretch.point == point->id);
            if (stretch.conceded) {
                EXPECT_TRUE(says(stretch.spoken, ", conceded until 2099-06-01"));
                EXPECT_TRUE(says(stretch.tip, "conceded until 2099-06-01"));
            }
        }
}

// Regression: a correction made days later stood there with the time of the spray.
TEST_F(DemoJobs, ACorrectionDoesNotClaimTheTimeOfTheSpray)
{
    model::TestObject object;
    model::Job job = DemoJobs::job("118", object);
    model::Reading right = job.readings.front();
    right.id = model::ReadingId::create();
    right.corrects = job.readings.front().id;
    right.by = "C. Corrector";
    right.reason = "exponent mistyped (2026-03-02 09:00:00)";
    job.readings.push_back(right);
    const std::string all = wordsOf(reportOf(job, object, {}));
    EXPECT_TRUE(says(all, "corrected: exponent mistyped (2026-03-02 09:00:00)"));
    EXPECT_FALSE(says(all, "C. Corrector, " + right.at.date()));
}

// Property: every table keeps its promise of as many cells as columns.
TEST_F(DemoJobs, TablesAreRectangular)
{
    model::TestObject object;
    for (const char* number : {"164", "118"}) {
        const model::Job job = DemoJobs::job(number, object);
        for (const Section& section : reportOf(job, object, {}).sections)
            for (const Block& block : section.blocks)
                if (const auto* table = std::get_if<ReportTable>(&block)) {
                    for (const auto& row : table->rows) {
                        EXPECT_EQ(row.size(), table->columns.size()) << section.title;
                    }
                }
    }
}

// Regression: a last job that could see less filled three pages with one sentence, point by point; a joint
// all of whose points are retired was counted.
TEST(Report, SaysOnceWhatHoldsForManyPoints)
{
    model::TestObject object;
    object.name = "Oven";
    model::Job last = tests::ringJob(6);
    model::Job job = last;
    for (int point = 1; point <= 6; ++point) {
        tests::addValue(job, point, 1e-10);
        job.readings.back().outcome = model::Outcome::NoResponse;
        job.readings.back().peak.reset();
    }
    tests::calibrate(job);
    model::Joint gone = job.sketch.joints.front();
    gone.id = model::JointId::create();
    job.sketch.joints.push_back(gone);
    ReportOptions options;
    options.lastJob = last;
    const ReportContent content = reportOf(job, object, options);
    for (const Section& section : content.sections)
        if (section.title == "Compared with the last job") {
            const auto& table = std::get<ReportTable>(section.blocks.front());
            ASSERT_EQ(table.rows.size(), 1u);
            EXPECT_EQ(table.rows.front()[1].text, "6 points");
            EXPECT_EQ(table.rows.front()[1].small, "1, 2, 3, 4, 5, 6");
        }
    EXPECT_TRUE(says(wordsOf(content), "6 points on 1 joint of 1 sheet,"));
}

// Property: of a job in which nothing was filled in every field is still named, those without a value
// together.
TEST_F(DemoJobs, WhatWasNotRecordedIsNamed)
{
    const auto labels = [](const ReportContent& content, std::size_t& missing) {
        std::set<std::string> all;
        const auto& list = std::get<FactList>(content.sections.front().blocks.front());
        for (const Fact& fact : list.facts) {
            EXPECT_NE(fact.value, "not recorded") << fact.label;
            all.insert(fact.label);
        }
        all.insert(list.missing.begin(), list.missing.end());
        missing = list.missing.size();
        return all;
    };
    model::TestObject object;
    const model::Job full = DemoJobs::job("118", object);
    model::Job bare = tests::ringJob(2);
    bare.setup = {};
    std::size_t ofFull = 0;
    std::size_t ofBare = 0;
    EXPECT_EQ(labels(reportOf(full, object, {}), ofFull), labels(reportOf(bare, {}, {}), ofBare));
    EXPECT_LE(ofFull, 1U);
    EXPECT_GT(ofBare, 8U);
}

// Regression: "3.2–20" below a rate was in the rate's decade, which only a heading said; and a column
// repeated both rates of its row in words.
TEST_F(DemoJobs, ARangeBelowARateSaysItsDecade)
{
    model::TestObject object;
    const model::Job job = DemoJobs::job("164", object);
    ReportOptions options;
    options.lastJob = DemoJobs::job("118", object);
    int ranges = 0;
    for (const Section& section : reportOf(job, object, options).sections) {
        if (section.title != "Every reading, as recorded" && section.title != "Compared with the last job")
            continue;
        const bool compares = section.title.starts_with("Compared");
        const auto& table = std::get<ReportTable>(section.blocks.front());
        for (const auto& row : table.rows) {
            for (const Cell& cell : row)
                if (cell.small.find("\u2013") != std::string::npos) {
                    EXPECT_TRUE(says(cell.small, ") \u00D7 10")) << cell.small;
                    ++ranges;
                }
            if (compares) {
                EXPECT_EQ(row[5].small.empty(), row[5].text != "not comparable") << row[0].text;
            }
        }
    }
    EXPECT_GT(ranges, 20);
}

// Property: a job without readings claims nothing; one without a limit accepts nothing.
TEST(Report, ClaimsNothingWhereNothingWasTested)
{
    model::TestObject object;
    object.name = "Chamber";
    model::Job job = tests::ringJob(4);
    ReportContent content = reportOf(job, object, {});
    EXPECT_TRUE(says(content.statement.headline, "Nothing was sprayed"));
    EXPECT_EQ(content.statement.verdict, analysis::Verdict::NoAnswer);
    tests::calibrate(job);
    for (int n = 1; n <= 4; ++n)
        tests::addValue(job, n, 1e-8);
    job.setup.pointLimit.reset();
    job.setup.kindLimits.clear();
    content = reportOf(job, object, {});
    EXPECT_TRUE(says(content.statement.headline, "No limit was set")) << content.statement.headline;
}

// Regression: where the set-up changed between two checks the table said "–" of a factor twice as large.
TEST(Report, TheStepOfANewSetUpIsPrinted)
{
    model::TestObject object;
    object.name = "Chamber";
    model::Job job = tests::ringJob(1);
    tests::addValue(job, 1, 1e-9);
    tests::calibrate(job);
    model::Calibration throttled = tests::systemCheck(job.readings.front().at, 1.0);
    throttled.leak.value = millibarLitresPerSecond(5e-8);
    throttled.note = "foreline throttled";
    job.calibrations.push_back(throttled);
    const std::string all = wordsOf(reportOf(job, object, {}));
    EXPECT_TRUE(says(all, "+100 % before, again"));
    EXPECT_TRUE(says(all, "foreline throttled"));
}

// Regression: "Connected: foreline, pump in parallel" stood above "no pump in parallel recorded"; a bottle
// and a gauge typed with their word had it twice.
TEST(Report, WhatIsStatedIsSaidOnceAndAgrees)
{
    model::TestObject object;
    object.name = "Chamber";
    model::Job job = tests::ringJob(1);
    EXPECT_TRUE(says(wordsOf(reportOf(job, object, {})), "no pump in parallel recorded"));
    job.setup.connection = "foreline, pump in parallel";
    job.setup.heliumBottle = "bottle H-204";
    model::RiseTest rise;
    rise.gauge = "ion gauge G2";
    job.riseTests.push_back(rise);
    std::string all = wordsOf(reportOf(job, object, {}));
    EXPECT_FALSE(says(all, "no pump in parallel"));
    EXPECT_TRUE(says(all, "pump in parallel, its speed not recorded"));
    EXPECT_TRUE(says(all, "bottle H-204"));
    EXPECT_FALSE(says(all, "bottle bottle"));
    EXPECT_TRUE(says(all, ", ion gauge G2"));
    EXPECT_FALSE(says(all, "gauge ion gauge"));
    job.setup.heliumBottle = "H-204";
    job.riseTests.back().gauge = "G2";
    job.setup.auxiliarySpeed = litresPerSecond(0.0);
    all = wordsOf(reportOf(job, object, {}));
    EXPECT_TRUE(says(all, ", bottle H-204"));
    EXPECT_TRUE(says(all, ", gauge G2"));
    EXPECT_FALSE(says(all, "its speed not recorded"));
}

// Regression: the headline named what was found over the limit only; what could not be said and was repaired,
// and a leak of the test set-up, went without a word.
TEST(Report, TheHeadlineNamesAllThatWasMended)
{
    model::TestObject object;
    object.name = "Chamber";
    model::Job job = tests::ringJob(3);
    const model::JointId hose =
        tests::addJoint(job.sketch, job.sketch.sheets.front().id, model::JointKind::Hose, "Detector hose",
                        geometry::Ring{{900, 0}, 50.0}, 1);
    job.sketch.joints.back().isSetup = true;
    job.rounds.front().points.push_back(tests::pointNumbered(job, 4));
    ASSERT_EQ(job.sketch.joints.back().id, hose);
    const auto clear = [&](int point, model::RoundId round) {
        tests::addValue(job, point, 1e-10);
        job.readings.back().outcome = model::Outcome::NoResponse;
        job.readings.back().peak.reset();
        job.readings.back().round = round;
    };
    tests::addValue(job, 4, 3e-6);
    clear(1, job.rounds.front().id);
    clear(2, job.rounds.front().id);
    tests::addValue(job, 3, 1.0e-8); // at the limit: cannot say
    tests::calibrate(job);
    model::Repair repair;
    repair.id = model::RepairId::create();
    repair.points = {tests::pointNumbered(job, 3), tests::pointNumbered(job, 4)};
    repair.at = job.readings.back().at;
    repair.at.utcMilliseconds += 1000;
    job.repairs.push_back(repair);
    model::Round after = job.rounds.front();
    after.id = model::RoundId::create();
    after.number = 2;
    after.kind = model::RoundKind::AfterRepair;
    after.points = repair.points;
    job.rounds.push_back(after);
    for (const int point : {3, 4})
        clear(point, after.id);
    const std::string text = wordsOf(reportOf(job, object, {}));
    EXPECT_TRUE(says(text, "Could not be said as found, repaired and within the limit since: point 3."))
        << text;
    EXPECT_TRUE(
        says(text, "Of the test set-up, found over the limit and within it after the work done: point 4."))
        << text;
}

// Regression: sixteen points, each below a bound, were "Located: 0 (0 … 0)".
TEST(Report, NothingLocatedIsNotZeroWithoutAWidth)
{
    model::TestObject object;
    object.name = "Chamber";
    object.volume = litres(100.0);
    model::Job job = tests::ringJob(4);
    for (int point = 1; point <= 4; ++point) {
        tests::addValue(job, point, 1e-10);
        job.readings.back().outcome = model::Outcome::NoResponse;
        job.readings.back().peak.reset();
    }
    tests::calibrate(job);
    model::RiseTest rise;
    rise.at = job.readings.back().at;
    for (int i = 0; i < 60; ++i) {
        rise.times.push_back(10.0 * i);
        rise.pressures.push_back(1.0 + 0.01 * i);
    }
    job.riseTests.push_back(rise);
    const std::string all = wordsOf(reportOf(job, object, {}));
    EXPECT_FALSE(says(all, "Located: 0"));
    EXPECT_TRUE(says(all, "No leak located; the bounds of the points, each as air, add up to ")) << all;
    job.readings.pop_back();
    EXPECT_TRUE(says(wordsOf(reportOf(job, object, {})), "the bounds of 3 of 4 points, each as air, add up to "));
}

// Property: what checking found wrong is printed, not hidden.
TEST(Report, PrintsWhatCheckingFoundWrong)
{
    model::TestObject object;
    object.name = "Chamber";
    ReportOptions options;
    options.problems = {"reading 3 was changed"};
    EXPECT_TRUE(
        says(wordsOf(reportOf(tests::ringJob(2), object, options)), "Not as signed: reading 3 was changed"));
    model::Job job = tests::ringJob(2);
    job.state = model::JobState::Signed;
    const ReportContent content = reportOf(job, object, options);
    EXPECT_EQ(content.state, "NOT AS SIGNED") << "at the head of every page";
    options.problems.clear();
    EXPECT_EQ(reportOf(job, object, options).state, "signed");
}

} // namespace
} // namespace sealwalk::report
