// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/editing/sheets.h"

#include "core/editing/parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace sealwalk::editing {

namespace {

constexpr double kLargestSheet = 1e6; ///< mm; a kilometre is a slip of the unit
constexpr double kLeastScaleSpan = 2.0;

Status sound(const model::Sketch& sketch, const model::Sheet& sheet)
{
    if (sheet.name.empty())
        return fail(ErrorCode::BadInput, "a sheet needs a name, such as \"Door\"");
    for (const model::Sheet& other : sketch.sheets)
        if (other.id != sheet.id && other.name == sheet.name)
            return fail(
                ErrorCode::BadInput,
                fmt::format("there is a sheet \"{}\" already; give this one another name", sheet.name));
    const auto fits = [](double size) { return size > 0.0 && size <= kLargestSheet; };
    if (!fits(sheet.width) || !fits(sheet.height))
        return fail(
            ErrorCode::BadInput,
            fmt::format("sheet \"{}\" needs a width and a height above 0 mm and up to 1000 m", sheet.name));
    if (!std::isfinite(sheet.upDirection))
        return fail(ErrorCode::BadInput, fmt::format("sheet \"{}\" needs an up direction", sheet.name));
    if (sheet.underlay && !(sheet.underlay->millimetresPerPixel > 0.0 && sheet.underlay->opacity >= 0.0 &&
                            sheet.underlay->opacity <= 1.0 && std::isfinite(sheet.underlay->rotation)))
        return fail(ErrorCode::BadInput,
                    fmt::format("the picture under sheet \"{}\" needs a scale above 0", sheet.name));
    return {};
}

} // namespace

Result<Edit> addSheet(const model::Sketch& sketch, model::Sheet sheet)
{
    if (sheet.id.isNil())
        sheet.id = model::SheetId::create();
    if (const Status ok = sound(sketch, sheet); !ok)
        return fail(ok.error());
    model::Sketch next = sketch;
    next.sheets.push_back(sheet);
    return difference(sketch, next, fmt::format("sheet \"{}\" added", sheet.name));
}

Result<Edit> changeSheet(const model::Sketch& sketch, const model::Sheet& sheet)
{
    model::Sketch next = sketch;
    model::Sheet* place = find(next, sheet.id);
    if (place == nullptr)
        return unknownSheet();
    if (const Status ok = sound(sketch, sheet); !ok)
        return fail(ok.error());
    *place = sheet;
    return difference(sketch, next, fmt::format("sheet \"{}\" changed", sheet.name));
}

Result<Edit> removeSheet(const model::Sketch& sketch, model::SheetId id, const PointSet& withReadings)
{
    const model::Sheet* sheet = sketch.sheet(id);
    if (sheet == nullptr)
        return unknownSheet();
    const auto onSheet = [&](const model::TestPoint& point) {
        const model::Joint* joint = sketch.joint(point.joint);
        return joint != nullptr && joint->sheet == id;
    };
    for (const model::TestPoint& point : sketch.points)
        if (onSheet(point) && withReadings.contains(point.id))
            return fail(ErrorCode::NotAllowed,
                        fmt::format("sheet \"{}\" stays, because point {} on it has readings", sheet->name,
                                    point.number));
    model::Sketch next = sketch;
    std::erase_if(next.points, onSheet);
    std::erase_if(next.joints, [&](const model::Joint& joint) { return joint.sheet == id; });
    std::erase_if(next.sheets, [&](const model::Sheet& s) { return s.id == id; });
    return difference(sketch, next, fmt::format("sheet \"{}\" taken out", sheet->name));
}

Result<model::Underlay> scaled(const model::Underlay& underlay, geometry::Point a, geometry::Point b,
                               double length)
{
    const double seen = geometry::distance(a, b);
    if (!(seen >= kLeastScaleSpan))
        return fail(ErrorCode::BadInput,
                    "the two clicks lie on one place; click the ends of a length you know, far apart");
    if (!(length > 0.0) || !std::isfinite(length))
        return fail(ErrorCode::BadInput, "the length between the two clicks must be above 0 mm");
    const double factor = length / seen;
    model::Underlay result = underlay;
    result.millimetresPerPixel *= factor;
    result.corner = a + factor * (underlay.corner - a);
    return result;
}

} // namespace sealwalk::editing
