// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/several_panel.h"

#include "core/editing/joints.h"
#include "ui/sketch/sketch_desk.h"
#include "ui/widgets/heading.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace sealwalk::ui {

SeveralPanel::SeveralPanel(SketchDesk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    m_head = new Heading({}, {}, this);
    column->addWidget(m_head);
    m_group = new QPushButton(this);
    connect(m_group, &QPushButton::clicked, this, [this] {
        m_desk.commit(editing::group(m_desk.sketch(), m_desk.chosen(),
                                     m_grouped ? std::string() : editing::freeGroupWord(m_desk.sketch())));
    });
    m_lock = new QPushButton(this);
    connect(m_lock, &QPushButton::clicked, this,
            [this] { m_desk.commit(editing::setLocked(m_desk.sketch(), m_desk.chosen(), !m_locked)); });
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_group, 1);
    buttons->addWidget(m_lock, 1);
    column->addLayout(buttons);
    refresh();
}

void SeveralPanel::refresh()
{
    const auto& chosen = m_desk.chosen();
    setVisible(chosen.size() > 1);
    setEnabled(m_desk.isOpenForWork());
    if (chosen.size() < 2)
        return;
    m_head->setTitle(tr("%n joints", nullptr, static_cast<int>(chosen.size())));
    const model::Joint* first = m_desk.sketch().joint(chosen.front());
    m_grouped = first != nullptr && !first->group.empty();
    m_locked = false;
    for (const model::JointId id : chosen)
        if (const model::Joint* joint = m_desk.sketch().joint(id)) {
            m_grouped = m_grouped && joint->group == first->group;
            m_locked = m_locked || joint->locked;
        }
    m_group->setText(m_grouped ? tr("Ungroup") : tr("Group"));
    m_lock->setText(m_locked ? tr("Unlock") : tr("Lock"));
}

} // namespace sealwalk::ui
