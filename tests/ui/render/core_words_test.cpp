// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/comparison.h"
#include "core/analysis/job_findings.h"
#include "core/analysis/review_checks.h"
#include "core/analysis/round_summary.h"
#include "core/report/rate_text.h"
#include "core/storage/history_store.h"
#include "demo/history/demo_history.h"
#include "tests/support/german.h"
#include "ui/render/core_patterns.h"
#include "ui/render/core_words.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <set>

namespace sealwalk::render {
namespace {

class CoreWords : public ::testing::Test
{
protected:
    void SetUp() override
    {
        QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
        ASSERT_TRUE(QCoreApplication::installTranslator(&german));
    }
    void TearDown() override
    {
        QCoreApplication::removeTranslator(&german);
        QLocale::setDefault(QLocale::c());
    }

    tests::German german;
};

std::string said(const std::string& text)
{
    return inWords(text).toStdString();
}

// Property: what is put in comes out where the other language wants it, with its decimal sign.
TEST_F(CoreWords, PutsThePiecesWhereTheLanguageWantsThem)
{
    EXPECT_EQ(
        said("Its 4.7e-09 mbar l/s is explained by helium that reached the leak at point 38, 74 mm to the "
             "side."),
        "Seine 4,7e−9 mbar·l/s erklären sich durch Helium, das das Leck an Punkt 38, 74 mm seitlich "
        "erreichte.");
    EXPECT_EQ(said("Over the limit, with no repair and no concession: points 17, 38 and 60."),
              "Über dem Grenzwert, ohne Reparatur und ohne Sonderfreigabe: Punkt 17, 38 und 60.");
    EXPECT_EQ(said("8 o'clock, seen from the front"), "8 Uhr, gesehen von vorn");
    EXPECT_EQ(said("8 o'clock, seen from the crane"), "8 Uhr, gesehen von the crane");
    EXPECT_EQ(inSentence("repairing point 17 is enough").toStdString(), "Punkt 17 zu reparieren genügt.");
}

// Property: somebody's own words, dates and names with points are nobody's to translate or to change.
TEST_F(CoreWords, LeavesWhatIsNotItsOwn)
{
    EXPECT_EQ(said("Seal from the 2.5 in stock of Smith and Sons"),
              "Seal from the 2.5 in stock of Smith and Sons");
    EXPECT_EQ(said("Reference leak RL-1.2 has no certificate in the record."),
              "Prüfleck RL-1.2 hat kein Zertifikat in der Aufzeichnung.");
    EXPECT_EQ(said("No check afterwards: 100 %2 of it."), "Keine Prüfung danach: 100 %2 of it.");
    EXPECT_EQ(said("below the lower hinge"), "below the lower hinge");
    EXPECT_EQ(said("below 1.2e-09"), "unter 1,2e−9");
    EXPECT_EQ(said(""), "");
}

// Property: a record is in one language, and so is everything in the core's own.
TEST_F(CoreWords, StayOutOfRecords)
{
    const RecordWords record;
    EXPECT_EQ(said("limit"), "limit");
}

TEST(CoreWordsInEnglish, AreTheCores)
{
    EXPECT_EQ(said("A leak of its own above 2.3e-08 mbar l/s would have shown."),
              "A leak of its own above 2.3e−8 mbar·l/s would have shown.");
}

// Property: a translation loses none of what is put in, and puts in nothing else.
TEST_F(CoreWords, KeepTheirPlaces)
{
    static const QRegularExpression place(QStringLiteral("%[1-9]"));
    const auto placesIn = [](const QString& text) {
        std::multiset<QString> found;
        for (auto at = place.globalMatch(text); at.hasNext();)
            found.insert(at.next().captured());
        return found;
    };
    int patterns = 0;
    for (const auto& some :
         {findingPatterns(), stepPatterns(), outcomePatterns(), reviewPatterns(), labelPatterns(),
          repairPatterns(),  reportHeads(),  reportFacts(),     reportClaims(),   reportCells(),
          reportPictures(),  reportJoints(), numberRefusals(),  typedRefusals(),  sketchRefusals(),
          feedRefusals(),    flowRefusals(), checkRefusals(),   fileRefusals(),   storageRefusals(),
          signingRefusals()}) {
        for (const char* source : some) {
            const QString text = QString::fromUtf8(source);
            ASSERT_TRUE(german.core().contains(text)) << source;
            EXPECT_EQ(placesIn(text), placesIn(german.core()[text])) << source;
            EXPECT_FALSE(german.core()[text].isEmpty()) << source;
            ++patterns;
        }
    }
    EXPECT_GT(patterns, 1100);
}

// Regression: in German the window said its findings, questions and balance in English. Everything the core
// says of the demo's jobs is known.
TEST_F(CoreWords, KnowWhatIsSaidOfTheDemo)
{
    QTemporaryDir folder;
    const std::filesystem::path file = folder.filePath(QStringLiteral("demo.sealwalk")).toStdString();
    ASSERT_TRUE(demo::writeDemoHistory(file));
    const auto store = storage::HistoryStore::open(file, storage::HistoryStore::Mode::ReadOnly);
    ASSERT_TRUE(store);
    std::set<std::string> sentences;
    const auto hear = [&](const std::string& text) {
        if (!text.empty())
            sentences.insert(text);
    };
    const Timestamp now = Timestamp::parseDate("2026-03-20").value();
    std::vector<model::Job> jobs;
    model::TestObject object;
    for (const char* number : {"118", "164"}) {
        jobs.push_back(store->job(store->findJob(number).value()).value());
        object = store->object(jobs.back().object).value();
    }
    for (const model::Job& job : jobs) {
        for (const model::Round& round : job.rounds)
            for (const auto& finding : analysis::jobFindings(job, object, round.id, now)) {
                for (const std::string& sentence : finding.because)
                    hear(sentence);
                for (const auto& factor : finding.factors) {
                    hear(factor.name);
                    hear(factor.from);
                }
            }
        const auto asLeft = analysis::summarise(job, object, analysis::Standing::AsLeft);
        analysis::ReviewOptions options;
        options.now = now;
        for (const auto& check : analysis::reviewChecks(job, object, asLeft, options)) {
            hear(check.question);
            hear(check.answer);
        }
    }
    const auto then = analysis::summarise(jobs[0], object, analysis::Standing::AsFound);
    const auto today = analysis::summarise(jobs[1], object, analysis::Standing::AsFound);
    for (const auto& point : analysis::compare({&jobs[0].sketch, then}, {&jobs[1].sketch, today}).points)
        hear(point.because);
    for (const model::Job& job : jobs)
        for (const model::VoidMark& mark : job.voids)
            sentences.erase(mark.reason); // somebody's own words
    EXPECT_GT(sentences.size(), 100U);
    for (const std::string& sentence : sentences)
        EXPECT_NE(said(sentence), report::onScreen(sentence));
}

} // namespace
} // namespace sealwalk::render
