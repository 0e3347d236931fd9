// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/point_matching.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>
#include <unordered_map>
#include <unordered_set>

namespace sealwalk::analysis {

using namespace model;

namespace {

/// A point with what it can be told by.
struct Known
{
    const TestPoint* point = nullptr;
    std::string joint;
    JointKind kind = JointKind::OringSeal;
    std::string sheet;
    std::optional<geometry::Point> place;
};

std::vector<Known> knownPoints(const Sketch& sketch)
{
    std::unordered_map<JointId, const Joint*> joints;
    std::unordered_map<JointId, geometry::Path> paths;
    std::unordered_map<SheetId, const Sheet*> sheets;
    for (const Sheet& sheet : sketch.sheets)
        sheets[sheet.id] = &sheet;
    for (const Joint& joint : sketch.joints) {
        joints[joint.id] = &joint;
        paths[joint.id] = geometry::outline(joint.shape);
    }
    std::vector<Known> result;
    for (const TestPoint* point : sketch.activePoints()) {
        Known known;
        known.point = point;
        if (const auto joint = joints.find(point->joint); joint != joints.end()) {
            known.joint = joint->second->name;
            known.kind = joint->second->kind;
            if (const auto sheet = sheets.find(joint->second->sheet); sheet != sheets.end())
                known.sheet = sheet->second->name;
            const geometry::Path& path = paths[point->joint];
            if (!path.isEmpty())
                known.place = path.at(point->along * path.length()).place;
        }
        result.push_back(std::move(known));
    }
    return result;
}

class Matcher
{
public:
    Matcher(const Sketch& before, const Sketch& after)
        : m_before(knownPoints(before))
        , m_after(knownPoints(after))
    {
        for (std::size_t i = 0; i < m_after.size(); ++i)
            m_indexAfter[m_after[i].point->id] = i;
        for (std::size_t i = 0; i < m_before.size(); ++i)
            m_indexBefore[m_before[i].point->id] = i;
        m_partner.resize(m_after.size());
        m_taken.resize(m_before.size(), false);
    }

    void byIdentity()
    {
        for (std::size_t i = 0; i < m_after.size(); ++i)
            if (const auto same = m_indexBefore.find(m_after[i].point->id); same != m_indexBefore.end())
                pair(same->second, i, MatchedBy::Identity);
    }

    void byPerson(const std::vector<PointPair>& same)
    {
        for (const auto& [one, other] : same) {
            pairKnown(one, other);
            pairKnown(other, one);
        }
    }

    void keepApart(const std::vector<PointPair>& pairs)
    {
        for (const auto& [one, other] : pairs) {
            m_apart.insert({one, other});
            m_apart.insert({other, one});
        }
    }

    void byNumber()
    {
        std::map<int, std::size_t> numbers;
        for (std::size_t i = 0; i < m_before.size(); ++i)
            numbers[m_before[i].point->number] = i;
        for (std::size_t i = 0; i < m_after.size(); ++i) {
            const auto same = numbers.find(m_after[i].point->number);
            if (same != numbers.end() && m_before[same->second].joint == m_after[i].joint)
                propose(same->second, i, MatchedBy::Number);
        }
    }

    /// The nearest pair first, so that no point loses its own partner to a neighbour's.
    void byPlace()
    {
        std::vector<std::tuple<double, std::size_t, std::size_t>> pairs;
        for (std::size_t a = 0; a < m_after.size(); ++a) {
            if (m_partner[a] || !m_after[a].place)
                continue;
            for (std::size_t b = 0; b < m_before.size(); ++b) {
                if (m_taken[b] || !m_before[b].place || m_before[b].sheet != m_after[a].sheet)
                    continue;
                const double apart = distance(*m_before[b].place, *m_after[a].place);
                if (apart <= kReachOfPlace)
                    pairs.emplace_back(apart, b, a);
            }
        }
        std::sort(pairs.begin(), pairs.end());
        for (const auto& candidate : pairs)
            propose(std::get<1>(candidate), std::get<2>(candidate), MatchedBy::Place);
    }

    /// A port that was moved has another number and another place, and its name.
    void byName()
    {
        std::map<std::pair<std::string, JointKind>,
                 std::pair<std::vector<std::size_t>, std::vector<std::size_t>>>
            left;
        for (std::size_t b = 0; b < m_before.size(); ++b)
            if (!m_taken[b] && !m_before[b].joint.empty())
                left[{m_before[b].joint, m_before[b].kind}].first.push_back(b);
        for (std::size_t a = 0; a < m_after.size(); ++a)
            if (!m_partner[a] && !m_after[a].joint.empty())
                left[{m_after[a].joint, m_after[a].kind}].second.push_back(a);
        for (const auto& [name, points] : left)
            if (points.first.size() == 1 && points.second.size() == 1)
                propose(points.first.front(), points.second.front(), MatchedBy::Name);
    }

    [[nodiscard]] std::vector<PointMatch> rows() const
    {
        std::vector<PointMatch> result;
        for (std::size_t i = 0; i < m_after.size(); ++i) {
            PointMatch row;
            row.after = m_after[i].point->id;
            if (m_partner[i]) {
                row.before = m_before[m_partner[i]->first].point->id;
                row.by = m_partner[i]->second;
            }
            result.push_back(row);
        }
        for (std::size_t i = 0; i < m_before.size(); ++i)
            if (!m_taken[i])
                result.push_back({m_before[i].point->id, std::nullopt, MatchedBy::Nothing});
        return result;
    }

private:
    void pairKnown(PointId before, PointId after)
    {
        const auto b = m_indexBefore.find(before);
        const auto a = m_indexAfter.find(after);
        if (b != m_indexBefore.end() && a != m_indexAfter.end())
            pair(b->second, a->second, MatchedBy::Person);
    }

    void propose(std::size_t before, std::size_t after, MatchedBy by)
    {
        if (!m_apart.contains({m_before[before].point->id, m_after[after].point->id}))
            pair(before, after, by);
    }

    void pair(std::size_t before, std::size_t after, MatchedBy by)
    {
        if (m_taken[before] || m_partner[after])
            return;
        m_taken[before] = true;
        m_partner[after] = {before, by};
    }

    std::vector<Known> m_before;
    std::vector<Known> m_after;
    std::unordered_map<PointId, std::size_t> m_indexBefore;
    std::unordered_map<PointId, std::size_t> m_indexAfter;
    std::vector<std::optional<std::pair<std::size_t, MatchedBy>>> m_partner; ///< of each point after
    std::set<PointPair> m_apart;
    std::vector<bool> m_taken; ///< of each point before
};

} // namespace

std::vector<PointMatch> matchPoints(const Sketch& before, const Sketch& after, const KnownPairs& known)
{
    Matcher matcher(before, after);
    matcher.keepApart(known.apart);
    matcher.byIdentity();
    matcher.byPerson(known.same);
    matcher.byNumber();
    matcher.byPlace();
    matcher.byName();
    return matcher.rows();
}

} // namespace sealwalk::analysis
