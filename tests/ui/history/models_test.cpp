// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/jobs_model.h"
#include "ui/history/objects_model.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QSignalSpy>

namespace sealwalk::ui {

namespace {

storage::JobRow job(int number, model::ObjectId object)
{
    storage::JobRow row;
    row.id = model::JobId::create();
    row.number = number;
    row.object = object;
    row.objectName = "Box coater 2";
    row.purpose = "fault search";
    row.opened = Timestamp::parse("2026-03-17T09:00:00+01:00").value();
    row.points = 62;
    return row;
}

} // namespace

// Property: Qt's own tester finds nothing to complain about, whatever rows come and go.
TEST(JobsModel, PassesTheModelTester)
{
    JobsModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    const model::ObjectId object = model::ObjectId::create();
    model.setRows({job(118, object), job(164, object)});
    model.toggleMark(1);
    model.setRows({job(165, object)});
    model.setRows({});
    model.clearMarks();
    EXPECT_EQ(model.rowCount(), 0);
}

// Property: marks go by the job, not by the row, and outlive a search.
TEST(JobsModel, KeepsMarksWhileRowsComeAndGo)
{
    JobsModel model;
    QSignalSpy changed(&model, &JobsModel::marksChanged);
    const model::ObjectId object = model::ObjectId::create();
    const storage::JobRow first = job(118, object);
    const storage::JobRow second = job(164, object);
    model.setRows({first, second});
    model.toggleMark(0);
    model.setRows({second});
    model.toggleMark(0);
    ASSERT_EQ(model.marked().size(), 2U);
    EXPECT_EQ(model.marked()[0].id, first.id);
    EXPECT_EQ(model.data(model.index(0, JobsModel::Number), Qt::CheckStateRole).toInt(), Qt::Checked);
    EXPECT_EQ(changed.count(), 2);
    model.toggleMark(0);
    EXPECT_EQ(model.marked().size(), 1U);
    EXPECT_EQ(model.data(model.index(0, JobsModel::Date), Qt::DisplayRole).toString(),
              QStringLiteral("2026-03-17"));
}

// Property
TEST(ObjectsModel, PassesTheModelTesterAndFindsItsRows)
{
    ObjectsModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    storage::ObjectRow row;
    row.id = model::ObjectId::create();
    row.name = "Furnace";
    row.tag = "VF-3";
    row.openTemporaryRepairs = 1;
    model.setRows({row});
    EXPECT_EQ(model.rowOf(row.id), 1);
    EXPECT_EQ(model.rowOf(model::ObjectId::create()), 0);
    EXPECT_EQ(model.objectAt(0), nullptr);
    EXPECT_EQ(model.data(model.index(1, ObjectsModel::Name), Qt::DisplayRole).toString(),
              QStringLiteral("Furnace  VF-3"));
    EXPECT_EQ(model.data(model.index(1, ObjectsModel::Temporary), Qt::DisplayRole).toString(),
              QStringLiteral("1"));
    EXPECT_EQ(model.data(model.index(1, ObjectsModel::Last), Qt::DisplayRole).toString(),
              QStringLiteral("no job yet"));
}

} // namespace sealwalk::ui
