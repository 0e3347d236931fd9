// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/plan.h"

#include "core/analysis/spray_timing.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>

namespace sealwalk::analysis {

namespace {

constexpr double kDwellInResponses = 3.0;
const double kWaitInResponses = std::log(100.0);
// Heights that differ by less than this count as one.
constexpr double kOneHeight = 0.02; // m
// A cloud of a pinpointing spray has thinned to a hundredth here.
constexpr double kClearOfCloud = 0.15; // m
constexpr double kLongerInCloud = 1.5;

double gap(const SurveyPoint& a, const SurveyPoint& b)
{
    return std::hypot(a.x.si() - b.x.si(), a.up.si() - b.up.si());
}

double heightOf(const SurveyPoint& point)
{
    return point.isPlan ? 0.0 : point.up.si();
}

/// Points of one view (or of the set-up), put in order of spraying.
class Descent
{
public:
    Descent(const Survey& survey, std::vector<std::size_t> members)
        : m_survey(survey)
        , m_left(std::move(members))
    {
        std::ranges::stable_sort(m_left, std::greater<>(),
                                 [&](std::size_t i) { return heightOf(m_survey.points[i]); });
    }

    [[nodiscard]] bool isDone() const { return m_left.empty(); }

    /// Takes the next point, given the last one sprayed.
    std::size_t take(std::optional<std::size_t> last)
    {
        const double top = heightOf(m_survey.points[m_left.front()]);
        auto best = m_left.begin();
        for (auto it = m_left.begin(); it != m_left.end(); ++it) {
            if (top - heightOf(m_survey.points[*it]) > kOneHeight)
                break;
            if (last && m_survey.points[*last].view == m_survey.points[*it].view &&
                isBetter(*it, *best, *last))
                best = it;
        }
        const std::size_t taken = *best;
        m_left.erase(best);
        return taken;
    }

private:
    /// Outside the last cloud first, and of those the nearest; inside it the farthest.
    bool isBetter(std::size_t candidate, std::size_t than, std::size_t last) const
    {
        const double mine = gap(m_survey.points[candidate], m_survey.points[last]);
        const double other = gap(m_survey.points[than], m_survey.points[last]);
        const bool mineClear = mine >= kClearOfCloud;
        const bool otherClear = other >= kClearOfCloud;
        if (mineClear != otherClear)
            return mineClear;
        return mineClear ? mine < other : mine > other;
    }

    const Survey& m_survey;
    std::vector<std::size_t> m_left;
};

std::vector<std::vector<std::size_t>> groups(const Survey& survey)
{
    std::vector<std::vector<std::size_t>> made(1);
    std::vector<std::string> views;
    for (std::size_t i = 0; i < survey.points.size(); ++i) {
        const SurveyPoint& point = survey.points[i];
        if (point.isSetup) {
            made.front().push_back(i);
            continue;
        }
        const auto known = std::ranges::find(views, point.view);
        const auto at = static_cast<std::size_t>(known - views.begin());
        if (known == views.end()) {
            views.push_back(point.view);
            made.emplace_back();
        }
        made[at + 1].push_back(i);
    }
    return made;
}

std::string reason(const Survey& survey, std::size_t point, std::optional<std::size_t> last)
{
    const SurveyPoint& here = survey.points[point];
    if (here.isSetup)
        return "connections of the set-up first: a leak there would spoil every later reading";
    if (!last || survey.points[*last].view != here.view || survey.points[*last].isSetup)
        return here.isPlan ? "first of this view"
                           : "highest of this view: helium rises, so work from the top down";
    const double away = gap(here, survey.points[*last]);
    const double lower = heightOf(survey.points[*last]) - heightOf(here);
    if (away >= kClearOfCloud)
        return fmt::format("{:.0f} mm away from point {} just sprayed{}", 1000.0 * away,
                           survey.points[*last].number, lower > kOneHeight ? ", going down" : "");
    return fmt::format("next below; {:.0f} mm from point {}, so the wait before it is longer", 1000.0 * away,
                       survey.points[*last].number);
}

/// Dwells, waits and sums of a walk over points in this order; reasons are the caller's.
class Timing
{
public:
    Timing(const Survey& survey, const PlanOptions& options)
        : m_survey(survey)
        , m_flow(options.flow.si())
        , m_dwell(std::max(kDwellInResponses * survey.response.si(), inSeconds(kShortestSpray)))
        , m_wait(std::max(kWaitInResponses * survey.response.si(), survey.response.si()))
    {}

    void add(Plan& plan, std::size_t next, std::string because)
    {
        if (m_last && m_survey.points[*m_last].view == m_survey.points[next].view &&
            gap(m_survey.points[*m_last], m_survey.points[next]) < kClearOfCloud) {
            plan.order.back().wait = seconds(kLongerInCloud * m_wait);
            plan.total += seconds((kLongerInCloud - 1.0) * m_wait);
        }
        plan.order.push_back(
            {m_survey.points[next].number, seconds(m_dwell), seconds(m_wait), std::move(because)});
        plan.total += seconds(m_dwell + m_wait);
        plan.helium += Volume::fromSi(m_flow * m_dwell);
        m_last = next;
    }
    [[nodiscard]] std::optional<std::size_t> last() const { return m_last; }

private:
    const Survey& m_survey;
    double m_flow;
    double m_dwell;
    double m_wait;
    std::optional<std::size_t> m_last;
};

} // namespace

Plan planWalk(const Survey& survey, const PlanOptions& options)
{
    Plan plan;
    Timing timing(survey, options);
    for (std::vector<std::size_t>& members : groups(survey)) {
        Descent descent(survey, std::move(members));
        while (!descent.isDone()) {
            const std::size_t next = descent.take(timing.last());
            timing.add(plan, next, reason(survey, next, timing.last()));
        }
    }
    return plan;
}

Plan planInOrder(const Survey& survey, std::span<const int> order, const PlanOptions& options)
{
    Plan plan;
    Timing timing(survey, options);
    for (const int number : order) {
        const std::optional<std::size_t> next = survey.indexOf(number);
        if (!next)
            continue;
        const std::optional<std::size_t> last = timing.last();
        const bool climbs = last && !survey.points[*next].isPlan &&
                            survey.points[*last].view == survey.points[*next].view &&
                            heightOf(survey.points[*next]) - heightOf(survey.points[*last]) > kOneHeight;
        timing.add(plan, *next,
                   climbs ? fmt::format("above point {} just sprayed, whose helium rises into it",
                                        survey.points[*last].number)
                          : std::string());
    }
    return plan;
}

} // namespace sealwalk::analysis
