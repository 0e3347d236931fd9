// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/switch_row.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QToolButton>

namespace sealwalk::ui {

SwitchRow::SwitchRow(const QString& name, const QStringList& words, QWidget* parent)
    : QWidget(parent)
    , m_name(name)
{
    setAccessibleName(name);
    m_row = new QHBoxLayout(this);
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSpacing(0);
    m_group = new QButtonGroup(this);
    connect(m_group, &QButtonGroup::idToggled, this, [this](int id, bool on) {
        if (on)
            emit currentChanged(id);
    });
    setWords(words);
}

void SwitchRow::setWords(const QStringList& words)
{
    const QSignalBlocker quiet(this);
    const int before = current();
    for (QAbstractButton* old : m_group->buttons()) {
        m_group->removeButton(old);
        delete old;
    }
    for (int i = 0; i < words.size(); ++i) {
        auto* button = new QToolButton(this);
        button->setText(words.at(i));
        button->setCheckable(true);
        button->setAutoRaise(false);
        button->setProperty("role", QStringLiteral("switch"));
        button->setAccessibleName(m_name + QStringLiteral(": ") + words.at(i));
        m_group->addButton(button, i);
        m_row->addWidget(button);
    }
    setCurrent(before >= 0 && before < words.size() ? before : 0);
}

void SwitchRow::setCurrent(int index)
{
    if (QAbstractButton* wanted = m_group->button(index))
        wanted->setChecked(true);
}

int SwitchRow::current() const
{
    return m_group->checkedId();
}

int SwitchRow::count() const
{
    return static_cast<int>(m_group->buttons().size());
}

QAbstractButton* SwitchRow::button(int index) const
{
    return m_group->button(index);
}

} // namespace sealwalk::ui
