// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/plan.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>

namespace sealwalk::analysis {

namespace {

constexpr double kDwellInResponses = 3.0;
constexpr double kShortestDwell = 3.0; // s; a hand needs that long
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

} // namespace

Plan planWalk(const Survey& survey, const PlanOptions& options)
{
    Plan plan;
    const double response = survey.response.si();
    const double dwell = std::max(kDwellInResponses * response, kShortestDwell);
    const double wait = std::max(kWaitInResponses * response, response);
    std::optional<std::size_t> last;
    double total = 0.0;
    for (std::vector<std::size_t>& members : groups(survey)) {
        Descent descent(survey, std::move(members));
        while (!descent.isDone()) {
            const std::size_t next = descent.take(last);
            if (last && survey.points[*last].view == survey.points[next].view &&
                gap(survey.points[*last], survey.points[next]) < kClearOfCloud) {
                plan.order.back().wait = seconds(kLongerInCloud * wait);
                total += (kLongerInCloud - 1.0) * wait;
            }
            plan.order.push_back(
                {survey.points[next].number, seconds(dwell), seconds(wait), reason(survey, next, last)});
            total += dwell + wait;
            last = next;
        }
    }
    plan.total = seconds(total);
    plan.helium = Volume::fromSi(options.flow.si() * dwell * static_cast<double>(plan.order.size()));
    return plan;
}

} // namespace sealwalk::analysis
