// SPDX-License-Identifier: GPL-3.0-or-later
// UUIDs (RFC 4122, version 4) and ids that name one kind of thing only.
#pragma once

#include "core/base/result.h"

#include <array>
#include <bit>
#include <compare>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <utility>

namespace sealwalk {

class Uuid
{
public:
    using Bytes = std::array<std::uint8_t, 16>;

    /// The nil UUID.
    constexpr Uuid() = default;
    explicit constexpr Uuid(const Bytes& bytes)
        : m_bytes(bytes)
    {}

    /// A new random (version 4) UUID.
    static Uuid random();
    /// Reads the 36-character form, upper or lower case.
    static Result<Uuid> parse(std::string_view text);

    [[nodiscard]] std::string text() const;
    [[nodiscard]] constexpr const Bytes& bytes() const { return m_bytes; }
    [[nodiscard]] constexpr bool isNil() const { return *this == Uuid(); }

    auto operator<=>(const Uuid&) const = default;
    /// As two words: of all that is asked of a large job this is asked most, and bytes are compared by a call.
    friend constexpr bool operator==(const Uuid& a, const Uuid& b) { return a.words() == b.words(); }

private:
    using Words = std::pair<std::uint64_t, std::uint64_t>;
    [[nodiscard]] constexpr Words words() const
    {
        const auto both = std::bit_cast<std::array<std::uint64_t, 2>>(m_bytes);
        return {both[0], both[1]};
    }

    Bytes m_bytes{};
};

/// An identity that cannot be mixed up with another kind's. Nil means "none".
template <class Tag>
class Id
{
public:
    constexpr Id() = default;
    explicit constexpr Id(const Uuid& uuid)
        : m_uuid(uuid)
    {}

    static Id create() { return Id(Uuid::random()); }
    static Result<Id> parse(std::string_view text)
    {
        return Uuid::parse(text).map([](const Uuid& uuid) { return Id(uuid); });
    }

    [[nodiscard]] constexpr const Uuid& uuid() const { return m_uuid; }
    [[nodiscard]] std::string text() const { return m_uuid.text(); }
    [[nodiscard]] constexpr bool isNil() const { return m_uuid.isNil(); }

    auto operator<=>(const Id&) const = default;

private:
    Uuid m_uuid;
};

} // namespace sealwalk

template <>
struct std::hash<sealwalk::Uuid>
{
    std::size_t operator()(const sealwalk::Uuid& uuid) const noexcept;
};

template <class Tag>
struct std::hash<sealwalk::Id<Tag>>
{
    std::size_t operator()(const sealwalk::Id<Tag>& id) const noexcept
    {
        return std::hash<sealwalk::Uuid>{}(id.uuid());
    }
};
