// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/limit_change.h"

#include "core/analysis/finding_words.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <set>
#include <vector>

namespace sealwalk::analysis {

namespace {

/// "for one joint: 5e-6 mbar l/s → 1e-6 mbar l/s", one for each limit that is another.
std::vector<std::string> differences(const model::Setup& before, const model::Setup& after)
{
    std::vector<std::string> changes;
    const auto compare = [&](std::string_view what, const std::optional<LeakRate>& was,
                             const std::optional<LeakRate>& is) {
        const auto words = [&](const std::optional<LeakRate>& limit) {
            return limit ? rateWords(*limit, after.unit) : std::string("none");
        };
        if (was != is)
            changes.push_back(fmt::format("{}: {} → {}", what, words(was), words(is)));
    };
    compare("for one joint", before.pointLimit, after.pointLimit);
    compare("for all together", before.totalLimit, after.totalLimit);
    std::set<model::JointKind> kinds;
    for (const auto* limits : {&before.kindLimits, &after.kindLimits})
        for (const auto& [kind, limit] : *limits)
            kinds.insert(kind);
    for (const model::JointKind kind : kinds) {
        const auto of = [&](const std::map<model::JointKind, LeakRate>& limits) {
            const auto found = limits.find(kind);
            return found == limits.end() ? std::nullopt : std::optional(found->second);
        };
        compare(fmt::format("for {}", model::name(kind)), of(before.kindLimits), of(after.kindLimits));
    }
    return changes;
}

} // namespace

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
