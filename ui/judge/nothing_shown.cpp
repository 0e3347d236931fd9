// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/judge/nothing_shown.h"

#include <QTableView>
#include <QVBoxLayout>

namespace sealwalk::ui {

NothingShown::NothingShown(QTableView* table)
    : QLabel(table->viewport())
{
    setProperty("role", QStringLiteral("soft"));
    setObjectName(QStringLiteral("nothingShown"));
    setWordWrap(true);
    setAlignment(Qt::AlignCenter);
    auto* inside = new QVBoxLayout(table->viewport());
    inside->addWidget(this);
    const QAbstractItemModel* rows = table->model();
    connect(rows, &QAbstractItemModel::modelReset, this, &NothingShown::rowsChanged);
    connect(rows, &QAbstractItemModel::rowsInserted, this, &NothingShown::rowsChanged);
    connect(rows, &QAbstractItemModel::rowsRemoved, this, &NothingShown::rowsChanged);
    hide();
}

void NothingShown::say(const QString& words)
{
    setText(words);
    setVisible(!words.isEmpty());
}

} // namespace sealwalk::ui
