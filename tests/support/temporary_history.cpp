// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/temporary_history.h"

#include "core/base/contract.h"
#include "core/editing/joints.h"
#include "core/editing/sheets.h"
#include "tests/support/jobs.h"

#include <QSignalSpy>
#include <QTest>

namespace sealwalk::tests {

namespace {

constexpr int kPatienceMilliseconds = 5000;

template <class T>
T must(Result<T> result)
{
    SEALWALK_EXPECT(result.has_value());
    return std::move(*result);
}

void must(const Status& status)
{
    SEALWALK_EXPECT(status.has_value());
}

} // namespace

TemporaryHistory::TemporaryHistory()
{
    must(session.openHistory(file(), true));
    session.setLogger(QStringLiteral("T. Tester"));
}

std::filesystem::path TemporaryHistory::file() const
{
    return std::filesystem::path(m_folder.path().toStdString()) / "test.sealwalk";
}

void TemporaryHistory::startJob(int points)
{
    model::TestObject object;
    object.id = model::ObjectId::create();
    object.name = "Vessel";
    object.volume = litres(120.0);
    object.pointLimit = millibarLitresPerSecond(1e-8);
    must(session.createObject(object));
    must(session.createJob(object.id, "yearly check"));
    model::Sheet sheet;
    sheet.id = model::SheetId::create();
    sheet.name = "Door";
    sheet.seenFrom = "the front";
    must(session.edit(must(editing::addSheet(session.job().sketch, sheet))));
    model::Joint joint;
    joint.id = model::JointId::create();
    joint.sheet = sheet.id;
    joint.name = "Port";
    joint.shape = geometry::Ring{{600, 600}, 200};
    must(session.edit(must(
        editing::addJoint(session.job().sketch, joint, editing::Laying{.number = points, .first = {}}))));
    must(session.openRound(model::RoundKind::AsFound, {}));
}

void TemporaryHistory::startNextJobOverATemporaryRepair()
{
    model::Repair patch;
    patch.points = {session.job().sketch.points.front().id};
    patch.action = "filler";
    patch.permanent = false;
    patch.owner = "Cleo";
    patch.due = must(Timestamp::parseDate("2026-01-31"));
    must(session.putRepair(patch));
    QTest::qWait(5); // the next job is opened after it
    must(session.createJob(session.object().id, "again"));
    must(session.openRound(model::RoundKind::AsFound, {}));
}

void TemporaryHistory::calibrate()
{
    const Timestamp before{Timestamp::now().utcMilliseconds - 60'000, 0};
    must(session.addCalibration(systemCheck(before, 1.0)));
    must(session.addBackground(quietWatch(before)));
}

void TemporaryHistory::settle()
{
    QSignalSpy answered(&session, &ui::JobSession::findingsChanged);
    (void)answered.wait(kPatienceMilliseconds);
}

} // namespace sealwalk::tests
