// SPDX-License-Identifier: GPL-3.0-or-later
// People of the history through the real dialog: new ones, new passphrases, those who left.
#include "tests/support/temporary_history.h"
#include "ui/session/signing.h"
#include "ui/signoff/decision_bar.h"
#include "ui/signoff/people_dialog.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>
#include <QTimer>

namespace sealwalk::ui {
namespace {

constexpr int kPatience = 30000; // the key costs a good part of a second, more under a sanitizer

class People : public ::testing::Test
{
protected:
    void SetUp() override
    {
        history.startJob(1);
        dialog = std::make_unique<PeopleDialog>(history.session);
        dialog->show();
    }

    [[nodiscard]] QPushButton* button(const char* name) const
    {
        return dialog->findChild<QPushButton*>(QString::fromLatin1(name));
    }

    [[nodiscard]] bool saysInTime(const QString& words) const
    {
        return QTest::qWaitFor(
            [&] {
                for (const QLabel* label : dialog->findChildren<QLabel*>())
                    if (label->text().contains(words))
                        return true;
                return false;
            },
            kPatience);
    }

    /// Presses a button that opens a dialog, fills that one's fields and accepts it.
    void fillIn(const char* opener, const std::vector<std::pair<const char*, const char*>>& fields)
    {
        QTimer::singleShot(0, [&fields] {
            auto* asked = QApplication::activeModalWidget();
            ASSERT_NE(asked, nullptr);
            for (const auto& [name, text] : fields)
                asked->findChild<QLineEdit*>(QString::fromLatin1(name))->setText(QString::fromUtf8(text));
            auto* ok = asked->findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok);
            EXPECT_TRUE(ok->isEnabled());
            ok->click();
        });
        button(opener)->click();
    }

    void addVisor()
    {
        fillIn("addPerson", {{"personName", "S. Visor"},
                             {"newPassphrase", "correct horse"},
                             {"newPassphraseAgain", "correct horse"}});
        ASSERT_TRUE(saysInTime(QStringLiteral("S. Visor can sign now.")));
    }

    [[nodiscard]] model::Person only() const { return history.session.people().value().at(0); }

    tests::TemporaryHistory history;
    std::unique_ptr<PeopleDialog> dialog;
};

TEST_F(People, AreAddedAndGivenAnotherPassphrase)
{
    EXPECT_FALSE(button("newPassphrase")->isEnabled()) << "nobody is chosen";
    addVisor();
    EXPECT_EQ(dialog->findChild<QTableWidget*>()->rowCount(), 1);
    const model::Person before = only();
    const auto change = [this](const char* old) {
        fillIn("newPassphrase", {{"oldPassphrase", old},
                                 {"nextPassphrase", "battery staple"},
                                 {"nextPassphraseAgain", "battery staple"}});
    };
    change("wrong horse");
    ASSERT_TRUE(saysInTime(QStringLiteral("passphrase")));
    EXPECT_TRUE(QTest::qWaitFor([&] { return button("newPassphrase")->isEnabled(); }, kPatience));
    EXPECT_EQ(only(), before) << "a wrong passphrase changes nothing";
    change("correct horse");
    ASSERT_TRUE(saysInTime(QStringLiteral("is changed")));
    EXPECT_EQ(only().publicKey, before.publicKey);
    EXPECT_NE(only().sealedKey, before.sealedKey);
}

// Property: who added a person, and when, is shown and stays; so does who marked them as having left.
TEST_F(People, WhoAddedThemIsKept)
{
    history.session.setLogger(QStringLiteral("Ines Marl"));
    addVisor();
    button("personLeft")->click();
    EXPECT_TRUE(
        dialog->findChild<QTableWidget*>()->item(0, 3)->text().endsWith(QStringLiteral(", by Ines Marl")));
    const auto entries = history.session.personEntries();
    ASSERT_TRUE(entries.has_value());
    ASSERT_EQ(entries->size(), 2U);
    EXPECT_EQ(entries->at(0).what, "added");
    EXPECT_EQ(entries->at(0).by, "Ines Marl");
    EXPECT_EQ(entries->at(1).what, "left");
}

TEST_F(People, WhoLeftSignsNoMoreUntilTheyAreBack)
{
    addVisor();
    button("personLeft")->click();
    EXPECT_FALSE(only().active);
    Signing signing(history.session);
    std::optional<Error> refused;
    QObject::connect(&signing, &Signing::finished,
                     [&](const std::optional<Error>& problem) { refused = problem; });
    ASSERT_TRUE(history.session.submit("").has_value());
    ASSERT_TRUE(QTest::qWaitFor([&] { return !history.session.isWorkingOut(); }, kPatience));
    signing.approve(only().id, QStringLiteral("correct horse"));
    ASSERT_TRUE(refused);
    EXPECT_EQ(refused->code, ErrorCode::NotAllowed);
    EXPECT_EQ(button("personLeft")->text(), QStringLiteral("&Is back"));
    button("personLeft")->click();
    EXPECT_TRUE(only().active);
}

TEST_F(People, OnePersonOrTwoIsKept)
{
    auto* one = dialog->findChild<QCheckBox*>(QStringLiteral("onePerson"));
    one->click();
    EXPECT_TRUE(Signing(history.session).isOnePersonHistory());
    one->click();
    EXPECT_FALSE(Signing(history.session).isOnePersonHistory());
}

// Regression: somebody just added was not the one chosen, and their passphrase was tried on another's key.
TEST(DecisionBarPeople, WhoWasJustAddedIsChosen)
{
    const auto person = [](const char* name) {
        model::Person made;
        made.id = model::PersonId::create();
        made.name = name;
        made.publicKey = "key";
        return made;
    };
    const std::vector<model::Person> first{person("A. First"), person("Z. Last")};
    DecisionBar bar;
    bar.setPeople(first);
    auto* reviewer = bar.findChild<QComboBox*>(QStringLiteral("reviewer"));
    EXPECT_EQ(reviewer->currentText(), QStringLiteral("A. First"));
    bar.setPeople({first[0], person("M. Middle"), first[1]});
    EXPECT_EQ(reviewer->currentText(), QStringLiteral("M. Middle"));
    bar.setPeople(first);
    EXPECT_EQ(reviewer->count(), 2);
}

} // namespace
} // namespace sealwalk::ui
