// SPDX-License-Identifier: GPL-3.0-or-later
// A moment as a person wrote it down: UTC milliseconds plus the offset of the clock on the wall.
#pragma once

#include "core/base/result.h"

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

namespace sealwalk {

struct Timestamp
{
    std::int64_t utcMilliseconds = 0; ///< since 1970-01-01T00:00:00Z
    int offsetMinutes = 0;            ///< local clock minus UTC

    bool operator==(const Timestamp&) const = default;
    /// Ordered by the moment; the offset only breaks ties.
    auto operator<=>(const Timestamp&) const = default;

    [[nodiscard]] bool isSet() const { return utcMilliseconds != 0; }

    /// The machine's clock and zone.
    static Timestamp now();
    /// Reads ISO 8601 with offset: 2026-03-01T14:05:09.250+01:00, seconds' fraction optional, Z allowed.
    static Result<Timestamp> parse(std::string_view text);
    /// A date alone, 2026-03-01, as midnight UTC.
    static Result<Timestamp> parseDate(std::string_view text);

    /// ISO 8601 with milliseconds and offset; parse(text()) gives the same value back.
    [[nodiscard]] std::string text() const;
    /// The local date, 2026-03-01.
    [[nodiscard]] std::string date() const;
    /// The local time, 14:05:09.
    [[nodiscard]] std::string timeOfDay() const;
    /// Seconds from `earlier` to this.
    [[nodiscard]] double secondsSince(const Timestamp& earlier) const;
};

} // namespace sealwalk
