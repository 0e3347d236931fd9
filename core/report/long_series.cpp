// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/long_series.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::report {

namespace {

constexpr std::size_t kFanOut = 16;

void widen(LongSeries::Range& range, float least, float greatest)
{
    range.least = std::min(range.least, least);
    range.greatest = std::max(range.greatest, greatest);
}

} // namespace

LongSeries::LongSeries(std::vector<double> times, std::vector<float> values)
{
    const std::size_t count = std::min(times.size(), values.size());
    for (std::size_t i = 0; i < count; ++i)
        append(times[i], values[i]);
}

void LongSeries::append(double time, float value)
{
    if (!std::isfinite(value) || !std::isfinite(time) || (!m_times.empty() && time < m_times.back()))
        return;
    m_times.push_back(time);
    m_values.push_back(value);
    // Every level's last node grows with the sample; a full one is followed by a new one.
    std::size_t index = m_values.size() - 1;
    for (std::size_t level = 0;; ++level) {
        index /= kFanOut;
        if (level == m_levels.size()) {
            if (index == 0 && level > 0)
                break; // one node over everything is high enough
            m_levels.emplace_back();
        }
        std::vector<Range>& nodes = m_levels[level];
        if (nodes.empty() && index > 0) { // a level that begins late takes in what is below it
            const std::vector<Range>& below = m_levels[level - 1];
            for (std::size_t i = 0; i < below.size(); i += kFanOut) {
                Range all = below[i];
                for (std::size_t k = i; k < std::min(below.size(), i + kFanOut); ++k)
                    widen(all, below[k].least, below[k].greatest);
                nodes.push_back(all);
            }
            continue;
        }
        if (index == nodes.size())
            nodes.push_back({value, value});
        else
            widen(nodes[index], value, value);
    }
}

LongSeries::Range LongSeries::rangeOf(std::size_t begin, std::size_t end) const
{
    Range range{m_values[begin], m_values[begin]};
    std::size_t i = begin;
    while (i < end) {
        // The largest node that starts here and does not pass the end.
        std::size_t span = 1;
        std::size_t level = 0;
        while (level < m_levels.size() && i % (span * kFanOut) == 0 && i + span * kFanOut <= end) {
            span *= kFanOut;
            ++level;
        }
        if (level == 0) {
            widen(range, m_values[i], m_values[i]);
        } else {
            const Range& node = m_levels[level - 1][i / span];
            widen(range, node.least, node.greatest);
        }
        i += span;
    }
    return range;
}

std::vector<LongSeries::Column> LongSeries::thinned(double from, double to, std::size_t columns) const
{
    std::vector<Column> result;
    if (m_values.empty() || columns == 0 || !(to > from))
        return result;
    std::size_t begin = indexFrom(from);
    auto end =
        static_cast<std::size_t>(std::upper_bound(m_times.begin(), m_times.end(), to) - m_times.begin());
    begin = begin > 0 ? begin - 1 : 0;
    end = std::min(end + 1, m_values.size());
    if (begin >= end)
        return result;
    const auto add = [&](std::size_t first, std::size_t behind) {
        const Range range = rangeOf(first, behind);
        result.push_back({m_times[first], m_times[behind - 1], range.least, range.greatest, m_values[first],
                          m_values[behind - 1]});
    };
    if (end - begin <= columns) {
        for (std::size_t i = begin; i < end; ++i)
            add(i, i + 1);
        return result;
    }
    const double width = (to - from) / static_cast<double>(columns);
    std::size_t first = begin;
    for (std::size_t c = 1; c <= columns && first < end; ++c) {
        const auto edge = m_times.begin() + static_cast<std::ptrdiff_t>(end);
        const auto at = c == columns ? edge
                                     : std::lower_bound(m_times.begin() + static_cast<std::ptrdiff_t>(first),
                                                        edge, from + width * static_cast<double>(c));
        const auto behind = static_cast<std::size_t>(at - m_times.begin());
        if (behind > first)
            add(first, behind);
        first = std::max(first, behind);
    }
    return result;
}

std::optional<LongSeries::Range> LongSeries::range(double from, double to) const
{
    const std::size_t begin = indexFrom(from);
    const auto end =
        static_cast<std::size_t>(std::upper_bound(m_times.begin(), m_times.end(), to) - m_times.begin());
    if (begin >= end)
        return std::nullopt;
    return rangeOf(begin, end);
}

std::size_t LongSeries::indexFrom(double time) const
{
    return static_cast<std::size_t>(std::lower_bound(m_times.begin(), m_times.end(), time) - m_times.begin());
}

std::size_t LongSeries::bytes() const
{
    std::size_t total = m_times.size() * sizeof(double) + m_values.size() * sizeof(float);
    for (const std::vector<Range>& level : m_levels)
        total += level.capacity() * sizeof(Range);
    return total;
}

} // namespace sealwalk::report
