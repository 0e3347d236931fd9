// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/json_fields.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace sealwalk::exchange {

using nlohmann::json;

std::string Place::text() const
{
    const std::string before = outer == nullptr ? "" : outer->text();
    if (key.empty())
        return outer == nullptr ? before : fmt::format("{}[{}]", before, index);
    return before.empty() ? std::string(key) : before + "." + std::string(key);
}

void Complaints::add(const Place& place, const std::string& sentence)
{
    if (any())
        return;
    const std::string where = place.text();
    m_first = Error{ErrorCode::BadInput, (where.empty() ? "the document" : where) + ": " + sentence};
}

void Complaints::add(Error error)
{
    if (!any())
        m_first = std::move(error);
}

Fields::Fields(const json& object, const Place& place, Complaints& complaints)
    : m_in(&object)
    , m_place(&place)
    , m_complaints(&complaints)
{
    if (!object.is_object())
        complaints.add(place, "must be an object in braces");
}

const json* Fields::take(std::string_view key, bool required)
{
    m_known.push_back(key);
    if (m_complaints->any())
        return nullptr;
    const auto found = m_in->find(std::string(key));
    if (found != m_in->end())
        return &*found;
    if (required)
        m_complaints->add(*m_place, fmt::format("\"{}\" is missing", key));
    return nullptr;
}

void Fields::finish()
{
    if (m_in == nullptr || m_complaints->any() || m_in->size() == 0)
        return;
    for (auto it = m_in->begin(); it != m_in->end(); ++it)
        if (std::find(m_known.begin(), m_known.end(), it.key()) == m_known.end())
            m_complaints->add(*m_place, fmt::format("\"{}\" is not known; known are {}", it.key(),
                                                    fmt::join(m_known, ", ")));
}

void Codec<std::string>::read(const json& from, std::string& into, const Place& place, Complaints& complaints)
{
    if (from.is_string())
        into = from.get_ref<const std::string&>();
    else
        complaints.add(place, "must be text in quotes");
}

void Codec<bool>::read(const json& from, bool& into, const Place& place, Complaints& complaints)
{
    if (from.is_boolean())
        into = from.get<bool>();
    else
        complaints.add(place, "must be true or false");
}

void Codec<double>::read(const json& from, double& into, const Place& place, Complaints& complaints)
{
    if (from.is_number())
        into = from.get<double>();
    else
        complaints.add(place, "must be a number");
}

void Codec<int>::read(const json& from, int& into, const Place& place, Complaints& complaints)
{
    constexpr std::int64_t kLargest = std::numeric_limits<int>::max();
    // Parsed numbers above zero are unsigned here; those beyond 63 bits must not wrap round.
    const bool huge = from.is_number_unsigned() && from.get<std::uint64_t>() > std::uint64_t{kLargest};
    if (!huge && !from.is_number_integer())
        complaints.add(place, "must be a whole number");
    else if (huge || from.get<std::int64_t>() > kLargest || from.get<std::int64_t>() < -kLargest)
        complaints.add(place, "the whole number is too large");
    else
        into = from.get<int>();
}

void Codec<Timestamp>::read(const json& from, Timestamp& into, const Place& place, Complaints& complaints)
{
    std::string text;
    Codec<std::string>::read(from, text, place, complaints);
    if (complaints.any())
        return;
    const Result<Timestamp> at = Timestamp::parse(text);
    if (!at)
        complaints.add(place, at.error().message);
    else if (at->text() != text)
        complaints.add(place, "a time is written with milliseconds and offset, " + at->text());
    else
        into = *at;
}

void Codec<geometry::Point>::read(const json& from, geometry::Point& into, const Place& place,
                                  Complaints& complaints)
{
    if (!from.is_array() || from.size() != 2) {
        complaints.add(place, "must be a place [x, y] in millimetres");
        return;
    }
    Codec<double>::read(from[0], into.x, Place{&place, {}, 0}, complaints);
    Codec<double>::read(from[1], into.y, Place{&place, {}, 1}, complaints);
}

} // namespace sealwalk::exchange
