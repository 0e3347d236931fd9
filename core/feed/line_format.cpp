// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/feed/line_format.h"

#include "core/feed/line_pattern.h"
#include "core/quantities/leak_rate_unit.h"

#include <fmt/format.h>

#include <cmath>

namespace sealwalk::feed {

namespace {

constexpr double kMostDecades = 10.0;    // per volt; amplifiers give 0.5 to 2
constexpr double kFarthestDecade = 30.0; // 1e±30 is no leak rate in any unit

Status checkColumn(int column, const char* what)
{
    if (column < 1 || column > kMostColumns)
        return fail(ErrorCode::BadInput,
                    fmt::format("the column of the {} is {}; right is 1 to {}", what, column, kMostColumns));
    return {};
}

Status checkVolts(const LineFormat& format)
{
    if (format.meaning == Meaning::LinearVolts) {
        if (!std::isfinite(format.factor) || format.factor == 0.0)
            return fail(ErrorCode::BadInput,
                        "the factor must say how much leak rate a volt is, such as 1e-6");
        if (!std::isfinite(format.offset))
            return fail(ErrorCode::BadInput, "the leak rate at 0 V must be a number, such as 0");
    }
    if (format.meaning == Meaning::DecadeVolts) {
        if (!std::isfinite(format.decadesPerVolt) || format.decadesPerVolt == 0.0 ||
            std::abs(format.decadesPerVolt) > kMostDecades)
            return fail(ErrorCode::BadInput,
                        fmt::format("the decades per volt must not be 0 and at most {:.0f}, such as 1",
                                    kMostDecades));
        if (!std::isfinite(format.exponentAtZero) || std::abs(format.exponentAtZero) > kFarthestDecade)
            return fail(ErrorCode::BadInput,
                        fmt::format("the decade at 0 V must lie between -{0:.0f} and {0:.0f}, such as -12 "
                                    "for 1e-12",
                                    kFarthestDecade));
    }
    return {};
}

} // namespace

Status checkFormat(const LineFormat& format)
{
    if (format.byPattern) {
        if (Status pattern = checkPattern(format.pattern); !pattern)
            return pattern;
    } else if (Status column = checkColumn(format.column, "value"); !column) {
        return column;
    }
    if (format.timeColumn) {
        if (Status column = checkColumn(*format.timeColumn, "time"); !column)
            return column;
        if (!format.byPattern && *format.timeColumn == format.column)
            return fail(ErrorCode::BadInput, "value and time stand in the same column; each needs its own");
    }
    if (const auto unit = leakRateUnit(format.unit); !unit)
        return fail(unit.error());
    return checkVolts(format);
}

} // namespace sealwalk::feed
