// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/course_years.h"

#include "core/analysis/leak_rank.h"
#include "core/report/finding_range.h"
#include "core/report/rate_text.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sealwalk::report {

namespace {

using analysis::LeakSum;

/// What a mark of a course says.
struct Said
{
    Series::Ends range = {};
    bool isBound = false;
    bool isAtLeast = false;
    bool isFlagged = true; ///< with `isAtLeast`: the word stands at the mark
};

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

    /// A state that was measured and has no figure: a gap with a word below it.
    void say(const Timestamp& at, std::string_view word)
    {
        m_words.emplace_back(courseDay(at), std::string(word));
        speak(at, std::string(word));
        miss();
    }

    void add(const Timestamp& at, double value, const Said& said)
    {
        if (!(value > 0.0))
            return miss();
        m_series.apart.push_back(std::exchange(m_isMissing, false));
        m_series.x.push_back(courseDay(at));
        m_series.y.push_back(value);
        m_series.hollow.push_back(said.isBound);
        m_series.ranges.push_back(said.range);
        if (said.isAtLeast && said.isFlagged)
            m_flags.push_back({courseDay(at), value, "\u2265"});
        const Series::Ends& range = said.range;
        speak(at, (said.isBound     ? "below "
                   : said.isAtLeast ? "at least "
                                    : "") +
                      plainRate(value) +
                      (range.high > range.low ? " (" + plainRange(range.low, range.high) + ')' : ""));
    }

    /// A sum may leave the decades of single points. Of all lines, before the first is added: words stand at
    /// the foot of the axis.
    void widen(Figure& figure) const
    {
        for (const double value : m_series.y) {
            figure.y.low = std::min(figure.y.low, std::pow(10.0, std::floor(std::log10(value))));
            figure.y.high = std::max(figure.y.high, std::pow(10.0, std::ceil(std::log10(value))));
        }
    }

    void addTo(Figure& figure)
    {
        figure.spoken += (figure.spoken.empty() || m_spoken.empty() ? "" : "; ") + m_spoken;
        for (const Flag& flag : m_flags)
            addFlag(figure, flag);
        for (const auto& [day, word] : m_words)
            addFlag(figure, {day, figure.y.low, word});
        figure.series.push_back(std::move(m_series));
    }

private:
    void speak(const Timestamp& at, const std::string& what)
    {
        m_spoken += (m_spoken.empty() ? m_series.name + ": " : ", ") + at.date() + ' ' + what;
    }

    Series m_series;
    std::vector<Flag> m_flags;
    std::vector<std::pair<double, std::string>> m_words;
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
    const auto size = analysis::sizeOf(*worst);
    if (!size && analysis::isUnsizedLeak(*worst))
        return course.miss(); // its sum says so
    Said said;
    if (const auto range = rangeOf(*worst, unit.gas))
        said.range = {unit.number(range->low), unit.number(range->high)};
    said.isBound = !size;
    said.isAtLeast = size && !worst->rate;
    said.isFlagged = !stop.leaks.helium; // else it stands at the sum
    course.add(stop.at, unit.ofHelium(size ? *size : *worst->bound), said);
}

/// The sum, else what could have hidden, else the word that says why there is neither.
void addSum(Course& course, const Timestamp& at, const LeakSum& leaks, const std::optional<LeakSum::Sum>& sum,
            std::optional<double> below, const ShownUnit& unit)
{
    const analysis::SumState state = leaks.state();
    if (sum)
        course.add(at, unit.number(sum->rate), {endsOf(*sum, unit), false, leaks.isAtLeast});
    else if (state == analysis::SumState::Below && below)
        course.add(at, *below, {.isBound = true});
    else if (state == analysis::SumState::NotTested)
        course.miss();
    else
        course.say(at, sumWord(state));
}

std::vector<CourseStop> without(std::vector<CourseStop> stops)
{
    for (CourseStop& stop : stops)
        stop.detectable.reset(); // a sum is not hatched by what one point could have hidden
    return stops;
}

} // namespace

std::string_view sumWord(analysis::SumState state)
{
    switch (state) {
    case analysis::SumState::NotTested:
        return "not tested";
    case analysis::SumState::Unsized:
        return "not sized";
    case analysis::SumState::OtherCondition:
        return "in another condition only";
    case analysis::SumState::SetupOnly:
        return "on the set-up only";
    case analysis::SumState::NoLeak:
        return "no leak where tested";
    case analysis::SumState::Below:
    case analysis::SumState::Sum:
        break;
    }
    return "no leak located";
}

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
        addSum(sum, stop.at, stop.leaks, shownSum(stop.leaks, unit),
               stop.leaks.below ? std::optional(unit.ofHelium(*stop.leaks.below)) : std::nullopt, unit);
    }
    for (Course* course : {&sum, &worst})
        course->widen(figure);
    sum.addTo(figure); // drawn first: a single leak is the sum, and its round mark lies on the square one
    worst.addTo(figure);
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
        addSum(sum, total.at, total.leaks, total.leaks.air,
               total.leaks.belowAir ? std::optional(unit.number(*total.leaks.belowAir)) : std::nullopt, unit);
        if (!total.rise)
            rise.miss();
        else if (total.rise->rate && *total.rise->rate > LeakRate())
            rise.add(total.at, unit.number(*total.rise->rate),
                     {.range = {unit.number(total.rise->low), unit.number(total.rise->high)}});
        else
            rise.add(total.at, unit.number(total.rise->high), {.isBound = true});
    }
    for (Course* course : {&sum, &rise})
        course->widen(figure);
    sum.addTo(figure);
    rise.addTo(figure);
    if (figure.spoken.empty())
        figure.empty = "no leak and no pressure rise on record";
    return figure;
}

} // namespace sealwalk::report
