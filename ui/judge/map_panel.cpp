// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/judge/map_panel.h"

#include "core/report/finding_range.h"
#include "ui/judge/owed.h"
#include "ui/render/decade_ruler.h"
#include "ui/render/sheet_view.h"
#include "ui/render/theme.h"
#include "ui/session/map_options.h"
#include "ui/underlay/underlay_images.h"
#include "ui/widgets/switch_row.h"

#include <QAbstractButton>
#include <QHBoxLayout>
#include <QTabBar>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

MapPanel::MapPanel(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_tabs(new QTabBar(this))
    , m_view(new render::SheetView(this))
    , m_ruler(new render::DecadeRuler(Qt::Vertical, this))
    , m_reading(new SwitchRow(tr("Readings"), {tr("As read"), tr("Echoes taken out")}, this))
    , m_standing(new SwitchRow(tr("Standing"), {tr("As found"), tr("As left")}, this))
{
    UnderlayImages::showBeneath(*m_view, session);
    setFocusProxy(m_view);
    m_tabs->setAccessibleName(tr("Sheets"));
    m_tabs->setExpanding(false);
    m_tabs->setDrawBase(false);
    m_ruler->setAccessibleName(tr("Scale"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, render::kGapNear, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_tabs);
    auto* middle = new QHBoxLayout;
    middle->setSpacing(0);
    middle->addWidget(m_view, 1);
    middle->addWidget(m_ruler);
    column->addLayout(middle, 1);
    auto* switches = new QHBoxLayout;
    switches->setContentsMargins(render::kGapNear, render::kGapTight, render::kGapNear, render::kGapTight);
    switches->setSpacing(render::kGapApart);
    switches->addWidget(m_reading);
    switches->addWidget(m_standing);
    switches->addStretch();
    column->addLayout(switches);

    connect(m_tabs, &QTabBar::currentChanged, this, &MapPanel::draw);
    connect(m_view, &render::SheetView::pointClicked, this, &MapPanel::pointChosen);
    connect(m_view, &render::SheetView::pointHovered, this, [this](model::PointId point) {
        m_hovered = point;
        showThreads();
    });
    connect(m_reading, &SwitchRow::currentChanged, this, &MapPanel::switched);
    connect(m_standing, &SwitchRow::currentChanged, this, &MapPanel::switched);
    m_standing->setCurrent(1);
}

bool MapPanel::echoesTakenOut() const
{
    return m_reading->current() == 1;
}

bool MapPanel::asLeft() const
{
    return m_standing->current() == 1;
}

void MapPanel::toggleEchoes()
{
    m_reading->setCurrent(1 - m_reading->current());
}

void MapPanel::toggleStanding()
{
    m_standing->setCurrent(1 - m_standing->current());
}

void MapPanel::setFindings(const std::vector<analysis::PointFinding>& findings)
{
    m_findings = findings;
    const bool hasEcho = std::any_of(findings.begin(), findings.end(), [](const analysis::PointFinding& f) {
        return f.finding == analysis::Finding::Echo || !f.owes.empty();
    });
    m_reading->button(1)->setToolTip(hasEcho ? QString() : tr("No echo was found: nothing is taken out."));
    refreshTabs();
    draw();
}

void MapPanel::chooseSheet(int index)
{
    if (index >= 0 && index < m_tabs->count())
        m_tabs->setCurrentIndex(index);
}

void MapPanel::choose(model::PointId point)
{
    if (!m_session.hasJob())
        return;
    const model::Sketch& sketch = m_session.job().sketch;
    const model::Joint* joint = sketch.jointOf(point);
    if (joint == nullptr)
        return;
    const auto sheet = std::find(m_sheets.begin(), m_sheets.end(), joint->sheet);
    if (sheet != m_sheets.end())
        m_tabs->setCurrentIndex(static_cast<int>(sheet - m_sheets.begin()));
    m_chosen = point;
    m_view->setSelected(point);
    m_view->reveal(point);
    showThreads();
    const auto finding = std::find_if(m_findings.begin(), m_findings.end(),
                                      [&](const analysis::PointFinding& f) { return f.point == point; });
    if (finding == m_findings.end())
        m_ruler->setValue({});
    else
        m_ruler->setValue(finding->rate ? finding->rate : finding->asRead,
                          report::rangeOf(*finding, m_ruler->scale().gas));
}

void MapPanel::refreshTabs()
{
    std::vector<model::SheetId> sheets;
    if (m_session.hasJob())
        for (const model::Sheet& sheet : m_session.job().sketch.sheets)
            sheets.push_back(sheet.id);
    if (sheets == m_sheets)
        return;
    const QSignalBlocker quiet(m_tabs);
    while (m_tabs->count() > 0)
        m_tabs->removeTab(0);
    m_sheets = sheets;
    if (m_session.hasJob())
        for (const model::Sheet& sheet : m_session.job().sketch.sheets)
            m_tabs->addTab(QString::fromStdString(sheet.name));
}

void MapPanel::draw()
{
    const int index = m_tabs->currentIndex();
    if (!m_session.hasJob() || index < 0) {
        m_view->setContent(std::make_shared<report::MapContent>());
        return;
    }
    report::MapOptions options = mapOptions(m_session);
    options.echoesTakenOut = echoesTakenOut();
    auto content = std::make_shared<report::MapContent>(report::mapOf(
        m_session.job(), m_session.object(), m_sheets[static_cast<std::size_t>(index)], m_findings, options));
    m_ruler->setScale(content->scale);
    m_view->setContent(std::move(content));
    showThreads();
}

void MapPanel::showThreads()
{
    m_view->setThreads(threadsOf(m_findings, m_hovered == model::PointId() ? m_chosen : m_hovered));
}

void MapPanel::setNotice(const QString& text)
{
    m_view->setNotice(text);
}

} // namespace sealwalk::ui
