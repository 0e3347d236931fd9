// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/no_sheet.h"

#include "ui/render/icon.h"
#include "ui/session/job_session.h"
#include "ui/sketch/sketch_desk.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace sealwalk::ui {

NoSheet::NoSheet(SketchDesk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
{
    setProperty("ground", QStringLiteral("sheet"));
    setAttribute(Qt::WA_StyledBackground);
    auto* column = new QVBoxLayout(this);
    column->setSpacing(12);
    column->addStretch(1);
    m_text = new QLabel(this);
    m_text->setProperty("role", QStringLiteral("title"));
    m_text->setAlignment(Qt::AlignCenter);
    column->addWidget(m_text);
    m_new = new QPushButton(render::icon(QStringLiteral("stage-sketch")), tr("New sheet"), this);
    m_new->setObjectName(QStringLiteral("first-sheet"));
    m_picture = new QPushButton(render::icon(QStringLiteral("photo")), tr("From a photo or drawing"), this);
    for (QPushButton* button : {m_new, m_picture}) {
        button->setFixedWidth(320);
        button->setStyleSheet(QStringLiteral("min-height: 54px"));
        button->setIconSize(QSize(24, 24));
        column->addWidget(button, 0, Qt::AlignHCenter);
    }
    column->addStretch(2);
    connect(m_new, &QPushButton::clicked, this, &NoSheet::newSheetWanted);
    connect(m_picture, &QPushButton::clicked, this, &NoSheet::pictureWanted);
    refresh();
}

void NoSheet::refresh()
{
    const bool job = m_desk.session().hasJob();
    m_text->setText(!job                     ? tr("No job is open; History opens one.")
                    : m_desk.isOpenForWork() ? tr("Nothing is drawn yet. Begin with a sheet.")
                                             : tr("Nothing is drawn, and the job is closed for changes."));
    m_new->setVisible(job && m_desk.isOpenForWork());
    m_picture->setVisible(job && m_desk.isOpenForWork());
}

} // namespace sealwalk::ui
