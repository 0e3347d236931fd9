// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/sheet_bar.h"

#include "core/editing/sheets.h"
#include "ui/render/icon.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/widgets/heading.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPainter>
#include <QPushButton>
#include <QSlider>
#include <QTabBar>
#include <QToolButton>

#include <cmath>

namespace sealwalk::ui {

SheetBar::SheetBar(SketchDesk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
{
    setFixedHeight(38);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(10, 0, 10, 0);
    row->setSpacing(8);
    m_tabs = new QTabBar(this);
    m_tabs->setObjectName(QStringLiteral("sheet-tabs"));
    m_tabs->setAccessibleName(tr("Sheets"));
    m_tabs->setDrawBase(false);
    m_tabs->setExpanding(false);
    m_tabs->setUsesScrollButtons(true);
    m_tabs->setElideMode(Qt::ElideRight);
    connect(m_tabs, &QTabBar::currentChanged, this, [this](int index) {
        const auto& sheets = m_desk.sketch().sheets;
        if (!m_refreshing && index >= 0 && index < static_cast<int>(sheets.size()))
            m_desk.setSheet(sheets[static_cast<std::size_t>(index)].id);
    });
    row->addWidget(m_tabs, 0, Qt::AlignBottom);
    m_new = new QToolButton(this);
    m_new->setObjectName(QStringLiteral("new-sheet"));
    m_new->setText(tr("+ Sheet"));
    m_new->setAccessibleName(tr("New sheet"));
    m_new->setToolTip(tr("New sheet (Ctrl+T)"));
    m_new->setProperty("kind", QStringLiteral("flat"));
    connect(m_new, &QToolButton::clicked, this, &SheetBar::newSheetWanted);
    row->addWidget(m_new);
    row->addStretch(1);
    m_opacityName = quietLabel(tr("Underlay"), this);
    m_opacity = new QSlider(Qt::Horizontal, this);
    m_opacity->setAccessibleName(tr("How strongly the picture underneath shows"));
    m_opacity->setRange(0, 100);
    m_opacity->setFixedWidth(90);
    m_opacityName->setBuddy(m_opacity);
    connect(m_opacity, &QSlider::sliderReleased, this, &SheetBar::opacityChosen);
    connect(m_opacity, &QSlider::valueChanged, this, [this] {
        if (!m_refreshing && !m_opacity->isSliderDown())
            opacityChosen();
    });
    m_scale = new QPushButton(this);
    m_scale->setIcon(render::icon(QStringLiteral("scale")));
    m_scale->setIconSize(QSize(14, 14));
    m_scale->setToolTip(tr("Scale by two clicks and a length (K)"));
    connect(m_scale, &QPushButton::clicked, this, &SheetBar::scaleWanted);
    m_fit = new QToolButton(this);
    m_fit->setText(tr("Whole sheet"));
    m_fit->setToolTip(tr("Show everything (Ctrl+0)"));
    m_fit->setProperty("kind", QStringLiteral("flat"));
    connect(m_fit, &QToolButton::clicked, this, &SheetBar::fitWanted);
    row->addWidget(m_opacityName);
    row->addWidget(m_opacity);
    row->addWidget(m_scale);
    row->addWidget(m_fit);
    connect(&desk, &SketchDesk::sketchChanged, this, &SheetBar::refresh);
    connect(&desk, &SketchDesk::sheetChanged, this, &SheetBar::refresh);
    refresh();
}

void SheetBar::opacityChosen()
{
    const model::Sheet* sheet = m_desk.sheetInView();
    if (sheet == nullptr || !sheet->underlay)
        return;
    model::Sheet changed = *sheet;
    changed.underlay->opacity = m_opacity->value() / 100.0;
    m_desk.commit(editing::changeSheet(m_desk.sketch(), changed));
}

void SheetBar::refresh()
{
    m_refreshing = true;
    const auto& sheets = m_desk.sketch().sheets;
    while (m_tabs->count() > static_cast<int>(sheets.size()))
        m_tabs->removeTab(m_tabs->count() - 1);
    for (int i = 0; i < static_cast<int>(sheets.size()); ++i) {
        const model::Sheet& sheet = sheets[static_cast<std::size_t>(i)];
        QString text = QString::fromStdString(sheet.name);
        if (!sheet.seenFrom.empty())
            text = tr("%1, from %2").arg(text, QString::fromStdString(sheet.seenFrom));
        text.replace(QLatin1Char('&'), QStringLiteral("&&"));
        if (i >= m_tabs->count())
            m_tabs->addTab(text);
        else if (m_tabs->tabText(i) != text)
            m_tabs->setTabText(i, text);
        if (sheet.id == m_desk.sheet())
            m_tabs->setCurrentIndex(i);
    }
    m_tabs->setVisible(!sheets.empty());
    m_new->setEnabled(m_desk.isOpenForWork());
    const model::Sheet* sheet = m_desk.sheetInView();
    const bool under = sheet != nullptr && sheet->underlay.has_value();
    for (QWidget* widget : std::initializer_list<QWidget*>{m_opacityName, m_opacity, m_scale})
        widget->setVisible(under);
    m_fit->setVisible(sheet != nullptr);
    if (under) {
        m_opacity->setValue(static_cast<int>(std::lround(sheet->underlay->opacity * 100.0)));
        m_scale->setText(
            tr("1 px = %1 mm").arg(QLocale().toString(sheet->underlay->millimetresPerPixel, 'g', 3)));
        m_opacity->setEnabled(m_desk.isOpenForWork());
        m_scale->setEnabled(m_desk.isOpenForWork());
    }
    m_refreshing = false;
}

void SheetBar::paintEvent(QPaintEvent*)
{
    const render::Theme& theme = render::Theme::of(this);
    QPainter painter(this);
    painter.fillRect(rect(), theme.colour(render::Role::Panel));
    painter.setPen(theme.colour(render::Role::Edge));
    painter.drawLine(0, height() - 1, width(), height() - 1);
}

} // namespace sealwalk::ui
