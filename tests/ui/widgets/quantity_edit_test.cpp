// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantities/quantity_text.h"
#include "tests/support/german.h"
#include "ui/widgets/quantity_edit.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QSignalSpy>
#include <QtTest>

namespace sealwalk::ui {

namespace {

Unit unit(const char* id)
{
    return readUnit(id).value();
}

void type(QuantityEdit& edit, const QString& text)
{
    edit.field()->setFocus();
    edit.field()->selectAll();
    QTest::keyClicks(edit.field(), text);
    QTest::keyClick(edit.field(), Qt::Key_Return);
}

QString below(const QuantityEdit& edit)
{
    const auto* label = edit.findChild<QLabel*>();
    return label->isHidden() ? QString() : label->text();
}

class Comma
{
public:
    Comma() { QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany)); }
    ~Comma() { QLocale::setDefault(QLocale::c()); }
};

} // namespace

// Property: what was typed stays as typed, and the value below is in the usual unit.
TEST(QuantityEdit, KeepsWhatWasTypedAndEchoesTheUsualUnit)
{
    QuantityEdit edit(QStringLiteral("Volume"), unit("l"));
    type(edit, QStringLiteral("0.12 m3"));
    EXPECT_EQ(edit.text(), QStringLiteral("0.12 m3"));
    ASSERT_TRUE(edit.si());
    EXPECT_DOUBLE_EQ(*edit.si(), 0.12);
    EXPECT_EQ(below(edit), QStringLiteral("= 120 l"));
}

// Regression: in German the field said in English why it did not take a value.
TEST(QuantityEdit, SaysInTheWindowsLanguageWhatIsWrong)
{
    const tests::InGerman german;
    QuantityEdit edit(QStringLiteral("Volumen"), unit("l"));
    type(edit, QStringLiteral("3,5 mm"));
    EXPECT_EQ(below(edit),
              QStringLiteral("\"3,5 mm\" ist eine Länge, gefragt ist aber ein Volumen, etwa \"120 l\""));
    type(edit, QStringLiteral("1,2,3"));
    EXPECT_EQ(below(edit), QStringLiteral("\"1,2,3\" hat mehr als ein Dezimalzeichen; ohne "
                                          "Tausendertrennzeichen schreiben"));
}

// Property
TEST(QuantityEdit, TakesABareNumberInTheUsualUnitWithoutAnEcho)
{
    QuantityEdit edit(QStringLiteral("Volume"), unit("l"));
    type(edit, QStringLiteral("480"));
    ASSERT_TRUE(edit.si());
    EXPECT_DOUBLE_EQ(*edit.si(), 0.480);
    EXPECT_TRUE(below(edit).isEmpty());
}

// Property: what a bare number was taken for is written behind it, and means the same. Regression: 25 stood
// beside fields that said "1.2 m", and nobody saw whether it was metres.
TEST(QuantityEdit, PutsTheUnitBehindABareNumber)
{
    const std::tuple<const char*, const char*, const char*> rows[] = {
        {"l", "480", "480 l"},
        {"l", "2.50", "2.5 l"},
        {"l", "0,5", "0.5 l"},
        {"l", "480 cm3", "480 cm3"},
        {"mbar l/s", "3.2-7", "3.2e-7 mbar·l/s"},
        {"mbar l/s", "3.2 -7", "3.2e-7 mbar·l/s"},
        {"mbar l/s", "3.2e-8 Pa m3/s", "3.2e-8 Pa m3/s"},
    };
    for (const auto& [unitText, typed, written] : rows) {
        QuantityEdit edit(QStringLiteral("Value"), unit(unitText));
        type(edit, QString::fromUtf8(typed));
        ASSERT_TRUE(edit.si()) << typed << below(edit).toStdString();
        EXPECT_EQ(edit.text(), QString::fromUtf8(written)) << typed;
        const double before = *edit.si();
        edit.commit();
        EXPECT_EQ(edit.si(), before) << typed;
    }
}

// Property: an entry that cannot be taken keeps the last good value, says why, and reports nothing.
TEST(QuantityEdit, ExplainsAWrongEntryBesideTheFieldAndKeepsTheGoodValue)
{
    const char* refused[] = {"a lot", "120 kg", "1e999 l", "-5 l", "12 l l l"};
    for (const char* text : refused) {
        QuantityEdit edit(QStringLiteral("Volume"), unit("l"));
        edit.setSi(0.5);
        QSignalSpy edited(&edit, &QuantityEdit::edited);
        type(edit, QString::fromLatin1(text));
        EXPECT_TRUE(edit.isWrong()) << text;
        EXPECT_FALSE(below(edit).isEmpty()) << text;
        EXPECT_EQ(edited.count(), 0) << text;
        EXPECT_EQ(edit.text(), QString::fromLatin1(text));
        ASSERT_TRUE(edit.si());
        EXPECT_DOUBLE_EQ(*edit.si(), 0.5);
        type(edit, QStringLiteral("700 l"));
        EXPECT_FALSE(edit.isWrong()) << text;
        EXPECT_EQ(edited.count(), 1) << text;
    }
}

// Property: the decimal comma and point are never misread for one another.
TEST(QuantityEdit, ReadsCommaAndPointByTheLocale)
{
    {
        const Comma german;
        QuantityEdit edit(QStringLiteral("Volume"), unit("l"));
        type(edit, QStringLiteral("0,12 m3"));
        ASSERT_TRUE(edit.si());
        EXPECT_DOUBLE_EQ(*edit.si(), 0.12);
        edit.setSi(0.0025);
        EXPECT_EQ(edit.text(), QStringLiteral("2,5 l"));
        type(edit, QStringLiteral("1.200 l"));
        EXPECT_TRUE(edit.isWrong()) << "could be 1.2 or 1200";
    }
    QuantityEdit edit(QStringLiteral("Volume"), unit("l"));
    type(edit, QStringLiteral("1,200 l"));
    EXPECT_TRUE(edit.isWrong()) << "could be 1.2 or 1200";
}

// Property: the short forms of the trade are one value.
TEST(QuantityEdit, TakesTheShortFormsOfARate)
{
    for (const char* text : {"3.2e-7", "3,2e-7", "3.2-7", "3.2×10^-7", "3.2e-7 mbar l/s", "3.2e-8 Pa m3/s"}) {
        QuantityEdit edit(QStringLiteral("Limit"), unit("mbar l/s"));
        type(edit, QString::fromUtf8(text));
        ASSERT_TRUE(edit.si()) << text << below(edit).toStdString();
        EXPECT_NEAR(*edit.si(), 3.2e-8, 1e-20) << text;
    }
}

// Property
TEST(QuantityEdit, HoldsItsRange)
{
    QuantityEdit edit(QStringLiteral("Coverage factor"), QString());
    edit.setRange({.above = 0.0, .atMost = 10.0});
    type(edit, QStringLiteral("0"));
    EXPECT_TRUE(edit.isWrong());
    EXPECT_NE(below(edit).indexOf(QStringLiteral("above 0")), -1);
    type(edit, QStringLiteral("11"));
    EXPECT_TRUE(edit.isWrong());
    type(edit, QStringLiteral("3"));
    EXPECT_FALSE(edit.isWrong());
    EXPECT_DOUBLE_EQ(edit.si().value_or(0), 3.0);
}

// Property: a value from elsewhere does not rewrite text that already means it, and emptying means "none".
TEST(QuantityEdit, LeavesTextThatMeansTheSameAndTakesAnEmptyBoxAsNone)
{
    QuantityEdit edit(QStringLiteral("Volume"), unit("l"));
    type(edit, QStringLiteral("0.12 m3"));
    edit.setSi(0.12);
    EXPECT_EQ(edit.text(), QStringLiteral("0.12 m3"));
    QSignalSpy edited(&edit, &QuantityEdit::edited);
    edit.field()->selectAll();
    QTest::keyClick(edit.field(), Qt::Key_Delete);
    QTest::keyClick(edit.field(), Qt::Key_Return);
    EXPECT_EQ(edited.count(), 1);
    EXPECT_FALSE(edit.si());
}

// Property: the name and the complaint reach a screen reader.
TEST(QuantityEdit, NamesItselfAndItsComplaintToAScreenReader)
{
    QuantityEdit edit(QStringLiteral("Volume"), unit("l"));
    EXPECT_EQ(edit.field()->accessibleName(), QStringLiteral("Volume"));
    type(edit, QStringLiteral("x"));
    EXPECT_EQ(edit.field()->accessibleDescription(), below(edit));
}

} // namespace sealwalk::ui
