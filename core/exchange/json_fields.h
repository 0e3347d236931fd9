// SPDX-License-Identifier: GPL-3.0-or-later
// One description of a value serves writing and reading, so the two cannot drift apart:
//     void describe(Fields& fields, Thing& thing) { fields.field("name", thing.name); ... }
// Reading is strict: a missing, unknown or ill-typed key is an error that names its JSON path. An optional
// that holds nothing has no key. Sources of core/exchange only.
#pragma once

#include "core/base/result.h"
#include "core/base/timestamp.h"
#include "core/base/uuid.h"
#include "core/geometry/point.h"
#include "core/model/enum_names.h"
#include "core/quantities/quantity.h"

#include <nlohmann/json.hpp>

#include <cstdint>
#include <limits>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace sealwalk::exchange {

/// Where in a document we are; the path is only spelt out when something is wrong there.
struct Place
{
    const Place* outer = nullptr;
    std::string_view key; ///< empty: `index` counts
    std::size_t index = 0;

    [[nodiscard]] std::string text() const;
};

/// The first thing that was wrong, if any.
class Complaints
{
public:
    void add(const Place& place, const std::string& sentence);
    void add(Error error);
    [[nodiscard]] bool any() const { return m_first.has_value(); }
    [[nodiscard]] const Error& first() const { return *m_first; }

private:
    std::optional<Error> m_first;
};

template <class T>
struct Codec;

/// The keys of one JSON object, being written or read.
class Fields
{
public:
    /// For writing into `object`.
    explicit Fields(nlohmann::json& object)
        : m_out(&object)
    {
        object = nlohmann::json::object();
    }
    /// For reading from `object`.
    Fields(const nlohmann::json& object, const Place& place, Complaints& complaints);

    [[nodiscard]] bool isReading() const { return m_in != nullptr; }

    /// A key that is always there.
    template <class T>
    void field(std::string_view key, T& value)
    {
        if (m_out != nullptr) {
            (*m_out)[std::string(key)] = Codec<T>::write(value);
            return;
        }
        if (const nlohmann::json* found = take(key, true))
            Codec<T>::read(*found, value, Place{m_place, key, 0}, *m_complaints);
    }

    /// A key that is there when the optional holds something.
    template <class T>
    void field(std::string_view key, std::optional<T>& value)
    {
        if (m_out != nullptr) {
            if (value)
                (*m_out)[std::string(key)] = Codec<T>::write(*value);
            return;
        }
        if (const nlohmann::json* found = take(key, false)) {
            value.emplace();
            Codec<T>::read(*found, *value, Place{m_place, key, 0}, *m_complaints);
        }
    }

    /// A key that is there when the text or list is not empty: added to a format that went without it.
    template <class T>
    void filled(std::string_view key, T& value)
    {
        if (m_out != nullptr) {
            if (!value.empty())
                (*m_out)[std::string(key)] = Codec<T>::write(value);
            return;
        }
        value.clear();
        if (const nlohmann::json* found = take(key, false)) {
            const Place place{m_place, key, 0};
            Codec<T>::read(*found, value, place, *m_complaints);
            if (value.empty()) // one content has one document
                m_complaints->add(place, "is left out when it is empty");
        }
    }

    /// After the last field: complains of keys that nothing asked for.
    void finish();

private:
    const nlohmann::json* take(std::string_view key, bool required);

    nlohmann::json* m_out = nullptr;
    const nlohmann::json* m_in = nullptr;
    const Place* m_place = nullptr;
    Complaints* m_complaints = nullptr;
    std::vector<std::string_view> m_known;
};

/// Everything that has a describe().
template <class T>
struct Codec
{
    static nlohmann::json write(const T& value)
    {
        nlohmann::json object;
        Fields fields(object);
        describe(fields, const_cast<T&>(value)); // writing changes nothing
        return object;
    }
    static void read(const nlohmann::json& from, T& into, const Place& place, Complaints& complaints)
    {
        Fields fields(from, place, complaints);
        if (complaints.any())
            return;
        describe(fields, into);
        fields.finish();
    }
};

template <>
struct Codec<std::string>
{
    static nlohmann::json write(const std::string& value) { return value; }
    static void read(const nlohmann::json& from, std::string& into, const Place& place,
                     Complaints& complaints);
};

template <>
struct Codec<bool>
{
    static nlohmann::json write(bool value) { return value; }
    static void read(const nlohmann::json& from, bool& into, const Place& place, Complaints& complaints);
};

template <>
struct Codec<double>
{
    static nlohmann::json write(double value) { return value; }
    static void read(const nlohmann::json& from, double& into, const Place& place, Complaints& complaints);
};

template <>
struct Codec<int>
{
    static nlohmann::json write(int value) { return value; }
    static void read(const nlohmann::json& from, int& into, const Place& place, Complaints& complaints);
};

/// ISO 8601 with milliseconds and offset, in the one spelling Timestamp::text() gives.
template <>
struct Codec<Timestamp>
{
    static nlohmann::json write(const Timestamp& value) { return value.text(); }
    static void read(const nlohmann::json& from, Timestamp& into, const Place& place, Complaints& complaints);
};

/// [x, y] in millimetres.
template <>
struct Codec<geometry::Point>
{
    static nlohmann::json write(const geometry::Point& value)
    {
        return nlohmann::json::array({value.x, value.y});
    }
    static void read(const nlohmann::json& from, geometry::Point& into, const Place& place,
                     Complaints& complaints);
};

template <class Tag>
struct Codec<Quantity<Tag>>
{
    static nlohmann::json write(const Quantity<Tag>& value) { return value.si(); }
    static void read(const nlohmann::json& from, Quantity<Tag>& into, const Place& place,
                     Complaints& complaints)
    {
        double si = 0.0;
        Codec<double>::read(from, si, place, complaints);
        into = Quantity<Tag>::fromSi(si);
    }
};

template <class Tag, class Difference>
struct Codec<QuantityPoint<Tag, Difference>>
{
    using Value = QuantityPoint<Tag, Difference>;
    static nlohmann::json write(const Value& value) { return value.si(); }
    static void read(const nlohmann::json& from, Value& into, const Place& place, Complaints& complaints)
    {
        double si = 0.0;
        Codec<double>::read(from, si, place, complaints);
        into = Value::fromSi(si);
    }
};

template <class Tag>
struct Codec<Id<Tag>>
{
    static nlohmann::json write(const Id<Tag>& value) { return value.text(); }
    static void read(const nlohmann::json& from, Id<Tag>& into, const Place& place, Complaints& complaints)
    {
        std::string text;
        Codec<std::string>::read(from, text, place, complaints);
        if (complaints.any())
            return;
        const Result<Id<Tag>> id = Id<Tag>::parse(text);
        if (!id)
            complaints.add(place, id.error().message);
        else if (id->text() != text)
            complaints.add(place, "a UUID is written in lower case here");
        else
            into = *id;
    }
};

template <class E>
concept NamedEnum = requires
{
    model::EnumNames<E>::table;
};

template <NamedEnum E>
struct Codec<E>
{
    static nlohmann::json write(E value) { return std::string(model::name(value)); }
    static void read(const nlohmann::json& from, E& into, const Place& place, Complaints& complaints)
    {
        std::string word;
        Codec<std::string>::read(from, word, place, complaints);
        if (complaints.any())
            return;
        const Result<E> value = model::fromName<E>(word);
        if (value)
            into = *value;
        else
            complaints.add(place, value.error().message);
    }
};

template <class T>
struct Codec<std::vector<T>>
{
    static nlohmann::json write(const std::vector<T>& values)
    {
        nlohmann::json array = nlohmann::json::array();
        for (const T& value : values)
            array.push_back(Codec<T>::write(value));
        return array;
    }
    static void read(const nlohmann::json& from, std::vector<T>& into, const Place& place,
                     Complaints& complaints)
    {
        into.clear();
        if (!from.is_array()) {
            complaints.add(place, "must be a list in square brackets");
            return;
        }
        into.reserve(from.size());
        for (std::size_t i = 0; i < from.size() && !complaints.any(); ++i) {
            into.emplace_back();
            Codec<T>::read(from[i], into.back(), Place{&place, {}, i}, complaints);
        }
    }
};

/// An object whose keys are the words of an enumeration.
template <NamedEnum K, class V>
struct Codec<std::map<K, V>>
{
    static nlohmann::json write(const std::map<K, V>& values)
    {
        nlohmann::json object = nlohmann::json::object();
        for (const auto& entry : values)
            object[std::string(model::name(entry.first))] = Codec<V>::write(entry.second);
        return object;
    }
    static void read(const nlohmann::json& from, std::map<K, V>& into, const Place& place,
                     Complaints& complaints)
    {
        into.clear();
        if (!from.is_object()) {
            complaints.add(place, "must be an object in braces");
            return;
        }
        for (auto it = from.begin(); it != from.end() && !complaints.any(); ++it) {
            const Result<K> key = model::fromName<K>(it.key());
            if (!key) {
                complaints.add(place, key.error().message);
                return;
            }
            Codec<V>::read(*it, into[*key], Place{&place, it.key(), 0}, complaints);
        }
    }
};

} // namespace sealwalk::exchange
