// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/editing/edit.h"

#include <fmt/format.h>

#include <algorithm>

namespace sealwalk::editing {

namespace {

std::vector<model::Sheet>& listFor(model::Sketch& sketch, const Step<model::Sheet>&)
{
    return sketch.sheets;
}
std::vector<model::Joint>& listFor(model::Sketch& sketch, const Step<model::Joint>&)
{
    return sketch.joints;
}
std::vector<model::TestPoint>& listFor(model::Sketch& sketch, const Step<model::TestPoint>&)
{
    return sketch.points;
}

Status stale()
{
    return fail(ErrorCode::Conflict,
                "the sketch was changed elsewhere meanwhile; this step no longer fits it");
}

template <class Item>
Status take(model::Sketch& sketch, const Step<Item>& step)
{
    std::vector<Item>& list = listFor(sketch, step);
    const auto place = static_cast<std::ptrdiff_t>(step.at);
    if (!step.before) {
        if (step.at > list.size() || !step.after)
            return stale();
        list.insert(list.begin() + place, *step.after);
        return {};
    }
    if (step.at >= list.size() || list[step.at] != *step.before)
        return stale();
    if (step.after)
        list[step.at] = *step.after;
    else
        list.erase(list.begin() + place);
    return {};
}

Status take(model::Sketch& sketch, const LastNumberStep& step)
{
    if (sketch.lastNumber != step.before)
        return stale();
    sketch.lastNumber = step.after;
    return {};
}

template <class Item>
AnyStep reversed(const Step<Item>& step)
{
    return Step<Item>{step.at, step.after, step.before};
}
AnyStep reversed(const LastNumberStep& step)
{
    return LastNumberStep{step.after, step.before};
}

/// Readings name points by identity: such a point must come out of the edit with the same number and joint.
Status keepsReadings(const model::Sketch& before, const model::Sketch& after, const Edit& edit,
                     const PointSet& withReadings)
{
    if (withReadings.empty())
        return {};
    for (const AnyStep& any : edit.steps) {
        const auto* step = std::get_if<Step<model::TestPoint>>(&any);
        if (step == nullptr || !step->before || !withReadings.contains(step->before->id))
            continue;
        const model::TestPoint* was = before.point(step->before->id);
        const model::TestPoint* is = after.point(step->before->id);
        if (was != nullptr && is == nullptr)
            return fail(ErrorCode::NotAllowed,
                        fmt::format("point {} has readings and stays; retire it instead", was->number));
        if (was != nullptr && (is->number != was->number || is->joint != was->joint))
            return fail(ErrorCode::NotAllowed,
                        fmt::format("point {} has readings and keeps its number and joint", was->number));
    }
    return {};
}

} // namespace

Result<Edit> apply(model::Sketch& sketch, const Edit& edit, const PointSet& withReadings)
{
    Result<model::Sketch> next = after(sketch, edit, withReadings);
    if (!next)
        return fail(next.error());
    sketch = std::move(*next);
    Edit inverse{edit.what, {}};
    inverse.steps.reserve(edit.steps.size());
    for (auto step = edit.steps.rbegin(); step != edit.steps.rend(); ++step)
        inverse.steps.push_back(std::visit([](const auto& s) { return reversed(s); }, *step));
    return inverse;
}

Result<model::Sketch> after(const model::Sketch& sketch, const Edit& edit, const PointSet& withReadings)
{
    model::Sketch next = sketch;
    for (const AnyStep& step : edit.steps)
        if (const Status taken = std::visit([&](const auto& s) { return take(next, s); }, step); !taken)
            return fail(taken.error());
    if (const Status kept = keepsReadings(sketch, next, edit, withReadings); !kept)
        return fail(kept.error());
    if (const std::string wrong = model::complaint(next); !wrong.empty())
        return fail(ErrorCode::BadInput, wrong);
    return next;
}

} // namespace sealwalk::editing
