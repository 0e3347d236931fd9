// SPDX-License-Identifier: GPL-3.0-or-later
// One number known from outside, as a named test: the id becomes the test's name.
#pragma once

#include <gtest/gtest.h>

#include <cmath>
#include <ostream>
#include <string>

namespace sealwalk::tests {

struct CheckRow
{
    const char* id; ///< letters, digits and underscore
    double expected;
    double tolerance; ///< relative to `expected`
    const char* source;
    double (*computed)();
};

inline void PrintTo(const CheckRow& row, std::ostream* out)
{
    *out << row.id << " (" << row.source << ')';
}

inline std::string rowName(const testing::TestParamInfo<CheckRow>& info)
{
    return info.param.id;
}

inline void expectRow(const CheckRow& row)
{
    const double computed = row.computed();
    ASSERT_TRUE(std::isfinite(computed)) << row.id << ' ' << row.source;
    EXPECT_LE(std::abs(computed - row.expected), row.tolerance * std::abs(row.expected))
        << row.id << ": computed " << computed << ", expected " << row.expected << ", source " << row.source;
}

} // namespace sealwalk::tests
