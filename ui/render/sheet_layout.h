// SPDX-License-Identifier: GPL-3.0-or-later
// Finds room for numbers, plates, values and names on a sheet's picture: what matters most chooses first,
// quiet things give way.
#pragma once

#include "ui/render/free_room.h"
#include "ui/render/sheet_picture.h"

#include <vector>

namespace sealwalk::render {

class SheetLayout
{
public:
    explicit SheetLayout(SheetPicture& picture);
    void lay();

private:
    void takeBands();
    void layNumbers(bool strong);
    void layPlates(const std::vector<bool>& served);
    void layBrackets(std::vector<bool>& served);
    void layNames();
    bool layPlate(SheetPicture::Plate plate, QPointF outward, double reach, bool must);
    bool findRoom(SheetPicture::Plate& plate, QPointF outward, double first, int rings);
    /// Where a joint is drawn, for telling which of them a name stands at.
    struct Drawn
    {
        QRectF area;
        std::vector<QPointF> places; ///< along its line, close together; empty: a spot that fills its area
        [[nodiscard]] double gap(const QRectF& room) const;
    };
    [[nodiscard]] Drawn drawn(const report::MapJoint& joint) const;
    [[nodiscard]] static bool wouldNameAnother(const QRectF& room, const std::vector<Drawn>& all,
                                               std::size_t own);
    [[nodiscard]] QSizeF labelSize(const SheetPicture::Plate& plate) const;
    [[nodiscard]] QRectF labelRoom(const SheetPicture::Plate& plate, bool right) const;
    [[nodiscard]] RateLabel labelOf(const report::MapStretch& stretch) const;
    [[nodiscard]] QString rangeOf(const report::MapStretch& stretch) const;
    [[nodiscard]] bool isFree(const QRectF& room) const { return m_room.isFree(room); }

    SheetPicture& m_picture;
    const report::MapContent& m_content;
    const BandStyle& m_style;
    FreeRoom m_room;
    QPointF m_middle;
};

} // namespace sealwalk::render
