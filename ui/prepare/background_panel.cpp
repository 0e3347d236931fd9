// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/background_panel.h"

#include "core/report/measurement_figures.h"
#include "ui/prepare/background_dialog.h"
#include "ui/prepare/records_row.h"
#include "ui/prepare/shown.h"
#include "ui/prepare/void_measurement.h"
#include "ui/render/core_words.h"
#include "ui/render/plot_view.h"
#include "ui/session/job_session.h"
#include "ui/widgets/heading.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

constexpr int kPlotHeight = 168;
constexpr double kSecondsPerMinute = 60.0;

QString momentText(const model::BackgroundWatch& watch)
{
    return text(watch.at.date()) + QLatin1Char(' ') + text(watch.at.timeOfDay()).left(5);
}

} // namespace

BackgroundPanel::BackgroundPanel(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
{
    m_heading = new Heading(tr("Background"), {}, this);
    m_plot = new render::PlotView(this);
    m_plot->setFixedHeight(kPlotHeight);
    m_plot->setAccessibleName(tr("background over time"));
    m_figures = new QLabel(this);
    m_figures->setTextFormat(Qt::RichText);
    m_figures->setMinimumWidth(1);
    m_watch = new QPushButton(tr("&Background …"), this);
    m_watch->setObjectName(QStringLiteral("enterBackground"));
    m_notes = quietLabel({}, this, QStringLiteral("caption"));
    m_notes->setWordWrap(true);
    m_records = new RecordsRow(tr("which watch"), tr("void this background watch"), this);
    m_records->voiding().setObjectName(QStringLiteral("voidBackground"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    column->addWidget(m_heading);
    column->addWidget(m_records);
    column->addWidget(m_plot);
    column->addWidget(m_figures);
    column->addWidget(m_watch);
    column->addWidget(m_notes);
    connect(m_watch, &QPushButton::clicked, this, &BackgroundPanel::enterBackground);
    connect(m_records, &RecordsRow::voidWanted, this, &BackgroundPanel::voidWatch);
    connect(m_records, &RecordsRow::chosen, this, &BackgroundPanel::showWatch);
}

void BackgroundPanel::refresh()
{
    if (!m_session.hasJob())
        return;
    const model::Job& job = m_session.job();
    m_watch->setEnabled(job.isOpenForWork());
    QStringList names;
    qsizetype lastStanding = -1;
    for (const model::BackgroundWatch* watch : inOrderOfTime(job.backgrounds)) {
        const QString name = tr("watch of %1").arg(momentText(*watch));
        const bool stands = job.voidOf(watch->id.uuid()) == nullptr;
        names << (stands ? name : tr("void: %1").arg(name));
        lastStanding = stands ? names.size() - 1 : lastStanding;
    }
    m_records->fill(names, static_cast<int>(lastStanding >= 0 ? lastStanding : names.size() - 1));
    showWatch(m_records->index());
}

void BackgroundPanel::showWatch(int index)
{
    const model::Job& job = m_session.job();
    const auto shown = inOrderOfTime(job.backgrounds);
    const bool any = index >= 0 && static_cast<std::size_t>(index) < shown.size();
    m_notes->hide();
    if (!any) {
        m_heading->setAside({});
        report::Figure empty;
        empty.title = "background";
        empty.empty = tr("not watched yet: a minute without helium").toStdString();
        m_plot->setFigure(empty);
        m_figures->clear();
        return;
    }
    const Unit unit = displayUnit(job.setup);
    const model::BackgroundWatch& watch = *shown[static_cast<std::size_t>(index)];
    const model::MeasurementVoid* mark = job.voidOf(watch.id.uuid());
    m_records->voiding().setEnabled(mark == nullptr && job.isOpenForWork());
    const QString aside = tr("%1, as shown in %2").arg(text(watch.at.timeOfDay()).left(5), text(unit.symbol));
    m_heading->setAside(mark == nullptr ? aside : tr("void: %1").arg(aside));
    m_plot->setToolTip(text(watch.source));
    const auto summary = analysis::summariseBackground(watch);
    if (!summary) {
        m_plot->setFigure({}); // not that of the watch shown before
        m_figures->clear();
        showNotes(mark, {render::inWords(summary.error())});
        return;
    }
    m_plot->setFigure(report::backgroundFigure(watch, *summary, job.setup.noiseFactor, unit));
    const LeakRate drift = summary->driftPerSecond * kSecondsPerMinute;
    m_figures->setText(
        watch.swing
            ? tr("level %1 &nbsp; noise %2, by eye")
                  .arg(richRate(summary->level, unit, job.setup), richRate(summary->noise, unit, job.setup))
            : tr("level %1 &nbsp; noise %2 &nbsp; drift %3/min")
                  .arg(richRate(summary->level, unit, job.setup), richRate(summary->noise, unit, job.setup),
                       (drift > LeakRate() ? QStringLiteral("+") : QString()) +
                           richRate(drift, unit, job.setup)));
    QStringList notes;
    for (const std::string& warning : summary->warnings)
        notes.append(render::inWords(warning));
    showNotes(mark, notes);
}

void BackgroundPanel::showNotes(const model::MeasurementVoid* mark, QStringList notes)
{
    if (mark != nullptr)
        notes.prepend(voidText(*mark));
    m_notes->setText(joinedNotes(notes));
    m_notes->setVisible(!notes.isEmpty());
}

void BackgroundPanel::voidWatch()
{
    if (!m_session.hasJob())
        return;
    const auto shown = inOrderOfTime(m_session.job().backgrounds);
    const auto index = static_cast<std::size_t>(m_records->index());
    if (index >= shown.size())
        return;
    const model::BackgroundWatch& watch = *shown[index];
    const QString what = tr("background watch of %1").arg(momentText(watch));
    if (const Status stored = askAndVoid(m_session, watch.id.uuid(), what, this); !stored)
        emit failed(stored.error());
    m_records->focusList(); // the button may be shut now
}

void BackgroundPanel::enterBackground()
{
    if (!m_session.hasJob() || !m_session.job().isOpenForWork())
        return;
    BackgroundDialog dialog(m_session.job().setup, this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    if (const Status stored = m_session.addBackground(dialog.watch()); !stored)
        emit failed(stored.error());
}

} // namespace sealwalk::ui
