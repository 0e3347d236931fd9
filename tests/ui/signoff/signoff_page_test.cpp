// SPDX-License-Identifier: GPL-3.0-or-later
// The review from submission to signature, through the real widgets.
#include "core/report/report_builder.h"
#include "core/transfer/report_facts.h"
#include "tests/support/temporary_history.h"
#include "ui/render/sheet_view.h"
#include "ui/signoff/amendment_dialog.h"
#include "ui/signoff/checks_model.h"
#include "ui/signoff/decision_bar.h"
#include "ui/signoff/evidence_panel.h"
#include "ui/signoff/person_dialog.h"
#include "ui/signoff/signoff_page.h"
#include "ui/signoff/submit_dialog.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QShortcut>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>

#include <algorithm>

namespace sealwalk::ui {
namespace {

class Signoff : public ::testing::Test
{
protected:
    void SetUp() override
    {
        history.startJob(1);
        page = std::make_unique<SignoffPage>(history.session);
        page->resize(1366, 644);
        page->show();
    }

    template <class T>
    [[nodiscard]] T* find(const char* name) const
    {
        T* found = page->findChild<T*>(QString::fromLatin1(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }

    /// Sends the job for review, and says why when it is asked about stops.
    void send(const QString& why = QStringLiteral("to be looked at"))
    {
        EXPECT_TRUE(QTest::qWaitFor([this] { return !history.session.isWorkingOut(); }, 20000));
        QTimer::singleShot(0, page.get(), [this, why] {
            if (auto* dialog = page->findChild<SubmitDialog*>()) {
                stopsNamed = dialog->findChild<QLabel*>(QStringLiteral("openStops"))->text();
                auto* send = dialog->findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok);
                EXPECT_FALSE(send->isEnabled()) << "not without a reason";
                dialog->findChild<QLineEdit*>()->setText(why);
                why.isEmpty() ? dialog->reject() : send->click();
            }
        });
        find<QPushButton>("submit")->click();
    }

    tests::TemporaryHistory history;
    std::unique_ptr<SignoffPage> page;
    QString stopsNamed;
};

// Regression: a job that could not be signed went for review without a question, and nothing told of it.
TEST_F(Signoff, StopsAreNamedBeforeAJobIsSentAndStandOnRecord)
{
    send({});
    EXPECT_EQ(history.session.job().state, model::JobState::Open);
    EXPECT_TRUE(stopsNamed.contains(QStringLiteral("Not sprayed, and no reason given: point 1.")))
        << stopsNamed.toStdString();
    find<QPlainTextEdit>("reviewRemarks")->setPlainText(QStringLiteral("half done"));
    send(QStringLiteral("shift ends"));
    ASSERT_EQ(history.session.job().state, model::JobState::Submitted);
    const std::string& text = history.session.job().review.back().text;
    EXPECT_TRUE(text.starts_with("half done Sent although a sign-off is stopped:")) << text;
    EXPECT_NE(text.find("Not sprayed, and no reason given: point 1."), std::string::npos);
    EXPECT_TRUE(text.ends_with("Because: shift ends"));
}

// Regression: who had sent a job for review could send it back as its reviewer.
TEST_F(Signoff, WhoSentItDoesNotSendItBack)
{
    send();
    find<QPlainTextEdit>("reviewRemarks")->setPlainText(QStringLiteral("forgot something"));
    QStringList refused;
    QObject::connect(page.get(), &SignoffPage::failed, page.get(),
                     [&](const Error& error) { refused << QString::fromStdString(error.message); });
    find<QPushButton>("sendBack")->click();
    EXPECT_EQ(history.session.job().state, model::JobState::Submitted);
    EXPECT_EQ(refused, QStringList{QStringLiteral(
                           "T. Tester sent this job for review; somebody else has to send it back")});
    ASSERT_TRUE(history.session.history().putSetting(kOnePersonSetting, kOnePersonYes).has_value());
    find<QPushButton>("sendBack")->click();
    EXPECT_EQ(history.session.job().state, model::JobState::Returned) << "one person keeps this history";
}

// Property: everything open on a question is listed, each with its own point; what is said on a stop is seen.
TEST_F(Signoff, AQuestionListsAllThatIsOpenOnIt)
{
    tests::TemporaryHistory three;
    three.startJob(3);
    const auto& points = three.session.job().sketch.points;
    analysis::ReviewCheck check;
    check.word = "coverage";
    check.state = analysis::CheckState::Stops;
    check.answer = "Void and not repeated: point 1.";
    check.points = {points[0].id};
    check.matters = {{check.answer, check.state, check.points},
                     {"Left out with a reason: point 3.", analysis::CheckState::NeedsWord, {points[2].id}}};
    // Regression: the reviewer's question took the place of what it asked about.
    check.words = {{"A. Tester", "tomorrow"}, {"B. Reviewer", "when exactly?"}};
    check.wordGiven = check.words.back().text;
    EvidencePanel panel(three.session);
    panel.setCheck(&check);
    const auto* matters = panel.findChild<QListWidget*>(QStringLiteral("matters"));
    ASSERT_EQ(matters->count(), 2);
    EXPECT_FALSE(matters->isHidden());
    EXPECT_EQ(
        panel.findChild<QLabel*>(QStringLiteral("wordGiven"))->text(),
        QString::fromUtf8("Said by A. Tester: “tomorrow”.\nSaid by B. Reviewer: “when exactly?”. It stops a "
                          "sign-off all the same."));
    const QSignalSpy jumped(&panel, &EvidencePanel::jumpWanted);
    emit const_cast<QListWidget*>(matters)->itemActivated(matters->item(1));
    ASSERT_EQ(jumped.count(), 1);
    EXPECT_EQ(jumped.front().at(1).value<model::PointId>(), points[2].id);
    // Regression: the row named the points of the gravest alone, as if nothing else were open.
    ChecksModel rows;
    check.wordGiven.clear();
    rows.setChecks({check}, three.session.job().sketch);
    EXPECT_EQ(rows.index(1).data(ChecksModel::AnswerRole).toString(),
              QStringLiteral("Void and not repeated: point 1. (1 more)"));
    EXPECT_EQ(rows.index(1).data(ChecksModel::AsideRole).toString(), QStringLiteral("1 3"));
    check.matters.resize(1);
    panel.setCheck(&check);
    EXPECT_TRUE(matters->isHidden());
}

// Regression: the statement and the answers wrote rates as a file does, "mbar l/s", beside a map that does
// not.
TEST_F(Signoff, WritesRatesAsTheRestOfTheWindowDoes)
{
    history.calibrate();
    ReadingDraft draft;
    draft.point = history.session.job().sketch.points.front().id;
    draft.outcome = model::Outcome::NoResponse;
    draft.background = millibarLitresPerSecond(2e-10);
    ASSERT_TRUE(history.session.store(draft).has_value());
    history.settle();
    QStringList said;
    for (const QLabel* label : page->findChildren<QLabel*>())
        said << label->text();
    const QAbstractItemModel* model = find<QListView>("checks")->model();
    for (int row = 0; row < model->rowCount(); ++row)
        said << model->index(row, 0).data(ChecksModel::AnswerRole).toString();
    EXPECT_FALSE(said.filter(QStringLiteral("mbar\u00B7l/s")).isEmpty());
    EXPECT_TRUE(said.filter(QStringLiteral("mbar l/s")).isEmpty());
}

TEST_F(Signoff, ListsExceptionsFirst)
{
    const QAbstractItemModel* model = find<QListView>("checks")->model();
    ASSERT_GT(model->rowCount(), 24);
    EXPECT_TRUE(model->index(0, 0).data(ChecksModel::IsHeadRole).toBool());
    EXPECT_EQ(model->index(1, 0).data(ChecksModel::StateRole).toInt(),
              static_cast<int>(analysis::CheckState::Stops));
}

// Regression: the statement put before the signer did not name what an earlier job left held by a temporary
// repair, the report did, and the question of it was in order.
TEST_F(Signoff, AnEarlierJobsTemporaryRepairIsAskedAndNamed)
{
    history.startNextJobOverATemporaryRepair();
    ASSERT_EQ(history.session.repairsLeftOpen().size(), 1u);
    const auto* model = dynamic_cast<const ChecksModel*>(find<QListView>("checks")->model());
    const QString held = QStringLiteral("Held by a temporary repair: point 1.");
    EXPECT_TRUE(QTest::qWaitFor([&] {
        const auto labels = page->findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(),
                           [&](const QLabel* label) { return label->text().contains(held); });
    }));
    const auto* check = model->check(model->rowOf("temporary"));
    EXPECT_EQ(check->state, analysis::CheckState::NeedsWord);
    EXPECT_EQ(check->answer,
              "The temporary repair of an earlier job at point 1 was due on 2026-01-31: it is overdue.");
    const auto facts =
        transfer::reportFacts(history.session.history(), history.session.job().id, Timestamp::now());
    ASSERT_TRUE(facts.has_value());
    EXPECT_NE(report::reportOf(facts->record.job, facts->record.object, facts->options)
                  .statement.text.find(held.toStdString()),
              std::string::npos);
}

TEST_F(Signoff, TheListIsAnHonestModel)
{
    ChecksModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    model.setChecks(analysis::reviewChecks(history.session.job(), history.session.object(), {}, {}),
                    history.session.job().sketch);
    EXPECT_FALSE(model.isReady());
    EXPECT_GE(model.nextOpenRow(0), 0);
}

TEST_F(Signoff, AWordOnAQuestionIsKept)
{
    auto* list = find<QListView>("checks");
    const auto* model = dynamic_cast<const ChecksModel*>(list->model());
    list->setCurrentIndex(model->index(model->rowOf("dry")));
    QTest::keyClicks(find<QLineEdit>("reviewWord"), QStringLiteral("dried overnight"));
    QTest::keyClick(find<QLineEdit>("reviewWord"), Qt::Key_Return);
    ASSERT_EQ(history.session.job().review.size(), 1u);
    EXPECT_EQ(history.session.job().review.front().check, "dry");
    EXPECT_TRUE(model->check(model->rowOf("dry"))->isSettled());
}

// Regression: after a job was sent back every word had to be typed again, also where nothing had changed, and
// the button did nothing, without a word, while its field was empty.
TEST_F(Signoff, AWordThatStillStandsIsSaidAgainByOneKey)
{
    auto* list = find<QListView>("checks");
    const auto* model = dynamic_cast<const ChecksModel*>(list->model());
    auto* add = find<QPushButton>("addWord");
    list->setCurrentIndex(model->index(model->rowOf("dry")));
    QStringList notes;
    QObject::connect(page.get(), &SignoffPage::noteRequested,
                     [&](Severity, const QString& text) { notes << text; });
    add->click();
    EXPECT_EQ(notes.size(), 1);
    EXPECT_TRUE(history.session.job().review.empty());
    find<QLineEdit>("reviewWord")->setText(QStringLiteral("dried overnight"));
    add->click();
    send();
    find<QPlainTextEdit>("reviewRemarks")->setPlainText(QStringLiteral("calibrate afterwards"));
    history.session.setLogger(QStringLiteral("S. Visor"));
    find<QPushButton>("sendBack")->click();
    list->setCurrentIndex(model->index(model->rowOf("dry")));
    ASSERT_FALSE(model->check(model->rowOf("dry"))->isSettled());
    EXPECT_EQ(add->text(), QStringLiteral("Still stands"));
    find<QLineEdit>("reviewWord")->setText(QStringLiteral("other"));
    EXPECT_EQ(add->text(), QStringLiteral("Add word"));
    find<QLineEdit>("reviewWord")->clear();
    add->click();
    EXPECT_EQ(history.session.job().review.back().text, "dried overnight");
    EXPECT_EQ(history.session.job().review.back().by, "S. Visor");
    EXPECT_TRUE(model->check(model->rowOf("dry"))->isSettled());
}

// Regression: there was no other word than one that lets a question stand.
TEST_F(Signoff, AReviewerMayNotAgree)
{
    auto* list = find<QListView>("checks");
    const auto* model = dynamic_cast<const ChecksModel*>(list->model());
    auto* object = find<QPushButton>("object");
    list->setCurrentIndex(model->index(model->rowOf("dry")));
    EXPECT_FALSE(object->isVisible()) << "who works on it has nothing to object to";
    send();
    history.session.setLogger(QStringLiteral("S. Visor"));
    list->setCurrentIndex(model->index(model->rowOf("dry")));
    ASSERT_TRUE(object->isVisible());
    find<QLineEdit>("reviewWord")->setText(QStringLiteral("the trap was wet"));
    object->click();
    EXPECT_EQ(history.session.job().review.back().check, "dry");
    EXPECT_FALSE(model->check(model->rowOf("dry"))->isSettled());
    EXPECT_TRUE(find<QLabel>("wordGiven")->text().contains(QStringLiteral("Not agreed by S. Visor")));
    EXPECT_TRUE(find<QLineEdit>("reviewWord")->text().isEmpty());
    EXPECT_EQ(list->currentIndex().row(), model->rowOf("dry")) << "it stays in view";
}

// Regression: the question that stood first while nothing was worked out stayed chosen, and the list was
// scrolled to its end.
TEST_F(Signoff, StandsOnTheFirstExceptionUntilSomebodyChooses)
{
    auto* list = find<QListView>("checks");
    const auto* model = dynamic_cast<const ChecksModel*>(list->model());
    const std::string first(model->check(1)->word);
    model::Setup setup = history.session.job().setup;
    setup.objectState = "dry";
    setup.procedure = "P-1";
    ASSERT_TRUE(history.session.changeSetup(setup));
    EXPECT_EQ(list->currentIndex().row(), 1);
    list->setCurrentIndex(model->index(model->rowOf("coverage")));
    setup.customer = "somebody";
    ASSERT_TRUE(history.session.changeSetup(setup));
    EXPECT_EQ(model->check(list->currentIndex().row())->word, "coverage") << "chosen by hand: stays";
    // Regression: from a head the list went to its first question when anything changed.
    int head = model->rowCount() - 1;
    while (model->check(head) != nullptr)
        --head;
    ASSERT_GT(head, 1);
    list->setCurrentIndex(model->index(head));
    setup.customer = "somebody else";
    ASSERT_TRUE(history.session.changeSetup(setup));
    EXPECT_EQ(model->check(list->currentIndex().row())->word, "coverage") << "its evidence is in view";
}

// Regression: the button that approves stayed grey without a word why.
TEST_F(Signoff, SaysWhatApprovingWaitsFor)
{
    send();
    const auto* missing = find<QLabel>("approvalMissing");
    EXPECT_TRUE(missing->isVisibleTo(page.get()));
    EXPECT_FALSE(missing->text().isEmpty());
    EXPECT_FALSE(find<QPushButton>("approve")->isEnabled());
    EXPECT_EQ(find<QPushButton>("approve")->toolTip(), missing->text());
}

TEST_F(Signoff, GoesBackOnlyWithARemark)
{
    send();
    ASSERT_EQ(history.session.job().state, model::JobState::Submitted);
    find<QPushButton>("sendBack")->click();
    EXPECT_EQ(history.session.job().state, model::JobState::Submitted);
    find<QPlainTextEdit>("reviewRemarks")->setPlainText(QStringLiteral("calibrate afterwards"));
    history.session.setLogger(QStringLiteral("S. Visor"));
    find<QPushButton>("sendBack")->click();
    EXPECT_EQ(history.session.job().state, model::JobState::Returned);
}

// Regression: it was sent back in the name of whoever stood first in the list of reviewers, unasked.
TEST_F(Signoff, IsSentBackByWhoeverIsAtTheWindow)
{
    model::Person reviewer;
    reviewer.id = model::PersonId::create();
    reviewer.name = "A. First";
    reviewer.publicKey = "key";
    ASSERT_TRUE(history.session.putPerson(reviewer).has_value());
    send();
    // Regression: beside the reviewer's name nothing told that it goes back in the tester's.
    EXPECT_TRUE(find<QLabel>("sentBackBy")->isVisible());
    EXPECT_TRUE(find<QLabel>("sentBackBy")->text().contains(QStringLiteral("T. Tester")));
    history.session.setLogger(QStringLiteral("A. First"));
    EXPECT_TRUE(find<QLabel>("sentBackBy")->text().contains(QStringLiteral("A. First")));
    history.session.setLogger(QStringLiteral("S. Visor"));
    find<QPlainTextEdit>("reviewRemarks")->setPlainText(QStringLiteral("calibrate afterwards"));
    find<QPushButton>("sendBack")->click();
    EXPECT_EQ(history.session.job().review.back().step, model::ReviewStep::Returned);
    EXPECT_EQ(history.session.job().review.back().by, "S. Visor");
}

// Regression: Ctrl+Enter without a passphrase did nothing and said nothing.
TEST_F(Signoff, ApprovingAsksForThePassphrase)
{
    send();
    QStringList notes;
    QObject::connect(page.get(), &SignoffPage::noteRequested, page.get(),
                     [&](Severity, const QString& text) { notes.append(text); });
    for (QShortcut* shortcut : page->findChildren<QShortcut*>())
        if (shortcut->key() == QKeySequence(QStringLiteral("Ctrl+Return")))
            emit shortcut->activated();
    EXPECT_EQ(page->window()->focusWidget(), find<QLineEdit>("passphrase"));
    ASSERT_EQ(notes.size(), 1);
    EXPECT_TRUE(notes.front().contains(QStringLiteral("passphrase")));
}

// Regression: what a job was sent back with was shown nowhere to who had to work on it.
TEST_F(Signoff, WhatItWasSentBackWithIsShown)
{
    auto* list = find<QListView>("checks");
    const auto* model = dynamic_cast<const ChecksModel*>(list->model());
    send();
    list->setCurrentIndex(model->index(model->rowOf("coverage")));
    find<QLineEdit>("reviewWord")->setText(QStringLiteral("spray 1 from the north"));
    QTest::keyClick(find<QLineEdit>("reviewWord"), Qt::Key_Return);
    find<QPlainTextEdit>("reviewRemarks")->setPlainText(QStringLiteral("calibrate afterwards, at 100 %1"));
    history.session.setLogger(QStringLiteral("S. Visor"));
    find<QPushButton>("sendBack")->click();
    const auto* turns = find<QLabel>("turns");
    EXPECT_TRUE(turns->isVisible());
    EXPECT_TRUE(turns->text().startsWith(QStringLiteral("Sent back by S. Visor")))
        << turns->text().toStdString();
    EXPECT_TRUE(turns->text().contains(QStringLiteral("calibrate afterwards, at 100 %1")));
    const QModelIndex remarked = model->index(model->rowOf("coverage"));
    EXPECT_TRUE(remarked.data(ChecksModel::RemarkedRole).toBool());
    EXPECT_TRUE(remarked.data(ChecksModel::AsideRole).toString().startsWith(QStringLiteral("said before")));
    list->setCurrentIndex(remarked);
    EXPECT_TRUE(find<QLabel>("returnedWith")->isVisible());
    EXPECT_TRUE(find<QLabel>("returnedWith")->text().contains(QStringLiteral("spray 1 from the north")));

    find<QPlainTextEdit>("reviewRemarks")->setPlainText(QStringLiteral("done, see 1"));
    send();
    EXPECT_EQ(turns->text().count(QLatin1Char('\n')), 1) << "what was asked, and what was answered";
    EXPECT_TRUE(turns->text().contains(QString::fromUtf8("“done, see 1")));
}

// Regression: a broken signature stood there in the ink of a good one, and a signed job offered a field for
// remarks.
TEST_F(Signoff, ABrokenSignatureLooksBroken)
{
    DecisionBar bar;
    DecisionBar::Shown shown;
    shown.state = model::JobState::Signed;
    shown.certificate = QStringLiteral("Changed since it was signed: readings");
    const auto role = [&] {
        const auto labels = bar.findChildren<QLabel*>();
        const auto said = std::find_if(labels.begin(), labels.end(), [&](const QLabel* label) {
            return label->text() == shown.certificate;
        });
        return said == labels.end() ? QString() : (*said)->property("role").toString();
    };
    bar.show(shown);
    bar.QWidget::show();
    EXPECT_EQ(role(), QStringLiteral("title"));
    EXPECT_FALSE(bar.findChild<QPlainTextEdit*>()->isVisible());
    shown.certificateHolds = false;
    bar.show(shown);
    EXPECT_EQ(role(), QStringLiteral("title-wrong"));
}

// Regression: a job was sent back by nobody: "Sent back by  with the remarks."
TEST_F(Signoff, NobodyUnnamedDecides)
{
    history.session.setLogger({});
    int asked = 0;
    QObject::connect(page.get(), &SignoffPage::nameWanted, page.get(), [&] { ++asked; });
    find<QPushButton>("submit")->click();
    EXPECT_EQ(history.session.job().state, model::JobState::Open);
    EXPECT_EQ(asked, 1);
    QObject::connect(page.get(), &SignoffPage::nameWanted, page.get(),
                     [&] { history.session.setLogger(QStringLiteral("T. Tester")); });
    send();
    EXPECT_EQ(history.session.job().state, model::JobState::Submitted);
    EXPECT_EQ(history.session.job().review.back().by, "T. Tester");
    history.session.setLogger({});
    find<QPlainTextEdit>("reviewRemarks")->setPlainText(QStringLiteral("again"));
    QObject::connect(page.get(), &SignoffPage::nameWanted, page.get(),
                     [&] { history.session.setLogger(QStringLiteral("S. Visor")); });
    find<QPushButton>("sendBack")->click();
    EXPECT_EQ(history.session.job().review.back().by, "S. Visor");
    EXPECT_EQ(asked, 3);
}

// Regression: the decision went by findings of before while newer ones were on their way.
TEST_F(Signoff, SaysThatFindingsAreStillWorkedOut)
{
    ReadingDraft draft;
    draft.point = history.session.job().sketch.points.front().id;
    draft.peak = millibarLitresPerSecond(3e-9);
    ASSERT_TRUE(history.session.store(draft).has_value());
    const auto says = [&] {
        const auto labels = page->findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
            return label->text().contains(QStringLiteral("being worked out"));
        });
    };
    EXPECT_TRUE(says());
    EXPECT_TRUE(QTest::qWaitFor([&] { return !says(); }));
}

// Regression: the field was emptied before the word was on disk.
TEST_F(Signoff, AWordStaysInItsFieldUntilItIsOnDisk)
{
    analysis::ReviewCheck check;
    check.word = "dry";
    EvidencePanel panel(history.session);
    panel.setCheck(&check);
    auto* field = panel.findChild<QLineEdit*>(QStringLiteral("reviewWord"));
    field->setText(QStringLiteral("dried overnight"));
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(field->text(), QStringLiteral("dried overnight"));
    panel.clearWord();
    EXPECT_TRUE(field->text().isEmpty());
}

// Regression: another window's reading put the first point of the question in place of the one clicked.
TEST_F(Signoff, AWordIsOnThePointThatWasClicked)
{
    tests::TemporaryHistory three;
    three.startJob(3);
    const auto& points = three.session.job().sketch.points;
    analysis::ReviewCheck check;
    check.word = "coverage";
    check.points = {points[0].id, points[1].id};
    EvidencePanel panel(three.session);
    panel.setCheck(&check);
    emit panel.findChild<render::SheetView*>()->pointClicked(points[1].id);
    panel.setCheck(&check); // asked anew after something was stored
    const QSignalSpy given(&panel, &EvidencePanel::wordGiven);
    auto* field = panel.findChild<QLineEdit*>(QStringLiteral("reviewWord"));
    field->setText(QStringLiteral("behind the lagging"));
    QTest::keyClick(field, Qt::Key_Return);
    ASSERT_EQ(given.count(), 1);
    EXPECT_EQ(given.front().at(2).value<model::PointId>(), points[1].id);
    check.word = "whole";
    panel.setCheck(&check);
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_TRUE(given.back().at(2).value<model::PointId>().isNil())
        << "on several points: it is of none alone";
    check.points = {points[0].id};
    check.word = "kinds";
    panel.setCheck(&check);
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(given.back().at(2).value<model::PointId>(), points[0].id) << "another question, its own point";
}

// Regression: Cancel closed the dialog, and the amendment was stored all the same.
TEST_F(Signoff, AnAmendmentBeingSealedCannotBeCancelled)
{
    Signing signing(history.session);
    AmendmentDialog dialog(history.session, signing);
    dialog.show();
    model::Person person;
    person.name = "S. Visor";
    signing.createPerson(person, QStringLiteral("correct horse")); // any work on a key
    ASSERT_TRUE(signing.isBusy());
    EXPECT_FALSE(dialog.findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Cancel)->isEnabled());
    QTest::keyClick(&dialog, Qt::Key_Escape);
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_TRUE(QTest::qWaitFor([&] { return !signing.isBusy(); }, 30000));
}

TEST_F(Signoff, CannotBeApprovedWhileSomethingStops)
{
    send();
    find<QLineEdit>("passphrase")->setText(QStringLiteral("correct horse"));
    EXPECT_FALSE(find<QPushButton>("approve")->isEnabled());
}

TEST_F(Signoff, APersonNeedsANameAndTheSamePassphraseTwice)
{
    PersonDialog dialog(false);
    auto* ok = dialog.findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok);
    const auto type = [&](const char* field, const char* text) {
        dialog.findChild<QLineEdit*>(QString::fromLatin1(field))->setText(QString::fromUtf8(text));
    };
    type("personName", "S. Visor");
    type("newPassphrase", "short");
    type("newPassphraseAgain", "short");
    EXPECT_FALSE(ok->isEnabled());
    type("newPassphrase", "\xc3\xa4\xc3\xa4\xc3\xa4\xc3\xa4");
    EXPECT_FALSE(ok->isEnabled());
    type("newPassphrase", "long enough");
    EXPECT_FALSE(ok->isEnabled());
    type("newPassphraseAgain", "long enough");
    EXPECT_TRUE(ok->isEnabled());
}

} // namespace
} // namespace sealwalk::ui
