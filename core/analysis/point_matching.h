// SPDX-License-Identifier: GPL-3.0-or-later
// Which point of an earlier sketch is which of a later one, also when it was drawn anew in between.
#pragma once

#include "core/model/enum_names.h"
#include "core/model/sketch.h"

#include <optional>
#include <string_view>
#include <utility>
#include <vector>

namespace sealwalk::analysis {

enum class MatchedBy
{
    Identity, ///< the same point, whatever was moved or renamed
    Person,   ///< somebody said so
    Number,   ///< same number on a joint of the same name: a proposal
    Place,    ///< nearest within reach on a sheet of the same name: a proposal
    Name,     ///< the one point left on a joint of the same name and kind: a proposal
    Nothing,
};

struct PointMatch
{
    std::optional<model::PointId> before;
    std::optional<model::PointId> after;
    MatchedBy by = MatchedBy::Nothing;
    /// Whether a person should look at it before it is relied on.
    [[nodiscard]] bool isProposal() const
    {
        return by == MatchedBy::Number || by == MatchedBy::Place || by == MatchedBy::Name;
    }
    bool operator==(const PointMatch&) const = default;
};

using PointPair = std::pair<model::PointId, model::PointId>;

/// What people said of points that were drawn anew: which two are one place and which are not, the earlier
/// and the later in either order.
struct KnownPairs
{
    std::vector<PointPair> same;  ///< go before everything but identity
    std::vector<PointPair> apart; ///< are never proposed
};

/// How far apart two places may lie and still be proposed as one, mm.
inline constexpr double kReachOfPlace = 60.0;

/// One row per active point of either sketch, each in one row only: those of `after` in order of number, then
/// those only `before` has.
std::vector<PointMatch> matchPoints(const model::Sketch& before, const model::Sketch& after,
                                    const KnownPairs& known = {});

} // namespace sealwalk::analysis

namespace sealwalk::model {

template <>
struct EnumNames<analysis::MatchedBy>
{
    static constexpr std::string_view what = "way of matching";
    static constexpr std::array<std::pair<analysis::MatchedBy, std::string_view>, 6> table{{
        {analysis::MatchedBy::Identity, "identity"},
        {analysis::MatchedBy::Person, "person"},
        {analysis::MatchedBy::Number, "number"},
        {analysis::MatchedBy::Place, "place"},
        {analysis::MatchedBy::Name, "name"},
        {analysis::MatchedBy::Nothing, "nothing"},
    }};
};

} // namespace sealwalk::model
