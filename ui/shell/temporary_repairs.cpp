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

constexpr std::size_t kJobsLookedAt = 10; // the newest; the list of objects counts them all

QString tr(const char* text, const char* comment = nullptr, int count = -1)
{
    return QCoreApplication::translate("sealwalk::ui", text, comment, count);
}

struct Left
{
    int job = 0;
    QString where;
    std::optional<Timestamp> due;
};

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

void collect(const model::Job& job, std::vector<Left>& left)
{
    for (const model::Repair& repair : job.repairs)
        if (!repair.permanent && !repair.madeGoodBy)
            left.push_back({job.number, whereOf(job, repair), repair.due});
}

} // namespace

QString temporaryRepairsNote(const JobSession& session)
{
    if (!session.hasJob())
        return {};
    const auto objects = session.history().objects();
    if (!objects)
        return {};
    const auto object = std::find_if(objects->begin(), objects->end(),
                                     [&](const auto& row) { return row.id == session.object().id; });
    if (object == objects->end() || object->openTemporaryRepairs == 0)
        return {};
    auto rows = session.history().jobsOf(session.object().id);
    if (!rows)
        return {};
    if (rows->size() > kJobsLookedAt)
        rows->resize(kJobsLookedAt);
    std::vector<Left> left;
    for (const storage::JobRow& row : *rows)
        if (row.id != session.job().id)
            if (const auto job = session.history().job(row.id))
                collect(*job, left);
    if (left.empty())
        return {};
    const Timestamp now = Timestamp::now();
    std::stable_sort(left.begin(), left.end(), [](const Left& a, const Left& b) {
        return a.due.value_or(Timestamp{}) < b.due.value_or(Timestamp{});
    });
    QStringList parts;
    for (const Left& each : left) {
        QString part = tr("%1 (job %2)").arg(each.where).arg(each.job);
        if (each.due)
            part += (*each.due < now ? tr(", was due %1") : tr(", due %1"))
                        .arg(QString::fromStdString(each.due->date()));
        parts.append(part);
    }
    return tr("Temporary repairs to make good: %1.").arg(parts.join(QStringLiteral("; ")));
}

} // namespace sealwalk::ui
