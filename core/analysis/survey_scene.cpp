// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/survey_scene.h"

#include "core/analysis/slow_rise.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <unordered_map>

namespace sealwalk::analysis {

namespace {

// A reading after a shorter exposure than this share of full is not scaled up further (physics: f >= 0.2).
constexpr double kLeastExposure = 0.2;
// Nothing is read more exactly than this part of what the detector shows.
constexpr double kReadingResolution = 0.02;
constexpr double kElevationNoise = 0.04;

double quantile(std::vector<double> values, double share)
{
    if (values.empty())
        return 0.0;
    const auto nth = static_cast<std::ptrdiff_t>(share * static_cast<double>(values.size() - 1) + 0.5);
    std::nth_element(values.begin(), values.begin() + nth, values.end());
    return values[static_cast<std::size_t>(nth)];
}

double distance(const Place& a, const Place& b)
{
    return std::hypot(a.x - b.x, a.up - b.up);
}

Place towards(const Place& from, const Place& to, double length)
{
    const double whole = distance(from, to);
    if (whole <= 0.0)
        return from;
    const double share = length / whole;
    return {from.x + share * (to.x - from.x), from.up + share * (to.up - from.up)};
}

Place mirrored(const Place& of, const Place& about)
{
    return {2.0 * about.x - of.x, 2.0 * about.up - of.up};
}

/// Point nearest to `p` on the segment a-b.
Place nearestOnSegment(const Place& p, const Place& a, const Place& b)
{
    const double dx = b.x - a.x;
    const double dy = b.up - a.up;
    const double square = dx * dx + dy * dy;
    if (square <= 0.0)
        return a;
    const double t = std::clamp(((p.x - a.x) * dx + (p.up - a.up) * dy) / square, 0.0, 1.0);
    return {a.x + t * dx, a.up + t * dy};
}

/// Finds the neighbour each way along the joint: the nearest, and the nearest on its far side. Sorted by x
/// within the joint would fail on rings, so distances decide.
class NeighbourFinder
{
public:
    explicit NeighbourFinder(std::vector<Stretch>& stretches)
        : m_stretches(stretches)
    {}

    void run(const std::vector<std::size_t>& members)
    {
        // In walking order the neighbours are almost always next in the list; a window keeps huge joints
        // fast.
        constexpr std::size_t kWindow = 64;
        for (std::size_t at = 0; at < members.size(); ++at) {
            std::vector<std::size_t> near;
            if (members.size() <= 2 * kWindow + 1) {
                near = members;
            } else {
                for (std::size_t step = 0; step <= 2 * kWindow; ++step)
                    near.push_back(members[(at + members.size() + step - kWindow) % members.size()]);
            }
            pick(members[at], near);
        }
    }

private:
    void pick(std::size_t self, const std::vector<std::size_t>& near)
    {
        Stretch& stretch = m_stretches[self];
        const std::size_t first = nearest(self, near, nullptr);
        if (first == self)
            return;
        stretch.neighbours[0] = first;
        stretch.neighbours[1] = nearest(self, near, &m_stretches[first].middle);
    }

    /// The nearest of `near` that adjoins `self`; with `away`, only what lies on the other side of self.
    std::size_t nearest(std::size_t self, const std::vector<std::size_t>& near, const Place* away) const
    {
        const Place& middle = m_stretches[self].middle;
        std::size_t best = self;
        double bestDistance = std::numeric_limits<double>::infinity();
        for (const std::size_t other : near) {
            if (other == self)
                continue;
            const Place& there = m_stretches[other].middle;
            const double gap = distance(middle, there);
            const double reach = 1.6 * (m_stretches[self].half + m_stretches[other].half) + 0.005;
            if (gap > reach || gap >= bestDistance || gap <= 0.0)
                continue;
            if (away != nullptr && (there.x - middle.x) * (away->x - middle.x) +
                                           (there.up - middle.up) * (away->up - middle.up) >
                                       0.2 * gap * distance(middle, *away))
                continue;
            best = other;
            bestDistance = gap;
        }
        return best;
    }

    std::vector<Stretch>& m_stretches;
};

void layOut(Stretch& stretch, std::size_t self, const std::vector<Stretch>& all)
{
    const bool hasFirst = stretch.neighbours[0] != self;
    const bool hasSecond = stretch.neighbours[1] != self;
    Place forward{stretch.middle.x + 1.0, stretch.middle.up};
    Place backward{stretch.middle.x - 1.0, stretch.middle.up};
    if (hasFirst) {
        forward = all[stretch.neighbours[0]].middle;
        backward = hasSecond ? all[stretch.neighbours[1]].middle : mirrored(forward, stretch.middle);
    }
    const auto along = [&](double share) {
        return share >= 0.0 ? towards(stretch.middle, forward, share * stretch.half)
                            : towards(stretch.middle, backward, -share * stretch.half);
    };
    constexpr std::array<double, Stretch::kPlaces> kPlaceShares{0.0, -0.45, 0.45, -0.88, 0.88};
    for (std::size_t i = 0; i < Stretch::kPlaces; ++i)
        stretch.places[i] = along(kPlaceShares[i]);
    for (std::size_t i = 0; i < Stretch::kPasses; ++i)
        stretch.passes[i] = along(-1.0 + 2.0 * static_cast<double>(i) / (Stretch::kPasses - 1));
    if (!hasFirst) {
        // The joint's direction is unknown at a lone point: a leak may lie any way from it.
        stretch.places[3] = {stretch.middle.x, stretch.middle.up - 0.6 * stretch.half};
        stretch.places[4] = {stretch.middle.x, stretch.middle.up + 0.6 * stretch.half};
    }
}

std::vector<Stretch> makeStretches(const Survey& survey)
{
    std::vector<Stretch> stretches;
    std::unordered_map<std::string, std::size_t> views;
    std::map<std::pair<std::size_t, std::string>, std::size_t> joints;
    std::vector<std::vector<std::size_t>> members;
    for (const SurveyPoint& point : survey.points) {
        Stretch stretch;
        stretch.view = views.emplace(point.view, views.size()).first->second;
        const auto joint = joints.emplace(std::pair(stretch.view, point.joint), joints.size()).first->second;
        stretch.joint = joint;
        stretch.middle = {point.x.si(), point.up.si()};
        stretch.half = point.halfLength.si();
        stretch.isPlan = point.isPlan;
        stretch.neighbours = {stretches.size(), stretches.size()};
        members.resize(joints.size());
        members[joint].push_back(stretches.size());
        stretches.push_back(stretch);
    }
    NeighbourFinder finder(stretches);
    for (const std::vector<std::size_t>& one : members)
        finder.run(one);
    for (std::size_t i = 0; i < stretches.size(); ++i)
        layOut(stretches[i], i, stretches);
    return stretches;
}

/// The floor the background returns to, followed over the survey: a low quantile of the readings around.
std::vector<double> floorOf(const std::vector<double>& backgrounds)
{
    constexpr std::size_t kWindow = 12;
    std::vector<double> floors(backgrounds.size());
    for (std::size_t i = 0; i < backgrounds.size(); ++i) {
        const std::size_t from = i > kWindow ? i - kWindow : 0;
        const std::size_t to = std::min(backgrounds.size(), i + kWindow + 1);
        floors[i] = quantile({backgrounds.begin() + static_cast<std::ptrdiff_t>(from),
                              backgrounds.begin() + static_cast<std::ptrdiff_t>(to)},
                             0.25);
    }
    return floors;
}

struct Noise
{
    double ofNet = 0.0; ///< standard deviation, as shown
    double offset = 0.0;
};

/// From how the background jumps between quiet readings, and from how the smallest answers scatter.
Noise estimateNoise(const Survey& survey, const std::vector<double>& backgrounds,
                    const std::vector<double>& nets)
{
    std::vector<double> jumps;
    std::vector<double> sizes;
    for (std::size_t i = 0; i < backgrounds.size(); ++i) {
        sizes.push_back(std::abs(backgrounds[i]));
        if (i > 0)
            jumps.push_back(std::abs(backgrounds[i] - backgrounds[i - 1]));
    }
    constexpr double kMedianOfAbsoluteDifference = 0.9539; // of two normal deviates, in standard deviations
    double single = quantile(jumps, 0.35) / 0.642;         // the 35 % quantile of the same
    single = std::max(single, quantile(jumps, 0.5) / kMedianOfAbsoluteDifference * 0.5);
    // Where every second spray came before the last response had cleared, the jumps are tails. The lower part
    // of the backgrounds is without them; it may not be told apart better than to a few times.
    constexpr double kLower = 0.6;
    constexpr double kMedianInLower = 0.62; // of two deviates below that quantile of a normal law
    constexpr double kAtMostOfLower = 3.0;
    const double edge = quantile(backgrounds, kLower);
    std::vector<double> lower;
    std::vector<double> jumpsInLower;
    for (const double background : backgrounds) {
        if (background > edge)
            continue;
        if (!lower.empty())
            jumpsInLower.push_back(std::abs(background - lower.back()));
        lower.push_back(background);
    }
    constexpr std::size_t kEnough = 4;
    if (jumpsInLower.size() >= kEnough)
        single = std::min(single, kAtMostOfLower * quantile(jumpsInLower, 0.5) / kMedianInLower);
    single = std::max({single, kReadingResolution * quantile(sizes, 0.5), 1e-4 * survey.limit.si()});
    Noise noise;
    noise.ofNet = std::sqrt(2.0) * single;
    if (nets.size() >= 8) {
        const double low = quantile(nets, 0.1);
        const double middle = quantile(nets, 0.3);
        noise.offset = std::clamp(middle, 0.0, 2.0 * noise.ofNet);
        const double spread = (middle - low) / 0.757; // between those quantiles of a normal law
        noise.ofNet = std::clamp(spread, noise.ofNet, 2.5 * noise.ofNet);
    }
    return noise;
}

/// Fills what lists the readings that count: helium does not pass from one view to another, so those of one
/// view stand together.
void sortByView(Scene& scene, const Survey& survey)
{
    for (std::size_t i = 0; i < scene.everyReading.size(); ++i) {
        if (!survey.readings[i].isVoid)
            scene.placeInEvery.push_back(i);
    }
    const auto viewOf = [&](std::size_t i) { return scene.stretches[scene.everyReading[i].point].view; };
    std::ranges::stable_sort(scene.placeInEvery, std::less<>(), viewOf);
    for (const Stretch& stretch : scene.stretches)
        scene.readingsIn.resize(std::max(scene.readingsIn.size(), stretch.view + 1));
    for (const std::size_t i : scene.placeInEvery) {
        const SceneReading& reading = scene.everyReading[i];
        ReadingRange& range = scene.readingsIn[viewOf(i)];
        if (range.count() == 0)
            range.first = scene.readings.size();
        range.last = scene.readings.size() + 1;
        scene.readingsAt[reading.point].push_back(scene.readings.size());
        scene.readings.push_back(reading);
    }
}

/// Fills SceneReading::beside.
void lookBeside(Scene& scene)
{
    constexpr double kAtMost = 3.0; // standard deviations
    for (SceneReading& reading : scene.readings) {
        double most = -1.0;
        for (const std::size_t next : scene.stretches[reading.point].neighbours) {
            if (next == reading.point)
                continue;
            for (const std::size_t i : scene.readingsAt[next])
                most =
                    std::max(most, std::max(scene.readings[i].rate, 0.0) + kAtMost * scene.readings[i].noise);
        }
        reading.beside = most < 0.0 ? std::numeric_limits<double>::infinity() : most;
    }
}

} // namespace

Place Stretch::nearestTo(const Place& leak) const
{
    const Place best = nearestOnSegment(leak, passes.front(), passes[kPasses / 2]);
    const Place other = nearestOnSegment(leak, passes[kPasses / 2], passes.back());
    const auto square = [&](const Place& p) {
        return (p.x - leak.x) * (p.x - leak.x) + (p.up - leak.up) * (p.up - leak.up);
    };
    return square(other) < square(best) ? other : best;
}

Scene makeScene(const Survey& survey)
{
    Scene scene;
    scene.response = survey.response.si();
    scene.heliumShare = survey.heliumFraction.si();
    scene.limit = survey.limit.si();
    scene.stretches = makeStretches(survey);
    scene.readingsAt.resize(survey.points.size());

    std::vector<double> backgrounds;
    std::vector<double> nets;
    for (const SurveyReading& reading : survey.readings) {
        backgrounds.push_back(reading.background.si());
        nets.push_back(reading.net().si());
    }
    const std::vector<double> floors = floorOf(backgrounds);
    const Noise noise = estimateNoise(survey, backgrounds, nets);
    scene.offset = noise.offset;

    std::unordered_map<int, std::size_t> indexOf;
    for (std::size_t i = 0; i < survey.points.size(); ++i)
        indexOf.emplace(survey.points[i].number, i);
    std::unordered_map<std::string, std::size_t> conditions;
    std::vector<std::size_t> uses;
    std::vector<double> noises;
    for (std::size_t i = 0; i < survey.readings.size(); ++i) {
        const SurveyReading& from = survey.readings[i];
        SceneReading reading;
        reading.survey = i;
        reading.point = indexOf.at(from.point);
        reading.start = from.start.si();
        reading.end = from.end().si();
        const double responses = scene.response > 0.0 && !from.fullSignal
                                     ? from.dwell.si() / scene.response
                                     : std::numeric_limits<double>::infinity();
        const double followed = std::min(responses, 50.0);
        reading.keptPerPass = std::exp(-followed / static_cast<double>(Stretch::kPasses));
        reading.fullInPass = -std::expm1(-followed);
        reading.exposure = std::max(-std::expm1(-responses), kLeastExposure) * scene.heliumShare;
        reading.rawNet = nets[i];
        reading.detectable = from.smallestDetectable.si();
        reading.rate = (nets[i] - noise.offset) / reading.exposure;
        for (const int number : from.shielded)
            if (const auto shielded = indexOf.find(number); shielded != indexOf.end())
                reading.shielded.push_back(shielded->second);
        reading.late = from.delay && isLate(*from.delay, survey.response);
        const double elevation = std::max(0.0, backgrounds[i] - floors[i]);
        reading.elevated =
            from.delay ? std::numeric_limits<double>::infinity() : elevation / reading.exposure;
        reading.noise = std::hypot(noise.ofNet, kElevationNoise * elevation) / reading.exposure;
        const auto condition = conditions.emplace(from.condition, conditions.size());
        if (condition.second) {
            scene.conditions.push_back(from.condition);
            uses.push_back(0);
        }
        reading.condition = condition.first->second;
        scene.everyReading.push_back(reading);
        if (from.isVoid)
            continue;
        ++uses[reading.condition];
        noises.push_back(reading.noise);
    }
    sortByView(scene, survey);
    scene.typicalNoise = quantile(noises, 0.5);
    lookBeside(scene);
    if (!uses.empty())
        scene.usualCondition = static_cast<std::size_t>(std::ranges::max_element(uses) - uses.begin());
    return scene;
}

bool Scene::wasSprayed(std::size_t point, std::size_t condition) const
{
    return std::ranges::any_of(readingsAt[point],
                               [&](std::size_t i) { return readings[i].condition == condition; });
}

std::vector<double> Scene::leftBehind(double slow, double slowTime) const
{
    std::vector<double> all(everyReading.size(), 0.0);
    double fastPart = 0.0;
    double slowPart = 0.0;
    double clock = everyReading.empty() ? 0.0 : everyReading.front().start;
    for (std::size_t i = 0; i < everyReading.size(); ++i) {
        const SceneReading& reading = everyReading[i];
        const double before = std::max(0.0, reading.start - clock);
        fastPart *= response > 0.0 ? std::exp(-before / response) : 0.0;
        slowPart *= slowTime > 0.0 ? std::exp(-before / slowTime) : 0.0;
        const double left = fastPart + slowPart;
        all[i] = left / reading.exposure;
        const double during = std::max(0.0, reading.end - reading.start);
        fastPart *= response > 0.0 ? std::exp(-during / response) : 0.0;
        slowPart *= slowTime > 0.0 ? std::exp(-during / slowTime) : 0.0;
        // What the response itself adds; a tail that the background did not show is part of the highest
        // value.
        const double unseen = std::max(0.0, left - reading.elevated * reading.exposure);
        const double gained = std::max(0.0, reading.rawNet - unseen);
        fastPart += (1.0 - slow) * gained;
        slowPart += slow * gained;
        clock = std::max(clock, reading.end);
    }
    std::vector<double> kept;
    kept.reserve(readings.size());
    for (const std::size_t i : placeInEvery)
        kept.push_back(all[i]);
    return kept;
}

} // namespace sealwalk::analysis
