// SPDX-License-Identifier: GPL-3.0-or-later
// One line of a feed read as a leak rate, or refused with the reason. Never throws, whatever the line holds.
#pragma once

#include "core/feed/line_format.h"
#include "core/quantities/leak_rate_unit.h"

#include <optional>
#include <string_view>

namespace sealwalk::feed {

struct LineValue
{
    LeakRate rate;              ///< as the detector shows it; may be zero or below: noise is what it is
    std::optional<double> time; ///< s, of the time column; where it counts from is the writer's affair
};

class LineReader
{
public:
    /// @param format  one that passed checkFormat(); another refuses every line with its fault
    /// @param basis   for units of standard volumes and masses: the gas on the chamber's side
    explicit LineReader(LineFormat format = {}, const FlowBasis& basis = {});

    /// The value of a line, or one sentence why there is none.
    [[nodiscard]] Result<LineValue> read(std::string_view line) const;
    [[nodiscard]] const LineFormat& format() const { return m_format; }

private:
    [[nodiscard]] Result<double> number(std::string_view text) const;
    [[nodiscard]] std::string_view afterColumn(std::string_view column, std::string_view line) const;
    [[nodiscard]] Status checkUnit(std::string_view after) const;
    [[nodiscard]] Result<LeakRate> rateOf(double number) const;

    LineFormat m_format;
    FlowBasis m_basis;
    Result<LeakRateUnit> m_unit;
    Status m_fault;
};

} // namespace sealwalk::feed
