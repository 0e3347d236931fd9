// SPDX-License-Identifier: GPL-3.0-or-later
// Which places on a picture are taken: rectangles in a grid, asked many thousand times per layout.
#pragma once

#include <QRectF>

#include <unordered_map>
#include <vector>

namespace sealwalk::render {

class FreeRoom
{
public:
    void take(const QRectF& room);
    [[nodiscard]] bool isFree(const QRectF& room) const;

private:
    template <class Visit>
    void forCells(const QRectF& room, Visit visit) const;

    std::vector<QRectF> m_taken;
    std::unordered_map<long long, std::vector<std::size_t>> m_cells;
};

} // namespace sealwalk::render
