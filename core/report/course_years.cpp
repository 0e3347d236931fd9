// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/course_years.h"

#include "core/report/finding_range.h"
#include "core/report/rate_text.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sealwalk::report {

namespace {

using analysis::LeakSum;

constexpr double kWordRoom = 0.2; // of the axis, right of a mark that has a word

/// One line of a course, with what is said of it.
class Course
{
public:
    Course(std::string name, Tone tone, Line line, Mark mark)
    {
        m_series.name = std::move(name);
        m_series.tone = tone;
        m_series.line = line;
        m_series.mark = mark;
    }

    void miss() { m_isMissing = true; }

    void add(const Timestamp& at, double value, Series::Ends range, bool isBound, bool isAtLeast = false)
    {
        if (!(value > 0.0))
            return miss();
        m_series.apart.push_back(std::exchange(m_isMissing, false));
        m_series.x.push_back(courseDay(at));
        m_series.y.push_back(value);
        m_series.hollow.push_back(isBound);
        m_series.ranges.push_back(range);
        if (isAtLeast)
            m_flags.push_back({courseDay(at), value, "at least"});
        m_spoken += (m_spoken.empty() ? m_series.name + ": " : ", ") + at.date() + ' ' +
                    (isBound     ? "below "
                     : isAtLeast ? "at least "
                                 : "") +
                    plainRate(value) +
                    (range.high > range.low ? " (" + plainRange(range.low, range.high) + ')' : "");
    }

    void addTo(Figure& figure)
    {
        for (const double value : m_series.y) { // a sum may leave the decades of single points
            figure.y.low = std::min(figure.y.low, std::pow(10.0, std::floor(std::log10(value))));
            figure.y.high = std::max(figure.y.high, std::pow(10.0, std::ceil(std::log10(value))));
        }
        figure.spoken += (figure.spoken.empty() || m_spoken.empty() ? "" : "; ") + m_spoken;
        const double span = figure.x.high - figure.x.low;
        if (!m_flags.empty() && m_flags.back().x > figure.x.high - kWordRoom * span)
            figure.x.high = m_flags.back().x + kWordRoom * span;
        figure.flags.insert(figure.flags.end(), m_flags.begin(), m_flags.end());
        figure.series.push_back(std::move(m_series));
    }

private:
    Series m_series;
    std::vector<Flag> m_flags;
    std::string m_spoken;
    bool m_isMissing = false;
};

Series::Ends endsOf(const LeakSum::Sum& sum, const ShownUnit& unit)
{
    return {unit.number(sum.low), unit.number(sum.high)};
}

void addWorst(Course& course, const JointStop& stop, const ShownUnit& unit)
{
    const auto& worst = stop.leaks.worst;
    if (!worst)
        return course.miss();
    const auto range = rangeOf(*worst, unit.gas);
    course.add(stop.at, unit.ofHelium(worst->rate ? *worst->rate : *worst->bound),
               range ? Series::Ends{unit.number(range->low), unit.number(range->high)} : Series::Ends{},
               !worst->rate);
}

std::vector<CourseStop> without(std::vector<CourseStop> stops)
{
    for (CourseStop& stop : stops)
        stop.detectable.reset(); // a sum is not hatched by what one point could have hidden
    return stops;
}

} // namespace

std::optional<LeakSum::Sum> shownSum(const LeakSum& leaks, const ShownUnit& unit)
{
    return unit.gas.isAir() ? leaks.air : leaks.helium;
}

std::vector<JointStop> jointStops(const analysis::WorkedJobs& jobs, const model::TestObject& object,
                                  const analysis::JointHistory& joint)
{
    std::vector<JointStop> stops;
    for (const auto& worked : jobs) {
        const model::Job& job = worked->job;
        const auto found = findingsOn(joint.ids, job.sketch, worked->asFound);
        stops.push_back({job.number, job.opened, false, leakSum(job, object, found)});
        const auto left = findingsOn(joint.ids, job.sketch, worked->asLeft);
        const bool isTouched = std::any_of(left.begin(), left.end(), [&](const auto& finding) {
            return finding.awaitsRetest || analysis::wasTestedAgain(*worked, finding);
        });
        if (isTouched && !job.repairs.empty())
            stops.push_back({job.number, analysis::leftAt(*worked), true, leakSum(job, object, left)});
    }
    std::stable_sort(stops.begin(), stops.end(),
                     [](const JointStop& a, const JointStop& b) { return a.at < b.at; });
    return stops;
}

Figure jointCourse(const analysis::WorkedJobs& jobs, const std::vector<JointStop>& stops,
                   std::optional<LeakRate> limit, const model::DecadeScale& scale, const ShownUnit& unit)
{
    Figure figure = courseFrame(courseStops(jobs), limit, scale, unit);
    Course worst("worst point", Tone::Chart3, Line::Solid, Mark::Circle);
    Course sum("sum", Tone::Chart1, Line::Dashed, Mark::Square);
    for (const JointStop& stop : stops) {
        addWorst(worst, stop, unit);
        const auto shown = shownSum(stop.leaks, unit);
        if (shown)
            sum.add(stop.at, unit.number(shown->rate), endsOf(*shown, unit), false, stop.leaks.isAtLeast);
        else if (stop.leaks.below)
            sum.add(stop.at, unit.ofHelium(*stop.leaks.below), {}, true);
        else
            sum.miss();
    }
    worst.addTo(figure);
    sum.addTo(figure);
    if (figure.spoken.empty())
        figure.empty = "not sprayed in any of these jobs";
    return figure;
}

Figure totalCourse(const analysis::WorkedJobs& jobs, const std::vector<analysis::ObjectTotal>& totals,
                   std::optional<LeakRate> limit, const model::DecadeScale& scale, const ShownUnit& unit)
{
    Figure figure = courseFrame(without(courseStops(jobs)), std::nullopt, scale, unit);
    figure.y.unit = unit.symbol + " air";
    if (limit)
        figure.levels.push_back({unit.number(*limit), "limit", Tone::Ink, Line::Solid, true});
    Course sum("sum of leaks", Tone::Chart3, Line::Solid, Mark::Circle);
    Course rise("pressure rise", Tone::Chart1, Line::Dashed, Mark::Square);
    for (const analysis::ObjectTotal& total : totals) {
        if (total.leaks.air)
            sum.add(total.at, unit.number(total.leaks.air->rate), endsOf(*total.leaks.air, unit), false,
                    total.leaks.isAtLeast);
        else
            sum.miss();
        if (!total.rise)
            rise.miss();
        else if (total.rise->rate && *total.rise->rate > LeakRate())
            rise.add(total.at, unit.number(*total.rise->rate),
                     {unit.number(total.rise->low), unit.number(total.rise->high)}, false);
        else
            rise.add(total.at, unit.number(total.rise->high), {}, true);
    }
    sum.addTo(figure);
    rise.addTo(figure);
    if (figure.spoken.empty())
        figure.empty = "no leak and no pressure rise on record";
    return figure;
}

} // namespace sealwalk::report
