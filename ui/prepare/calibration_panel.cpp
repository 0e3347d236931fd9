// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/calibration_panel.h"

#include "core/analysis/job_view.h"
#include "ui/prepare/calibration_dialog.h"
#include "ui/prepare/records_row.h"
#include "ui/prepare/shown.h"
#include "ui/prepare/void_measurement.h"
#include "ui/render/core_words.h"
#include "ui/session/job_session.h"
#include "ui/widgets/heading.h"
#include "ui/widgets/number_display.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr int kRow = 24;

QString momentWord(model::CalibrationMoment moment)
{
    switch (moment) {
    case model::CalibrationMoment::Before:
        return CalibrationPanel::tr("before");
    case model::CalibrationMoment::During:
        return CalibrationPanel::tr("during");
    case model::CalibrationMoment::After:
        return CalibrationPanel::tr("after");
    }
    return {};
}

QString nameOf(const model::Calibration& check, const analysis::CheckView& view)
{
    const QString kind = check.kind == model::CalibrationKind::SystemCheck
                             ? CalibrationPanel::tr("system check")
                             : CalibrationPanel::tr("detector check");
    const QString place = check.place.empty() ? QString() : QStringLiteral(", ") + text(check.place);
    const QString factor = view.factor ? CalibrationPanel::tr(", factor %1")
                                             .arg(localised(roundedText(view.factor->coefficient, 3)))
                                       : QString();
    // What tells two checks apart comes first: a narrow box cuts the rest.
    return QStringLiteral("%1 %2%3, %4%5")
        .arg(text(check.at.timeOfDay()).left(5), momentWord(check.moment), factor, kind, place);
}

} // namespace

CalibrationPanel::CalibrationPanel(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
{
    m_heading = new Heading(tr("Calibration"), {}, this);
    m_table = new QWidget(this);
    m_table->setProperty("ground", QStringLiteral("field"));
    m_table->setAttribute(Qt::WA_StyledBackground);
    m_grid = new QGridLayout(m_table);
    m_grid->setContentsMargins(7, 0, 7, 0);
    m_grid->setHorizontalSpacing(12);
    m_grid->setVerticalSpacing(0);
    m_grid->setColumnStretch(0, 3);
    m_grid->setColumnStretch(2, 2);
    m_notes = quietLabel({}, this, QStringLiteral("caption"));
    m_notes->setWordWrap(true);
    m_enter = new QPushButton(tr("Enter a reference &leak …"), this);
    m_enter->setObjectName(QStringLiteral("enterCheck"));
    m_records = new RecordsRow(tr("which check"), tr("void this check"), this);
    m_records->voiding().setObjectName(QStringLiteral("voidCheck"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    column->addWidget(m_heading);
    column->addWidget(m_records);
    column->addWidget(m_table);
    column->addWidget(m_notes);
    column->addWidget(m_enter);
    connect(m_enter, &QPushButton::clicked, this, &CalibrationPanel::enterCheck);
    connect(m_records, &RecordsRow::voidWanted, this, &CalibrationPanel::voidCheck);
    connect(m_records, &RecordsRow::chosen, this, &CalibrationPanel::showCheck);
}

void CalibrationPanel::refresh()
{
    if (!m_session.hasJob())
        return;
    const model::Job& job = m_session.job();
    const auto views = analysis::checks(job);
    QStringList names;
    for (const model::Calibration* check : inOrderOfTime(job.calibrations)) {
        const auto view = std::find_if(views.begin(), views.end(),
                                       [&](const auto& each) { return each.calibration == check->id; });
        names << (view != views.end() ? nameOf(*check, *view) : tr("void: %1").arg(nameOf(*check, {})));
    }
    m_records->fill(names, static_cast<int>(names.size()) - 1);
    m_enter->setEnabled(job.isOpenForWork());
    showCheck(m_records->index());
}

void CalibrationPanel::clearRows()
{
    while (QLayoutItem* item = m_grid->takeAt(0)) {
        delete item->widget();
        delete item;
    }
}

void CalibrationPanel::addRow(const QString& what, const QString& figure, const QString& remark)
{
    const int row = m_grid->rowCount();
    auto* name = new QLabel(what, m_table);
    auto* value = new QLabel(figure, m_table);
    value->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    value->setAccessibleName(what);
    auto* aside = quietLabel(remark, m_table);
    aside->setMinimumWidth(1); // a long place must not widen the column
    aside->setWordWrap(true);
    aside->setToolTip(remark);
    for (QLabel* label : {name, value, aside})
        label->setMinimumHeight(kRow);
    m_grid->addWidget(name, row, 0);
    m_grid->addWidget(value, row, 1);
    m_grid->addWidget(aside, row, 2);
}

void CalibrationPanel::showCheck(int index)
{
    clearRows();
    const model::Job& job = m_session.job();
    const auto shown = inOrderOfTime(job.calibrations);
    const bool any = index >= 0 && static_cast<std::size_t>(index) < shown.size();
    if (!any) {
        m_heading->setAside({});
        addRow(tr("no reference leak entered yet"), {}, {});
        for (const QString& later : {tr("today"), tr("shown, less background"), tr("factor to the chamber")})
            addRow(later, QStringLiteral("–"), {}); // the room that the check takes: what stands below stays
        m_notes->setText(tr("Without one no reading becomes a leak rate, and nothing can be passed."));
        return;
    }
    const model::Calibration& check = *shown[static_cast<std::size_t>(index)];
    const model::MeasurementVoid* mark = job.voidOf(check.id.uuid());
    m_records->voiding().setEnabled(mark == nullptr && job.isOpenForWork());
    const auto views = analysis::checks(job);
    const auto found = std::find_if(views.begin(), views.end(),
                                    [&](const auto& each) { return each.calibration == check.id; });
    const analysis::CheckView view = found != views.end() ? *found : analysis::CheckView();
    const Unit unit = shownUnit(job.setup);
    const auto celsius = [](Temperature t) { return figureText(inDegreesCelsius(t), 3); };
    const QString aside = tr("reference leak %1, %2").arg(text(check.leak.serial), unitText(unit));
    m_heading->setAside(mark == nullptr ? aside : tr("void: %1").arg(aside));
    addRow(tr("certificate, at %1 °C").arg(celsius(check.leak.certificateTemperature)),
           richRate(check.leak.value, unit, job.setup), text(check.leak.certificateDate.date()));
    if (view.reference)
        addRow(tr("today, at %1 °C").arg(celsius(check.roomTemperature)),
               richRate(*view.reference, unit, job.setup), tr("for age and room"));
    addRow(tr("shown, less background"), richRate(check.shown - check.background, unit, job.setup),
           text(check.at.timeOfDay()).left(5));
    if (view.factor) {
        const double multiplier = view.factor->coefficient;
        const double range = 100.0 * view.factor->relativeUncertainty();
        constexpr double kNothingKnown = 100.0;
        if (range > kNothingKnown)
            addRow(tr("factor to the chamber"), tr("not usable"),
                   tr("the leak does not stand out of the background's noise"));
        else
            addRow(tr("factor to the chamber"),
                   QStringLiteral("<b>%1</b>").arg(localised(roundedText(multiplier, 3))),
                   tr("± %1 %; shows %2 of a leak%3")
                       .arg(figureText(range, 2), localised(roundedText(view.factor->factor, 2)),
                            check.place.empty() ? QString() : tr(", at %1").arg(text(check.place))));
    }
    if (check.response)
        addRow(tr("response, 63 %"), secondsText(*check.response), tr("measured"));
    QStringList notes;
    if (mark != nullptr)
        notes.append(voidText(*mark));
    if (!check.note.empty())
        notes.append(text(check.note));
    for (const std::string& note : view.notes)
        notes.append(render::inWords(note));
    if (job.standingCalibrations().empty())
        notes.append(
            tr("Without one that stands no reading becomes a leak rate, and nothing can be passed."));
    m_notes->setText(joinedNotes(notes));
    m_notes->setVisible(!notes.isEmpty());
}

void CalibrationPanel::enterCheck()
{
    if (!m_session.hasJob() || !m_session.job().isOpenForWork())
        return;
    const bool isFirst = m_session.job().standingCalibrations().empty();
    CalibrationDialog dialog(m_session.job(), isFirst ? m_session.jobBefore() : std::nullopt,
                             m_session.logger(), this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    if (const Status stored = m_session.addCalibration(dialog.calibration()); !stored)
        emit failed(stored.error());
}

void CalibrationPanel::voidCheck()
{
    if (!m_session.hasJob())
        return;
    const auto shown = inOrderOfTime(m_session.job().calibrations);
    const auto index = static_cast<std::size_t>(m_records->index());
    if (index >= shown.size())
        return;
    const model::Calibration& check = *shown[index];
    const QString what =
        tr("check with the reference leak, %1, of %2 %3")
            .arg(momentWord(check.moment), text(check.at.date()), text(check.at.timeOfDay()).left(5));
    if (const Status stored = askAndVoid(m_session, check.id.uuid(), what, this); !stored)
        emit failed(stored.error());
    m_records->focusList(); // the button may be shut now
}

} // namespace sealwalk::ui
