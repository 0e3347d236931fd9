// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/cautions_panel.h"

#include "core/model/cautions.h"
#include "ui/prepare/caution_words.h"
#include "ui/prepare/shown.h"
#include "ui/render/icon.h"
#include "ui/session/job_session.h"
#include "ui/widgets/heading.h"

#include <QCheckBox>
#include <QEvent>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr int kIcon = 22;
constexpr int kGravest = 4; // shown until all are asked for

} // namespace

CautionsPanel::CautionsPanel(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
{
    m_box = new QFrame(this);
    m_box->setProperty("role", QStringLiteral("caution"));
    m_icon = new QLabel(m_box);
    m_icon->setFixedWidth(kIcon);
    m_icon->setAlignment(Qt::AlignTop);
    m_icon->setStyleSheet(QStringLiteral("border: 0"));
    m_text = new QLabel(m_box);
    m_text->setWordWrap(true);
    m_text->setTextFormat(Qt::RichText);
    m_text->setStyleSheet(QStringLiteral("border: 0; background: transparent"));
    auto* inside = new QHBoxLayout(m_box);
    inside->setContentsMargins(10, 8, 10, 8);
    inside->setSpacing(10);
    inside->addWidget(m_icon);
    inside->addWidget(m_text, 1);
    m_tick = new QCheckBox(tr("Read; permit, isolation and ventilation were checked"), this);
    m_tick->setObjectName(QStringLiteral("cautionsRead"));
    m_tick->setToolTip(tr("By the people responsible. This tick is no permission to work."));
    m_all = new QPushButton(this);
    m_all->setProperty("role", QStringLiteral("small"));
    m_by = quietLabel({}, this, QStringLiteral("caption"));
    auto* row = new QHBoxLayout;
    row->addWidget(m_tick, 1);
    row->addWidget(m_all);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    column->addWidget(new Heading(tr("Cautions"), tr("your site's rules and permits come first"), this));
    column->addWidget(m_box);
    column->addLayout(row);
    column->addWidget(m_by);
    connect(m_tick, &QCheckBox::toggled, this, &CautionsPanel::tick);
    connect(m_all, &QPushButton::clicked, this, [this] {
        m_showAll = !m_showAll;
        refresh();
    });
}

QString CautionsPanel::words(bool all) const
{
    QStringList lines;
    int count = 0;
    for (const model::Caution& caution : model::cautions()) {
        if (!all && count++ == kGravest)
            break;
        lines.append(QStringLiteral("<b>%1.</b> %2").arg(cautionTitle(caution), cautionText(caution)));
    }
    return lines.join(all ? QStringLiteral("<br>") : QStringLiteral(" "));
}

void CautionsPanel::refresh()
{
    if (!m_session.hasJob())
        return;
    const auto& ticks = m_session.job().setup.cautions;
    const auto ticked = [&](const model::Caution& caution) {
        return std::any_of(ticks.begin(), ticks.end(),
                           [&](const model::CautionTick& tick) { return tick.caution == caution.word; });
    };
    const auto all = model::cautions();
    const bool read = std::all_of(all.begin(), all.end(), ticked);
    const QSignalBlocker quiet(m_tick);
    m_tick->setChecked(read);
    m_tick->setEnabled(m_session.job().isOpenForWork());
    m_box->setVisible(!read || m_showAll);
    m_text->setText(words(m_showAll));
    m_icon->setPixmap(render::icon(QStringLiteral("caution")).pixmap(kIcon, kIcon));
    const int count = static_cast<int>(all.size());
    m_all->setText(m_showAll ? tr("Fewer") : tr("All %1").arg(count));
    m_by->setVisible(read);
    if (read)
        m_by->setText(tr("%1, %2 %3. No permission follows from it.")
                          .arg(text(ticks.back().by), text(ticks.back().at.date()),
                               text(ticks.back().at.timeOfDay()).left(5)));
}

void CautionsPanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    // The icon is a picture in the ink of the theme.
    if (event->type() == QEvent::StyleChange && m_icon != nullptr)
        m_icon->setPixmap(render::icon(QStringLiteral("caution")).pixmap(kIcon, kIcon));
}

void CautionsPanel::tick(bool read)
{
    model::Setup setup = m_session.job().setup;
    setup.cautions.clear();
    if (read && m_session.logger().isEmpty()) {
        emit nameWanted();
        refresh();
        return;
    }
    if (read)
        for (const model::Caution& caution : model::cautions())
            setup.cautions.push_back(
                {std::string(caution.word), m_session.logger().toStdString(), Timestamp::now()});
    if (const Status stored = m_session.changeSetup(setup); !stored)
        emit failed(stored.error());
    refresh();
}

} // namespace sealwalk::ui
