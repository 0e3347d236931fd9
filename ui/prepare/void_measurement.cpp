// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/void_measurement.h"

#include "ui/prepare/shown.h"
#include "ui/session/job_session.h"
#include "ui/widgets/void_dialog.h"

#include <QCoreApplication>

namespace sealwalk::ui {

namespace {

struct Words
{
    Q_DECLARE_TR_FUNCTIONS(sealwalk::ui::VoidMeasurement)
};

} // namespace

Status askAndVoid(JobSession& session, Uuid measurement, const QString& what, QWidget* parent)
{
    if (!session.hasJob() || !session.job().isOpenForWork() || session.job().voidOf(measurement) != nullptr)
        return {};
    VoidDialog dialog({Words::tr("Void measurement"),
                       Words::tr("Void this %1? It stays on record with your reason, in the report too, and "
                                 "counts for nothing. What was worked out with it is worked out anew.")
                           .arg(what),
                       {},
                       Words::tr("Void")},
                      parent);
    if (dialog.exec() != QDialog::Accepted)
        return {};
    return session.voidMeasurement(measurement, dialog.reason().toStdString());
}

QString voidText(const model::MeasurementVoid& mark)
{
    return Words::tr("Void: %1 – %2, %3 %4. It stays on record and counts for nothing.")
        .arg(text(mark.reason), text(mark.by), text(mark.at.date()), text(mark.at.timeOfDay()).left(5));
}

} // namespace sealwalk::ui
