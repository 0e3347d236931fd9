// SPDX-License-Identifier: GPL-3.0-or-later
// What a point's reading owes to whom, as threads on the sheet and in words.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/model/sketch.h"
#include "ui/render/thread_painter.h"

#include <QString>

#include <vector>

namespace sealwalk::ui {

/// Threads from the leaks the point owes to; for a leak that others owe to, the threads to those.
std::vector<render::Thread> threadsOf(const std::vector<analysis::PointFinding>& findings,
                                      model::PointId point);

/// "Of its reading 97 % is helium that reached point 17, 3 % what earlier responses and the room left." Empty
/// when nothing worth naming is owed.
QString owedText(const analysis::PointFinding& finding, const model::Sketch& sketch);

} // namespace sealwalk::ui
