// SPDX-License-Identifier: GPL-3.0-or-later
// What an empty history shows: the ways to begin.
#pragma once

#include <QWidget>

namespace sealwalk::ui {

class FirstStart : public QWidget
{
    Q_OBJECT

public:
    explicit FirstStart(QWidget* parent = nullptr);

signals:
    void newObjectWanted();
    void pictureWanted();
    void jobFileWanted();
    void demoWanted();
};

} // namespace sealwalk::ui
