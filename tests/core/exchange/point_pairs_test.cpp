// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/point_pairs.h"

#include <gtest/gtest.h>

namespace sealwalk::exchange {

// Property: what is written reads back; what is no pair is refused.
TEST(PointPairs, ReadBackWhatWasWritten)
{
    const std::vector<PointPair> pairs{{model::PointId::create(), model::PointId::create()},
                                       {model::PointId::create(), model::PointId::create()}};
    EXPECT_EQ(readPairs(pairsText(pairs)).value(), pairs);
    EXPECT_TRUE(readPairs("").value().empty());
    for (const char* wrong : {"nothing", "a b", "00000000-0000-4000-8000-000000000001"})
        EXPECT_FALSE(readPairs(wrong)) << wrong;
}

} // namespace sealwalk::exchange
