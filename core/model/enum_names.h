// SPDX-License-Identifier: GPL-3.0-or-later
// Enumerators and the words they are stored, exported and shown under: one table per enumeration.
#pragma once

#include "core/base/result.h"

#include <array>
#include <string>
#include <string_view>
#include <utility>

namespace sealwalk::model {

/// Specialised beside each enumeration: `static constexpr std::array<std::pair<E, std::string_view>, N>
/// table` and `static constexpr std::string_view what` ("joint kind") for messages. The words are stored:
/// never change one.
template <class E>
struct EnumNames;

template <class E>
constexpr std::string_view name(E value)
{
    for (const auto& row : EnumNames<E>::table)
        if (row.first == value)
            return row.second;
    return {};
}

/// The enumerator of a stored word; the error lists the words there are.
template <class E>
Result<E> fromName(std::string_view word)
{
    std::string known;
    for (const auto& row : EnumNames<E>::table) {
        if (row.second == word)
            return row.first;
        known += known.empty() ? "" : ", ";
        known += row.second;
    }
    return fail(ErrorCode::BadInput, "\"" + std::string(word) + "\" is not a " +
                                         std::string(EnumNames<E>::what) + "; known are " + known);
}

} // namespace sealwalk::model
