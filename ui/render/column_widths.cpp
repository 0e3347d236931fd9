// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/render/column_widths.h"

#include <algorithm>
#include <numeric>
#include <optional>

namespace sealwalk::render {

namespace {

// Columns up to this part of the width do not break.
constexpr double kWhole = 0.18; // a date with its time of day
constexpr double kWholeFigures = 0.22;

double sum(const std::vector<double>& values)
{
    return std::accumulate(values.begin(), values.end(), 0.0);
}

/// With titles on one line where that breaks no cell.
std::vector<ColumnNeed> withHeads(const std::vector<ColumnNeed>& columns, double width)
{
    std::vector<ColumnNeed> wide = columns;
    double least = 0.0;
    for (ColumnNeed& column : wide) {
        column.line = std::max(column.line, column.head);
        least += column.line <= (column.right ? kWholeFigures : kWhole) * width ? column.line : column.word;
    }
    return least <= width ? wide : columns;
}

/// Which columns stay on one line. When the others would be left too little for their words, one of these
/// breaks as well: sentences before figures, and rather the one that gives little more than is wanted.
std::vector<bool> keptWhole(const std::vector<ColumnNeed>& columns, double width)
{
    std::vector<bool> whole;
    double wanted = -width;
    for (const ColumnNeed& column : columns) {
        whole.push_back(column.line <= (column.right ? kWholeFigures : kWhole) * width);
        wanted += whole.back() ? column.line : column.word;
    }
    const auto gives = [&](std::size_t c) { return columns[c].line - columns[c].word; };
    const auto isBetter = [&](std::size_t c, std::size_t than) {
        if (columns[c].right != columns[than].right)
            return !columns[c].right;
        const bool isEnough = gives(c) >= wanted;
        if (isEnough != (gives(than) >= wanted))
            return isEnough;
        return isEnough ? gives(c) < gives(than) : gives(c) > gives(than);
    };
    while (wanted > 0.0) {
        std::optional<std::size_t> best;
        for (std::size_t c = 0; c < columns.size(); ++c)
            if (whole[c] && gives(c) > 0.0 && (!best || isBetter(c, *best)))
                best = c;
        if (!best)
            break;
        whole[*best] = false;
        wanted -= gives(*best);
    }
    return whole;
}

/// Shares `room` among the columns that are `open`, none below its longest word or above its longest line.
void shareOut(const std::vector<ColumnNeed>& columns, std::vector<bool> open, double room,
              std::vector<double>& widths)
{
    while (std::find(open.begin(), open.end(), true) != open.end()) {
        double shares = 0.0;
        for (std::size_t c = 0; c < columns.size(); ++c)
            shares += open[c] ? columns[c].share : 0.0;
        double over = 0.0; // what the bounds add to the shares, all in all
        for (std::size_t c = 0; c < columns.size(); ++c)
            if (open[c]) {
                const double share = room * columns[c].share / shares;
                widths[c] = std::clamp(share, columns[c].word, std::max(columns[c].word, columns[c].line));
                over += widths[c] - share;
            }
        // Those at the bound that weighs more have what they get; the others share anew.
        double left = room;
        bool isAnyFixed = false;
        for (std::size_t c = 0; c < columns.size(); ++c) {
            if (!open[c])
                continue;
            const double share = room * columns[c].share / shares;
            if (over >= 0.0 ? widths[c] > share : widths[c] < share) {
                open[c] = false;
                left -= widths[c];
                isAnyFixed = true;
            }
        }
        if (!isAnyFixed)
            return;
        room = std::max(left, 0.0);
    }
}

} // namespace

std::vector<double> columnWidths(const std::vector<ColumnNeed>& needs, double width)
{
    std::vector<double> widths(needs.size(), 0.0);
    if (needs.empty())
        return widths;
    const std::vector<ColumnNeed> columns = withHeads(needs, width);
    const std::vector<bool> whole = keptWhole(columns, width);
    std::vector<bool> open;
    double room = width;
    for (std::size_t c = 0; c < columns.size(); ++c) {
        open.push_back(!whole[c]);
        if (whole[c])
            room -= widths[c] = columns[c].line;
    }
    shareOut(columns, open, room, widths);
    if (const double all = sum(widths); all > width) {
        for (double& one : widths)
            one *= width / all;
    } else {
        double shares = 0.0;
        for (const ColumnNeed& column : columns)
            shares += column.share;
        for (std::size_t c = 0; c < columns.size(); ++c)
            widths[c] += (width - all) * columns[c].share / shares;
    }
    return widths;
}

} // namespace sealwalk::render
