// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/column_widths.h"

#include <gtest/gtest.h>

#include <numeric>
#include <random>

namespace sealwalk::render {
namespace {

ColumnNeed need(double line, double word, double share, bool right = false)
{
    ColumnNeed made;
    made.line = line;
    made.word = word;
    made.share = share;
    made.right = right;
    return made;
}

// Property: the widths fill the table; figures keep their line, and no word is cut where all of them have
// room.
TEST(ColumnWidths, KeepFiguresWholeAndCutNoWord)
{
    std::mt19937 random(7);
    std::uniform_real_distribution<double> part(0.0, 1.0);
    for (int round = 0; round < 500; ++round) {
        std::vector<ColumnNeed> needs;
        double words = 0.0;
        const int count = 1 + static_cast<int>(9.0 * part(random));
        for (int c = 0; c < count; ++c) {
            const double word = 10.0 + 60.0 * part(random);
            needs.push_back(
                need(word * (1.0 + 6.0 * part(random)), word, 0.5 + 3.0 * part(random), part(random) < 0.4));
            needs.back().head = 80.0 * part(random);
            words += word;
        }
        const double width = 680.0;
        const std::vector<double> widths = columnWidths(needs, width);
        ASSERT_EQ(widths.size(), needs.size());
        EXPECT_NEAR(std::accumulate(widths.begin(), widths.end(), 0.0), width, 1e-6);
        for (std::size_t c = 0; c < needs.size() && words <= width; ++c)
            EXPECT_GE(widths[c], needs[c].word - 1e-6) << round;
    }
}

// Property: sentences give way to figures, and have what is left by their shares.
TEST(ColumnWidths, SentencesTakeTheRest)
{
    const std::vector<double> widths = columnWidths(
        {need(30.0, 30.0, 0.7), need(100.0, 60.0, 1.0, true), need(900.0, 70.0, 1.0), need(900.0, 70.0, 2.0)},
        680.0);
    EXPECT_DOUBLE_EQ(widths[0], 30.0);
    EXPECT_DOUBLE_EQ(widths[1], 100.0);
    EXPECT_NEAR(widths[2], 550.0 / 3.0, 1e-9);
    EXPECT_NEAR(widths[3], 1100.0 / 3.0, 1e-9);
}

// Regression: where all columns together were a little too wide, dates broke in every row.
TEST(ColumnWidths, OneThatGivesLittleBreaksFirst)
{
    std::vector<ColumnNeed> needs(6, need(95.0, 55.0, 1.0, true));
    needs.push_back(need(90.0, 60.0, 1.0));
    needs.push_back(need(40.0, 30.0, 1.0));
    const std::vector<double> widths = columnWidths(needs, 680.0);
    for (std::size_t c = 0; c < 6; ++c)
        EXPECT_GE(widths[c], 95.0);
    EXPECT_GE(widths[7], 40.0);
    EXPECT_LT(widths[6], 90.0);
}

// Property: a long title breaks before a cell does.
TEST(ColumnWidths, TitlesGiveWayToCells)
{
    std::vector<ColumnNeed> needs(7, need(95.0, 40.0, 1.0));
    for (ColumnNeed& one : needs)
        one.head = 105.0;
    for (const double width : columnWidths(needs, 680.0))
        EXPECT_GE(width, 95.0);
}

} // namespace
} // namespace sealwalk::render
