// SPDX-License-Identifier: GPL-3.0-or-later
// A thread from a leak to a point that answered to its helium, with the share of the reading on a tag.
#pragma once

#include "core/model/ids.h"
#include "ui/render/theme.h"

#include <QPainterPath>
#include <QPointF>
#include <QString>

class QPainter;

namespace sealwalk::render {

struct Thread
{
    model::PointId from; ///< the leak
    model::PointId to;   ///< the point that answered
    double share = 0.0;  ///< of the point's reading; thick threads carry more
    QString text;        ///< on the tag, "61 %"; empty: no tag
};

/// The way a thread takes; empty when its ends are too close for one.
QPainterPath threadPath(QPointF from, QPointF to);

/// Draws a thread bent a little to one side, its arrow at `to`. Tags of several threads to one point do not
/// meet as long as their leaks lie apart.
void paintThread(QPainter& painter, const Theme& theme, QPointF from, QPointF to, const Thread& thread);

} // namespace sealwalk::render
