// SPDX-License-Identifier: GPL-3.0-or-later
// A long record, such as hours of a detector's feed, that can be drawn at once: least and greatest value per
// pixel column, so that a spike of a single sample is never lost. Grows in blocks: a feed of hours is never
// copied to make room.
#pragma once

#include <cstddef>
#include <deque>
#include <optional>
#include <vector>

namespace sealwalk::report {

class LongSeries
{
public:
    /// What one pixel column of a picture shows.
    struct Column
    {
        double from = 0.0; ///< time of its first sample
        double to = 0.0;   ///< time of its last sample
        float least = 0.0F;
        float greatest = 0.0F;
        float first = 0.0F;
        float last = 0.0F;
        bool operator==(const Column&) const = default;
    };

    LongSeries() = default;
    LongSeries(std::vector<double> times, std::vector<float> values);

    /// @param time   not before the last one; earlier ones are dropped
    /// @param value  finite; others are dropped
    void append(double time, float value);

    [[nodiscard]] std::size_t size() const { return m_values.size(); }
    [[nodiscard]] bool isEmpty() const { return m_values.empty(); }
    [[nodiscard]] double firstTime() const { return m_times.empty() ? 0.0 : m_times.front(); }
    [[nodiscard]] double lastTime() const { return m_times.empty() ? 0.0 : m_times.back(); }
    [[nodiscard]] float valueAt(std::size_t index) const { return m_values[index]; }
    [[nodiscard]] double timeAt(std::size_t index) const { return m_times[index]; }

    /// At most `columns` columns over [from, to], each not empty, in order of time. One sample beyond either
    /// end is included where there is one, so that a line drawn through them does not stop short.
    [[nodiscard]] std::vector<Column> thinned(double from, double to, std::size_t columns) const;
    /// Least and greatest value over [from, to]; none when there is no sample.
    struct Range
    {
        float least = 0.0F;
        float greatest = 0.0F;
    };
    [[nodiscard]] std::optional<Range> range(double from, double to) const;
    /// The first sample not before `time`; size() when there is none.
    [[nodiscard]] std::size_t indexFrom(double time) const;
    /// Memory held by samples and pyramid, bytes.
    [[nodiscard]] std::size_t bytes() const;

private:
    [[nodiscard]] Range rangeOf(std::size_t begin, std::size_t end) const;

    std::deque<double> m_times;
    std::deque<float> m_values;
    std::vector<std::vector<Range>> m_levels; ///< each node spans kFanOut of the level below
};

} // namespace sealwalk::report
