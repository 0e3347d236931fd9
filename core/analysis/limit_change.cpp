// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/limit_change.h"

#include "core/analysis/finding_words.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <vector>

namespace sealwalk::analysis {

namespace {

bool isSame(const std::optional<LeakRate>& one, const std::optional<LeakRate>& other)
{
    if (!one || !other)
        return one.has_value() == other.has_value();
    constexpr double kOfConversion = 1e-9;
    return std::abs(one->si() - other->si()) <= kOfConversion * std::max(one->si(), other->si());
}

/// "for one joint: 5e-6 mbar l/s → 1e-6 mbar l/s"
std::string wordsOf(const LimitDifference& difference, const std::string& unit)
{
    const auto words = [&](const std::optional<LeakRate>& limit) {
        return limit ? rateWords(*limit, unit) : std::string("none");
    };
    const std::string what = difference.kind ? fmt::format("for {}", model::name(*difference.kind))
                             : difference.of == LimitDifference::Of::AllTogether ? "for all together"
                                                                                 : "for one joint";
    return fmt::format("{}: {} → {}", what, words(difference.before), words(difference.after));
}

std::vector<std::string> differences(const model::Setup& before, const model::Setup& after)
{
    std::vector<std::string> all;
    for (const LimitDifference& difference : limitDifferences(before, after))
        all.push_back(wordsOf(difference, after.unit));
    return all;
}

} // namespace

std::vector<LimitDifference> limitDifferences(const model::Setup& before, const model::Setup& after)
{
    using Of = LimitDifference::Of;
    std::vector<LimitDifference> found;
    const auto compare = [&](const LimitDifference& pair) {
        if (!isSame(pair.before, pair.after))
            found.push_back(pair);
    };
    compare({Of::OneJoint, {}, before.pointLimit, after.pointLimit});
    compare({Of::AllTogether, {}, before.totalLimit, after.totalLimit});
    std::set<model::JointKind> kinds;
    for (const auto* limits : {&before.kindLimits, &after.kindLimits})
        for (const auto& [kind, limit] : *limits)
            kinds.insert(kind);
    for (const model::JointKind kind : kinds) {
        const auto of = [&](const std::map<model::JointKind, LeakRate>& limits) {
            const auto entry = limits.find(kind);
            return entry == limits.end() ? std::nullopt : std::optional(entry->second);
        };
        compare({Of::Kind, kind, of(before.kindLimits), of(after.kindLimits)});
    }
    return found;
}

std::optional<std::string> limitChangeWords(const model::Job& job, const model::Setup& after)
{
    if (job.readings.empty())
        return std::nullopt;
    const std::vector<std::string> changes = differences(job.setup, after);
    if (changes.empty())
        return std::nullopt;
    return fmt::format("The limit was changed after {} reading{}, {}.", job.readings.size(),
                       job.readings.size() == 1 ? "" : "s", fmt::join(changes, ", "));
}

std::optional<std::string> otherLimitWords(const model::Job& then, const model::Job& now)
{
    const std::vector<std::string> changes = differences(then.setup, now.setup);
    if (changes.empty())
        return std::nullopt;
    return fmt::format("Each job is judged by its own limit, job {} → job {}; {}.", then.number, now.number,
                       fmt::join(changes, ", "));
}

} // namespace sealwalk::analysis
