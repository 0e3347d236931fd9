// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/free_room.h"

#include <cmath>

namespace sealwalk::render {

namespace {

constexpr double kCell = 32.0; // about one plate with its value

long long cellKey(int column, int row)
{
    return static_cast<long long>(column) * 0x100000000LL + row;
}

} // namespace

template <class Visit>
void FreeRoom::forCells(const QRectF& room, Visit visit) const
{
    const int left = static_cast<int>(std::floor(room.left() / kCell));
    const int right = static_cast<int>(std::floor(room.right() / kCell));
    const int top = static_cast<int>(std::floor(room.top() / kCell));
    const int bottom = static_cast<int>(std::floor(room.bottom() / kCell));
    for (int column = left; column <= right; ++column)
        for (int row = top; row <= bottom; ++row)
            if (!visit(cellKey(column, row)))
                return;
}

void FreeRoom::take(const QRectF& room)
{
    const std::size_t index = m_taken.size();
    m_taken.push_back(room);
    forCells(room, [&](long long key) {
        m_cells[key].push_back(index);
        return true;
    });
}

bool FreeRoom::isFree(const QRectF& room) const
{
    bool free = true;
    forCells(room, [&](long long key) {
        const auto cell = m_cells.find(key);
        if (cell != m_cells.end())
            for (const std::size_t index : cell->second)
                if (m_taken[index].intersects(room)) {
                    free = false;
                    break;
                }
        return free;
    });
    return free;
}

} // namespace sealwalk::render
