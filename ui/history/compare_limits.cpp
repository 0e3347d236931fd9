// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/compare_limits.h"

#include "core/analysis/limit_change.h"
#include "core/report/rate_text.h"
#include "core/report/shown_unit.h"
#include "ui/widgets/number_display.h"

#include <QCoreApplication>

#include <algorithm>

namespace sealwalk::ui {

namespace {

QString tr(const char* text)
{
    return QCoreApplication::translate("sealwalk::ui", text);
}

} // namespace

QString limitWords(const ComparedJobs& jobs)
{
    using Of = analysis::LimitDifference::Of;
    const model::Setup& now = jobs.after.job.setup;
    const auto differences = analysis::limitDifferences(jobs.before.job.setup, now);
    if (differences.empty())
        return {};
    const report::ShownUnit unit = report::shownUnit(now);
    const auto limit = [&](const std::optional<LeakRate>& value) {
        return value ? localised(report::screenRate(unit.ofHelium(*value))) + QLatin1Char(' ') +
                           QString::fromStdString(unit.head())
                     : tr("no limit");
    };
    QStringList said;
    for (const analysis::LimitDifference& difference : differences) {
        if (difference.of == Of::Kind)
            continue;
        const QString sentence =
            difference.of == Of::OneJoint
                ? tr("Each job is judged by its own limit: job %1 by %2, job %3 by %4.")
                : tr("All leaks together are judged by another limit: job %1 by %2, job %3 by %4.");
        said << sentence.arg(jobs.before.job.number)
                    .arg(limit(difference.before))
                    .arg(jobs.after.job.number)
                    .arg(limit(difference.after));
    }
    if (std::ranges::any_of(differences, [](const auto& one) { return one.of == Of::Kind; }))
        said << tr("Each job is judged by its own limits: those of single kinds of joint differ.");
    said << tr("The limit on the scale and on the course is that of job %1.").arg(jobs.after.job.number);
    return said.join(QLatin1Char(' '));
}

} // namespace sealwalk::ui
