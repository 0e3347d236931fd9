// SPDX-License-Identifier: GPL-3.0-or-later
// The review from submission to signature, through the real widgets.
#include "tests/support/temporary_history.h"
#include "ui/signoff/checks_model.h"
#include "ui/signoff/person_dialog.h"
#include "ui/signoff/signoff_page.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QDialogButtonBox>
#include <QLineEdit>
#include <QListView>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

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

    tests::TemporaryHistory history;
    std::unique_ptr<SignoffPage> page;
};

TEST_F(Signoff, ListsExceptionsFirst)
{
    const QAbstractItemModel* model = find<QListView>("checks")->model();
    ASSERT_GT(model->rowCount(), 24);
    EXPECT_TRUE(model->index(0, 0).data(ChecksModel::IsHeadRole).toBool());
    EXPECT_EQ(model->index(1, 0).data(ChecksModel::StateRole).toInt(),
              static_cast<int>(analysis::CheckState::Stops));
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

TEST_F(Signoff, GoesBackOnlyWithARemark)
{
    find<QPushButton>("submit")->click();
    ASSERT_EQ(history.session.job().state, model::JobState::Submitted);
    find<QPushButton>("sendBack")->click();
    EXPECT_EQ(history.session.job().state, model::JobState::Submitted);
    find<QPlainTextEdit>("reviewRemarks")->setPlainText(QStringLiteral("calibrate afterwards"));
    find<QPushButton>("sendBack")->click();
    EXPECT_EQ(history.session.job().state, model::JobState::Returned);
}

TEST_F(Signoff, CannotBeApprovedWhileSomethingStops)
{
    find<QPushButton>("submit")->click();
    find<QLineEdit>("passphrase")->setText(QStringLiteral("correct horse"));
    EXPECT_FALSE(find<QPushButton>("approve")->isEnabled());
}

TEST_F(Signoff, APersonNeedsANameAndTheSamePassphraseTwice)
{
    PersonDialog dialog(false);
    auto* ok = dialog.findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok);
    const auto type = [&](const char* field, const char* text) {
        dialog.findChild<QLineEdit*>(QString::fromLatin1(field))->setText(QString::fromLatin1(text));
    };
    type("personName", "S. Visor");
    type("newPassphrase", "short");
    type("newPassphraseAgain", "short");
    EXPECT_FALSE(ok->isEnabled());
    type("newPassphrase", "long enough");
    EXPECT_FALSE(ok->isEnabled());
    type("newPassphraseAgain", "long enough");
    EXPECT_TRUE(ok->isEnabled());
}

} // namespace
} // namespace sealwalk::ui
