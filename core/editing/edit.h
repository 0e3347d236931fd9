// SPDX-License-Identifier: GPL-3.0-or-later
// A change to a sketch as a value. Applying one answers the change that takes it back.
#pragma once

#include "core/base/result.h"
#include "core/model/sketch.h"

#include <cstddef>
#include <optional>
#include <string>
#include <unordered_set>
#include <variant>
#include <vector>

namespace sealwalk::editing {

/// Points that have readings: they keep their identity, number and joint for ever.
using PointSet = std::unordered_set<model::PointId>;

/// One item of a list of the sketch put in (no `before`), replaced, or taken out (no `after`).
template <class Item>
struct Step
{
    std::size_t at = 0; ///< its place in the list at the moment this step is taken
    std::optional<Item> before;
    std::optional<Item> after;
    bool operator==(const Step&) const = default;
};

/// The highest number ever given in the object.
struct LastNumberStep
{
    int before = 0;
    int after = 0;
    bool operator==(const LastNumberStep&) const = default;
};

using AnyStep = std::variant<Step<model::Sheet>, Step<model::Joint>, Step<model::TestPoint>, LastNumberStep>;

/// One gesture. Steps are taken in order; an edit without steps changes nothing.
struct Edit
{
    std::string what; ///< "16 points laid on Door seal": for the note line and the Undo entry
    std::vector<AnyStep> steps;
    bool operator==(const Edit&) const = default;
    [[nodiscard]] bool isEmpty() const { return steps.empty(); }
};

/// Carries out `edit` and returns the edit that takes it back; on failure `sketch` is unchanged.
/// Refused are: an edit made for another state of the sketch (Conflict), one that takes out, renumbers or
/// re-attaches a point of `withReadings` (NotAllowed), and one that would break a promise of the sketch
/// (BadInput). The sketch's revision is not touched.
Result<Edit> apply(model::Sketch& sketch, const Edit& edit, const PointSet& withReadings = {});

/// The edit that leads from one sketch to the other, revisions apart.
Edit difference(const model::Sketch& from, const model::Sketch& to, std::string what);

/// The sketch after `edit`.
Result<model::Sketch> after(const model::Sketch& sketch, const Edit& edit, const PointSet& withReadings = {});

} // namespace sealwalk::editing
