// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spray/live_trace.h"

#include "ui/render/plot_view.h"
#include "ui/render/theme.h"
#include "ui/spray/trace_figure.h"
#include "ui/widgets/link_label.h"

#include <QStackedLayout>

namespace sealwalk::ui {

namespace {

constexpr int kTallest = 190;

} // namespace

LiveTrace::LiveTrace(JobSession& session, SprayController& controller, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_controller(controller)
    , m_plot(new render::PlotView(this))
    , m_none(new LinkLabel(this))
{
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
    setMaximumHeight(kTallest);
    m_plot->setObjectName(QStringLiteral("liveTrace"));
    m_plot->setMinimumHeight(0);
    m_none->setObjectName(QStringLiteral("noFeed"));
    m_none->setFont(render::font(render::TextSize::Text));
    m_none->setAlignment(Qt::AlignCenter);
    m_none->setTextInteractionFlags(Qt::LinksAccessibleByMouse);
    m_none->setText(tr("type values, or <a href=\"feed\">set up a feed</a>"));
    // The keyboard stays in the field; Tools > Detector feed has the key for it.
    m_none->setFocusPolicy(Qt::NoFocus);
    auto* stack = new QStackedLayout(this);
    stack->addWidget(m_none);
    stack->addWidget(m_plot);
    connect(m_none, &QLabel::linkActivated, this, &LiveTrace::feedWanted);
    connect(&m_controller, &SprayController::changed, this, [this] {
        refreshLimit();
        refresh();
    });
    connect(&m_controller, &SprayController::ticked, this, &LiveTrace::refresh);
    for (const auto signal : {&JobSession::setupChanged, &JobSession::recordsChanged})
        connect(&m_session, signal, this, &LiveTrace::refreshLimit);
    refreshLimit();
    refresh();
}

void LiveTrace::refreshLimit()
{
    const auto& call = m_controller.call();
    m_limit = m_session.hasJob() && call && m_controller.hasFeed()
                  ? limitAsShown(m_session.job(), call->point, m_controller.offer().background)
                  : std::nullopt;
}

void LiveTrace::refresh()
{
    const bool has = m_controller.hasFeed() && m_session.hasJob();
    static_cast<QStackedLayout*>(layout())->setCurrentWidget(has ? static_cast<QWidget*>(m_plot) : m_none);
    if (!has || !isVisible())
        return;
    const model::Setup& setup = m_session.job().setup;
    m_plot->setFigure(
        traceFigure(*m_controller.feed(), report::shownUnit(setup, setup.detectorUnit), m_limit));
}

} // namespace sealwalk::ui
