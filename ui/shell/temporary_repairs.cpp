// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/temporary_repairs.h"

#include "core/base/calendar_day.h"
#include "core/storage/history_store.h"
#include "ui/render/core_words.h"
#include "ui/session/job_session.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <vector>

namespace sealwalk::ui {

namespace {

QString tr(const char* text, const char* comment = nullptr, int count = -1)
{
    return QCoreApplication::translate("sealwalk::ui", text, comment, count);
}

QString whereOf(const model::Job& job, const model::Repair& repair)
{
    if (repair.points.empty())
        return {};
    const model::TestPoint* point = job.sketch.point(repair.points.front());
    const model::Joint* joint = point == nullptr ? nullptr : job.sketch.joint(point->joint);
    return joint == nullptr
               ? QString()
               : QStringLiteral("%1, %2").arg(point->number).arg(QString::fromStdString(joint->name));
}

} // namespace

QString temporaryRepairsNote(const JobSession& session)
{
    if (!session.hasJob())
        return {};
    std::vector<storage::OpenRepair> left = session.repairsLeftOpen();
    if (left.empty())
        return {};
    const Timestamp now = Timestamp::now();
    std::stable_sort(left.begin(), left.end(), [](const auto& a, const auto& b) {
        return a.repair.due.value_or(Timestamp{}) < b.repair.due.value_or(Timestamp{});
    });
    QStringList parts;
    for (const storage::OpenRepair& each : left) {
        QString part = tr("%1 (job %2)").arg(whereOf(session.job(), each.repair)).arg(each.jobNumber);
        if (each.repair.due)
            part += (isPast(*each.repair.due, now) ? tr(", was due %1") : tr(", due %1"))
                        .arg(QString::fromStdString(each.repair.due->date()));
        parts.append(part);
    }
    return tr("Temporary repairs to make good: %1.").arg(parts.join(QStringLiteral("; ")));
}

QString overdueRepairsNote(const JobSession& session)
{
    constexpr int kMostNamed = 3;
    if (!session.hasHistory())
        return {};
    const auto objects = session.history().objects();
    if (!objects)
        return {};
    const Timestamp now = Timestamp::now();
    QStringList parts;
    int overdue = 0;
    for (const storage::ObjectRow& object : *objects) {
        if (object.openTemporaryRepairs == 0)
            continue;
        const auto open = session.history().openTemporaryRepairs(object.id);
        if (!open)
            continue;
        for (const storage::OpenRepair& each : *open) {
            if (!each.repair.due || !isPast(*each.repair.due, now) || ++overdue > kMostNamed)
                continue;
            parts.append(tr("%1, job %2: %3, was due %4")
                             .arg(QString::fromStdString(object.name))
                             .arg(each.jobNumber)
                             .arg(render::repairInWords(each.repair.action),
                                  QString::fromStdString(each.repair.due->date())));
        }
    }
    if (overdue == 0)
        return {};
    if (overdue > kMostNamed)
        parts.append(tr("and %1 more").arg(overdue - kMostNamed));
    return tr("Overdue temporary repairs: %1.").arg(parts.join(QStringLiteral("; ")));
}

} // namespace sealwalk::ui
