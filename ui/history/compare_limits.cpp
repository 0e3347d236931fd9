// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/compare_limits.h"

#include "core/report/rate_text.h"
#include "core/report/shown_unit.h"
#include "ui/widgets/number_display.h"

#include <QCoreApplication>

namespace sealwalk::ui {

namespace {

QString tr(const char* text)
{
    return QCoreApplication::translate("sealwalk::ui", text);
}

QString limitOf(const ComparedJob& side, const report::ShownUnit& unit)
{
    const auto& limit = side.job.setup.pointLimit;
    return limit ? localised(report::screenRate(unit.ofHelium(*limit))) + QLatin1Char(' ') +
                       QString::fromStdString(unit.head())
                 : tr("no limit");
}

} // namespace

QString limitWords(const ComparedJobs& jobs)
{
    const model::Setup& then = jobs.before.job.setup;
    const model::Setup& now = jobs.after.job.setup;
    const bool sameForOne = then.pointLimit == now.pointLimit;
    if (sameForOne && then.kindLimits == now.kindLimits)
        return {};
    const report::ShownUnit unit = report::shownUnit(now);
    const QString judged =
        sameForOne ? tr("Each job is judged by its own limits: those of single kinds of joint differ.")
                   : tr("Each job is judged by its own limit: job %1 by %2, job %3 by %4.")
                         .arg(jobs.before.job.number)
                         .arg(limitOf(jobs.before, unit))
                         .arg(jobs.after.job.number)
                         .arg(limitOf(jobs.after, unit));
    return judged + QLatin1Char(' ') +
           tr("The limit on the scale and on the course is that of job %1.").arg(jobs.after.job.number);
}

} // namespace sealwalk::ui
