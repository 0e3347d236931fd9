// SPDX-License-Identifier: GPL-3.0-or-later
// Two jobs of one object side by side: what is new, gone, grown, shrunk, the same, and what cannot be
// compared.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/analysis/point_matching.h"

#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace sealwalk::analysis {

enum class Change
{
    New,           ///< a leak now, above what would have been seen then
    Gone,          ///< a leak then; now less than that could be seen
    Grown,         ///< the 95 % range of the change lies above 1
    Shrunk,        ///< the 95 % range of the change lies below 1
    Same,          ///< the range of the change holds 1, or no response both times with like bounds
    NotComparable, ///< `because` says why
};

struct ComparedPoint
{
    PointMatch match;
    std::optional<PointFinding> before; ///< none when the point did not exist then
    std::optional<PointFinding> after;  ///< none when it exists no longer
    Change change = Change::NotComparable;
    std::optional<double> decades; ///< log10 of the rate now over the rate then
    std::optional<double> low;     ///< 95 %
    std::optional<double> high;    ///< 95 %
    bool atLeast = false;          ///< one side is only a bound: the change is at least this large
    std::string because;           ///< one sentence
};

struct ComparedSide
{
    const model::Sketch* sketch = nullptr;
    std::span<const PointFinding> findings; ///< of the job, as found or as left
};

struct Comparison
{
    std::vector<ComparedPoint> points; ///< in the order of matchPoints()
    [[nodiscard]] int count(Change change) const;
    [[nodiscard]] int matched(MatchedBy by) const;
};

/// Ranges of both sides are taken as independent: between two years the set-up, the reference leak's
/// certificate and the helium share are new. In decades, the ranges of both are added in squares, each side
/// of its own.
Comparison compare(const ComparedSide& before, const ComparedSide& after, const KnownPairs& known = {});

} // namespace sealwalk::analysis

namespace sealwalk::model {

template <>
struct EnumNames<analysis::Change>
{
    static constexpr std::string_view what = "change";
    static constexpr std::array<std::pair<analysis::Change, std::string_view>, 6> table{{
        {analysis::Change::New, "new"},
        {analysis::Change::Gone, "gone"},
        {analysis::Change::Grown, "grown"},
        {analysis::Change::Shrunk, "shrunk"},
        {analysis::Change::Same, "same"},
        {analysis::Change::NotComparable, "not comparable"},
    }};
};

} // namespace sealwalk::model
