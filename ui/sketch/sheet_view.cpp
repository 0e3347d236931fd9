// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sketch/sheet_view.h"

#include <algorithm>

namespace sealwalk::ui {

geometry::Box SheetView::visible(QSizeF size) const
{
    geometry::Box box;
    box.add(toSheet({0.0, 0.0}));
    box.add(toSheet({size.width(), size.height()}));
    return box;
}

void SheetView::zoomAt(QPointF at, double factor)
{
    const geometry::Point held = toSheet(at);
    m_scale = std::clamp(m_scale * factor, kLeastScale, kMostScale);
    m_origin += at - toScreen(held);
}

void SheetView::fit(const geometry::Box& box, const QRectF& room)
{
    if (box.isEmpty() || room.width() <= 0.0 || room.height() <= 0.0)
        return;
    const double wide = room.width() / std::max(box.width(), 1.0);
    const double high = room.height() / std::max(box.height(), 1.0);
    m_scale = std::clamp(std::min(wide, high), kLeastScale, kMostScale);
    m_origin += room.center() - toScreen(box.centre());
}

} // namespace sealwalk::ui
