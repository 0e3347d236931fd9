// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/job_fields.h"

namespace sealwalk::exchange {

using nlohmann::json;

namespace {

void describe(Fields& f, geometry::Ring& ring)
{
    f.field("centre_mm", ring.centre);
    f.field("radius_mm", ring.radius);
}

void describe(Fields& f, geometry::RoundedRectangle& rectangle)
{
    f.field("centre_mm", rectangle.centre);
    f.field("width_mm", rectangle.width);
    f.field("height_mm", rectangle.height);
    f.field("corner_radius_mm", rectangle.cornerRadius);
    f.field("rotation_rad", rectangle.rotation);
}

void describe(Fields& f, geometry::Spot& spot)
{
    f.field("centre_mm", spot.centre);
    f.field("radius_mm", spot.radius);
}

void describeShape(Fields& f, geometry::Ring& ring)
{
    describe(f, ring);
}
void describeShape(Fields& f, geometry::RoundedRectangle& rectangle)
{
    describe(f, rectangle);
}
void describeShape(Fields& f, geometry::FreePath& path)
{
    exchange::describe(f, path);
}
void describeShape(Fields& f, geometry::Spot& spot)
{
    describe(f, spot);
}

constexpr const char* kindOf(const geometry::Ring&)
{
    return "ring";
}
constexpr const char* kindOf(const geometry::RoundedRectangle&)
{
    return "rounded rectangle";
}
constexpr const char* kindOf(const geometry::FreePath&)
{
    return "path";
}
constexpr const char* kindOf(const geometry::Spot&)
{
    return "spot";
}

template <class S>
bool readAs(Fields& f, const std::string& kind, geometry::Shape& into)
{
    S shape;
    if (kind != kindOf(shape))
        return false;
    describeShape(f, shape);
    into = shape;
    return true;
}

} // namespace

json Codec<geometry::Shape>::write(const geometry::Shape& shape)
{
    json object;
    Fields f(object);
    std::visit(
        [&f](auto copy) {
            std::string kind = kindOf(copy);
            f.field("shape", kind);
            describeShape(f, copy);
        },
        shape);
    return object;
}

void Codec<geometry::Shape>::read(const json& from, geometry::Shape& into, const Place& place,
                                  Complaints& complaints)
{
    Fields f(from, place, complaints);
    std::string kind;
    f.field("shape", kind);
    if (complaints.any())
        return;
    if (readAs<geometry::Ring>(f, kind, into) || readAs<geometry::RoundedRectangle>(f, kind, into) ||
        readAs<geometry::FreePath>(f, kind, into) || readAs<geometry::Spot>(f, kind, into))
        f.finish();
    else
        complaints.add(Place{&place, "shape", 0},
                       "\"" + kind + "\" is not a shape; known are ring, rounded rectangle, path, spot");
}

void describe(Fields& f, geometry::FreePath& path)
{
    f.field("nodes_mm", path.nodes);
    f.field("closed", path.closed);
    f.field("smooth", path.smooth);
}

void describe(Fields& f, model::Underlay& underlay)
{
    f.field("picture", underlay.picture);
    f.field("corner_mm", underlay.corner);
    f.field("mm_per_pixel", underlay.millimetresPerPixel);
    f.field("rotation_rad", underlay.rotation);
    f.field("opacity", underlay.opacity);
}

void describe(Fields& f, model::Sheet& sheet)
{
    f.field("id", sheet.id);
    f.field("name", sheet.name);
    f.field("seen_from", sheet.seenFrom);
    f.field("width_mm", sheet.width);
    f.field("height_mm", sheet.height);
    f.field("up_rad", sheet.upDirection);
    f.field("seen_from_above", sheet.seenFromAbove);
    f.field("underlay", sheet.underlay);
    f.field("outlines", sheet.outlines);
}

void describe(Fields& f, model::Joint& joint)
{
    f.field("id", joint.id);
    f.field("sheet", joint.sheet);
    f.field("kind", joint.kind);
    f.field("name", joint.name);
    f.field("shape", joint.shape);
    f.field("clockwise", joint.clockwise);
    f.field("start", joint.start);
    f.field("is_setup", joint.isSetup);
    f.field("locked", joint.locked);
    f.field("group", joint.group);
    f.field("material", joint.material);
    f.field("thickness_m", joint.thickness);
    f.field("required_conditions", joint.requiredConditions);
}

void describe(Fields& f, model::TestPoint& point)
{
    f.field("id", point.id);
    f.field("number", point.number);
    f.field("joint", point.joint);
    f.field("along", point.along);
    f.field("place", point.place);
    f.field("retired", point.retired);
}

void describe(Fields& f, model::Sketch& sketch)
{
    f.field("revision", sketch.revision);
    f.field("last_number", sketch.lastNumber);
    f.field("sheets", sketch.sheets);
    f.field("joints", sketch.joints);
    f.field("points", sketch.points);
}

} // namespace sealwalk::exchange
