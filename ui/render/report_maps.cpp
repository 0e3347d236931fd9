// SPDX-License-Identifier: GPL-3.0-or-later
// Maps of a report: as many to a page as go, a little smaller where that fills it.
#include "ui/render/map_export.h"
#include "ui/render/report_pages.h"

#include <algorithm>

namespace sealwalk::render::detail {

namespace {

constexpr double kTallest = 452.0; // two to a page
constexpr double kSmallest = 0.7;  // of its height, to fill a page
constexpr double kEmpty = 0.25;    // of a page: what may stay empty below maps of full size
constexpr double kBelow = 8.0;

using Laid = std::shared_ptr<const LaidMap>;

const report::MapBlock& mapOf(const report::Block& block)
{
    return std::get<report::MapBlock>(block);
}

double together(const std::vector<Laid>& maps)
{
    double height = 0.0;
    for (const Laid& map : maps)
        height += map->height() + kBelow;
    return height;
}

/// Those that go into `room`: of full size, and where that leaves much of the page empty one more, all of
/// them smaller.
std::vector<Laid> fitting(std::span<const report::Block> blocks, double width, double room, double page)
{
    std::vector<Laid> maps;
    for (const report::Block& block : blocks) {
        maps.push_back(std::make_shared<const LaidMap>(mapOf(block).map, width, kTallest));
        if (together(maps) > room)
            break;
    }
    const double wanted = together(maps);
    if (wanted <= room)
        return maps;
    std::vector<Laid> full(maps.begin(), maps.end() - 1);
    if (!full.empty() && room - together(full) <= kEmpty * page)
        return full;
    // Labels do not shrink with their map: a share of its height may still be too much.
    const double gaps = kBelow * static_cast<double>(maps.size());
    const double most = (room - gaps) / (wanted - gaps);
    if (most < kSmallest)
        return full;
    for (const double share : {most, 0.5 * (most + kSmallest), kSmallest}) {
        std::vector<Laid> smaller;
        for (std::size_t i = 0; i < maps.size(); ++i)
            smaller.push_back(
                std::make_shared<const LaidMap>(mapOf(blocks[i]).map, width, share * maps[i]->height()));
        if (together(smaller) <= room)
            return smaller;
    }
    return full;
}

} // namespace

double Pages::leastHeight(const report::MapBlock& map) const
{
    const double width = m_metrics.textWidth();
    return LaidMap(map.map, width, kSmallest * LaidMap(map.map, width, kTallest).height()).height() + kBelow;
}

void Pages::maps(std::span<const report::Block> blocks)
{
    const double width = m_metrics.textWidth();
    const double page = m_metrics.end() - m_metrics.top;
    while (!blocks.empty()) {
        std::vector<Laid> fit = fitting(blocks, width, m_metrics.end() - m_y, page);
        if (fit.empty() && m_y > m_metrics.top) {
            newPage();
            continue;
        }
        if (fit.empty())
            fit.push_back(std::make_shared<const LaidMap>(mapOf(blocks.front()).map, width, kTallest));
        for (std::size_t i = 0; i < fit.size(); ++i)
            drawMap(fit[i], mapOf(blocks[i]));
        blocks = blocks.subspan(fit.size());
    }
}

void Pages::drawMap(const std::shared_ptr<const LaidMap>& laid, const report::MapBlock& map)
{
    QImage under;
    if (m_options.pictures && map.map->underlay) {
        model::Sheet sheet;
        sheet.underlay = map.map->underlay;
        under = underlayOf(sheet, m_options.pictures);
    }
    const double height = laid->height();
    const double top = take(height + kBelow) + 0.5 * kBelow;
    draw([=, this](QPainter& painter) {
        laid->paint(painter, under, QRectF(m_metrics.left, top, m_metrics.textWidth(), height));
    });
}

} // namespace sealwalk::render::detail
