// SPDX-License-Identifier: GPL-3.0-or-later
// Round steps for an axis, and how they are written.
#pragma once

#include "core/report/figure.h"

#include <QString>

#include <vector>

namespace sealwalk::render {

struct Tick
{
    double at = 0.0;
    QString text;
};

/// @param most  about how many ticks there is room for, at least 2
std::vector<Tick> ticksOf(const report::Axis& axis, int most);

/// Where a value stands on an axis: 0 low end, 1 high end.
double partOf(const report::Axis& axis, double value);

} // namespace sealwalk::render
