// SPDX-License-Identifier: GPL-3.0-or-later
// Draws joints before anything was sprayed: hollow and dashed, each kind with a filling of its own, with
// point marks, numbers and names.
#pragma once

#include "core/model/sketch.h"
#include "ui/render/theme.h"

#include <QList>
#include <QPolygonF>
#include <QRectF>
#include <QString>

#include <memory>
#include <vector>

class QPainter;

namespace sealwalk::ui {

/// One joint laid out at one scale, px from the sheet's origin, y down.
struct DrawnPoint
{
    model::PointId id;
    int number = 0;
    bool retired = false;
    QPointF place;
    QPointF inward; ///< unit vector to the inside of the joint; zero on a spot
    bool showsNumber = true;
};

struct DrawnJoint
{
    model::JointId id;
    model::JointKind kind = model::JointKind::OringSeal;
    QString name;
    bool locked = false;
    QPolygonF line; ///< one place on a spot
    bool closed = false;
    bool spot = false;
    double radius = 0.0; ///< of a spot, px
    double length = 0.0; ///< px along it
    QPointF middle;      ///< of an open joint: half way along
    QPointF aside;       ///< of an open joint: unit vector to the side its numbers are not on
    std::vector<DrawnPoint> points;
    std::vector<QPointF> cuts; ///< between stretches: pairs of places across the band
    QRectF bounds;             ///< everything painted
};

/// Its name, which says so where it belongs to the test set-up.
QString nameShown(const model::Joint& joint);

/// @param scale  px per mm
DrawnJoint laidOut(const model::Sketch& sketch, const model::Joint& joint,
                   const std::vector<const model::TestPoint*>& points, double scale);

/// All joints of a sheet.
std::vector<DrawnJoint> laidOut(const model::Sketch& sketch, model::SheetId sheet, double scale);

struct JointLook
{
    bool chosen = false;
    bool showsRetired = true;
    double unit = 1.0; ///< device units of one screen pixel; prints have more
};

void paintBand(QPainter& painter, const render::Theme& theme, const DrawnJoint& joint, const JointLook& look);

/// Where names stand already: small joints close together have no room for all of theirs, and a name over
/// another is none. The list beside the sheet and a joint that is chosen still tell it.
class NameRoom
{
public:
    /// False when something stands there.
    bool take(const QRectF& box);

private:
    QList<QRectF> m_taken;
};

/// Point marks, numbers and the name; with `names`, no name over another.
void paintMarks(QPainter& painter, const render::Theme& theme, const DrawnJoint& joint, const JointLook& look,
                NameRoom* names = nullptr);

/// The icon of a kind, by the name the icon set knows.
QString iconOf(model::JointKind kind);
/// The kind in the user's language.
QString nameOf(model::JointKind kind);

} // namespace sealwalk::ui
