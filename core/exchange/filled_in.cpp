// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/filled_in.h"

#include "core/exchange/job_fields.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace sealwalk::exchange {
namespace {

using nlohmann::json;

bool saysNothing(const json& value)
{
    return value.is_null() || (value.is_string() && value.get_ref<const std::string&>().empty()) ||
           (value.is_structured() && value.empty());
}

bool isIn(const json& less, const json& more);

/// Coordinates are no list that grows: one node more is another shape.
bool isListIn(const json& less, const json& more)
{
    const bool mayGrow = std::all_of(less.begin(), less.end(), [](const json& element) {
        return element.is_object() || element.is_string();
    });
    return mayGrow && less.size() <= more.size() && std::equal(less.begin(), less.end(), more.begin(), isIn);
}

bool isIn(const json& less, const json& more)
{
    if (less == more || saysNothing(less))
        return true;
    if (less.type() != more.type())
        return false;
    if (less.is_array())
        return isListIn(less, more);
    if (!less.is_object())
        return false;
    for (auto it = less.begin(); it != less.end(); ++it)
        if (const auto found = more.find(it.key());
            found == more.end() ? !saysNothing(*it) : !isIn(*it, *found))
            return false;
    return true;
}

template <class T>
json jsonOf(const T& value)
{
    return Codec<T>::write(value);
}

/// Whether each element of `less` stands in `more` under its identity, in whatever place.
template <class T>
bool areIn(const std::vector<T>& less, const std::vector<T>& more)
{
    return std::all_of(less.begin(), less.end(), [&](const T& one) {
        const auto found =
            std::find_if(more.begin(), more.end(), [&](const T& other) { return other.id == one.id; });
        return found != more.end() && (*found == one || isIn(jsonOf(one), jsonOf(*found)));
    });
}

} // namespace

bool isFilledIn(const model::Setup& less, const model::Setup& more)
{
    if (less == more)
        return true;
    json said = jsonOf(less);
    const json fresh = jsonOf(model::Setup{});
    for (auto it = fresh.begin(); it != fresh.end(); ++it)
        if (const auto found = said.find(it.key()); found != said.end() && *found == *it)
            said.erase(found);
    return isIn(said, jsonOf(more));
}

bool isFilledIn(const model::Sketch& less, const model::Sketch& more)
{
    const auto sameDrawing = [&] {
        return less.sheets == more.sheets && less.joints == more.joints && less.points == more.points;
    };
    if (less.revision >= more.revision)
        return less.revision == more.revision && sameDrawing();
    return areIn(less.sheets, more.sheets) && areIn(less.joints, more.joints) &&
           areIn(less.points, more.points);
}

bool isFilledIn(const model::Repair& less, const model::Repair& more)
{
    return less == more || isIn(jsonOf(less), jsonOf(more));
}

} // namespace sealwalk::exchange
