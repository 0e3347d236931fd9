// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/temporary_repairs.h"

#include "core/storage/history_store.h"
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
            part += (*each.repair.due < now ? tr(", was due %1") : tr(", due %1"))
                        .arg(QString::fromStdString(each.repair.due->date()));
        parts.append(part);
    }
    return tr("Temporary repairs to make good: %1.").arg(parts.join(QStringLiteral("; ")));
}

} // namespace sealwalk::ui
