// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/corner.h"

#include "core/quantities/leak_rate_unit.h"
#include "ui/render/icon.h"
#include "ui/session/job_session.h"
#include "ui/shell/error_text.h"
#include "ui/widgets/below_field.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr int kIcon = 15;
constexpr int kNarrowChoice = 84; // the rest is seen when it opens

} // namespace

Corner::Corner(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
{
    m_feedIcon = new QLabel(this);
    m_feed = new QLabel(this);
    m_feed->setProperty("role", QStringLiteral("corner"));
    m_disk = new QLabel(this);
    m_disk->setProperty("role", QStringLiteral("corner"));
    m_unit = new QComboBox(this);
    m_unit->setProperty("role", QStringLiteral("corner"));
    m_unit->setAccessibleName(tr("unit shown"));
    m_unit->setToolTip(tr("Unit shown everywhere in this job (Ctrl+U)"));
    m_unit->setFocusPolicy(Qt::TabFocus);
    for (const LeakRateUnit unit : allLeakRateUnits())
        // A mass flow is tied to a gas of its own and is not a unit to show a map in.
        if (unitOf(unit).flowClass != FlowClass::Mass)
            m_unit->addItem(QString::fromStdString(unitOf(unit).symbol),
                            QString::fromStdString(std::string(idOf(unit))));

    m_gas = new QComboBox(this);
    m_gas->setProperty("role", QStringLiteral("corner"));
    m_gas->setAccessibleName(tr("gas shown"));
    m_gas->setToolTip(tr("Leaks at points shown as helium, as measured, or as the air they would pass"));
    m_gas->setFocusPolicy(Qt::TabFocus);
    m_gas->addItem(tr("helium"), static_cast<int>(model::GasBasis::Helium));
    m_gas->addItem(tr("as air"), static_cast<int>(model::GasBasis::Air));

    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 2, 8, 2);
    row->setSpacing(6);
    row->addStretch(1);
    auto* feed = new QWidget(this);
    auto* feedRow = new QHBoxLayout(feed);
    feedRow->setContentsMargins(0, 0, 0, 0);
    feedRow->setSpacing(6);
    feedRow->addStretch(1);
    feedRow->addWidget(m_feedIcon);
    feedRow->addWidget(m_feed);
    row->addWidget(feed);
    row->addSpacing(12);
    row->addWidget(m_disk);
    row->addSpacing(12);
    row->addWidget(m_unit);
    row->addWidget(m_gas);
    connect(m_unit, &QComboBox::activated, this, &Corner::onUnitChosen);
    // The menu row gives the corner its room once: enough for the longest state, in bold.
    QFont bold = m_feed->font();
    bold.setBold(true);
    m_feedRoom =
        kIcon + feedRow->spacing() +
        QFontMetrics(bold).horizontalAdvance(tr("feed silent since %1").arg(QStringLiteral("00:00:00")));
    feed->setMinimumWidth(m_feedRoom);
    m_diskRoom = std::max(
        QFontMetrics(bold).horizontalAdvance(tr("not on disk since %1").arg(QStringLiteral("00:00"))),
        QFontMetrics(m_disk->font()).horizontalAdvance(tr("on disk %1").arg(QStringLiteral("00:00:00"))));
    m_disk->setMinimumWidth(m_diskRoom);
    m_disk->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    connect(m_gas, &QComboBox::activated, this, &Corner::onGasChosen);
    setFeed(tr("no detector feed"));
    refresh();
}

void Corner::setNarrow(bool isNarrow)
{
    m_isNarrow = isNarrow;
    m_feed->parentWidget()->setMinimumWidth(isNarrow ? kIcon : m_feedRoom);
    m_disk->setMinimumWidth(isNarrow ? 0 : m_diskRoom);
    for (QComboBox* choice : {m_unit, m_gas})
        choice->setMaximumWidth(isNarrow ? kNarrowChoice : QWIDGETSIZE_MAX);
    showFeed();
    showDisk();
}

/// In a narrow window without its time, and a feed that is live as its sign alone.
void Corner::showFeed()
{
    m_feed->setVisible(!m_isNarrow || m_feedIsGone);
    m_feed->setText(m_isNarrow && m_feedIsGone ? tr("feed lost") : m_feedState);
    m_feedIcon->setToolTip(m_isNarrow ? m_feedState : QString());
}

void Corner::showDisk()
{
    m_disk->setText(m_isNarrow && !m_diskBriefly.isEmpty() ? m_diskBriefly : m_diskState);
    m_disk->setToolTip(m_isNarrow ? m_diskState : QString());
}

void Corner::setFeed(const QString& state, const QString& sentence, bool isGone)
{
    // The style first: its bold letters need more room, which is found when the text is set.
    setStyleProperty(m_feed, "role", isGone ? QStringLiteral("corner-wrong") : QStringLiteral("corner"));
    m_feedState = state;
    m_feedIsGone = isGone;
    showFeed();
    m_feed->setToolTip(sentence);
    m_feed->setAccessibleDescription(sentence);
}

void Corner::onStored(const Timestamp& at)
{
    m_failing = false;
    m_stored = true;
    m_diskState = tr("on disk %1").arg(QString::fromStdString(at.timeOfDay()));
    m_diskBriefly = tr("on disk");
    showDisk();
    setStyleProperty(m_disk, "role", QStringLiteral("corner"));
}

void Corner::onNotStored(const Timestamp& since)
{
    if (m_failing)
        return;
    m_failing = true;
    m_diskState = tr("not on disk since %1").arg(QString::fromStdString(since.timeOfDay()).left(5));
    m_diskBriefly = tr("not on disk");
    showDisk();
    setStyleProperty(m_disk, "role", QStringLiteral("corner-wrong"));
}

void Corner::refresh()
{
    const QSignalBlocker quiet(m_unit);
    const QSignalBlocker quietGas(m_gas);
    const QString unit =
        m_session.hasJob() ? QString::fromStdString(m_session.job().setup.unit) : QStringLiteral("mbar l/s");
    m_unit->setCurrentIndex(m_unit->findData(unit));
    m_unit->setEnabled(m_session.hasJob());
    m_gas->setCurrentIndex(m_gas->findData(
        static_cast<int>(m_session.hasJob() ? m_session.job().setup.gasBasis : model::GasBasis::Helium)));
    m_gas->setEnabled(m_session.hasJob());
    if (!m_stored && !m_failing) {
        m_diskState = m_session.hasHistory() ? tr("on disk") : tr("no history open");
        showDisk();
    }
    refreshIcon();
}

void Corner::refreshIcon()
{
    m_feedIcon->setPixmap(render::icon(QStringLiteral("feed")).pixmap(kIcon, kIcon));
}

void Corner::openUnits()
{
    if (!m_unit->isEnabled())
        return;
    m_unit->setFocus();
    m_unit->showPopup();
}

void Corner::onUnitChosen(int index)
{
    if (m_session.hasJob())
        show(m_unit->itemData(index).toString().toStdString(), m_session.job().setup.gasBasis);
}

void Corner::onGasChosen(int index)
{
    if (m_session.hasJob())
        show(m_session.job().setup.unit, static_cast<model::GasBasis>(m_gas->itemData(index).toInt()));
}

void Corner::show(const std::string& unit, model::GasBasis gas)
{
    if (const Status shown = m_session.showIn(unit, gas); !shown)
        emit notStored(errorSentence(shown.error()));
    refresh();
}

} // namespace sealwalk::ui
