// SPDX-License-Identifier: GPL-3.0-or-later
// The gas the leaks of a job are shown as: helium, as measured, or the air that each would pass.
#pragma once

#include "core/flow/air_equivalent.h"
#include "core/model/job.h"

#include <string_view>

namespace sealwalk::report {

/// A leak turned to air keeps its order: both ways are monotone, so scales, limits and verdicts stay true. The
/// share of air depends on the leak's size; see core/flow/air_equivalent.h.
class ShownGas
{
public:
    ShownGas() = default; ///< helium
    explicit ShownGas(const model::Setup& setup);

    [[nodiscard]] bool isAir() const { return m_basis == model::GasBasis::Air; }
    /// "He" or "air", written after the unit.
    [[nodiscard]] std::string_view symbol() const { return isAir() ? "air" : "He"; }
    /// "helium" or "air"
    [[nodiscard]] std::string_view word() const { return model::name(m_basis); }

    /// What a leak of `helium` passes of the gas shown.
    [[nodiscard]] LeakRate ofHelium(LeakRate helium) const;
    /// The way back: the helium rate that is shown as `shown`.
    [[nodiscard]] LeakRate toHelium(LeakRate shown) const;

    struct Range
    {
        LeakRate low;  ///< 95 %
        LeakRate high; ///< 95 %
    };
    /// A 95 % range of a helium rate turned with it: as air it also carries that the form of the leak is not
    /// known. Where the rate or its low end is not above zero the ends are turned one by one.
    [[nodiscard]] Range range(LeakRate helium, LeakRate low, LeakRate high) const;

    bool operator==(const ShownGas&) const = default;

private:
    model::GasBasis m_basis = model::GasBasis::Helium;
    flow::ChannelConditions m_channel;
};

} // namespace sealwalk::report
