// SPDX-License-Identifier: GPL-3.0-or-later
// Works out the steps between two sketches, so that a verb only has to say what the sketch shall become.
#include "core/editing/edit.h"

#include <unordered_map>
#include <unordered_set>
#include <utility>

namespace sealwalk::editing {

namespace {

template <class Item>
using Ids = std::unordered_set<decltype(Item::id)>;

template <class Item>
Ids<Item> idsOf(const std::vector<Item>& items)
{
    Ids<Item> ids;
    ids.reserve(items.size());
    for (const Item& item : items)
        ids.insert(item.id);
    return ids;
}

/// What stays keeps its order in most edits; where it does not, those from the first misplaced one on are
/// taken out and put in again.
template <class Item>
Ids<Item> stayingInOrder(const std::vector<Item>& from, const std::vector<Item>& to)
{
    const Ids<Item> in = idsOf(to);
    const Ids<Item> was = idsOf(from);
    std::vector<decltype(Item::id)> oldOrder;
    std::vector<decltype(Item::id)> newOrder;
    for (const Item& item : from)
        if (in.contains(item.id))
            oldOrder.push_back(item.id);
    for (const Item& item : to)
        if (was.contains(item.id))
            newOrder.push_back(item.id);
    Ids<Item> staying;
    for (std::size_t i = 0; i < oldOrder.size() && i < newOrder.size() && oldOrder[i] == newOrder[i]; ++i)
        staying.insert(oldOrder[i]);
    return staying;
}

template <class Item>
void addSteps(std::vector<AnyStep>& steps, const std::vector<Item>& from, const std::vector<Item>& to)
{
    const Ids<Item> staying = stayingInOrder(from, to);
    std::vector<Item> now;
    now.reserve(from.size());
    for (std::size_t i = from.size(); i > 0; --i)
        if (!staying.contains(from[i - 1].id))
            steps.push_back(Step<Item>{i - 1, from[i - 1], std::nullopt});
    for (const Item& item : from)
        if (staying.contains(item.id))
            now.push_back(item);
    std::size_t next = 0; // the next staying item
    for (std::size_t i = 0; i < to.size(); ++i) {
        if (next < now.size() && now[next].id == to[i].id) {
            if (now[next] != to[i])
                steps.push_back(Step<Item>{i, now[next], to[i]});
            ++next;
        } else {
            steps.push_back(Step<Item>{i, std::nullopt, to[i]});
        }
    }
}

} // namespace

Edit difference(const model::Sketch& from, const model::Sketch& to, std::string what)
{
    Edit edit{std::move(what), {}};
    addSteps(edit.steps, from.sheets, to.sheets);
    addSteps(edit.steps, from.joints, to.joints);
    addSteps(edit.steps, from.points, to.points);
    if (from.lastNumber != to.lastNumber)
        edit.steps.push_back(LastNumberStep{from.lastNumber, to.lastNumber});
    return edit;
}

} // namespace sealwalk::editing
