// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/german.h"
#include "tests/support/signed_job.h"
#include "ui/history/found_words.h"
#include "ui/history/history_lists.h"
#include "ui/history/jobs_model.h"
#include "ui/history/objects_model.h"
#include "ui/session/job_session.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTableView>
#include <QTemporaryDir>
#include <QtTest>

#include <algorithm>

namespace sealwalk::ui {

namespace {

class HistoryListsTest : public ::testing::Test
{
protected:
    void SetUp() override
    {
        ASSERT_TRUE(session.openHistory(m_folder.filePath(QStringLiteral("h.sealwalk")).toStdString(), true));
        lists = std::make_unique<HistoryLists>(session);
        QObject::connect(&session, &JobSession::historyChanged, lists.get(), &HistoryLists::refresh);
        coater = makeObject("Box coater 2");
        furnace = makeObject("Furnace");
        for (const auto& [object, purpose] :
             {std::pair{coater, "acceptance"}, std::pair{coater, "fault search"},
              std::pair{furnace, "yearly check"}})
            ASSERT_TRUE(session.createJob(object, purpose));
        lists->refresh();
        lists->resize(1200, 500);
        lists->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(lists.get()));
        jobs = lists->findChild<QTableView*>(QStringLiteral("jobs"));
        search = lists->findChild<QLineEdit*>(QStringLiteral("search"));
    }

    model::ObjectId makeObject(const char* name)
    {
        model::TestObject object;
        object.id = model::ObjectId::create();
        object.name = name;
        EXPECT_TRUE(session.createObject(object));
        return object.id;
    }

    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) const
    {
        QTest::keyClick(jobs, key, modifiers);
    }

    QTemporaryDir m_folder;
    JobSession session;
    std::unique_ptr<HistoryLists> lists;
    model::ObjectId coater;
    model::ObjectId furnace;
    QTableView* jobs = nullptr;
    QLineEdit* search = nullptr;
};

} // namespace

// Property: a signed job that is not what was signed says so in the list, in words and with a sign; one that
// is stays as it was. Regression: only sign-off and the report said so.
TEST_F(HistoryListsTest, SayWhatIsNotAsSigned)
{
    const model::Person reviewer = exchange::testPerson("Rhea Quill", "reviewer");
    const exchange::JobFile good = exchange::signedFile(31, reviewer);
    exchange::JobFile bent = exchange::signedFile(32, reviewer);
    bent.record.job.readings[0].by = "somebody else";
    bent.record.job.number = good.record.job.number + 1;
    for (const exchange::JobFile& file : {good, bent})
        ASSERT_TRUE(session.history().importJob(file.record.object, file.record.job, file.pictures));
    lists->refresh();
    const auto state = [&](model::JobId job, int role) {
        const auto* model = qobject_cast<JobsModel*>(jobs->model());
        for (int row = 0; row < model->rowCount(); ++row)
            if (model->jobAt(row)->id == job)
                return model->data(model->index(row, JobsModel::State), role);
        return QVariant();
    };
    const model::JobId wrong = bent.record.job.id;
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return state(wrong, Qt::DisplayRole).toString() == QStringLiteral("not as signed"); }));
    EXPECT_FALSE(state(wrong, Qt::DecorationRole).isNull());
    EXPECT_TRUE(state(wrong, Qt::AccessibleTextRole).toString().contains(QStringLiteral("Not as signed: ")));
    EXPECT_EQ(state(good.record.job.id, Qt::DisplayRole).toString(), QStringLiteral("signed"));
}

// Property: typing part of a name narrows the jobs; Enter opens the one on top.
TEST_F(HistoryListsTest, FindsByTypingAndOpensByEnter)
{
    EXPECT_EQ(lists->jobCount(), 3);
    QTest::keyClicks(search, QStringLiteral("coat"));
    EXPECT_EQ(lists->jobCount(), 2);
    QSignalSpy wanted(lists.get(), &HistoryLists::jobWanted);
    QTest::keyClick(search, Qt::Key_Return);
    EXPECT_EQ(wanted.count(), 1);
    search->clear();
    EXPECT_EQ(lists->jobCount(), 3);
    QTest::keyClicks(search, QStringLiteral("nothing of the kind"));
    EXPECT_EQ(lists->jobCount(), 0);
    QTest::keyClick(search, Qt::Key_Return);
    EXPECT_EQ(wanted.count(), 1);
    const auto* nothing = lists->findChild<QLabel*>(QStringLiteral("nothing"));
    EXPECT_FALSE(nothing->isHidden()) << "an empty list says why";
    EXPECT_TRUE(nothing->text().contains(QStringLiteral("nothing of the kind")));
    QTest::keyClick(search, Qt::Key_Escape);
    EXPECT_EQ(lists->jobCount(), 3);
    EXPECT_TRUE(nothing->isHidden());
}

// Property: a job found by what its row does not show says where it stands; without a search the counts are
// back. Regression: a row came up and nobody saw why.
TEST_F(HistoryListsTest, SayWhereTheWordStands)
{
    model::Setup setup = session.job().setup; // the furnace's, opened last
    setup.lastTouched = "Gauge cover taken off";
    ASSERT_TRUE(session.changeSetup(setup));
    EXPECT_TRUE(jobs->isColumnHidden(JobsModel::Found));
    const auto found = [this] { return jobs->model()->index(0, JobsModel::Found).data().toString(); };
    QTest::keyClicks(search, QStringLiteral("cover"));
    ASSERT_EQ(lists->jobCount(), 1);
    EXPECT_FALSE(jobs->isColumnHidden(JobsModel::Found));
    EXPECT_TRUE(jobs->isColumnHidden(JobsModel::Readings));
    EXPECT_EQ(found(), QStringLiteral("Gauge cover taken off"));
    search->setText(QStringLiteral("furnace"));
    EXPECT_EQ(found(), QString()) << "the row shows it";
    QTest::keyClick(search, Qt::Key_Escape);
    EXPECT_TRUE(jobs->isColumnHidden(JobsModel::Found));
    EXPECT_FALSE(jobs->isColumnHidden(JobsModel::Readings));
}

// Property: the word itself is seen, however far behind it stands.
TEST_F(HistoryListsTest, CutsALineAroundTheWord)
{
    const QString line = QStringLiteral("the lid was lifted twice before anybody saw the hair on the seal");
    const QString cut = cutAround(line, QStringLiteral("HAIR seal"));
    EXPECT_TRUE(cut.startsWith(QStringLiteral("… "))) << cut.toStdString();
    EXPECT_LT(cut.indexOf(QStringLiteral("hair")), 20);
    EXPECT_TRUE(line.endsWith(cut.mid(2)));
    EXPECT_EQ(cutAround(line, QStringLiteral("lid")), line);
    EXPECT_EQ(cutAround(line, QStringLiteral("nowhere")), line);
    // Regression: within one long word the cut took the word itself away.
    const QString token = QStringLiteral("OR-LT-04/0000000000000000000000/lance7 held");
    EXPECT_TRUE(cutAround(token, QStringLiteral("lance")).contains(QStringLiteral("lance7")));
}

// Property: two marks on one object ask for the comparison, older first; marks on two objects are refused.
TEST_F(HistoryListsTest, ComparesTwoMarkedJobsOfOneObject)
{
    QSignalSpy compare(lists.get(), &HistoryLists::compareWanted);
    QSignalSpy refused(lists.get(), &HistoryLists::refused);
    QTest::keyClicks(search, QStringLiteral("coat"));
    press(Qt::Key_Space);
    EXPECT_EQ(compare.count(), 0);
    const auto* rows = qobject_cast<JobsModel*>(jobs->model());
    ASSERT_EQ(rows->marked().size(), 1U);
    press(Qt::Key_Down);
    EXPECT_EQ(jobs->currentIndex().row(), 1);
    press(Qt::Key_Space);
    ASSERT_EQ(rows->marked().size(), 2U);
    EXPECT_EQ(refused.count(), 0);
    ASSERT_EQ(compare.count(), 1);

    lists->clearMarks();
    search->clear();
    for (int row = 0; row < 3; ++row) {
        if (rows->marked().empty() || rows->marked()[0].object != rows->jobAt(row)->object) {
            jobs->setCurrentIndex(rows->index(row, 0));
            press(Qt::Key_Space);
        }
        if (rows->marked().size() == 2)
            break;
    }
    EXPECT_EQ(compare.count(), 1);
    EXPECT_EQ(refused.count(), 1);
}

// Property: the objects listed are those called as was typed, and those with a job that was found.
// Regression: typing a job's number left the list of objects empty.
TEST_F(HistoryListsTest, ListTheObjectOfAFoundJob)
{
    const auto* objects = lists->findChild<QTableView*>(QStringLiteral("objects"));
    const auto* model = qobject_cast<ObjectsModel*>(objects->model());
    QTest::keyClicks(search, QStringLiteral("yearly"));
    ASSERT_EQ(model->rowCount(), 2) << "all, and the furnace";
    EXPECT_EQ(model->objectAt(1)->id, furnace);
    search->clear();
    EXPECT_EQ(model->rowCount(), 3);
}

// Property: what a person said is one object stands as one row, with the jobs of both entries, which can be
// compared; taken back, they are two again.
TEST_F(HistoryListsTest, TakeTwoEntriesOfOneObjectTogether)
{
    auto* objects = lists->findChild<QTableView*>(QStringLiteral("objects"));
    const auto* model = qobject_cast<ObjectsModel*>(objects->model());
    const auto* rows = qobject_cast<JobsModel*>(jobs->model());
    ASSERT_TRUE(session.sayOneObject(furnace, coater));
    ASSERT_EQ(model->rowCount(), 2);
    EXPECT_EQ(model->rowOf(furnace), model->rowOf(coater));
    objects->setCurrentIndex(model->index(1, 0));
    ASSERT_EQ(rows->rowCount(), 3);
    EXPECT_TRUE(model->data(model->index(1, 0), Qt::ToolTipRole)
                    .toString()
                    .contains(QStringLiteral("also entered as Furnace")));
    QSignalSpy compare(lists.get(), &HistoryLists::compareWanted);
    QSignalSpy refused(lists.get(), &HistoryLists::refused);
    const auto isFirstOf = [&](int row) {
        for (int before = 0; before < row; ++before)
            if (rows->jobAt(before)->object == rows->jobAt(row)->object)
                return false;
        return true;
    };
    for (int row = 0; row < 3; ++row)
        if (isFirstOf(row)) {
            jobs->setCurrentIndex(rows->index(row, 0));
            press(Qt::Key_Space);
        }
    EXPECT_EQ(refused.count(), 0);
    EXPECT_EQ(compare.count(), 1);
    ASSERT_TRUE(session.sayTwoObjects(furnace));
    EXPECT_EQ(model->rowCount(), 3);
}

// Regression: a third mark made comparing impossible, and nothing said so.
TEST_F(HistoryListsTest, ComparesThreeMarkedJobsOldestAndNewestAtTheSides)
{
    const auto* rows = qobject_cast<JobsModel*>(jobs->model());
    const model::ObjectId object = rows->jobAt(0)->object;
    for (int i = 1; i <= 3; ++i)
        ASSERT_TRUE(session.history().createJob(object, "one more", Timestamp{i * 1'000LL, 0}));
    lists->refresh();
    std::vector<std::vector<model::JobId>> asked;
    QObject::connect(lists.get(), &HistoryLists::compareWanted,
                     [&](model::JobId first, model::JobId second, const std::vector<model::JobId>& between) {
                         asked.push_back({first, second});
                         asked.back().insert(asked.back().end(), between.begin(), between.end());
                     });
    std::vector<model::JobId> byAge; // the list has the newest first
    for (int row = 0; row < rows->rowCount(); ++row)
        if (rows->jobAt(row)->purpose == "one more") {
            byAge.insert(byAge.begin(), rows->jobAt(row)->id);
            jobs->setCurrentIndex(rows->index(row, 0));
            QTest::keyClick(jobs, Qt::Key_Space, Qt::ShiftModifier);
        }
    ASSERT_EQ(byAge.size(), 3U);
    EXPECT_TRUE(asked.empty()) << "more may be marked";
    QTest::keyClick(jobs, Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(asked.size(), 1U);
    EXPECT_EQ(asked[0], (std::vector<model::JobId>{byAge[0], byAge[2], byAge[1]}));
}

// Property: who types in the window's language finds what the record says in English; parts of words do.
TEST_F(HistoryListsTest, FindsWhatWasFoundInTheWindowsLanguage)
{
    const auto finds = [](const char* typed, const char* record) {
        const auto all = searchedFor(QString::fromUtf8(typed));
        return std::find(all.begin(), all.end(), record) != all.end();
    };
    EXPECT_EQ(searchedFor(QStringLiteral("crack")).size(), 1U) << "in English the text is the word";
    tests::German german;
    QCoreApplication::installTranslator(&german);
    EXPECT_TRUE(finds("Kratzer", "scratch across the seal"));
    EXPECT_TRUE(finds("nicht zugänglich", "not accessible"));
    EXPECT_TRUE(finds("vorläufig", "temporary"));
    EXPECT_TRUE(finds("Sonderfreigabe", "concession"));
    EXPECT_TRUE(finds("Balg", "bellows"));
    EXPECT_TRUE(finds("coater  unterschrieben", "signed coater"));
    EXPECT_TRUE(finds("Halle 3", "Halle 3")) << "what was typed is always searched for";
    EXPECT_EQ(searchedFor(QStringLiteral("x")).size(), 1U);
    EXPECT_EQ(recordLineInWords("scratch across the seal"), QStringLiteral("Kratzer quer zur Dichtung"));
    EXPECT_EQ(recordLineInWords("Kratzer? leak!"), QStringLiteral("Kratzer? leak!")) << "as it was typed";
    QCoreApplication::removeTranslator(&german);
}

} // namespace sealwalk::ui
