// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/prepare/records_row.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QSignalBlocker>

namespace sealwalk::ui {

RecordsRow::RecordsRow(const QString& which, const QString& voidName, QWidget* parent)
    : QWidget(parent)
    , m_which(new QComboBox(this))
    , m_void(new QPushButton(tr("Void …"), this))
{
    m_which->setAccessibleName(which);
    m_which->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_which->setMinimumContentsLength(10);
    m_void->setAccessibleName(voidName);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(m_which, 1);
    row->addWidget(m_void);
    setVisible(false);
    connect(m_which, &QComboBox::currentTextChanged, m_which,
            &QWidget::setToolTip); // a narrow column cuts it
    connect(m_which, &QComboBox::currentIndexChanged, this, &RecordsRow::chosen);
    connect(m_void, &QPushButton::clicked, this, &RecordsRow::voidWanted);
}

void RecordsRow::fill(const QStringList& names, int otherwise)
{
    const QSignalBlocker quiet(m_which);
    const auto before = static_cast<qsizetype>(m_which->count());
    const int chosen = m_which->currentIndex();
    m_which->clear();
    m_which->addItems(names);
    m_which->setCurrentIndex(names.size() == before && chosen >= 0 ? chosen : otherwise);
    m_which->setToolTip(m_which->currentText());
    setVisible(!names.isEmpty());
}

int RecordsRow::index() const
{
    return m_which->currentIndex();
}

void RecordsRow::focusList()
{
    m_which->setFocus();
}

} // namespace sealwalk::ui
