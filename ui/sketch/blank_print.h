// SPDX-License-Identifier: GPL-3.0-or-later
// The blank numbered sheet for paper: the drawing, and a table to fill in by hand.
#pragma once

#include "core/model/sketch.h"

#include <QString>

#include <vector>

class QPagedPaintDevice;

namespace sealwalk::ui {

class UnderlayImages;

struct BlankSheet
{
    const model::Sketch* sketch = nullptr;
    std::vector<model::SheetId> sheets; ///< to print, in this order
    QString heading;                    ///< "Box coater 2, job 164"
    QString unit;                       ///< "mbar·l/s", as the detector shows
};

/// Prints each sheet with the points on it from the top of a page, over as many as its table needs. `images`
/// may be nullptr.
void printBlank(QPagedPaintDevice& device, const BlankSheet& blank, UnderlayImages* images);

} // namespace sealwalk::ui
