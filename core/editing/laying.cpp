// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/editing/laying.h"

#include "core/editing/parts.h"
#include "core/editing/sense.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace sealwalk::editing {

namespace {

bool hasPointsAtEnds(const model::Joint& joint)
{
    return joint.kind == model::JointKind::Hose && !geometry::outline(joint.shape).isClosed();
}

} // namespace

Result<int> countOf(const Laying& laying, double length)
{
    if (length <= 0.0)
        return 1;
    double count = laying.number;
    if (laying.by == Laying::By::Pitch) {
        if (!(laying.pitch > 0.0) || !std::isfinite(laying.pitch))
            return fail(ErrorCode::BadInput, "the pitch must be above 0 mm");
        // A pitch that divides the length evenly must not gain a point by rounding.
        count = std::max(1.0, std::ceil(length / laying.pitch - 1e-9));
    }
    if (!(count >= 1.0 && count <= kMostPoints))
        return fail(
            ErrorCode::BadInput,
            fmt::format("{:.0f} points are asked for; a joint can be given 1 to {}", count, kMostPoints));
    return static_cast<int>(count);
}

Result<int> countOn(const model::Joint& joint, const Laying& laying)
{
    const double length = geometry::outline(joint.shape).length();
    const Result<int> count = countOf(laying, length);
    const bool isOneMore = count && laying.by == Laying::By::Pitch && length > 0.0 && hasPointsAtEnds(joint);
    return isOneMore ? std::min(*count + 1, kMostPoints) : count;
}

double spacing(const model::Joint& joint, int count)
{
    const int parts = hasPointsAtEnds(joint) ? std::max(1, count - 1) : count;
    return parts > 0 ? geometry::outline(joint.shape).length() / parts : 0.0;
}

std::vector<double> places(const model::Joint& joint, int count)
{
    std::vector<double> result;
    result.reserve(static_cast<std::size_t>(count));
    const geometry::Path path = geometry::outline(joint.shape);
    for (int i = 0; i < count; ++i) {
        const double walk = path.isClosed()                       ? static_cast<double>(i) / count
                            : count > 1 && hasPointsAtEnds(joint) ? static_cast<double>(i) / (count - 1)
                                                                  : (i + 0.5) / count;
        result.push_back(path.length() > 0.0 ? alongOf(joint, walk) : 0.0);
    }
    return result;
}

std::string markBehind(const std::string& first, int steps)
{
    constexpr std::size_t kMostDigits = 6; // a longer number is no count
    std::size_t begin = first.size();
    while (begin > 0 && first.size() - begin < kMostDigits && first[begin - 1] >= '0' &&
           first[begin - 1] <= '9')
        --begin;
    const std::string digits = first.substr(begin);
    const int number = digits.empty() ? 1 : std::stoi(digits);
    return fmt::format("{}{:0{}}", first.substr(0, begin), number + steps,
                       std::max<std::size_t>(1, digits.size()));
}

int giveNumber(model::Sketch& sketch)
{
    return ++sketch.lastNumber;
}

Result<Edit> layPoints(const model::Sketch& sketch, model::JointId id, const Laying& laying,
                       const PointSet& withReadings)
{
    const model::Joint* joint = sketch.joint(id);
    if (joint == nullptr)
        return unknownJoint();
    const Result<int> count = countOn(*joint, laying);
    if (!count)
        return fail(count.error());
    const auto present = pointsInWalk(sketch, *joint);
    for (const model::TestPoint* point : present)
        if (withReadings.contains(point->id))
            return fail(
                ErrorCode::NotAllowed,
                fmt::format("point {} on {} has readings, so its points cannot be laid anew; add a point "
                            "or split a stretch instead",
                            point->number, called(*joint)));
    if (laying.first && *laying.first <= sketch.lastNumber)
        return fail(ErrorCode::BadInput,
                    fmt::format("number {} is not above {}, the highest so far, and no number is used "
                                "twice; the next free one is {}",
                                *laying.first, sketch.lastNumber, sketch.lastNumber + 1));

    std::vector<int> numbers;
    for (const model::TestPoint* point : present)
        numbers.push_back(point->number);
    std::sort(numbers.begin(), numbers.end());
    model::Sketch next = sketch;
    if (laying.first)
        next.lastNumber = *laying.first - 1;
    const std::vector<double> along = places(*joint, *count);
    std::vector<model::TestPoint> laid;
    for (std::size_t i = 0; i < along.size(); ++i) {
        model::TestPoint point;
        if (i < numbers.size()) {
            point = *sketch.pointNumbered(numbers[i]);
            point.place.clear(); // a place typed for the old spot would now mislead
            if (laying.first)
                point.number = giveNumber(next);
        } else {
            point = {model::PointId::create(), giveNumber(next), id, 0.0, {}, false};
        }
        point.along = along[i];
        if (!laying.mark.empty())
            point.place = markBehind(laying.mark, static_cast<int>(i));
        laid.push_back(std::move(point));
    }
    std::erase_if(next.points, [&](const model::TestPoint& p) { return p.joint == id && !p.retired; });
    next.points.insert(next.points.end(), laid.begin(), laid.end());
    sortByNumber(next);
    return difference(
        sketch, next,
        fmt::format("{} {} laid on {}", *count, *count == 1 ? "point" : "points", called(*joint)));
}

} // namespace sealwalk::editing
