// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/rise_panel.h"

#include "core/analysis/job_rise.h"
#include "core/report/rise_figure.h"
#include "ui/prepare/records_row.h"
#include "ui/prepare/rise_dialog.h"
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

constexpr int kPlotHeight = 240;

QString momentWord(model::TestMoment moment)
{
    switch (moment) {
    case model::TestMoment::AsFound:
        return RisePanel::tr("as found");
    case model::TestMoment::AsLeft:
        return RisePanel::tr("as left");
    case model::TestMoment::Between:
        return RisePanel::tr("between repairs");
    }
    return {};
}

QString verdictText(analysis::RiseVerdict verdict)
{
    switch (verdict) {
    case analysis::RiseVerdict::Leak:
        return RisePanel::tr("A leak; outgassing has no visible share");
    case analysis::RiseVerdict::LeakAndOutgassing:
        return RisePanel::tr("A leak and outgassing, told apart");
    case analysis::RiseVerdict::NoLeakFound:
        return RisePanel::tr("No leak found: the gas exhausts itself");
    case analysis::RiseVerdict::NotSeparable:
        return RisePanel::tr("Not separable: the record does not tell leak from outgassing");
    }
    return {};
}

} // namespace

RisePanel::RisePanel(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_work([this](const Answer& answer) { deliver(answer); })
{
    m_heading = new Heading(tr("Pressure rise"), tr("object valved off"), this);
    m_verdict = new QLabel(this);
    m_verdict->setProperty("role", QStringLiteral("strong"));
    m_verdict->setObjectName(QStringLiteral("riseVerdict"));
    m_verdict->setWordWrap(true);
    m_figures = new QLabel(this);
    m_figures->setTextFormat(Qt::RichText);
    m_figures->setWordWrap(true);
    m_plot = new render::PlotView(this);
    m_plot->setFixedHeight(kPlotHeight);
    m_plot->setAccessibleName(tr("pressure over time"));
    m_advice = quietLabel({}, this, QStringLiteral("soft"));
    m_advice->setWordWrap(true);
    m_enter = new QPushButton(tr("Pressure &rise …"), this);
    m_enter->setObjectName(QStringLiteral("enterRise"));
    m_records = new RecordsRow(tr("which record"), tr("void this pressure rise"), this);
    m_records->voiding().setObjectName(QStringLiteral("voidRise"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    column->addWidget(m_heading);
    column->addWidget(m_enter);
    column->addWidget(m_records);
    column->addWidget(m_verdict);
    column->addWidget(m_figures);
    column->addWidget(m_plot);
    column->addWidget(m_advice);
    connect(m_enter, &QPushButton::clicked, this, &RisePanel::enterRise);
    connect(m_records, &RecordsRow::voidWanted, this, &RisePanel::voidTest);
    connect(m_records, &RecordsRow::chosen, this, &RisePanel::showTest);
}

void RisePanel::refresh()
{
    if (!m_session.hasJob())
        return;
    const model::Job& job = m_session.job();
    QStringList names;
    for (const model::RiseTest& test : job.riseTests) {
        const QString name =
            QStringLiteral("%1, %2 %3").arg(momentWord(test.moment), text(test.at.date()), text(test.source));
        names << (job.voidOf(test.id.uuid()) == nullptr ? name : tr("void: %1").arg(name));
    }
    m_records->fill(names, static_cast<int>(names.size()) - 1);
    m_enter->setEnabled(job.isOpenForWork());
    showTest(m_records->index());
}

void RisePanel::showTest(int index)
{
    const model::Job& job = m_session.job();
    const bool any = index >= 0 && static_cast<std::size_t>(index) < job.riseTests.size();
    for (QWidget* part : {static_cast<QWidget*>(m_verdict), static_cast<QWidget*>(m_figures),
                          static_cast<QWidget*>(m_plot), static_cast<QWidget*>(m_advice)})
        part->setVisible(any);
    if (!any) {
        m_asked = {};
        return;
    }
    const model::RiseTest& test = job.riseTests[static_cast<std::size_t>(index)];
    const model::MeasurementVoid* mark = job.voidOf(test.id.uuid());
    m_records->voiding().setEnabled(mark == nullptr && job.isOpenForWork());
    if (mark != nullptr) {
        m_asked = {};
        m_work.drop();
        m_verdict->setText(voidText(*mark));
        for (QWidget* part : {static_cast<QWidget*>(m_figures), static_cast<QWidget*>(m_plot),
                              static_cast<QWidget*>(m_advice)})
            part->hide();
        return;
    }
    const auto volume = job.setup.volume ? job.setup.volume : m_session.object().volume;
    if (test.id == m_asked && volume == m_askedVolume)
        return;
    m_asked = test.id;
    m_askedVolume = volume;
    m_verdict->setText(tr("working it out …"));
    m_work.request([test, setup = job.setup, object = m_session.object()]() -> Answer {
        model::Job only;
        only.setup = setup;
        return analysis::judgeRise(test, only, object);
    });
}

void RisePanel::deliver(const Answer& answer)
{
    if (!m_session.hasJob())
        return;
    if (!answer) {
        m_verdict->setText(render::inWords(answer.error()));
        m_figures->clear();
        m_plot->hide();
        m_advice->clear();
        emit judged();
        return;
    }
    const model::Setup& setup = m_session.job().setup;
    const Unit unit = shownUnit(setup);
    const auto rate = [&](LeakRate value) { return richRate(value, unit, setup); };
    m_verdict->setText(verdictText(answer->verdict));
    QString figures =
        answer->separable
            ? tr("leak %1 (%2 … %3) %4, as air")
                  .arg(rate(answer->leakRate), rate(answer->low), rate(answer->high), text(unit.symbol))
            : tr("leak below %1 %2, as air").arg(rate(answer->high), text(unit.symbol));
    if (answer->separable && answer->outgassingStart > LeakRate())
        figures +=
            tr("; walls %1 falling to %2").arg(rate(answer->outgassingStart), rate(answer->outgassingEnd));
    m_figures->setText(figures);
    m_plot->setFigure(report::riseFigure(*answer, report::shownUnit(setup, setup.unit)));
    m_plot->setVisible(true);
    QStringList advice;
    for (const std::string& sentence : answer->advice)
        advice.append(render::inWords(sentence));
    m_advice->setText(advice.join(QStringLiteral(" ")));
    m_advice->setVisible(!advice.isEmpty());
    emit judged();
}

void RisePanel::enterRise()
{
    if (!m_session.hasJob() || !m_session.job().isOpenForWork())
        return;
    const model::Job& job = m_session.job();
    RiseDialog dialog(job, job.setup.volume ? job.setup.volume : m_session.object().volume, this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    if (const Status stored = m_session.addRiseTest(dialog.test()); !stored)
        emit failed(stored.error());
}

void RisePanel::voidTest()
{
    const auto index = static_cast<std::size_t>(m_records->index());
    if (!m_session.hasJob() || index >= m_session.job().riseTests.size())
        return;
    const model::RiseTest& test = m_session.job().riseTests[index];
    const QString what =
        tr("pressure rise, %1, of %2 %3")
            .arg(momentWord(test.moment), text(test.at.date()), text(test.at.timeOfDay()).left(5));
    if (const Status stored = askAndVoid(m_session, test.id.uuid(), what, this); !stored)
        emit failed(stored.error());
    m_records->focusList(); // the button may be shut now
}

} // namespace sealwalk::ui
