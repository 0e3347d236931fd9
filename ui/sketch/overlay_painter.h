// SPDX-License-Identifier: GPL-3.0-or-later
// What lies over the joints while drawing: handles, start and sense, dimension lines, guides.
#pragma once

#include "core/model/sketch.h"
#include "ui/render/theme.h"
#include "ui/sketch/hit.h"
#include "ui/sketch/sheet_view.h"
#include "ui/sketch/sizes.h"
#include "ui/sketch/snap.h"

#include <QRectF>

#include <vector>

class QPainter;

namespace sealwalk::ui {

/// A figure that can be typed over, where it was painted.
struct SizePlate
{
    std::size_t size = 0;
    QRectF room;
};

class OverlayPainter
{
public:
    OverlayPainter(QPainter& painter, const render::Theme& theme, const SheetView& view)
        : m_painter(painter)
        , m_theme(theme)
        , m_view(view)
    {}

    void handles(const geometry::Shape& shape, double airPixels);
    /// Start mark and arrow of the sense. `words` beside it.
    void startAndSense(const model::Joint& joint, const QString& words);
    /// Where points would be laid.
    void ghostPoints(const model::Joint& joint, int count);
    /// Dimension lines; what is being typed stands on its plate. Answers where the plates are.
    std::vector<SizePlate> dimensions(const geometry::Shape& shape, const SizeEntry& entry);
    /// Figures being typed that belong to no dimension line, beside a place.
    void typedBeside(QPointF at, const std::vector<Size>& sizes, const SizeEntry& entry);
    void guides(const std::vector<Guide>& guides);
    void frame(const geometry::Box& box);
    void ringAt(geometry::Point place);
    /// The node that the keys act on.
    void nodeAt(geometry::Point place);
    void crossHair(geometry::Point place);

private:
    QRectF plate(QPointF centre, const QString& text, bool current);
    [[nodiscard]] QString figure(const Size& size, std::size_t index, const SizeEntry& entry) const;

    QPainter& m_painter;
    const render::Theme& m_theme;
    const SheetView& m_view;
};

/// "860 mm", "110.5 mm": as many digits as there are.
QString millimetresText(double value);

} // namespace sealwalk::ui
