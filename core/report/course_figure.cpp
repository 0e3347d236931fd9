// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/course_figure.h"

#include "core/analysis/leak_rank.h"
#include "core/analysis/leak_sum.h"
#include "core/analysis/object_totals.h"
#include "core/report/finding_range.h"
#include "core/report/rate_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace sealwalk::report {

namespace {

constexpr double kMillisecondsPerDay = 86'400'000.0;
constexpr double kRoomDays = 30.0; // beside the first and last job
constexpr double kWordRoom = 0.2;  // of the axis, right of a mark that has a word
constexpr std::array<Tone, 5> kTones{Tone::Chart3, Tone::Chart1, Tone::Chart2, Tone::Chart4, Tone::Chart5};
constexpr std::array<Line, 5> kLines{Line::Solid, Line::Dashed, Line::Dotted, Line::Dashed, Line::Dotted};
constexpr std::array<Mark, 5> kMarks{Mark::Circle, Mark::Square, Mark::Triangle, Mark::Diamond, Mark::Circle};

const analysis::PointFinding* findingOf(const CourseStop& stop, const CoursePoint& point)
{
    const auto found = std::find_if(stop.findings.begin(), stop.findings.end(), [&](const auto& finding) {
        return finding.point == point.point || point.places.contains(finding.point);
    });
    return found == stop.findings.end() ? nullptr : &*found;
}

/// The course of one point, and what is said of it.
class PointCourse
{
public:
    PointCourse(const CoursePoint& point, const ShownUnit& unit, std::size_t which)
        : m_point(point)
        , m_unit(unit)
    {
        m_series.name = point.name;
        m_series.tone = kTones[which % kTones.size()];
        m_series.line = kLines[which % kLines.size()];
        m_series.mark = kMarks[which % kMarks.size()];
    }

    void add(const CourseStop& stop)
    {
        const analysis::PointFinding* finding = findingOf(stop, m_point);
        if (finding == nullptr) {
            m_isMissing = m_isMissing || !stop.asLeft;
            return;
        }
        const auto size = analysis::sizeOf(*finding);
        const auto value = size ? size : analysis::isUnsizedLeak(*finding) ? std::nullopt : finding->bound;
        if (!value || *value <= LeakRate() || !analysis::isAnswer(*finding)) {
            if (analysis::isUnsizedLeak(*finding) && analysis::isAnswer(*finding)) {
                m_words.push_back({courseDay(stop.at), 0.0, "not sized"});
                speak("not sized");
            }
            m_isMissing = true;
            return;
        }
        addMark(stop, *finding, *value);
    }

    void addTo(Figure& figure)
    {
        for (Flag& word : m_words) {
            if (word.y <= 0.0)
                word.y = figure.y.low;
            addFlag(figure, std::move(word));
        }
        figure.spoken += m_spoken.empty() ? "" : m_spoken + "; ";
        figure.series.push_back(std::move(m_series));
    }

private:
    void addMark(const CourseStop& stop, const analysis::PointFinding& finding, LeakRate value)
    {
        const bool isAtLeast = !finding.rate && finding.atLeast;
        const bool isBound = !finding.rate && !isAtLeast;
        const auto range = rangeOf(finding, m_unit.gas);
        const Series::Ends ends =
            range ? Series::Ends{m_unit.number(range->low), m_unit.number(range->high)} : Series::Ends{};
        // No line to or from a bound: it says how little could be seen, not that a leak shrank.
        const bool wasBound = !m_series.hollow.empty() && m_series.hollow.back();
        m_series.apart.push_back(std::exchange(m_isMissing, false) || isBound || wasBound);
        m_series.x.push_back(courseDay(stop.at));
        m_series.y.push_back(m_unit.ofHelium(value));
        m_series.hollow.push_back(isBound);
        m_series.ranges.push_back(ends);
        if (isAtLeast)
            m_words.push_back({courseDay(stop.at), m_series.y.back(), "\u2265"});
        speak((isBound     ? "below "
               : isAtLeast ? "at least "
                           : "") +
              plainRate(m_series.y.back()) + (range ? " (" + plainRange(ends.low, ends.high) + ")" : ""));
    }

    void speak(const std::string& what)
    {
        m_spoken += (m_spoken.empty() ? m_point.name + ": " : ", ") + what;
    }

    const CoursePoint& m_point;
    const ShownUnit& m_unit;
    Series m_series;
    std::vector<Flag> m_words; ///< y 0: below everything
    std::string m_spoken;
    bool m_isMissing = false;
};

} // namespace

double courseDay(const Timestamp& at)
{
    return static_cast<double>(at.utcMilliseconds) / kMillisecondsPerDay;
}

void addFlag(Figure& figure, Flag flag)
{
    figure.x.high = std::max(figure.x.high, (flag.x - kWordRoom * figure.x.low) / (1.0 - kWordRoom));
    figure.flags.push_back(std::move(flag));
}

std::vector<CourseStop> courseStops(const analysis::WorkedJobs& jobs)
{
    std::vector<CourseStop> stops;
    for (const auto& worked : jobs) {
        const model::Job& job = worked->job;
        stops.push_back({job.number, job.opened, worked->asFound, worked->detectable, false});
        if (job.repairs.empty())
            continue;
        CourseStop left{job.number, analysis::leftAt(*worked), {}, worked->detectable, true};
        for (const analysis::PointFinding& finding : worked->asLeft)
            if (finding.awaitsRetest || analysis::wasTestedAgain(*worked, finding))
                left.findings.push_back(finding);
        stops.push_back(std::move(left));
    }
    std::stable_sort(stops.begin(), stops.end(),
                     [](const CourseStop& a, const CourseStop& b) { return a.at < b.at; });
    return stops;
}

Figure courseFrame(const std::vector<CourseStop>& stops, std::optional<LeakRate> limit,
                   const model::DecadeScale& scale, const ShownUnit& unit)
{
    Figure figure;
    figure.title = "course";
    figure.y.unit = unit.head();
    figure.y.logarithmic = true;
    figure.y.low = unit.ofHelium(millibarLitresPerSecond(std::pow(10.0, scale.lowestDecade)));
    figure.y.high =
        unit.ofHelium(millibarLitresPerSecond(std::pow(10.0, scale.lowestDecade + scale.decades)));
    if (stops.empty())
        return figure;
    const double first = courseDay(stops.front().at);
    const double last = courseDay(stops.back().at);
    const double room = std::max(kRoomDays, 0.1 * (last - first));
    figure.x.low = first - room;
    figure.x.high = last + room;
    for (std::size_t i = 0; i < stops.size(); ++i) {
        const CourseStop& stop = stops[i];
        const double at = courseDay(stop.at);
        if (!stop.asLeft) { // as left stands beside as found
            figure.x.ticks.push_back({at, stop.at.date().substr(0, 7)});
            figure.moments.push_back({at, "job " + std::to_string(stop.number), Line::Dotted});
        }
        if (!stop.detectable)
            continue;
        Strip strip;
        strip.low = figure.y.low;
        strip.high = unit.ofHelium(*stop.detectable);
        strip.hatched = true;
        // Half way to the jobs before and after it.
        if (i > 0)
            strip.from = (courseDay(stops[i - 1].at) + at) / 2.0;
        if (i + 1 < stops.size())
            strip.to = (courseDay(stops[i + 1].at) + at) / 2.0;
        if (strip.high > strip.low)
            figure.strips.push_back(strip);
    }
    if (limit)
        figure.levels.push_back({unit.ofHelium(*limit), "limit", Tone::Ink, Line::Solid, true});
    return figure;
}

Figure courseFigure(const std::vector<CourseStop>& stops, const std::vector<CoursePoint>& points,
                    std::optional<LeakRate> limit, const model::DecadeScale& scale, const ShownUnit& unit)
{
    const bool isEmpty = points.empty() || stops.empty();
    Figure figure =
        courseFrame(isEmpty ? std::vector<CourseStop>() : stops, isEmpty ? std::nullopt : limit, scale, unit);
    if (isEmpty) {
        figure.empty = "choose a point";
        return figure;
    }
    for (std::size_t i = 0; i < points.size(); ++i) {
        PointCourse course(points[i], unit, i);
        for (const CourseStop& stop : stops)
            course.add(stop);
        course.addTo(figure);
    }
    return figure;
}

} // namespace sealwalk::report
