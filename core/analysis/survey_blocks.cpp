// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/survey_blocks.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <span>
#include <unordered_map>

namespace sealwalk::analysis {

namespace {

constexpr std::size_t kLargestWhole = 80; // points
constexpr std::size_t kLargestBlock = 40;
constexpr std::size_t kStrongest = 6; // of the view, from outside the block
constexpr std::size_t kClosest = 6;

class Cutter
{
public:
    explicit Cutter(const Survey& survey)
        : m_survey(survey)
        , m_net(survey.points.size(), 0.0)
    {
        std::unordered_map<int, std::size_t> index;
        for (std::size_t i = 0; i < survey.points.size(); ++i)
            index.emplace(survey.points[i].number, i);
        for (const SurveyReading& reading : survey.readings) {
            const std::size_t at = index.at(reading.point);
            m_pointOf.push_back(at);
            if (!reading.isVoid)
                m_net[at] = std::max(m_net[at], reading.net().si());
        }
        m_tailFrom = tailFrom();
    }

    std::vector<SurveyBlock> run()
    {
        std::map<std::string, std::vector<std::size_t>> views;
        for (std::size_t i = 0; i < m_survey.points.size(); ++i)
            views[m_survey.points[i].view].push_back(i);
        for (auto& [name, members] : views) {
            m_strongest = members;
            std::ranges::sort(m_strongest, std::greater<>(), [&](std::size_t i) { return m_net[i]; });
            m_strongest.resize(std::min(m_strongest.size(), kLargestBlock + kStrongest));
            m_view = members;
            cut(members);
        }
        return std::move(m_blocks);
    }

private:
    /// Of the readings elsewhere only those matter that leave a tail, and of them the strongest.
    double tailFrom() const
    {
        constexpr double kLeavesTail = 0.05; // of the limit
        constexpr std::ptrdiff_t kMost = 300;
        std::vector<double> nets;
        for (const SurveyReading& reading : m_survey.readings)
            nets.push_back(reading.net().si());
        double least = kLeavesTail * m_survey.limit.si();
        if (std::ssize(nets) > kMost) {
            std::ranges::nth_element(nets, nets.begin() + kMost, std::greater<>());
            least = std::max(least, nets[kMost]);
        }
        return least;
    }

    /// Halves the points across their longer side until they are few enough.
    void cut(std::span<std::size_t> members)
    {
        if (members.size() <= kLargestBlock) {
            add(members);
            return;
        }
        const auto along = [&](bool up) {
            return [this, up](std::size_t i) {
                return up ? m_survey.points[i].up.si() : m_survey.points[i].x.si();
            };
        };
        const auto span = [&](bool up) {
            const auto [low, high] = std::ranges::minmax(members, std::less<>(), along(up));
            return along(up)(high) - along(up)(low);
        };
        const bool up = span(true) > span(false);
        const auto middle = members.begin() + static_cast<std::ptrdiff_t>(members.size() / 2);
        std::ranges::nth_element(members, middle, std::less<>(), along(up));
        cut(members.first(members.size() / 2));
        cut(members.subspan(members.size() / 2));
    }

    void add(std::span<const std::size_t> members)
    {
        SurveyBlock block;
        block.own.assign(members.begin(), members.end());
        std::ranges::sort(block.own);
        std::vector<bool> takesPart(m_survey.points.size(), false);
        for (const std::size_t i : block.own)
            takesPart[i] = true;
        std::size_t strong = 0;
        for (const std::size_t i : m_strongest) {
            if (!takesPart[i] && strong < kStrongest) {
                takesPart[i] = true;
                ++strong;
            }
        }
        addClosest(block.own, takesPart);
        fill(block, takesPart);
        m_blocks.push_back(std::move(block));
    }

    /// Points just outside the block's own.
    void addClosest(const std::vector<std::size_t>& own, std::vector<bool>& takesPart) const
    {
        std::vector<std::pair<double, std::size_t>> near;
        for (const std::size_t other : m_view) {
            if (takesPart[other])
                continue;
            double least = 1e300;
            for (const std::size_t mine : own)
                least = std::min(least,
                                 std::hypot(m_survey.points[mine].x.si() - m_survey.points[other].x.si(),
                                            m_survey.points[mine].up.si() - m_survey.points[other].up.si()));
            near.emplace_back(least, other);
        }
        const auto last = near.begin() + static_cast<std::ptrdiff_t>(std::min(near.size(), kClosest));
        std::ranges::partial_sort(near, last);
        for (auto it = near.begin(); it != last; ++it)
            takesPart[it->second] = true;
    }

    void fill(SurveyBlock& block, const std::vector<bool>& takesPart) const
    {
        Survey& survey = block.survey;
        survey.unit = m_survey.unit;
        survey.limit = m_survey.limit;
        survey.heliumFraction = m_survey.heliumFraction;
        survey.response = m_survey.response;
        std::vector<bool> isPresent = takesPart;
        // A response is over for readings that come long after it.
        constexpr double kLongestTailInResponses = 600.0; // ten of the longest slow clean-ups supposed
        const double longest = kLongestTailInResponses * m_survey.response.si();
        std::vector<double> nextPart(m_survey.readings.size(), std::numeric_limits<double>::infinity());
        double next = std::numeric_limits<double>::infinity();
        for (std::size_t r = m_survey.readings.size(); r-- > 0;) {
            nextPart[r] = next;
            if (takesPart[m_pointOf[r]])
                next = m_survey.readings[r].start.si();
        }
        for (std::size_t r = 0; r < m_survey.readings.size(); ++r) {
            const bool isPart = takesPart[m_pointOf[r]];
            const bool hasGone = nextPart[r] - m_survey.readings[r].end().si() > longest;
            if (!isPart && (hasGone || m_survey.readings[r].net().si() < m_tailFrom))
                continue;
            SurveyReading reading = m_survey.readings[r];
            isPresent[m_pointOf[r]] = true;
            reading.isVoid = reading.isVoid || !isPart;
            survey.readings.push_back(std::move(reading));
        }
        for (const std::size_t i : block.own) {
            survey.points.push_back(m_survey.points[i]);
            isPresent[i] = false;
        }
        for (std::size_t i = 0; i < m_survey.points.size(); ++i) {
            if (isPresent[i])
                survey.points.push_back(m_survey.points[i]);
        }
    }

    const Survey& m_survey;
    std::vector<double> m_net;          ///< largest of each point
    std::vector<std::size_t> m_pointOf; ///< of each reading
    std::vector<std::size_t> m_view;    ///< points of the view being cut
    std::vector<std::size_t> m_strongest;
    double m_tailFrom = 0.0; ///< smallest net of a reading kept for its tail alone, Pa·m³/s
    std::vector<SurveyBlock> m_blocks;
};

} // namespace

std::vector<SurveyBlock> surveyBlocks(const Survey& survey)
{
    if (survey.points.size() <= kLargestWhole)
        return std::vector<SurveyBlock>(1);
    return Cutter(survey).run();
}

} // namespace sealwalk::analysis
