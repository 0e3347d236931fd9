// SPDX-License-Identifier: GPL-3.0-or-later
// What single keys and buttons do at once, without a tool: retire, renumber, reverse, copy, group, lock.
#pragma once

#include "ui/sketch/tool.h"

namespace sealwalk::ui {

class SketchDesk;

class SketchCommands
{
public:
    explicit SketchCommands(SketchDesk& desk)
        : m_desk(desk)
    {}

    void retireChosen();
    void renumber();
    void reverseSense();
    void startHere(const Hand& hand);
    void addPoint(const Hand& hand);
    void split(const Hand& hand);
    void copy();
    void cut();
    void paste(const Hand& hand);
    void chooseAll();
    void chooseNext(int step);
    void chooseNextPoint(int step);
    void group(bool together);
    void toggleLock();
    void nextSheet(int step);

private:
    SketchDesk& m_desk;
};

} // namespace sealwalk::ui
