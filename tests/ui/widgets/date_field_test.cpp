// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/date_field.h"

#include <gtest/gtest.h>

#include <QLineEdit>
#include <QSignalSpy>
#include <QtTest>

namespace sealwalk::ui {

// Property: one date, written three ways; nonsense and two-digit years are refused.
TEST(DateField, ReadsIsoAndDottedDates)
{
    const QDate march(2026, 3, 1);
    EXPECT_EQ(readDate(QStringLiteral("2026-03-01")), march);
    EXPECT_EQ(readDate(QStringLiteral("2026-3-1")), march);
    EXPECT_EQ(readDate(QStringLiteral(" 1.3.2026 ")), march);
    for (const char* wrong : {"", "soon", "2026-02-30", "31.4.2026", "1.3.26", "2026"})
        EXPECT_FALSE(readDate(QString::fromLatin1(wrong))) << wrong;
}

// Property
TEST(DateField, SaysWhatIsWrongAndKeepsTheText)
{
    DateField field(QStringLiteral("Date"));
    QSignalSpy edited(&field, &DateField::edited);
    QTest::keyClicks(field.field(), QStringLiteral("2026-02-30"));
    QTest::keyClick(field.field(), Qt::Key_Return);
    EXPECT_TRUE(field.isWrong());
    EXPECT_EQ(edited.count(), 0);
    EXPECT_EQ(field.field()->text(), QStringLiteral("2026-02-30"));
    field.field()->selectAll();
    QTest::keyClicks(field.field(), QStringLiteral("2026-02-28"));
    QTest::keyClick(field.field(), Qt::Key_Return);
    EXPECT_FALSE(field.isWrong());
    EXPECT_EQ(edited.count(), 1);
    EXPECT_EQ(field.date(), QDate(2026, 2, 28));
}

} // namespace sealwalk::ui
