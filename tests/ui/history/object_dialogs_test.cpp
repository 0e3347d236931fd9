// SPDX-License-Identifier: GPL-3.0-or-later
// The dialogs about test objects, through their widgets.
#include "ui/history/object_dialog.h"
#include "ui/history/same_object_dialog.h"

#include <gtest/gtest.h>

#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QtTest>

namespace sealwalk::ui {

namespace {

storage::ObjectRow object(const char* name, const char* tag)
{
    storage::ObjectRow row;
    row.id = model::ObjectId::create();
    row.name = name;
    row.tag = tag;
    row.jobs = 1;
    return row;
}

} // namespace

// Property: who looks for a second entry finds those of the same tag or name on top, is told what a tick
// means, and only what was ticked otherwise than before is answered.
TEST(SameObjectDialog, OffersTheLikelyFirstAndAnswersWhatWasChanged)
{
    storage::ObjectRow chamber = object("Chamber", "C-4");
    const storage::ObjectEntry known{model::ObjectId::create(), "Chamber, old entry", "", ""};
    chamber.others = {known};
    const std::vector<storage::ObjectRow> all{object("Autoclave", "A-1"), chamber, object("Kammer", "c-4")};
    SameObjectDialog dialog(all, known.id);
    auto* list = dialog.findChild<QListWidget*>(QStringLiteral("entries"));
    auto* store = dialog.findChild<QPushButton*>(QStringLiteral("store"));
    ASSERT_EQ(list->count(), 3);
    EXPECT_TRUE(list->item(0)->text().startsWith(QStringLiteral("Chamber, old entry")));
    EXPECT_EQ(list->item(0)->checkState(), Qt::Checked);
    EXPECT_TRUE(list->item(1)->text().startsWith(QStringLiteral("Kammer"))) << "the same tag";
    EXPECT_FALSE(store->isEnabled());

    list->setCurrentRow(1);
    QTest::keyClick(list, Qt::Key_Space);
    EXPECT_TRUE(store->isEnabled());
    EXPECT_EQ(dialog.joined(), std::vector{all[2].id});
    EXPECT_TRUE(dialog.parted().empty());
    QTest::keyClick(list, Qt::Key_Space);
    EXPECT_FALSE(store->isEnabled()) << "as it was";
    list->setCurrentRow(0);
    QTest::keyClick(list, Qt::Key_Space);
    EXPECT_EQ(dialog.parted(), std::vector{known.id});

    QTest::keyClicks(dialog.findChild<QLineEdit*>(QStringLiteral("filter")), QStringLiteral("auto"));
    EXPECT_TRUE(list->item(0)->isHidden());
    EXPECT_FALSE(list->item(2)->isHidden());
    EXPECT_EQ(dialog.parted(), std::vector{known.id}) << "what is not seen stays as ticked";
}

// Regression: a second object of the same name and tag was made without a word, and its jobs stood alone.
TEST(ObjectDialog, RefusesTheNameAndTagOfAnother)
{
    ObjectDialog dialog{model::TestObject{}};
    dialog.setTaken({{model::ObjectId::create(), "Chamber", "C-4", ""}});
    QSignalSpy accepted(&dialog, &QDialog::accepted);
    auto* name = dialog.findChild<QLineEdit*>(QStringLiteral("name"));
    auto* tag = dialog.findChild<QLineEdit*>(QStringLiteral("tag"));
    auto* store = dialog.findChild<QPushButton*>(QStringLiteral("store"));
    name->setText(QStringLiteral("Chamber"));
    tag->setText(QStringLiteral("C-4"));
    store->click();
    EXPECT_EQ(accepted.count(), 0);
    tag->setText(QStringLiteral("C-5"));
    store->click();
    EXPECT_EQ(accepted.count(), 1);
}

} // namespace sealwalk::ui
