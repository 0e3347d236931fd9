// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/prepare_page.h"

#include "ui/prepare/asked_column.h"
#include "ui/prepare/background_panel.h"
#include "ui/prepare/calibration_panel.h"
#include "ui/prepare/cautions_panel.h"
#include "ui/prepare/folding_columns.h"
#include "ui/prepare/outlook_column.h"
#include "ui/prepare/rise_panel.h"
#include "ui/session/job_session.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace sealwalk::ui {

PreparePage::PreparePage(JobSession& session, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
{
    m_asked = new AskedColumn(session, this);
    m_outlook = new OutlookColumn(session, this);
    auto* columns = new FoldingColumns({m_asked, measuredColumn(), m_outlook}, {480, 458, 428}, this);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(columns);
    setAccessibleName(tr("Prepare"));

    connect(m_asked, &AskedColumn::failed, this, &PreparePage::failed);
    connect(m_asked, &AskedColumn::limitTold, this, [this] {
        emit noteRequested(Severity::Caution, tr("The limit was changed after a reading: this stands in the "
                                                 "record, and the sign-off asks for a word on it."));
    });
    connect(m_calibration, &CalibrationPanel::failed, this, &PreparePage::failed);
    connect(m_background, &BackgroundPanel::failed, this, &PreparePage::failed);
    connect(m_cautions, &CautionsPanel::failed, this, &PreparePage::failed);
    connect(m_rise, &RisePanel::failed, this, &PreparePage::failed);
    connect(m_cautions, &CautionsPanel::nameWanted, this, [this] {
        emit noteRequested(Severity::Caution,
                           tr("Say who is logging first (Ctrl+L): the tick carries a name."));
    });
    connect(m_outlook, &OutlookColumn::goOn, this, &PreparePage::goOn);
    for (const auto signal : {&JobSession::jobChanged, &JobSession::setupChanged, &JobSession::recordsChanged,
                              &JobSession::sketchChanged, &JobSession::stateChanged})
        connect(&m_session, signal, this, &PreparePage::refresh);
    refresh();
}

QWidget* PreparePage::measuredColumn()
{
    auto* column = new QWidget(this);
    m_calibration = new CalibrationPanel(m_session, column);
    m_background = new BackgroundPanel(m_session, column);
    m_cautions = new CautionsPanel(m_session, column);
    m_rise = new RisePanel(m_session, column);
    auto* layout = new QVBoxLayout(column);
    layout->setContentsMargins(16, 4, 16, 16);
    layout->setSpacing(4);
    layout->addWidget(m_calibration);
    layout->addWidget(m_background);
    layout->addWidget(m_cautions);
    layout->addWidget(m_rise);
    layout->addStretch(1);
    return column;
}

void PreparePage::refresh()
{
    if (!m_session.hasJob())
        return;
    m_asked->refresh();
    m_calibration->refresh();
    m_background->refresh();
    m_cautions->refresh();
    m_rise->refresh();
    m_outlook->refresh();
    emit progressChanged();
}

QString PreparePage::progressText() const
{
    return m_outlook->progressText();
}

void PreparePage::focusInEvent(QFocusEvent* event)
{
    QWidget::focusInEvent(event);
    // Work starts in the first required field that is empty.
    if (!m_asked->focusNextEmpty())
        m_calibration->findChild<QWidget*>(QStringLiteral("enterCheck"))->setFocus();
}

} // namespace sealwalk::ui
