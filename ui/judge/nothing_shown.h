// SPDX-License-Identifier: GPL-3.0-or-later
// A line in an empty table: why nothing stands there. Without it a table that a filter empties looks lost.
#pragma once

#include <QLabel>

class QTableView;

namespace sealwalk::ui {

class NothingShown : public QLabel
{
    Q_OBJECT

public:
    explicit NothingShown(QTableView* table);
    /// Empty: the line goes.
    void say(const QString& words);

signals:
    void rowsChanged(); ///< other rows are shown, or none
};

} // namespace sealwalk::ui
