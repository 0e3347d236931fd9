// SPDX-License-Identifier: GPL-3.0-or-later
// One sheet's map laid out at one scale: bands, numbers, plates, values without overlaps. Paints into any
// device. Origin of the picture: the sheet's own origin; x to the right, y down, in device units.
#pragma once

#include "core/report/map_content.h"
#include "ui/render/band_painter.h"
#include "ui/render/plate_painter.h"
#include "ui/render/rate_painter.h"

#include <QPolygonF>
#include <QRectF>

#include <memory>
#include <optional>
#include <vector>

class QPainter;

namespace sealwalk::render {

/// What is wanted on a picture besides the bands.
struct SheetParts
{
    bool numbers = true;
    bool plates = true;
    bool values = true;
    bool names = true;
    bool outlines = true;
    bool operator==(const SheetParts&) const = default;
};

/// Of a range below its value, in sizes of the value's text.
constexpr double kRangeText = 0.9;

class SheetPicture
{
public:
    /// @param unitsPerMillimetre  device units per mm of the sheet, > 0
    SheetPicture(std::shared_ptr<const report::MapContent> content, double unitsPerMillimetre,
                 const BandStyle& style, const SheetParts& parts = {});

    [[nodiscard]] const report::MapContent& content() const { return *m_content; }
    [[nodiscard]] double unitsPerMillimetre() const { return m_scale; }
    [[nodiscard]] const BandStyle& style() const { return m_style; }
    /// Everything painted, labels included.
    [[nodiscard]] QRectF bounds() const { return m_bounds; }
    [[nodiscard]] QPointF map(geometry::Point place) const { return {place.x * m_scale, -place.y * m_scale}; }

    /// Paints what meets `visible`; an empty rectangle means everything.
    void paint(QPainter& painter, const Theme& theme, const QRectF& visible = {}) const;

    /// Index into content().stretches of the stretch, number or plate under a place; the nearest within
    /// reach.
    [[nodiscard]] std::optional<std::size_t> hit(QPointF place, double reach = 4.0) const;
    /// A line round a stretch, for selection and hover.
    [[nodiscard]] QPainterPath ringAround(std::size_t stretch, double distance) const;
    /// How many of the numbers asked for found no room.
    [[nodiscard]] int numbersLeftOut() const;
    /// Where its number stands; empty when it was left out.
    [[nodiscard]] QRectF numberRoom(std::size_t stretch) const;
    /// The numbers once more that something painted meanwhile covers, each on a ground of its own.
    void paintNumbersOver(QPainter& painter, const Theme& theme, const QPainterPath& covered) const;
    /// How much of what is read on the picture `room` lies over: joints and numbers but that of `own`, signs,
    /// values and names; square units.
    [[nodiscard]] double coveredBy(const QRectF& room, std::size_t own) const;
    [[nodiscard]] QPointF placeOf(std::size_t stretch) const;
    /// Away from the inside of the joint, unit vector; zero on a spot.
    [[nodiscard]] QPointF outwardOf(std::size_t stretch) const;
    [[nodiscard]] QRectF roomOf(std::size_t stretch) const { return m_items[stretch].room; }

private:
    struct Item
    {
        BandLook look;
        QPolygonF line; ///< empty on a spot
        bool closed = false;
        QPointF place;
        QPointF outward;
        double radius = 0.0; ///< of a spot, else 0
        QRectF room;
        bool crowded = false; ///< too short to insist on number and plate
    };
    struct Number
    {
        std::size_t stretch = 0;
        QPointF centre;
        bool strong = false;
        bool over = false; ///< there was no free room: it stands over what is drawn
    };
    struct Plate
    {
        std::size_t stretch = 0; ///< of a bracket: its first
        PlateLook look;
        QPointF centre;
        QPointF anchor;
        bool leader = false;
        RateLabel label; ///< empty: none
        QString range;   ///< below the value, smaller; empty where there is none or no room for it
        QRectF labelRoom;
        QPolygonF bracket;
    };
    struct Name
    {
        QString text;
        QPointF centre;
    };
    friend class SheetLayout;

    void layItems();
    void paintOutlines(QPainter& painter, const Theme& theme) const;
    void paintNumberOnGround(QPainter& painter, const Theme& theme, const Number& number) const;
    void paintLeaders(QPainter& painter, const Theme& theme, const QRectF& visible) const;
    void paintPlates(QPainter& painter, const Theme& theme, const QRectF& visible) const;

    std::shared_ptr<const report::MapContent> m_content;
    double m_scale;
    BandStyle m_style;
    SheetParts m_parts;
    std::vector<Item> m_items;                        ///< one per stretch of the content
    std::vector<std::pair<std::size_t, Item>> m_bare; ///< joints without points, by index
    std::vector<Number> m_numbers;
    std::vector<Plate> m_plates;
    std::vector<Name> m_names;
    QRectF m_bounds;
};

/// Pale line work of a sheet, for pictures and for the drawing editor. `map` turns millimetres into device
/// units as SheetPicture::map does.
void paintSheetOutlines(QPainter& painter, const Theme& theme,
                        const std::vector<geometry::FreePath>& outlines, double unitsPerMillimetre,
                        double width);

/// The light grid of a sheet in the visible part of a picture; its pitch in mm suits the scale.
void paintSheetGrid(QPainter& painter, const Theme& theme, const QRectF& visible, double unitsPerMillimetre);

/// A bar of a round length with its text, and where up is. `corner`: lower left.
void paintScaleBar(QPainter& painter, const Theme& theme, QPointF corner, double unitsPerMillimetre,
                   const BandStyle& style, const report::MapContent& content);

} // namespace sealwalk::render
