// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/survey_world.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <numeric>
#include <random>

namespace sealwalk::tests {

namespace {

using std::numbers::pi;

class Dice
{
public:
    explicit Dice(std::uint64_t seed)
        : m_engine(seed)
    {}
    double between(double a, double b) { return a + (b - a) * share(); }
    double logBetween(double a, double b) { return a * std::pow(b / a, share()); }
    double normal() { return std::sqrt(-2.0 * std::log(1.0 - share())) * std::cos(2.0 * pi * share()); }
    int whole(int a, int b) { return a + static_cast<int>(share() * (b - a + 1)); }
    bool chance(double p) { return share() < p; }

private:
    double share() { return static_cast<double>(m_engine() >> 11U) * 0x1.0p-53; }
    std::mt19937_64 m_engine;
};

struct Spot
{
    double x = 0.0;
    double up = 0.0;
};

/// A joint as a closed or open curve of unit parameter, in mm.
struct Joint
{
    std::string name;
    std::size_t view = 0;
    int kind = 0; // 0 ring, 1 rounded rectangle, 2 line, 3 spot
    double cx = 0.0;
    double cy = 0.0;
    double a = 100.0;
    double b = 100.0;
    double angle = 0.0;
    bool closed = false;

    [[nodiscard]] double length() const
    {
        if (kind == 0)
            return 2.0 * pi * a;
        if (kind == 1)
            return 4.0 * (a + b);
        return 2.0 * a;
    }
    [[nodiscard]] Spot at(double s) const
    {
        if (closed)
            s -= std::floor(s);
        if (kind == 0)
            return {cx + a * std::sin(2.0 * pi * s), cy + a * std::cos(2.0 * pi * s)};
        if (kind == 1) {
            double walk = s * length();
            const std::array<Spot, 5> corners{
                {{cx - a, cy + b}, {cx + a, cy + b}, {cx + a, cy - b}, {cx - a, cy - b}, {cx - a, cy + b}}};
            for (std::size_t i = 0; i < 4; ++i) {
                const double side = i % 2 == 0 ? 2.0 * a : 2.0 * b;
                if (walk <= side || i == 3) {
                    const double t = walk / side;
                    return {corners[i].x + t * (corners[i + 1].x - corners[i].x),
                            corners[i].up + t * (corners[i + 1].up - corners[i].up)};
                }
                walk -= side;
            }
        }
        return {cx + (2.0 * s - 1.0) * a * std::cos(angle), cy + (2.0 * s - 1.0) * a * std::sin(angle)};
    }
};

struct Walk
{
    std::size_t joint = 0;
    double s = 0.0;     ///< curve parameter of the point
    double halfS = 0.0; ///< half length in curve parameter
};

/// The state of the air of one survey.
struct Weather
{
    Air air = Air::Puffs;
    double core = 20.0;
    double skirt = 50.0;
    double skirtShare = 0.05;
    double upFactor = 2.0;
    double power = 2.5;
    double plume = 0.2;
    double draught = 0.0;
    double room = 0.0;
    double ragged = 0.0;
    bool lingers = true;
    std::uint64_t salt = 0;
};

double reachOf(const Weather& w, const Spot& leak, const Spot& probe, bool sameJoint)
{
    const double dx = leak.x - probe.x;
    const double dy = leak.up - probe.up;
    const double d = std::hypot(dx, dy);
    switch (w.air) {
    case Air::Powers: {
        const double e = std::hypot(dx, dy > 0.0 ? dy / w.upFactor : dy * 1.2);
        return std::pow(1.0 + (e / w.core) * (e / w.core), -0.5 * w.power);
    }
    case Air::Plumes: {
        const double near = std::exp(-(d / w.core) * (d / w.core));
        if (dy <= 0.0)
            return near + 1e-4 * std::exp(-d / 200.0);
        const double b = 0.5 * w.core + 0.12 * dy;
        const double off = dx - w.draught * dy;
        const double dilution = std::pow(1.0 + dy / (3.0 * w.core), -5.0 / 3.0);
        return std::max(near, std::min(1.0, (near + w.plume * dilution * std::exp(-(off / b) * (off / b)))));
    }
    case Air::Channels: {
        const double reach = sameJoint ? w.skirt * 1.3 : 0.5 * w.core;
        return std::min(1.0, 0.8 * std::exp(-d / (0.7 * w.core)) + 0.2 * std::exp(-d / reach));
    }
    case Air::Exact:
        return std::exp(-std::hypot(dx, dy > 0.0 ? dy / w.upFactor : dy) / w.core);
    case Air::Puffs:
    case Air::Ragged:
    case Air::Still:
        break;
    }
    const double e = std::hypot(dx - w.draught * std::max(dy, 0.0), dy > 0.0 ? dy / w.upFactor : dy);
    return ((1.0 - w.skirtShare) * std::exp(-0.5 * (d / w.core) * (d / w.core)) +
            w.skirtShare * std::exp(-e / w.skirt));
}

Weather makeWeather(Air air, Dice& dice, double severity)
{
    Weather w;
    w.air = air;
    w.core = dice.logBetween(14.0, 45.0);
    w.skirt = dice.logBetween(20.0, 70.0) * severity;
    w.skirtShare = dice.logBetween(0.005, 0.2);
    w.upFactor = dice.between(1.5, 4.0);
    w.power = dice.between(2.5, 4.5) / std::sqrt(severity);
    w.plume = dice.logBetween(0.02, 0.5);
    w.draught = 0.15 * dice.normal();
    w.room = air == Air::Still ? dice.logBetween(1e-5, 1e-3) * severity : dice.logBetween(1e-8, 3e-5);
    w.ragged = air == Air::Ragged ? 0.6 * severity : 0.15;
    w.lingers = air == Air::Exact || dice.chance(0.5);
    if (air == Air::Powers)
        w.core *= 0.7;
    w.salt = static_cast<std::uint64_t>(dice.between(0.0, 1e9));
    return w;
}

std::vector<Joint> makeJoints(Dice& dice, int views)
{
    std::vector<Joint> joints;
    for (int v = 0; v < views; ++v) {
        const int count = dice.whole(1, 4);
        for (int j = 0; j < count; ++j) {
            Joint joint;
            joint.view = static_cast<std::size_t>(v);
            joint.name = "joint " + std::to_string(v + 1) + "." + std::to_string(j + 1);
            joint.kind = dice.whole(0, 3);
            joint.cx = dice.between(-600.0, 600.0);
            joint.cy = dice.between(-200.0, 700.0);
            joint.a = joint.kind == 3 ? dice.between(8.0, 25.0) : dice.between(70.0, 320.0);
            joint.b = dice.between(80.0, 300.0);
            joint.angle = dice.chance(0.5) ? 0.0 : dice.between(0.0, pi);
            joint.closed = joint.kind < 2;
            joints.push_back(joint);
        }
    }
    return joints;
}

std::vector<Walk> makePoints(Dice& dice, std::vector<Joint>& joints, int wanted)
{
    double whole = 0.0;
    for (const Joint& joint : joints)
        whole += joint.kind == 3 ? 60.0 : joint.length();
    std::vector<Walk> walks;
    const double pitch = std::clamp(whole / wanted, 25.0, 150.0);
    for (std::size_t j = 0; j < joints.size(); ++j) {
        int count = joints[j].kind == 3 ? 1 : std::max(2, static_cast<int>(joints[j].length() / pitch + 0.5));
        count = std::min(count, 60);
        for (int i = 0; i < count; ++i) {
            const double s = joints[j].closed ? static_cast<double>(i) / count : (i + 0.5) / count;
            walks.push_back({j, s, 0.5 / count});
        }
    }
    while (walks.size() > 60)
        walks.pop_back();
    while (walks.size() < 10) {
        Joint spot = joints.front();
        spot.kind = 3;
        spot.closed = false;
        spot.a = dice.between(8.0, 25.0);
        spot.cx = dice.between(-600.0, 600.0);
        spot.cy = dice.between(-200.0, 700.0);
        spot.name = "spot " + std::to_string(walks.size());
        joints.push_back(spot);
        walks.push_back({joints.size() - 1, 0.5, 0.5});
    }
    return walks;
}

/// A number between -2 and 2 that belongs to this pair only.
double pairNoise(std::uint64_t salt, std::size_t a, std::size_t b)
{
    std::mt19937_64 engine(salt * 1000003U + a * 7919U + b * 104729U);
    engine.discard(3);
    double sum = 0.0;
    for (int i = 0; i < 4; ++i)
        sum += static_cast<double>(engine() >> 11U) * 0x1.0p-53;
    return (sum - 2.0) * 1.732;
}

struct Detector
{
    double response = 2.0;
    double slowShare = 0.0;
    double slowTime = 30.0;
    double floor = 1e-9;
    double drift = 0.0;
    double noise = 0.03;
    double signalNoise = 0.1;
    double aim = 0.15;
    bool hidesTail = false; ///< the background written down is the nominal one
    double fast = 0.0;
    double slow = 0.0;

    void step(double input, double dt)
    {
        fast += ((1.0 - slowShare) * input - fast) * -std::expm1(-dt / response);
        slow += (slowShare * input - slow) * -std::expm1(-dt / slowTime);
    }
};

std::vector<std::size_t> makeOrder(Dice& dice, const std::vector<Walk>& walks,
                                   const std::vector<Joint>& joints)
{
    std::vector<std::size_t> order(walks.size());
    std::iota(order.begin(), order.end(), 0U);
    const double kind = dice.between(0.0, 1.0);
    if (kind < 0.5) {
        std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            const Joint& ja = joints[walks[a].joint];
            const Joint& jb = joints[walks[b].joint];
            if (ja.view != jb.view)
                return ja.view < jb.view;
            return ja.at(walks[a].s).up > jb.at(walks[b].s).up;
        });
    } else if (kind > 0.9) {
        for (std::size_t i = order.size(); i > 1; --i)
            std::swap(order[i - 1], order[static_cast<std::size_t>(dice.whole(0, static_cast<int>(i) - 1))]);
    }
    return order;
}

} // namespace

std::vector<Air> allAirs()
{
    return {Air::Puffs, Air::Powers, Air::Plumes, Air::Channels, Air::Ragged, Air::Still, Air::Exact};
}

std::string nameOf(Air air)
{
    constexpr std::array<const char*, 7> kNames{"puffs",  "powers", "plumes", "channels",
                                                "ragged", "still",  "exact"};
    return kNames[static_cast<std::size_t>(air)];
}

World makeWorld(Air air, std::uint64_t seed, double severity)
{
    Dice dice(seed * 977U + static_cast<std::uint64_t>(air) * 131071U + 17U);
    const Weather weather = makeWeather(air, dice, severity);
    std::vector<Joint> joints = makeJoints(dice, dice.whole(1, 3));
    const std::vector<Walk> walks = makePoints(dice, joints, dice.whole(10, 60));

    World world;
    analysis::Survey& survey = world.survey;
    for (std::size_t i = 0; i < walks.size(); ++i) {
        const Joint& joint = joints[walks[i].joint];
        const Spot spot = joint.at(walks[i].s);
        analysis::SurveyPoint point;
        point.number = static_cast<int>(i) + 1;
        point.joint = joint.name;
        point.view = "view " + std::to_string(joint.view + 1);
        point.x = millimetres(spot.x);
        point.up = millimetres(spot.up);
        point.halfLength = millimetres(walks[i].halfS * joint.length());
        survey.points.push_back(point);
    }

    const int leakCount = dice.whole(0, 5);
    for (int i = 0; i < leakCount; ++i) {
        const auto p = static_cast<std::size_t>(dice.whole(0, static_cast<int>(walks.size()) - 1));
        WorldLeak leak;
        leak.point = p;
        leak.along = dice.between(-1.0, 1.0);
        const Spot spot = joints[walks[p].joint].at(walks[p].s + leak.along * walks[p].halfS);
        leak.x = spot.x;
        leak.up = spot.up;
        leak.view = joints[walks[p].joint].view;
        leak.rate = dice.logBetween(5e-9, 5e-5);
        world.leaks.push_back(leak);
    }

    Detector detector;
    detector.response = dice.logBetween(0.8, 6.0);
    detector.slowShare = dice.chance(0.4) ? 0.0 : dice.logBetween(0.003, 0.08) * severity;
    detector.slowTime = detector.response * dice.logBetween(4.0, 40.0);
    detector.floor = dice.logBetween(1e-10, 1.5e-9);
    detector.drift = dice.between(-0.3, 0.5) * detector.floor;
    detector.noise = dice.between(0.02, 0.08);
    detector.signalNoise = dice.between(0.03, 0.12) * severity;
    detector.aim = dice.between(0.05, 0.2) * severity;
    detector.hidesTail = dice.chance(0.25);
    const double helium = dice.chance(0.7) ? 1.0 : dice.between(0.2, 1.0);
    const double dwellFactor = dice.between(1.5, 5.0) / std::sqrt(severity);
    const double waitFactor = dice.between(1.5, 6.0) / severity;
    survey.limit = millibarLitresPerSecond(dice.chance(0.6) ? 1e-8 : dice.logBetween(5e-9, 5e-8));
    survey.heliumFraction = fraction(helium);
    survey.response = seconds(detector.response * (1.0 + 0.05 * dice.normal()));

    std::vector<std::size_t> order = makeOrder(dice, walks, joints);
    for (std::size_t k = order.size(); k-- > 0;) {
        if (dice.chance(0.04))
            order.insert(order.begin() + static_cast<std::ptrdiff_t>(k), order[k]);
    }
    if (dice.chance(0.2))
        order.erase(order.begin() + dice.whole(0, static_cast<int>(order.size()) - 1));

    double clock = dice.between(0.0, 60.0);
    double sprayed = 0.0;
    const double allSprayed = static_cast<double>(order.size());
    for (const std::size_t p : order) {
        const Walk& walk = walks[p];
        const Joint& joint = joints[walk.joint];
        const double dwell = detector.response * dwellFactor * dice.between(0.8, 1.3);
        const double room = weather.room * sprayed / allSprayed;
        const double floor = detector.floor + detector.drift * sprayed / allSprayed;
        const double shownFloor = floor * (1.0 + detector.noise * dice.normal());
        const double tail = detector.fast + detector.slow;
        const double background =
            detector.hidesTail ? shownFloor : shownFloor + tail * (1.0 + 0.05 * dice.normal());
        const double aim = std::exp(detector.aim * dice.normal());
        const double offX = 3.0 * dice.normal();
        const double offUp = 3.0 * dice.normal();
        double best = 0.0;
        double bestAlong = 0.0;
        const auto inputAt = [&](double along) {
            const Spot at = joint.at(walk.s + along * walk.halfS);
            const Spot probe{at.x + offX, at.up + offUp};
            double input = 0.0;
            for (std::size_t l = 0; l < world.leaks.size(); ++l) {
                const WorldLeak& leak = world.leaks[l];
                double c = room;
                if (leak.view == joint.view) {
                    double reach =
                        reachOf(weather, {leak.x, leak.up}, probe, walk.joint == walks[leak.point].joint);
                    const double decades = std::min(2.0, -std::log10(reach + 1e-12));
                    reach *= std::exp(weather.ragged * std::sqrt(decades) * pairNoise(weather.salt, p, l));
                    c += std::min(1.0, reach);
                }
                input += helium * leak.rate * c;
            }
            return input;
        };
        constexpr int kSteps = 60;
        for (int i = 0; i <= kSteps; ++i) {
            const double along = -1.0 + 2.0 * i / kSteps;
            const double input = inputAt(along);
            if (input > best) {
                best = input;
                bestAlong = along;
            }
        }
        double highest = tail;
        for (int i = 0; i < kSteps; ++i) {
            const double along = weather.lingers ? bestAlong : -1.0 + 2.0 * (i + 0.5) / kSteps;
            detector.step(aim * inputAt(along), dwell / kSteps);
            highest = std::max(highest, detector.fast + detector.slow);
        }
        const double peak = floor * (1.0 + detector.noise * (dice.normal() + 0.5)) +
                            highest * std::exp(detector.signalNoise * dice.normal());
        analysis::SurveyReading reading;
        reading.point = static_cast<int>(p) + 1;
        reading.start = seconds(clock);
        reading.dwell = seconds(dwell);
        reading.background = millibarLitresPerSecond(background);
        reading.peak = millibarLitresPerSecond(std::max(peak, shownFloor * 0.9));
        survey.readings.push_back(reading);
        sprayed += 1.0;
        const double wait = detector.response * waitFactor * dice.between(0.7, 1.5);
        for (int i = 0; i < 20; ++i) {
            double input = 0.0;
            for (const WorldLeak& leak : world.leaks)
                input += helium * leak.rate * weather.room * sprayed / allSprayed;
            detector.step(input, wait / 20);
        }
        clock += dwell + wait;
    }
    return world;
}

} // namespace sealwalk::tests
