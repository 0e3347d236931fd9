// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/known_pairs.h"

#include "core/exchange/point_pairs.h"

#include <algorithm>
#include <map>
#include <string>

namespace sealwalk::transfer {
namespace {

Result<std::vector<analysis::PointPair>> pairsNamed(const storage::HistoryStore& store,
                                                    std::string_view beginning)
{
    const auto kept = store.settingsNamed(std::string(beginning));
    if (!kept)
        return fail(kept.error());
    std::vector<analysis::PointPair> pairs;
    for (const auto& [name, text] : *kept) {
        const auto read = exchange::readPairs(text);
        if (!read)
            return fail(read.error().in(name));
        pairs.insert(pairs.end(), read->begin(), read->end());
    }
    return pairs;
}

/// Every pair of points that hang together through `pairs`: a sketch drawn anew twice is joined through the
/// one in the middle.
std::vector<analysis::PointPair> joinedThrough(const std::vector<analysis::PointPair>& pairs)
{
    std::map<model::PointId, std::size_t> groupOf;
    std::vector<std::vector<model::PointId>> groups;
    for (const auto& [one, other] : pairs) {
        for (const model::PointId point : {one, other})
            if (groupOf.emplace(point, groups.size()).second)
                groups.push_back({point});
        const std::size_t kept = groupOf[one];
        const std::size_t taken = groupOf[other];
        if (kept == taken)
            continue;
        for (const model::PointId point : groups[taken]) {
            groupOf[point] = kept;
            groups[kept].push_back(point);
        }
        groups[taken].clear();
    }
    std::vector<analysis::PointPair> joined;
    for (const std::vector<model::PointId>& group : groups)
        for (std::size_t i = 0; i < group.size(); ++i)
            for (std::size_t j = i + 1; j < group.size(); ++j)
                joined.emplace_back(group[i], group[j]);
    return joined;
}

Status add(storage::HistoryStore& store, const std::string& setting,
           const std::vector<analysis::PointPair>& pairs)
{
    const auto kept = store.setting(setting);
    if (!kept)
        return fail(kept.error());
    auto known = exchange::readPairs(*kept);
    if (!known)
        return fail(known.error().in(setting));
    const std::size_t before = known->size();
    for (const analysis::PointPair& pair : pairs)
        if (std::find(known->begin(), known->end(), pair) == known->end())
            known->push_back(pair);
    return known->size() == before ? Status() : store.putSetting(setting, exchange::pairsText(*known));
}

} // namespace

Result<analysis::KnownPairs> knownPairs(const storage::HistoryStore& store)
{
    const auto same = pairsNamed(store, exchange::kSamePoints);
    if (!same)
        return fail(same.error());
    auto apart = pairsNamed(store, exchange::kOtherPoints);
    if (!apart)
        return fail(apart.error());
    return analysis::KnownPairs{joinedThrough(*same), std::move(*apart)};
}

Status sayTheyAreOne(storage::HistoryStore& store, model::JobId before, model::JobId after,
                     const analysis::PointPair& pair)
{
    return add(store, exchange::pairsSetting(before, after), {pair});
}

Status sayTheyAreTwo(storage::HistoryStore& store, model::JobId before, model::JobId after,
                     const analysis::PointPair& pair)
{
    return add(store, exchange::deniedSetting(before, after), {pair});
}

std::vector<std::string> takePairs(storage::HistoryStore& store, const storage::HistoryStore& from)
{
    std::vector<std::string> problems;
    for (const std::string_view beginning : {exchange::kSamePoints, exchange::kOtherPoints}) {
        const auto settings = from.settingsNamed(std::string(beginning));
        if (!settings) {
            problems.push_back(settings.error().message);
            continue;
        }
        for (const auto& [name, text] : *settings) {
            const auto pairs = exchange::readPairs(text);
            if (const Status added = pairs ? add(store, name, *pairs) : Status(fail(pairs.error().in(name)));
                !added)
                problems.push_back(added.error().message);
        }
    }
    return problems;
}

std::vector<std::string> takeSameObjects(storage::HistoryStore& store, const storage::HistoryStore& from)
{
    const auto there = from.objects();
    if (!there)
        return {there.error().message};
    std::vector<std::string> problems;
    for (const storage::ObjectRow& row : *there)
        for (const storage::ObjectEntry& other : row.others) {
            if (!store.object(row.id) || !store.object(other.id))
                continue; // none of its jobs came
            const auto said = store.saidOfEntry(other.id);
            if (said && *said)
                continue;
            if (const Status joined =
                    said ? store.sayOneObject(other.id, row.id) : Status(fail(said.error()));
                !joined)
                problems.push_back(joined.error().message);
        }
    return problems;
}

} // namespace sealwalk::transfer
