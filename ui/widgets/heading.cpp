// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/heading.h"

#include "ui/widgets/link_label.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>

namespace sealwalk::ui {

namespace {

constexpr int kLabelWidth = 104;
constexpr int kRowHeight = 35;
constexpr int kHeadHeight = 30;

} // namespace

Heading::Heading(const QString& title, const QString& aside, QWidget* parent)
    : QWidget(parent)
{
    m_title = new QLabel(title, this);
    m_title->setProperty("role", QStringLiteral("title"));
    m_aside = quietLabel(aside, this);
    m_aside->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    m_aside->setMinimumWidth(1);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 6, 0, 0);
    row->addWidget(m_title);
    row->addWidget(m_aside, 1);
    setMinimumHeight(kHeadHeight);
}

void Heading::setAside(const QString& aside)
{
    m_aside->setText(aside);
}

void Heading::setTitle(const QString& title)
{
    m_title->setText(title);
}

QWidget* formRow(const QString& label, const std::vector<QWidget*>& fields, QWidget* parent)
{
    auto* row = new QWidget(parent);
    row->setMinimumHeight(kRowHeight);
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 2, 0, 2);
    layout->setSpacing(8);
    QLabel* name = quietLabel(label, row);
    name->setFixedWidth(kLabelWidth);
    name->setWordWrap(true);
    layout->addWidget(name);
    bool fills = false;
    for (QWidget* field : fields) {
        layout->addWidget(field);
        const QSizePolicy::Policy wide = field->sizePolicy().horizontalPolicy();
        fills = fills || wide == QSizePolicy::Expanding || qobject_cast<QComboBox*>(field) != nullptr;
        if (name->buddy() == nullptr && field->focusPolicy() != Qt::NoFocus)
            name->setBuddy(field);
    }
    if (!fills)
        layout->addStretch(1);
    return row;
}

QLabel* quietLabel(const QString& text, QWidget* parent, const QString& role)
{
    auto* label = new LinkLabel(text, parent);
    label->setProperty("role", role);
    return label;
}

} // namespace sealwalk::ui
