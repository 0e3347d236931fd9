// SPDX-License-Identifier: GPL-3.0-or-later
// A sketch to start from in tests of editing.
#pragma once

#include "core/editing/joints.h"

#include <gtest/gtest.h>

namespace sealwalk::editing {

/// The sketch after a verb's edit; the edit's inverse is tried on the way.
inline model::Sketch done(const model::Sketch& sketch, const Result<Edit>& edit,
                          const PointSet& readings = {})
{
    EXPECT_TRUE(edit.has_value()) << (edit ? "" : edit.error().message);
    if (!edit)
        return sketch;
    model::Sketch next = sketch;
    const Result<Edit> inverse = apply(next, *edit, readings);
    EXPECT_TRUE(inverse.has_value()) << (inverse ? "" : inverse.error().message);
    model::Sketch back = next;
    EXPECT_TRUE(apply(back, *inverse).has_value());
    EXPECT_EQ(back, sketch) << edit->what;
    return next;
}

inline model::Sketch withSheet(const char* name = "Door")
{
    model::Sketch sketch;
    model::Sheet sheet;
    sheet.id = model::SheetId::create();
    sheet.name = name;
    sheet.seenFrom = "the front";
    sketch.sheets.push_back(sheet);
    return sketch;
}

inline model::Joint jointOn(const model::Sketch& sketch, geometry::Shape shape, const char* name = "Seal")
{
    model::Joint joint;
    joint.id = model::JointId::create();
    joint.sheet = sketch.sheets.empty() ? model::SheetId{} : sketch.sheets.front().id;
    joint.name = name;
    joint.shape = std::move(shape);
    return joint;
}

inline Laying byNumber(int number)
{
    return {Laying::By::Number, number, 0.0, std::nullopt};
}

inline Laying byPitch(double pitch)
{
    return {Laying::By::Pitch, 0, pitch, std::nullopt};
}

/// A ring of radius 100 mm at the origin with `points` points.
inline model::Sketch withRing(int points = 8)
{
    const model::Sketch sketch = withSheet();
    return done(sketch,
                addJoint(sketch, jointOn(sketch, geometry::Ring{{0.0, 0.0}, 100.0}), byNumber(points)));
}

inline geometry::Point placeOf(const model::Sketch& sketch, int number)
{
    return *model::placeOf(sketch, sketch.pointNumbered(number)->id);
}

inline void expectAt(const model::Sketch& sketch, int number, geometry::Point place)
{
    EXPECT_NEAR(geometry::distance(placeOf(sketch, number), place), 0.0, 0.1)
        << "point " << number << " at " << placeOf(sketch, number).x << ", " << placeOf(sketch, number).y;
}

} // namespace sealwalk::editing
