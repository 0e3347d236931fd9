// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/setup_panel.h"

#include "ui/prepare/shown.h"
#include "ui/render/setup_view.h"
#include "ui/session/job_session.h"
#include "ui/widgets/heading.h"
#include "ui/widgets/number_display.h"

#include <QVBoxLayout>

namespace sealwalk::ui {

namespace {

std::string said(const QString& words)
{
    return words.toStdString();
}

/// The drawing's words in the language of the window, figures in the job's unit.
report::SetupWords wordsFor(const model::Setup& setup)
{
    report::SetupWords words;
    words.litres = said(SetupPanel::tr("%1 l"));
    words.volumeNotStated = said(SetupPanel::tr("volume not stated"));
    words.ownPumps = said(SetupPanel::tr("own pumps"));
    words.airSpeed = said(SetupPanel::tr("%1 l/s air"));
    words.heliumSpeed = said(SetupPanel::tr("%1 l/s helium"));
    words.speedNotStated = said(SetupPanel::tr("speed not stated"));
    words.referenceLeak = said(SetupPanel::tr("reference leak %1"));
    words.atPlace = said(SetupPanel::tr("at %1"));
    words.placeNotStated = said(SetupPanel::tr("place not stated"));
    words.connectionNotStated = said(SetupPanel::tr("connection not stated"));
    words.hose = said(SetupPanel::tr("hose"));
    words.bore = said(SetupPanel::tr("bore %1 mm"));
    words.boreNotStated = said(SetupPanel::tr("bore not stated"));
    words.length = said(SetupPanel::tr("%1 m long"));
    words.lengthNotStated = said(SetupPanel::tr("length not stated"));
    words.sizeNotStated = said(SetupPanel::tr("size not stated"));
    words.pressure = said(SetupPanel::tr("%1 mbar inside"));
    words.parallelPump = said(SetupPanel::tr("pump in parallel"));
    words.detector = said(SetupPanel::tr("detector %1"));
    words.detectorNotNamed = said(SetupPanel::tr("detector, not named"));
    words.zeroOn = said(SetupPanel::tr("zero on"));
    words.number = [](double number, int digits) { return said(figureText(number, digits)); };
    words.rate = [setup](LeakRate rate) {
        const Unit unit = shownUnit(setup);
        return said(plainRate(rate, unit, setup) + QLatin1Char(' ') + text(unit.symbol));
    };
    return words;
}

} // namespace

SetupPanel::SetupPanel(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
{
    m_view = new render::SetupView(this);
    m_view->setObjectName(QStringLiteral("setupSketch"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    column->addWidget(new Heading(tr("Set-up"), tr("as stated; dashed: not stated"), this));
    column->addWidget(m_view);
}

void SetupPanel::refresh()
{
    if (m_session.hasJob())
        m_view->setSketch(
            report::setupSketch(m_session.job(), m_session.object(), wordsFor(m_session.job().setup)));
}

} // namespace sealwalk::ui
