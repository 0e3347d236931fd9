// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/editing/sheets.h"
#include "tests/core/editing/drawn.h"

#include <limits>

namespace sealwalk::editing {
namespace {

TEST(Sheets, NeedANameOfTheirOwnAndASize)
{
    const model::Sketch sketch = withSheet("Door");
    model::Sheet sheet;
    EXPECT_EQ(addSheet(sketch, sheet).error().message, "a sheet needs a name, such as \"Door\"");
    sheet.name = "Door";
    EXPECT_EQ(addSheet(sketch, sheet).error().message,
              "there is a sheet \"Door\" already; give this one another name");
    sheet.name = "Rear";
    sheet.width = 0.0;
    EXPECT_FALSE(addSheet(sketch, sheet).has_value());
    sheet.width = std::numeric_limits<double>::quiet_NaN();
    EXPECT_FALSE(addSheet(sketch, sheet).has_value());
    sheet.width = 2000.0;
    const model::Sketch next = done(sketch, addSheet(sketch, sheet));
    ASSERT_EQ(next.sheets.size(), 2u);
    EXPECT_FALSE(next.sheets[1].id.isNil());
}

TEST(Sheets, WithReadingsOnThemStay)
{
    const model::Sketch sketch = withRing(3);
    const model::SheetId door = sketch.sheets[0].id;
    EXPECT_EQ(removeSheet(sketch, door, {sketch.points[1].id}).error().message,
              "sheet \"Door\" stays, because point 2 on it has readings");
    const model::Sketch next = done(sketch, removeSheet(sketch, door, {}));
    EXPECT_TRUE(next.sheets.empty());
    EXPECT_TRUE(next.joints.empty());
    EXPECT_TRUE(next.points.empty());
    EXPECT_EQ(next.lastNumber, 3);
}

// Property: after scaling, the two places lie as far apart as was typed, and the first has not moved.
TEST(Underlay, IsScaledByTwoClicksAndALength)
{
    model::Underlay underlay;
    underlay.picture = "00";
    underlay.corner = {100.0, 50.0};
    underlay.millimetresPerPixel = 1.5;
    const geometry::Point a{160.0, 80.0};
    const geometry::Point b{220.0, 160.0}; // 100 mm on from a
    const model::Underlay result = scaled(underlay, a, b, 250.0).value();
    EXPECT_NEAR(result.millimetresPerPixel, 3.75, 1e-12);
    // The pixel under a, counted from the corner, is under a still.
    EXPECT_NEAR((a.x - underlay.corner.x) / 1.5, (a.x - result.corner.x) / 3.75, 1e-9);
    EXPECT_NEAR((a.y - underlay.corner.y) / 1.5, (a.y - result.corner.y) / 3.75, 1e-9);
    // The pixel that was under b lies 250 mm from a now.
    const double bx = result.corner.x + (b.x - underlay.corner.x) / 1.5 * 3.75;
    const double by = result.corner.y + (b.y - underlay.corner.y) / 1.5 * 3.75;
    EXPECT_NEAR(geometry::distance(a, {bx, by}), 250.0, 1e-9);
    EXPECT_FALSE(scaled(underlay, a, a, 250.0).has_value());
    EXPECT_FALSE(scaled(underlay, a, b, 0.0).has_value());
    EXPECT_FALSE(scaled(underlay, a, b, std::numeric_limits<double>::infinity()).has_value());
}

} // namespace
} // namespace sealwalk::editing
