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

constexpr int kMostNamed = 3;

QString tr(const char* text, const char* comment = nullptr, int count = -1)
{
    return QCoreApplication::translate("sealwalk::ui", text, comment, count);
}

QString whereOf(const model::Job& job, const std::vector<model::PointId>& points)
{
    if (points.empty())
        return {};
    const model::TestPoint* point = job.sketch.point(points.front());
    const model::Joint* joint = point == nullptr ? nullptr : job.sketch.joint(point->joint);
    return joint == nullptr
               ? QString()
               : QStringLiteral("%1, %2").arg(point->number).arg(QString::fromStdString(joint->name));
}

/// The same from the job the points are of.
QString whereOf(const JobSession& session, model::JobId id, const std::vector<model::PointId>& points)
{
    const auto job = session.history().job(id);
    const QString where = job ? whereOf(*job, points) : QString();
    return where.isEmpty() ? tr("a point no longer drawn") : tr("point %1").arg(where);
}

Timestamp soon(const Timestamp& now)
{
    constexpr std::int64_t kDaysAhead = 30;
    return {now.utcMilliseconds + kDaysAhead * 86'400'000, now.offsetMinutes};
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
        QString part = tr("%1 (job %2)").arg(whereOf(session.job(), each.repair.points)).arg(each.jobNumber);
        if (each.repair.due)
            part += (isPast(*each.repair.due, now) ? tr(", was due %1") : tr(", due %1"))
                        .arg(QString::fromStdString(each.repair.due->date()));
        parts.append(part);
    }
    return tr("Temporary repairs to make good: %1.").arg(parts.join(QStringLiteral("; ")));
}

QString endingConcessionsNote(const JobSession& session)
{
    if (!session.hasHistory())
        return {};
    const Timestamp now = Timestamp::now();
    const bool ofJob = session.hasJob();
    auto ending = session.history().concessionsEndingBy(soon(now), ofJob ? std::optional(session.object().id)
                                                                         : std::nullopt);
    if (!ending)
        return {};
    if (ofJob)
        std::erase_if(*ending, [&](const auto& each) { return each.job == session.job().id; });
    if (ending->empty())
        return {};
    QStringList parts;
    for (const storage::EndingConcession& each : *ending) {
        if (parts.size() == kMostNamed) {
            parts.append(tr("and %1 more").arg(static_cast<int>(ending->size()) - kMostNamed));
            break;
        }
        const QString where = whereOf(session, each.job, each.concession.points);
        const QString ends = isPast(*each.concession.until, now) ? tr("ran out on %1") : tr("until %1");
        parts.append(
            tr("%1: %2, granted by %3 (job %4)")
                .arg(ofJob ? where : QString::fromStdString(each.objectName) + QLatin1String(", ") + where,
                     ends.arg(QString::fromStdString(each.concession.until->date())),
                     QString::fromStdString(each.concession.grantedBy))
                .arg(each.jobNumber));
    }
    return tr("Concessions at their end: %1.").arg(parts.join(QStringLiteral("; ")));
}

QString overdueRepairsNote(const JobSession& session)
{
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
            parts.append(tr("%1, %2: %3, was due %4, %5 (job %6)")
                             .arg(QString::fromStdString(object.name),
                                  whereOf(session, each.job, each.repair.points),
                                  render::repairInWords(each.repair.action),
                                  QString::fromStdString(each.repair.due->date()),
                                  each.repair.owner.empty() ? tr("no owner named")
                                                            : QString::fromStdString(each.repair.owner))
                             .arg(each.jobNumber));
        }
    }
    if (overdue == 0)
        return {};
    if (overdue > kMostNamed)
        parts.append(tr("and %1 more").arg(overdue - kMostNamed));
    return tr("Overdue temporary repairs: %1.").arg(parts.join(QStringLiteral("; ")));
}

} // namespace sealwalk::ui
