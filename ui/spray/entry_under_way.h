// SPDX-License-Identifier: GPL-3.0-or-later
// The entry that is being made, as one value: what it is about, and what is said beside its figure.
#pragma once

#include "core/model/reading.h"

#include <optional>
#include <string>
#include <vector>

namespace sealwalk::ui {

struct EntryUnderWay
{
    /// Another of these is another entry.
    struct About
    {
        model::RoundId round;
        std::optional<model::PointId> called;
        std::optional<model::ReadingId> corrects;
        std::string typed;
        /// Counts what a person does that begins something else: sprays, calls, leaves. The clock counts not.
        int doings = 0;
        bool operator==(const About&) const = default;
    };
    /// This may still be said once the figure is given.
    struct Beside
    {
        model::Condition condition = model::Condition::AtRest;
        std::string conditionDetail;
        std::string remark;
        std::vector<model::PointId> shielded;
        std::optional<LeakRate> background;
        std::optional<Duration> delay;
        bool confirms = false;
        bool gentle = false;
        bool stayed = false;
        bool operator==(const Beside&) const = default;
    };
    About about;
    Beside beside;
    bool operator==(const EntryUnderWay&) const = default;
};

} // namespace sealwalk::ui
