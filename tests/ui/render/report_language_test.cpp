// SPDX-License-Identifier: GPL-3.0-or-later
// Property: a report in another language has no words of the core left in English, and what people typed as
// it was typed.
#include "core/exchange/job_file.h"
#include "core/exchange/job_signing.h"
#include "core/report/content_texts.h"
#include "core/report/report_builder.h"
#include "core/report/typed_words.h"
#include "core/transfer/report_facts.h"
#include "demo/history/demo_history.h"
#include "tests/support/german.h"
#include "tests/ui/render/sample_map.h"
#include "ui/render/core_words.h"
#include "ui/render/map_export.h"
#include "ui/render/report_pdf.h"
#include "ui/render/report_words.h"

#include <gtest/gtest.h>

#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <thread>

namespace sealwalk::render {
namespace {

RecordLanguage german()
{
    return std::make_shared<const Language>(QLocale(QLocale::German, QLocale::Germany),
                                            std::make_shared<const tests::German>());
}

/// Names that stand in sentences of the analysis, where nobody marks them, and what the demo's reviewer typed
/// where the program says it now.
bool isTypedElsewhere(const QString& text)
{
    return text.contains(QStringLiteral("is not among the people of this history")) ||
           text.contains(QStringLiteral("I have looked at the whole record and agree with it.")) ||
           text.startsWith(QStringLiteral("Agreed. The sealant at 56"));
}

void expectGerman(const report::ReportContent& content)
{
    const RecordWords words(german());
    for (const QString& text : unknownIn(content))
        if (!isTypedElsewhere(text))
            ADD_FAILURE() << text.toStdString();
}

const Timestamp kNow = Timestamp::parseDate("2026-03-20").value();

report::ReportContent marked(const model::Job& job, const model::TestObject& object,
                             report::ReportOptions options)
{
    options.marksTyped = true;
    options.now = options.now.isSet() ? options.now : kNow;
    return report::reportOf(job, object, options);
}

struct ReportInGerman : testing::Test
{
    static void SetUpTestSuite()
    {
        s_folder = std::make_unique<QTemporaryDir>();
        const std::filesystem::path file = s_folder->filePath(QStringLiteral("demo.sealwalk")).toStdString();
        ASSERT_TRUE(demo::writeDemoHistory(file));
        const auto store = storage::HistoryStore::open(file, storage::HistoryStore::Mode::ReadOnly);
        ASSERT_TRUE(store);
        for (const char* number : {"118", "164"})
            s_facts.push_back(transfer::reportFacts(*store, store->findJob(number).value(), kNow).value());
    }
    static void TearDownTestSuite()
    {
        s_facts.clear();
        s_folder.reset();
    }

    static std::unique_ptr<QTemporaryDir> s_folder;
    static std::vector<transfer::ReportFacts> s_facts; ///< last year's and this year's
};
std::unique_ptr<QTemporaryDir> ReportInGerman::s_folder;
std::vector<transfer::ReportFacts> ReportInGerman::s_facts;

TEST_F(ReportInGerman, SaysEverythingOfTheDemo)
{
    for (const transfer::ReportFacts& facts : s_facts)
        expectGerman(marked(facts.record.job, facts.record.object, facts.options));
}

TEST_F(ReportInGerman, SaysEverythingOfTheWorkedExamples)
{
    int files = 0;
    for (const auto& entry :
         std::filesystem::directory_iterator(SEALWALK_SOURCE_DIR "/tests/data/scenarios")) {
        SCOPED_TRACE(entry.path().filename().string());
        std::ifstream in(entry.path(), std::ios::binary);
        const std::string bytes{std::istreambuf_iterator<char>(in), {}};
        const auto file = exchange::readJobFile(bytes);
        ASSERT_TRUE(file) << file.error().message;
        report::ReportOptions options;
        const auto checked = exchange::verifyJobFile(bytes);
        ASSERT_TRUE(checked);
        for (const exchange::CheckedSignature& signature : checked->signatures)
            options.signatures.push_back({signature.signature.id, signature.ok, signature.says});
        options.people.push_back({});
        expectGerman(marked(file->record.job, file->record.object, options));
        ++files;
    }
    EXPECT_GT(files, 8);
}

/// A job to which everything happened that a report tells of.
model::Job eventful(model::Job job)
{
    const auto point = [&](std::size_t i) { return job.sketch.points.at(i).id; };
    job.state = model::JobState::Returned;
    job.openedAs = job.number + 1;
    job.setup.customer.clear();
    job.setup.witness = "Witness W";
    job.setup.excluded = "none, said the leak";
    job.setup.dried = true;
    job.setup.zeroOn = true;
    job.setup.auxiliarySpeed = litresPerSecond(12.0);
    job.setup.hoseDiameter = millimetres(25.0);
    job.setup.hoseLength = Length::fromSi(1.5);
    job.setup.heliumFlow = 0.5;
    job.setup.heliumBottle = "H-204";
    job.setup.noCheckAfterReason = "the leak was lent out";
    job.setup.kindLimits[model::JointKind::WeldSeam] = millibarLitresPerSecond(1e-9);
    job.setup.instruments = {{"gauge", "G 1.2", kNow}, {"thermometer", "T", {}}};
    job.setup.cautions = {{"helium", "Tester A", kNow}};
    const model::RoundId round = job.rounds.front().id;
    job.judgements.push_back({model::JudgementId::create(), point(3), round, "permeation", "within",
                              "an elastomer, as last year", "Reviewer B", kNow, {}});
    job.concessions.push_back({model::ConcessionId::create(),
                               {point(4)},
                               "Owner C",
                               Timestamp::parseDate("2026-01-02").value(),
                               "not needed cold",
                               "Tester A",
                               kNow});
    job.concessions.push_back(
        {model::ConcessionId::create(), {point(5), point(6)}, "Owner C", {}, "none", "Tester A", kNow});
    for (int i = 0; i < 3; ++i)
        job.voids.push_back({job.readings.at(10 + i).id, "draught", "Tester A", kNow});
    job.readings.at(14).corrects = job.readings.at(13).id;
    job.readings.at(14).reason = "exponent";
    job.readings.at(14).entered = "3.2-7";
    job.readings.at(15).outOfTurn = true;
    job.readings.at(16).remark = "flat, cracked";
    job.readings.at(17).condition = model::Condition::Flexed;
    job.readings.at(17).conditionDetail = "hot";
    job.readings.at(18).outcome = model::Outcome::AboveRange;
    job.readings.at(19).outcome = model::Outcome::NotAccessible;
    job.readings.at(20).entry = model::Entry::Transcribed;
    model::Repair repair;
    repair.id = model::RepairId::create();
    repair.points = {point(7)};
    repair.defect = "flat";
    repair.action = "tape or putty";
    repair.permanent = false;
    repair.by = "Tester A";
    repair.at = kNow;
    repair.pictures = {std::string(64, 'b')};
    job.repairs.push_back(repair);
    repair.id = model::RepairId::create();
    repair.points = {point(8), point(9)};
    repair.defect = "torn";
    repair.action = "wrapped";
    repair.owner = "Owner C";
    repair.due = Timestamp::parseDate("2026-03-01").value();
    repair.sprayableFrom = Timestamp::parseDate("2026-04-01").value();
    job.repairs.push_back(repair);
    const auto turn = [&](model::ReviewStep step, const std::string& text, const std::string& check) {
        job.review.push_back({model::ReviewId::create(), step, "Tester A", kNow, text, point(1), check, {}});
    };
    turn(model::ReviewStep::Submitted, "leak", "");
    turn(model::ReviewStep::Remark, "later", "skipped");
    turn(model::ReviewStep::Remark,
         "The limit was changed after 3 readings, for one joint: 5e-06 mbar l/s \u2192 1e-06 mbar l/s.",
         "limit changed");
    turn(model::ReviewStep::Amendment, "none", "");
    return job;
}

TEST_F(ReportInGerman, SaysEverythingOfAnEventfulJob)
{
    const transfer::ReportFacts& facts = s_facts.back();
    const model::Job job = eventful(facts.record.job);
    report::ReportOptions options;
    options.lastJob = s_facts.front().record.job;
    options.lastJob->setup.pointLimit = millibarLitresPerSecond(2e-6);
    options.carried = s_facts.front().record.job.repairs;
    options.now = Timestamp::parseDate("2026-03-21").value();
    options.asOf = kNow;
    expectGerman(marked(job, facts.record.object, options));
    model::Job bare = job;
    bare.readings.clear();
    bare.riseTests.clear();
    bare.calibrations.clear();
    bare.backgrounds.clear();
    bare.setup = {};
    bare.repairs.clear();
    bare.review.clear();
    bare.state = model::JobState::Open;
    options = {};
    expectGerman(marked(bare, facts.record.object, options));
    bare.sketch = {};
    expectGerman(marked(bare, facts.record.object, options));
}

TEST_F(ReportInGerman, SaysWhatIsNotAsSigned)
{
    transfer::ReportFacts facts = s_facts.front();
    facts.record.job.readings.front().remark = "changed";
    const exchange::Verification checked = exchange::verifyRecord(facts.record, {});
    ASSERT_FALSE(checked.problems.empty());
    facts.options.problems = checked.problems;
    facts.options.signatures.clear();
    for (const exchange::CheckedSignature& signature : checked.signatures)
        facts.options.signatures.push_back({signature.signature.id, signature.ok, signature.says});
    facts.options.people.clear();
    facts.options.people.push_back({});
    const report::ReportContent content = marked(facts.record.job, facts.record.object, facts.options);
    expectGerman(content);
    const RecordWords words(german());
    EXPECT_EQ(inReport(content).state, "NICHT WIE UNTERSCHRIEBEN");
}

std::string toolSays(const char* tool, const QStringList& arguments)
{
    QProcess process;
    process.start(QLatin1String(tool), arguments);
    EXPECT_TRUE(process.waitForFinished()) << tool;
    return process.readAllStandardOutput().toStdString();
}

// Property: an English window writes a German report, all of it, with its fonts in the file.
TEST_F(ReportInGerman, IsWrittenByAnEnglishWindow)
{
    const transfer::ReportFacts& facts = s_facts.back();
    const report::ReportContent content = marked(facts.record.job, facts.record.object, facts.options);
    PdfOptions options;
    options.language = german();
    const QString file = s_folder->filePath(QStringLiteral("bericht.pdf"));
    ASSERT_TRUE(writeReportPdf(content, file.toStdString(), options));
    const std::string text = toolSays("pdftotext", {QStringLiteral("-layout"), file, QStringLiteral("-")});
    for (const char* words :
         {"Bericht über die Dichtheitsprüfung", "Nachweisgrenze", "Fügestelle, Ort",
          "Leckkarte, wie abgelesen", "über dem Grenzwert", "Seite 2 von", "kleinstes nachweisbares",
          "von größerem Leck verdeckt", "Warnhinweise", "3,", "mbar·l/s", "the coating workshop (invented)"})
        EXPECT_NE(text.find(words), std::string::npos) << words;
    for (const char* words : {"Leak", "Repair", " page ", "not recorded", "smallest", "the limit", "as left"})
        EXPECT_EQ(text.find(words), std::string::npos) << words << ": " << text;
    EXPECT_NE(toolSays("pdfinfo", {file}).find("Bericht über die Dichtheitsprüfung: "), std::string::npos);
    const QStringList fonts =
        QString::fromStdString(toolSays("pdffonts", {file})).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    ASSERT_GT(fonts.size(), 2);
    for (const QString& font : fonts.mid(2))
        EXPECT_TRUE(font.contains(QRegularExpression(QStringLiteral(" yes (yes|no) +(yes|no) "))))
            << qPrintable(font);
}

// Property: typed words stay, also where they are words of the core's.
TEST(ReportWords, LeaveTypedWordsAlone)
{
    const RecordWords words(german());
    using report::typed;
    EXPECT_EQ(inReport("leak").toStdString(), "Leck");
    EXPECT_EQ(inReport(typed("leak")).toStdString(), "leak");
    EXPECT_EQ(inReport("void: " + typed("leak; 1.2 bar")).toStdString(), "verworfen: leak; 1.2 bar");
    EXPECT_EQ(inReport(typed("A, B") + ", round 2").toStdString(), "A, B, Runde 2");
    EXPECT_EQ(inReport("echo of 17, flexed, held by a temporary repair").toStdString(),
              "Echo von 17, gebogen, von einer vorläufigen Reparatur gehalten");
    EXPECT_EQ(inReport("3.5 × 10⁻⁴ … 6.0 × 10⁻⁴").toStdString(), "3,5 × 10⁻⁴ … 6,0 × 10⁻⁴");
    EXPECT_EQ(inReport("2026-03-20 10:30").toStdString(), "2026-03-20 10:30");
}

// Property: a map for a file is in the language it was asked for in, whatever the window's is.
TEST(MapWords, AreThoseOfTheFile)
{
    const test::SampleJob sample = test::sampleJob();
    MapPage page;
    page.title = report::typed("leak") + ", job 7";
    page.subtitle = "Leak map, as found, as read, open, opened 2026-03-17; invented data";
    page.sheets = {sample.map(0)};
    const auto says = [](const std::string& svg, const char* words) {
        return svg.find(words) != std::string::npos;
    };
    {
        const tests::InGerman window;
        const std::string english = mapSvg(page);
        EXPECT_TRUE(says(english, "leak, over the limit"));
        EXPECT_FALSE(says(english, "Grenzwert"));
    }
    page.language = german();
    const std::string svg = mapSvg(page);
    for (const char* words :
         {"leak, Auftrag 7", "Leckkarte, vorgefunden, wie abgelesen, offen, eröffnet 2026-03-17",
          "erfundene Daten", "Leck über dem Grenzwert", "kleinstes nachweisbares"})
        EXPECT_TRUE(says(svg, words)) << words;
    EXPECT_FALSE(says(svg, "over the limit"));
}

// Property: English is the core's, without its marks.
TEST(ReportWords, AreTheCoresInEnglish)
{
    const tests::InGerman window;
    const RecordWords words;
    EXPECT_EQ(inReport("void: " + report::typed("draught") + ", 1.2").toStdString(), "void: draught, 1.2");
}

// Property: each thread speaks for itself, and afterwards as before.
TEST(ReportWords, OfOneThreadAreNotThoseOfAnother)
{
    const RecordWords words(german());
    {
        const RecordWords inner;
        EXPECT_EQ(inReport("leak").toStdString(), "leak");
        EXPECT_EQ(inWords("leak").toStdString(), "leak");
    }
    std::string beside;
    std::thread([&] { beside = inWords("leak").toStdString(); }).join();
    EXPECT_EQ(beside, "leak");
    EXPECT_EQ(inWords("leak").toStdString(), "Leck");
}

} // namespace
} // namespace sealwalk::render
