// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/point_numbers.h"

#include <gmock/gmock.h>

namespace sealwalk::model {
namespace {

/// Points 1 to 9; 5 is retired.
Sketch nine()
{
    Sketch sketch;
    for (int number = 1; number <= 9; ++number) {
        TestPoint point;
        point.id = PointId::create();
        point.number = number;
        point.retired = number == 5;
        sketch.points.push_back(point);
    }
    return sketch;
}

// Property: numbers and ranges mean the same however they are parted. Regression: "6-8, 9" once meant
// nothing.
TEST(PointNumbers, AreReadAsPeopleWriteThem)
{
    struct Row
    {
        const char* text;
        std::vector<int> wanted;
    };
    const Sketch sketch = nine();
    for (const Row& row : std::vector<Row>{{"", {}},
                                           {"  ", {}},
                                           {"7", {7}},
                                           {"6-8, 9", {6, 7, 8, 9}},
                                           {"6 – 8;9", {6, 7, 8, 9}},
                                           {"9 1", {9, 1}},
                                           {"1,1,1-2", {1, 2}},
                                           {"4-6", {4, 6}},
                                           {"8..2000000000", {8, 9}}}) {
        const auto read = readPointNumbers(sketch, row.text);
        ASSERT_TRUE(read) << row.text;
        std::vector<int> numbers;
        for (const PointId id : *read)
            numbers.push_back(sketch.point(id)->number);
        EXPECT_EQ(numbers, row.wanted) << row.text;
    }
}

TEST(PointNumbers, RefuseWhatIsNone)
{
    struct Row
    {
        const char* text;
        const char* named;
    };
    for (const Row& row : std::vector<Row>{{"7, x", "x"},
                                           {"K05", "K05"},
                                           {"8-6", "8-6"},
                                           {"-3", "-3"},
                                           {"0", "0"},
                                           {"1.5", "1.5"},
                                           {"5", "no point 5"},
                                           {"12", "no point 12"},
                                           {"99999999999", "99999999999"}}) {
        const auto read = readPointNumbers(nine(), row.text);
        ASSERT_FALSE(read) << row.text;
        EXPECT_EQ(read.error().code, ErrorCode::BadInput);
        EXPECT_THAT(read.error().message, ::testing::HasSubstr(row.named));
    }
}

} // namespace
} // namespace sealwalk::model
