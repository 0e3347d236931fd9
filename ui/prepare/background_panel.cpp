// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/background_panel.h"

#include "core/report/measurement_figures.h"
#include "ui/prepare/background_dialog.h"
#include "ui/prepare/shown.h"
#include "ui/render/core_words.h"
#include "ui/render/plot_view.h"
#include "ui/session/job_session.h"
#include "ui/widgets/heading.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

constexpr int kPlotHeight = 168;
constexpr double kSecondsPerMinute = 60.0;

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
    auto* row = new QHBoxLayout;
    row->addWidget(m_figures, 1);
    row->addWidget(m_watch);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    column->addWidget(m_heading);
    column->addWidget(m_plot);
    column->addLayout(row);
    column->addWidget(m_notes);
    connect(m_watch, &QPushButton::clicked, this, &BackgroundPanel::enterBackground);
}

void BackgroundPanel::refresh()
{
    if (!m_session.hasJob())
        return;
    const model::Job& job = m_session.job();
    const Unit unit = displayUnit(job.setup);
    m_watch->setEnabled(job.isOpenForWork());
    m_notes->hide();
    if (job.backgrounds.empty()) {
        m_heading->setAside({});
        report::Figure empty;
        empty.title = "background";
        empty.empty = tr("not watched yet: a minute without helium").toStdString();
        m_plot->setFigure(empty);
        m_figures->clear();
        return;
    }
    const model::BackgroundWatch& watch = job.backgrounds.back();
    m_heading->setAside(tr("%1, as shown in %2").arg(text(watch.at.timeOfDay()).left(5), text(unit.symbol)));
    m_plot->setToolTip(text(watch.source));
    const auto summary = analysis::summariseBackground(watch);
    if (!summary) {
        m_notes->setText(render::inWords(summary.error()));
        m_notes->show();
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
    m_notes->setText(notes.join(QStringLiteral("; ")));
    m_notes->setVisible(!notes.isEmpty());
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
