// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/map_builder.h"

#include "core/base/calendar_day.h"
#include "core/report/finding_range.h"
#include "core/report/rate_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

namespace sealwalk::report {

namespace {

using analysis::Finding;
using analysis::PointFinding;
using analysis::Verdict;

constexpr double kNoArea = 1e-9;

/// Twice the signed area, mm²; above 0 when the walk is counter-clockwise.
double signedArea(const geometry::Path& path)
{
    const auto v = path.vertices();
    double sum = 0.0;
    for (std::size_t i = 0; i < v.size(); ++i) {
        const geometry::Point a = v[i];
        const geometry::Point b = v[(i + 1) % v.size()];
        sum += a.x * b.y - b.x * a.y;
    }
    return sum;
}

bool answered(Finding finding)
{
    return finding == Finding::Leak || finding == Finding::Shared || finding == Finding::Echo ||
           finding == Finding::Masked || finding == Finding::Permeation;
}

Teeth teethOf(const PointFinding& finding, PointState state)
{
    switch (state) {
    case PointState::LeakOver:
        return Teeth::Full;
    case PointState::LeakCannotSay:
    case PointState::Shared:
    case PointState::Answered:
        return finding.verdict == Verdict::Over        ? Teeth::Full
               : finding.verdict == Verdict::CannotSay ? Teeth::Few
                                                       : Teeth::None;
    default:
        return Teeth::None;
    }
}

std::optional<LeakRate> rateOf(const PointFinding& finding, PointState state)
{
    switch (state) {
    case PointState::LeakOver:
    case PointState::LeakCannotSay:
    case PointState::LeakWithin:
    case PointState::Shared:
    case PointState::Permeation:
        return finding.rate ? finding.rate : finding.asRead;
    case PointState::Echo:
    case PointState::Answered:
        return finding.asRead ? finding.asRead : finding.rate;
    default:
        return std::nullopt;
    }
}

std::string_view wordOf(PointState state)
{
    switch (state) {
    case PointState::LeakOver:
    case PointState::LeakCannotSay:
    case PointState::LeakWithin:
        return "leak";
    case PointState::Shared:
        return "shared leak";
    case PointState::Echo:
    case PointState::EchoTakenOut:
        return "echo";
    case PointState::Masked:
        return "masked";
    case PointState::Clear:
        return "no response";
    case PointState::BelowDetectable:
        return "no response, too blind to pass";
    case PointState::Permeation:
        return "permeation";
    case PointState::Void:
        return "void";
    case PointState::NotAccessible:
        return "not accessible";
    case PointState::NotSprayed:
        return "not sprayed";
    case PointState::RepairedAwaiting:
        return "repaired, awaiting re-test";
    case PointState::Answered:
        return "answered, not judged yet";
    case PointState::OtherSource:
        return "other source";
    }
    return {};
}

std::string_view verdictWords(Verdict verdict)
{
    switch (verdict) {
    case Verdict::Over:
        return "over the limit";
    case Verdict::CannotSay:
        return "cannot say";
    case Verdict::Within:
        return "within the limit";
    case Verdict::NoAnswer:
        return "no answer";
    case Verdict::NotCounted:
        return model::kVerdictNotCounted;
    }
    return {};
}

using Points = std::unordered_map<model::PointId, const model::TestPoint*>;

std::string numbersOf(const std::vector<model::PointId>& points, const Points& known)
{
    std::string text;
    for (const model::PointId point : points)
        if (const auto found = known.find(point); found != known.end())
            text += (text.empty() ? "" : ", ") + std::to_string(found->second->number);
    return text;
}

struct Gathered
{
    const PointFinding* finding = nullptr;
    const model::Repair* temporary = nullptr;
};

class Builder
{
public:
    Builder(const model::Sketch& sketch, model::SheetId sheet)
        : m_sketch(sketch)
    {
        const model::Sheet* found = sketch.sheet(sheet);
        if (found == nullptr)
            return;
        m_content.sheet = sheet;
        m_sheet = found;
        m_content.title = found->seenFrom.empty()
                              ? found->name
                              : fmt::format("{}, seen from {}", found->name, found->seenFrom);
        m_content.width = found->width;
        m_content.height = found->height;
        m_content.upDirection = found->upDirection;
        m_content.seenFromAbove = found->seenFromAbove;
        m_content.outlines = found->outlines;
        m_content.underlay = found->underlay;
        for (const model::TestPoint& point : sketch.points) {
            m_points.emplace(point.id, &point);
            if (point.retired)
                m_gone.insert(point.joint);
        }
        for (const model::TestPoint& point : sketch.points)
            if (!point.retired)
                m_gone.erase(point.joint);
    }

    MapContent build(const std::unordered_map<model::PointId, Gathered>& gathered, const MapScale& scale,
                     const MapOptions& options)
    {
        m_content.scale = scale;
        for (const model::Joint* joint : m_sketch.jointsOn(m_content.sheet))
            if (!m_gone.contains(joint->id))
                addJoint(*joint, gathered, options);
        addBrackets(gathered);
        return std::move(m_content);
    }

private:
    void addJoint(const model::Joint& joint, const std::unordered_map<model::PointId, Gathered>& gathered,
                  const MapOptions& options)
    {
        MapJoint drawn{joint.id, joint.name, geometry::outline(joint.shape), 0.0};
        if (const auto* spot = std::get_if<geometry::Spot>(&joint.shape))
            drawn.spotRadius = spot->radius;
        const double area = drawn.outline.isClosed() ? signedArea(drawn.outline) : 0.0;
        const double side = area > kNoArea ? -1.0 : 1.0; // left of the walk is outside when it runs clockwise
        for (const model::Stretch& part : model::stretches(m_sketch, joint.id)) {
            MapStretch stretch;
            stretch.point = part.point;
            stretch.number = part.number;
            stretch.joint = m_content.joints.size();
            stretch.from = part.from;
            stretch.to = part.to;
            const geometry::Station station = drawn.outline.at(part.centre);
            stretch.place = station.place;
            stretch.outward = side * station.left();
            stretch.tip = model::placeText(m_sheet, joint, drawn.outline, *m_points.at(part.point));
            const auto found = gathered.find(part.point);
            fill(stretch, found == gathered.end() ? Gathered{} : found->second, options);
            m_content.stretches.push_back(std::move(stretch));
        }
        m_content.joints.push_back(std::move(drawn));
    }

    void fill(MapStretch& stretch, const Gathered& gathered, const MapOptions& options) const
    {
        std::string spoken = fmt::format("point {}, ", stretch.number);
        Verdict verdict = Verdict::NoAnswer;
        if (const PointFinding* finding = gathered.finding) {
            verdict = finding->verdict;
            stretch.state = stateOf(*finding, options);
            stretch.teeth = teethOf(*finding, stretch.state);
            stretch.rate = rateOf(*finding, stretch.state);
            stretch.isAtLeast = stretch.rate && stretch.rate == finding->atLeast;
            if (stretch.rate && stretch.rate == finding->rate)
                stretch.range = rangeOf(*finding, m_content.scale.gas);
            const std::string others = numbersOf(finding->of, m_points);
            if (stretch.state == PointState::Masked && !others.empty())
                stretch.label = "by " + others;
            else if (stretch.state == PointState::EchoTakenOut && !others.empty())
                stretch.label = "echo of " + others;
            spoken += finding->finding == Finding::VirtualLeak ? model::name(finding->finding)
                                                               : wordOf(stretch.state);
            if (!others.empty())
                spoken += (stretch.state == PointState::Masked   ? " by "
                           : stretch.state == PointState::Shared ? " with "
                                                                 : " of ") +
                          others;
        } else {
            spoken += wordOf(stretch.state);
        }
        if (stretch.rate)
            spoken += fmt::format(", {}{} {}{}", stretch.isAtLeast ? "at least " : "",
                                  plainRate(m_content.scale.shown(*stretch.rate)), m_content.scale.spokenUnit,
                                  m_content.scale.gas.isAir() ? " of air" : "");
        if (stretch.range)
            spoken += ", 95 % range " + plainRange(m_content.scale.number(stretch.range->low),
                                                   m_content.scale.number(stretch.range->high));
        if (gathered.finding != nullptr)
            spoken += fmt::format(", {}", verdictWords(verdict));
        if (gathered.temporary != nullptr) {
            stretch.temporary = true;
            const std::optional<Timestamp>& due = gathered.temporary->due;
            stretch.temporaryOverdue = due && options.now.isSet() && isPast(*due, options.now);
            const std::string held = due ? "temporary repair, due " + due->date() : "temporary repair";
            stretch.tip += (stretch.tip.empty() ? "" : "; ") + held;
            spoken += ", " + held;
        } else if (gathered.finding != nullptr && gathered.finding->temporaryRepair) {
            stretch.temporary = true;
            spoken += ", temporary repair";
        }
        if (gathered.finding != nullptr && gathered.finding->concession) {
            stretch.conceded = true;
            const auto& until = gathered.finding->concededUntil;
            const std::string granted = until ? "conceded until " + until->date() : "conceded without end";
            stretch.tip += (stretch.tip.empty() ? "" : "; ") + granted;
            spoken += ", " + granted;
        }
        stretch.spoken = std::move(spoken);
    }

    /// Neighbours on one joint that name each other get one bracket; others keep a plate each.
    void addBrackets(const std::unordered_map<model::PointId, Gathered>& gathered)
    {
        std::unordered_map<model::PointId, std::size_t> index;
        for (std::size_t i = 0; i < m_content.stretches.size(); ++i)
            index.emplace(m_content.stretches[i].point, i);
        std::vector<bool> taken(m_content.stretches.size(), false);
        for (std::size_t i = 0; i < m_content.stretches.size(); ++i) {
            const MapStretch& stretch = m_content.stretches[i];
            if (stretch.state != PointState::Shared || taken[i])
                continue;
            MapBracket bracket{{i}};
            for (const model::PointId partner : gathered.at(stretch.point).finding->of) {
                const auto other = index.find(partner);
                if (other == index.end() || taken[other->second] || other->second == i)
                    continue;
                const MapStretch& candidate = m_content.stretches[other->second];
                if (candidate.state == PointState::Shared && candidate.joint == stretch.joint)
                    bracket.stretches.push_back(other->second);
            }
            if (bracket.stretches.size() < 2)
                continue;
            for (const std::size_t member : bracket.stretches)
                taken[member] = true;
            orderAlong(bracket);
            m_content.brackets.push_back(std::move(bracket));
        }
    }

    /// Sorted along the joint; on a closed joint the run starts after its widest gap, so that a bracket over
    /// the start mark does not go the long way round.
    void orderAlong(MapBracket& bracket) const
    {
        auto& s = bracket.stretches;
        const auto from = [&](std::size_t i) { return m_content.stretches[i].from; };
        std::sort(s.begin(), s.end(), [&](std::size_t a, std::size_t b) { return from(a) < from(b); });
        const geometry::Path& path = m_content.joints[m_content.stretches[s.front()].joint].outline;
        if (!path.isClosed())
            return;
        std::size_t first = 0;
        double widest = from(s.front()) + path.length() - from(s.back());
        for (std::size_t i = 1; i < s.size(); ++i)
            if (from(s[i]) - from(s[i - 1]) > widest) {
                widest = from(s[i]) - from(s[i - 1]);
                first = i;
            }
        std::rotate(s.begin(), s.begin() + static_cast<std::ptrdiff_t>(first), s.end());
    }

    const model::Sketch& m_sketch;
    const model::Sheet* m_sheet = nullptr;
    MapContent m_content;
    Points m_points;
    /// All their points are retired; drawn, they would look forgotten.
    std::unordered_set<model::JointId> m_gone;
};

} // namespace

PointState stateOf(const PointFinding& finding, const MapOptions& options)
{
    if (finding.awaitsRetest)
        return PointState::RepairedAwaiting;
    if (!options.judged && answered(finding.finding))
        return PointState::Answered;
    switch (finding.finding) {
    case Finding::Leak:
        return finding.verdict == Verdict::Over     ? PointState::LeakOver
               : finding.verdict == Verdict::Within ? PointState::LeakWithin
                                                    : PointState::LeakCannotSay;
    case Finding::Shared:
        return PointState::Shared;
    case Finding::Echo:
        return options.echoesTakenOut ? PointState::EchoTakenOut : PointState::Echo;
    case Finding::Masked:
        return PointState::Masked;
    case Finding::Permeation:
        return PointState::Permeation;
    case Finding::Clear:
        return PointState::Clear;
    case Finding::BelowDetectable:
        return PointState::BelowDetectable;
    case Finding::Void:
        return PointState::Void;
    case Finding::NotAccessible:
        return PointState::NotAccessible;
    case Finding::NotTested:
    case Finding::NotSprayed:
        return PointState::NotSprayed;
    case Finding::OtherSource:
    case Finding::VirtualLeak:
        return PointState::OtherSource;
    }
    return PointState::NotSprayed;
}

MapContent mapOf(const model::Job& job, const model::TestObject& object, model::SheetId sheet,
                 std::span<const PointFinding> findings, const MapOptions& options)
{
    MapScale scale;
    // Within what can be drawn: an object from elsewhere may say anything.
    scale.lowestDecade = std::clamp(object.scale.lowestDecade, -20, 10);
    scale.decades = std::clamp(object.scale.decades, 1, 20);
    scale.limit = job.setup.pointLimit;
    scale.smallestDetectable = options.smallestDetectable;
    scale.shownPerSi = options.shownPerSi;
    scale.unit = options.unit;
    scale.gas = options.gas;
    scale.spokenUnit = options.spokenUnit;

    std::unordered_map<model::PointId, Gathered> gathered;
    for (const PointFinding& finding : findings)
        gathered[finding.point].finding = &finding;
    for (const std::vector<model::Repair>* repairs : {&options.carried, &job.repairs})
        for (const model::Repair& repair : *repairs)
            if (!repair.permanent && !repair.madeGoodBy)
                for (const model::PointId point : repair.points)
                    gathered[point].temporary = &repair;
    return Builder(job.sketch, sheet).build(gathered, scale, options);
}

MapContent mapOf(const model::Sketch& sketch, model::SheetId sheet, const MapScale& scale)
{
    return Builder(sketch, sheet).build({}, scale, {});
}

} // namespace sealwalk::report
