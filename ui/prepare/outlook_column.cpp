// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/outlook_column.h"

#include "core/analysis/setup_outlook.h"
#include "core/report/map_content.h"
#include "ui/prepare/setup_panel.h"
#include "ui/prepare/shown.h"
#include "ui/prepare/verdict_box.h"
#include "ui/render/decade_ruler.h"
#include "ui/session/job_session.h"
#include "ui/widgets/heading.h"
#include "ui/widgets/number_display.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

constexpr int kFigureRow = 36;
constexpr double kSecondsPerMinute = 60.0;
constexpr int kGoOnHeight = 36;

QString sourceText(const analysis::SprayTiming& timing)
{
    switch (timing.source) {
    case analysis::TimingSource::Measured:
        return OutlookColumn::tr("measured with the reference leak, 63 %");
    case analysis::TimingSource::Typed:
        return OutlookColumn::tr("typed");
    case analysis::TimingSource::Computed:
        return OutlookColumn::tr("volume over the helium speed");
    case analysis::TimingSource::Assumed:
        return OutlookColumn::tr("assumed: type speeds and volume, or measure it");
    }
    return {};
}

QString percent(double share)
{
    return figureText(100.0 * share, 2);
}

} // namespace

OutlookColumn::OutlookColumn(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 4, 16, 4);
    column->setSpacing(0);
    column->addWidget(new Heading(tr("What this set-up can see"), {}, this));
    m_smallest = addFigure(*column, tr("smallest detectable leak"));
    m_smallest.value->setObjectName(QStringLiteral("smallestDetectable"));
    m_response = addFigure(*column, tr("response"));
    m_dwell = addFigure(*column, tr("dwell at a point"));
    m_wait = addFigure(*column, tr("wait between points"));
    m_share = addFigure(*column, tr("share of a leak that is shown"));
    column->addSpacing(4);
    m_ruler = new render::DecadeRuler(Qt::Horizontal, this);
    m_ruler->setMinimumHeight(66);
    column->addWidget(m_ruler);
    column->addSpacing(4);
    m_verdict = new VerdictBox(this);
    column->addWidget(m_verdict);
    m_walkHeading = new Heading(tr("Time and helium"), {}, this);
    column->addWidget(m_walkHeading);
    m_walk = quietLabel({}, this);
    m_walk->setWordWrap(true);
    column->addWidget(m_walk);
    column->addSpacing(8);
    m_goOn = new QPushButton(tr("&Go on"), this);
    m_goOn->setObjectName(QStringLiteral("goOn"));
    m_goOn->setProperty("kind", QStringLiteral("primary"));
    m_goOn->setMinimumHeight(kGoOnHeight);
    connect(m_goOn, &QPushButton::clicked, this, &OutlookColumn::goOn);
    column->addWidget(m_goOn);
    m_setup = new SetupPanel(session, this);
    column->addWidget(m_setup);
    column->addStretch(1);
}

OutlookColumn::Figure OutlookColumn::addFigure(QVBoxLayout& column, const QString& name)
{
    auto* row = new QWidget(this);
    row->setMinimumHeight(kFigureRow);
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    auto* title = new QLabel(name, row);
    Figure figure;
    figure.from = quietLabel({}, row, QStringLiteral("caption"));
    figure.from->setWordWrap(true);
    words->addWidget(title);
    words->addWidget(figure.from);
    figure.value = new QLabel(row);
    figure.value->setProperty("role", QStringLiteral("head"));
    figure.value->setTextFormat(Qt::RichText);
    figure.value->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    title->setBuddy(figure.value);
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 1, 0, 1);
    layout->addLayout(words, 1);
    layout->addWidget(figure.value);
    column.addWidget(row);
    auto* line = new QFrame(this);
    line->setFrameShape(QFrame::HLine);
    line->setProperty("role", QStringLiteral("line"));
    line->setFixedHeight(1);
    column.addWidget(line);
    return figure;
}

void OutlookColumn::showFigure(const Figure& figure, const QString& rich, const QString& from)
{
    figure.value->setText(rich);
    figure.from->setText(from);
}

void OutlookColumn::refresh()
{
    if (!m_session.hasJob())
        return;
    const model::Job& job = m_session.job();
    const analysis::SetupOutlook outlook = analysis::setupOutlook(job, m_session.object());
    const Unit unit = shownUnit(job.setup);
    const QString small =
        QStringLiteral(" <span style=\"font-size:12px;font-weight:400\">%1</span>").arg(unitText(unit));
    showFigure(m_smallest,
               outlook.smallestDetectable ? richRate(*outlook.smallestDetectable, unit, job.setup) + small
                                          : QStringLiteral("–"),
               tr("%1 × noise, and drift over the dwell, ÷ what the dwell shows, × factor")
                       .arg(figureText(job.setup.noiseFactor, 2)) +
                   (outlook.worstPlace.empty()
                        ? QString()
                        : tr("; at %1, where least can be seen").arg(text(outlook.worstPlace))));
    showFigure(m_response, secondsText(outlook.timing.response), sourceText(outlook.timing));
    showFigure(m_dwell, secondsText(outlook.timing.dwell),
               tr("%1 % of the final value").arg(percent(outlook.dwellShare)));
    showFigure(m_wait, secondsText(outlook.timing.wait), tr("or until the background is back"));
    // Where the detector is connected is in words only; whether a pump takes helium too is told by its speed.
    const auto& parallel = job.setup.auxiliarySpeed;
    const bool isHalfTyped = !outlook.heliumToDetector && parallel && parallel->si() > 0.0;
    showFigure(m_share,
               outlook.shownOfLeak ? figureText(*outlook.shownOfLeak, 2)
               : outlook.heliumToDetector
                   ? figureText(*outlook.heliumToDetector, 2)
                   : QStringLiteral("–"), // nothing measured, nothing to work it out from
               outlook.shownOfLeak && outlook.heliumToDetector
                   ? tr("measured: shown over reference leak; %1 by the speeds")
                         .arg(figureText(*outlook.heliumToDetector, 2))
               : outlook.shownOfLeak          ? tr("measured: shown over reference leak")
               : isHalfTyped                  ? tr("the speed at the detector is missing")
               : outlook.parallelSpeedUnknown ? tr("a pump in parallel, its speed not typed")
               : !outlook.heliumToDetector    ? tr("no speed of a pump in parallel is typed")
                                              : tr("from the helium speeds"));
    report::MapScale scale;
    scale.lowestDecade = m_session.object().scale.lowestDecade;
    scale.decades = m_session.object().scale.decades;
    scale.limit = outlook.limit;
    scale.smallestDetectable = outlook.smallestDetectable;
    scale.shownPerSi = numberShown(pascalCubicMetresPerSecond(1.0), unit, job.setup);
    scale.unit = unit.symbol;
    m_ruler->setScale(scale);
    m_verdict->setOutlook(outlook, !job.readings.empty());
    m_setup->refresh();

    m_walkHeading->setAside(tr("%n point(s)", nullptr, outlook.points));
    if (outlook.points == 0)
        m_walk->setText(tr("Known when points are laid in Sketch."));
    else {
        QString walk = tr("about %1 min where nothing answers")
                           .arg(figureText(outlook.walk.si() / kSecondsPerMinute, 2));
        if (outlook.heliumLitres)
            walk += tr(", about %1 l of helium while spraying").arg(figureText(*outlook.heliumLitres, 2));
        m_walk->setText(walk);
    }
    m_goOn->setText(outlook.points == 0 ? tr("&Go on to Sketch") : tr("&Go on to Spray"));
    m_progress = !outlook.limit                                     ? tr("limit missing")
                 : outlook.needsCalibration                         ? tr("calibration missing")
                 : outlook.needsBackground                          ? tr("background missing")
                 : outlook.outlook == analysis::Outlook::CannotPass ? tr("too blind to pass")
                                                                    : tr("ready to start");
}

} // namespace sealwalk::ui
