// SPDX-License-Identifier: GPL-3.0-or-later
// Which key does what, per stage: what the key card shows.
#pragma once

#include "ui/shell/stage.h"

#include <QString>

#include <vector>

namespace sealwalk::ui {

struct KeyLine
{
    QString keys;
    QString does;
};

std::vector<KeyLine> keysEverywhere();
std::vector<KeyLine> keysOf(Stage stage);

} // namespace sealwalk::ui
