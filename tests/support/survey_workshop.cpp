// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/survey_workshop.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <random>

namespace sealwalk::tests {

namespace {

using std::numbers::pi;

/// Chance, the same on every machine: the standard distributions are not.
class Chance
{
public:
    explicit Chance(std::uint64_t seed)
        : m_engine(seed)
    {}
    double unit() { return static_cast<double>(m_engine() >> 11U) * 0x1.0p-53; }
    double from(double low, double high) { return low + (high - low) * unit(); }
    double decades(double low, double high) { return std::exp(from(std::log(low), std::log(high))); }
    double normal()
    {
        double sum = -6.0; // twelve uniforms: a bell with short ends, unlike the search's
        for (int i = 0; i < 12; ++i)
            sum += unit();
        return sum;
    }
    bool happens(double share) { return unit() < share; }
    std::size_t below(std::size_t count)
    {
        return std::min(static_cast<std::size_t>(unit() * static_cast<double>(count)), count - 1);
    }

private:
    std::mt19937_64 m_engine;
};

struct At
{
    double x = 0.0; ///< mm
    double up = 0.0;
};

/// A piece of joint between two corners, cut into equal stretches.
struct Piece
{
    At from;
    At to;
    std::string joint;
    std::string view;
    std::size_t viewIndex = 0;

    [[nodiscard]] At at(double share) const
    {
        return {from.x + share * (to.x - from.x), from.up + share * (to.up - from.up)};
    }
    [[nodiscard]] double length() const { return std::hypot(to.x - from.x, to.up - from.up); }
};

struct Spot
{
    Piece piece;
    double middle = 0.0; ///< share of the piece
    double half = 0.0;
};

/// A door as a polygon with cut corners, flanges as octagons, welds as slanting lines, fittings as short
/// lines.
std::vector<Spot> layPoints(Chance& chance, std::size_t wanted)
{
    std::vector<Spot> spots;
    const std::size_t views = 1 + chance.below(3);
    int joint = 0;
    while (spots.size() < wanted) {
        const std::size_t view = chance.below(views);
        const At middle{chance.from(-700.0, 700.0), chance.from(0.0, 1200.0)};
        const std::string name = "J" + std::to_string(++joint);
        const double kind = chance.unit();
        std::vector<At> corners;
        if (kind < 0.3) { // fitting
            const double half = chance.from(10.0, 30.0);
            corners = {{middle.x - half, middle.up}, {middle.x + half, middle.up}};
        } else if (kind < 0.5) { // weld
            const double half = chance.from(150.0, 500.0);
            const double slant = chance.happens(0.3) ? chance.from(-0.5, 0.5) : 0.0;
            corners = {{middle.x - half, middle.up - slant * half},
                       {middle.x + half, middle.up + slant * half}};
        } else { // flange or door
            const bool door = kind > 0.75;
            const double wide = door ? chance.from(200.0, 400.0) : chance.from(60.0, 160.0);
            const double high = door ? chance.from(250.0, 500.0) : wide;
            for (int i = 0; i <= 8; ++i) {
                const double turn = pi * (0.125 + 0.25 * i);
                corners.push_back({middle.x + wide * std::sin(turn), middle.up + high * std::cos(turn)});
            }
        }
        const double pitch = chance.from(60.0, 160.0);
        for (std::size_t i = 0; i + 1 < corners.size(); ++i) {
            Piece piece{corners[i], corners[i + 1], name, "V" + std::to_string(view + 1), view};
            const int count = std::max(1, static_cast<int>(std::lround(piece.length() / pitch)));
            for (int k = 0; k < count; ++k)
                spots.push_back({piece, (k + 0.5) / count, 0.5 / count});
        }
    }
    spots.resize(std::max(wanted, std::size_t{10}));
    return spots;
}

struct Weather
{
    Workshop workshop = Workshop::Hall;
    double size = 10.0;    ///< mm, of the cloud at the tip
    double power = 3.0;    ///< Hall
    double upwards = 2.0;  ///< Hall, Cabin
    double wind = 0.0;     ///< Draughts, mm/s
    double rise = 100.0;   ///< Draughts, mm/s
    double growth = 200.0; ///< Draughts, mm²/s
    double pockets = 0.0;  ///< Cabin, ln
    double fills = 0.0;    ///< share of helium in the room at the end
};

/// Puffs let go one after the other, seen together.
double puffs(const Weather& air, double gust, double dx, double dy)
{
    double sum = 0.0;
    double at0 = 0.0;
    constexpr int kAges = 20;
    const double last = 3.0; // s
    for (int i = 0; i < kAges; ++i) {
        const double age = last * std::pow((i + 0.5) / kAges, 2.0);
        const double step = last * 2.0 * (i + 0.5) / (kAges * kAges);
        const double square = air.size * air.size + 2.0 * air.growth * age;
        const double thin = step * std::pow(air.size * air.size / square, 1.5);
        const double mx = (air.wind + gust) * age;
        const double my = air.rise * age;
        sum += thin * std::exp(-0.5 * ((dx - mx) * (dx - mx) + (dy - my) * (dy - my)) / square);
        at0 += thin * std::exp(-0.5 * (mx * mx + my * my) / square);
    }
    return std::min(1.0, sum / at0);
}

double reachOf(const Weather& air, double gust, const At& leak, const At& probe)
{
    const double dx = leak.x - probe.x;
    const double dy = leak.up - probe.up;
    switch (air.workshop) {
    case Workshop::Draughts:
        return puffs(air, gust, dx, dy);
    case Workshop::Hall: {
        const double away = std::hypot(dx, dy > 0.0 ? dy / air.upwards : dy * 1.5);
        return away <= air.size ? 1.0 : std::pow(air.size / away, air.power);
    }
    case Workshop::Cabin: {
        const double away = std::hypot(dx, dy > 0.0 ? dy / air.upwards : dy) / air.size;
        return std::pow(1.0 + away * away, -air.power);
    }
    }
    return 0.0;
}

/// A share that belongs to this pair of places: pockets and paths do not change during a survey.
double pocket(std::uint64_t seed, std::size_t point, std::size_t leak, double strength)
{
    Chance chance(seed * 7349981U + point * 104651U + leak * 15485863U);
    return std::exp(strength * chance.normal());
}

struct Machine
{
    double response = 2.0;
    double quick = 0.0;
    double slow = 0.0;
    double slowShare = 0.0;
    double slowTime = 40.0;
    std::vector<std::pair<double, double>> past; ///< end of a response and its size, for the power-law tail

    void follow(double input, double dt)
    {
        const double keep = std::exp(-dt / response);
        quick = keep * quick + (1.0 - keep) * (1.0 - slowShare) * input;
        const double hold = std::exp(-dt / slowTime);
        slow = hold * slow + (1.0 - hold) * slowShare * input * 3.0;
    }
    [[nodiscard]] double powerTail(double now) const
    {
        double sum = 0.0;
        for (const auto& [end, size] : past)
            sum += slowShare * size * std::pow(1.0 + (now - end) / response, -1.3);
        return sum;
    }
};

Weather weatherOf(Workshop workshop, double reach, Chance& chance)
{
    Weather air;
    air.workshop = workshop;
    switch (workshop) {
    case Workshop::Draughts:
        air.size = reach * chance.decades(8.0, 22.0);
        air.growth = reach * reach * chance.decades(2.0, 30.0);
        air.wind = reach * chance.from(-12.0, 12.0);
        air.rise = reach * chance.decades(5.0, 30.0);
        air.fills = chance.decades(1e-8, 1e-5);
        break;
    case Workshop::Hall:
        air.size = reach * chance.decades(6.0, 14.0);
        air.power = chance.from(4.0, 7.0);
        air.upwards = chance.from(1.3, 2.5);
        air.fills = chance.decades(1e-8, 1e-5);
        break;
    case Workshop::Cabin:
        air.size = reach * chance.decades(12.0, 30.0);
        air.power = chance.from(2.5, 5.0);
        air.upwards = chance.from(1.0, 2.0);
        air.pockets = chance.from(0.1, 0.6);
        air.fills = chance.decades(1e-6, 3e-5) * reach;
        break;
    }
    return air;
}

/// Order of the walk: mostly as laid, sometimes from the top, sometimes any.
std::vector<std::size_t> walkOrder(const std::vector<Spot>& spots, Chance& chance)
{
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < spots.size(); ++i)
        order.push_back(i);
    const double kind = chance.unit();
    if (kind < 0.35) {
        std::ranges::stable_sort(order, std::greater<>(), [&](std::size_t i) {
            return spots[i].piece.at(spots[i].middle).up -
                   1e4 * static_cast<double>(spots[i].piece.viewIndex);
        });
    } else if (kind > 0.92) {
        for (std::size_t i = order.size(); i > 1; --i)
            std::swap(order[i - 1], order[chance.below(i)]);
    }
    return order;
}

} // namespace

std::vector<Workshop> allWorkshops()
{
    return {Workshop::Draughts, Workshop::Hall, Workshop::Cabin};
}

std::string nameOf(Workshop workshop)
{
    constexpr std::array<const char*, 3> kNames{"draughts", "hall", "cabin"};
    return kNames[static_cast<std::size_t>(workshop)];
}

World makeWorkshop(Workshop workshop, std::uint64_t seed, double reach)
{
    Chance chance(seed * 2654435761U + static_cast<std::uint64_t>(workshop) * 40503U + 1U);
    const Weather air = weatherOf(workshop, reach, chance);
    const std::vector<Spot> spots = layPoints(chance, 10 + chance.below(51));
    World world;
    analysis::Survey& survey = world.survey;
    for (std::size_t i = 0; i < spots.size(); ++i) {
        const At at = spots[i].piece.at(spots[i].middle);
        analysis::SurveyPoint point;
        point.number = static_cast<int>(i) + 1;
        point.joint = spots[i].piece.joint;
        point.view = spots[i].piece.view;
        point.x = millimetres(std::round(at.x));
        point.up = millimetres(std::round(at.up));
        point.halfLength = millimetres(spots[i].half * spots[i].piece.length());
        survey.points.push_back(point);
    }
    for (std::size_t n = chance.below(6); n > 0; --n) {
        WorldLeak leak;
        leak.point = chance.below(spots.size());
        leak.along = chance.from(-1.0, 1.0);
        const Spot& home = spots[leak.point];
        const At at = home.piece.at(home.middle + leak.along * home.half);
        leak.x = at.x;
        leak.up = at.up;
        leak.view = home.piece.viewIndex;
        leak.rate = chance.decades(5e-9, 5e-5);
        world.leaks.push_back(leak);
    }

    Machine machine;
    machine.response = chance.decades(0.7, 8.0);
    machine.slowShare = chance.happens(0.3) ? 0.0 : chance.decades(5e-4, 1e-2);
    machine.slowTime = machine.response * chance.from(5.0, 25.0);
    const bool powerTail = workshop == Workshop::Hall;
    const double readingNoise = chance.from(0.05, 0.2);
    const double dwellIn = chance.from(1.5, 4.0);
    const double waitIn = chance.from(3.0, 7.0);
    const double aim = workshop == Workshop::Cabin ? chance.from(3.0, 10.0) : chance.from(1.0, 5.0); // mm
    const int swings = workshop == Workshop::Draughts ? 1 + static_cast<int>(chance.below(3)) : 0;
    double floor = chance.decades(1e-10, 2e-9);
    survey.limit = millibarLitresPerSecond(chance.happens(0.7) ? 1e-8 : chance.decades(5e-9, 1e-7));
    survey.heliumFraction = fraction(chance.happens(0.6) ? 1.0 : chance.from(0.3, 1.0));
    survey.response = seconds(machine.response);
    const double helium = survey.heliumFraction.si();
    double clock = chance.from(0.0, 100.0);
    const std::vector<std::size_t> order = walkOrder(spots, chance);
    for (std::size_t turn = 0; turn < order.size(); ++turn) {
        const std::size_t p = order[turn];
        const Spot& spot = spots[p];
        if (chance.happens(0.02))
            continue; // nobody came by
        if (chance.happens(0.03))
            clock += chance.from(60.0, 900.0); // a pause
        if (workshop == Workshop::Cabin && chance.happens(0.04))
            floor *= chance.decades(0.6, 1.8);
        floor *= std::exp(0.01 * chance.normal());
        const double dwell = machine.response * dwellIn * chance.from(0.7, 1.4);
        const double fills = air.fills * (1.0 - std::exp(-2.0 * static_cast<double>(turn) / 40.0));
        const double gust = workshop == Workshop::Draughts ? 0.3 * air.wind * chance.normal() : 0.0;
        const double offX = aim * chance.normal();
        const double offUp = aim * chance.normal();
        const auto input = [&](double along) {
            const At at = spot.piece.at(spot.middle + along * spot.half);
            double sum = 0.0;
            for (std::size_t l = 0; l < world.leaks.size(); ++l) {
                const WorldLeak& leak = world.leaks[l];
                double share = fills;
                if (leak.view == spot.piece.viewIndex) {
                    const double straight =
                        reachOf(air, gust, {leak.x, leak.up}, {at.x + offX, at.up + offUp});
                    const double bend = l == 0 || straight < 0.5 ? pocket(seed, p, l, air.pockets) : 1.0;
                    share += leak.point == p ? straight : std::min(1.0, straight * bend);
                }
                sum += helium * leak.rate * std::min(1.0, share);
            }
            return sum;
        };
        const double tailBefore = powerTail ? machine.powerTail(clock) : machine.quick + machine.slow;
        const double backgroundNow = floor * (1.0 + 0.03 * chance.normal());
        double highest = 0.0;
        if (swings > 0) {
            constexpr int kSteps = 80;
            for (int i = 0; i < kSteps; ++i) {
                const double along = std::cos(pi * (swings + 1) * i / kSteps);
                machine.follow(input(along), dwell / kSteps);
                highest = std::max(highest, machine.quick + machine.slow);
            }
        } else {
            // The hand stops where it answers, for a part of the dwell.
            double most = 0.0;
            for (int i = 0; i <= 40; ++i)
                most = std::max(most, input(-1.0 + 0.05 * i));
            const double stays = workshop == Workshop::Hall ? chance.from(0.6, 1.0) : chance.from(0.8, 1.0);
            const double shown = most * -std::expm1(-stays * dwell / machine.response);
            if (powerTail) {
                highest = shown + machine.powerTail(clock + dwell);
                machine.past.emplace_back(clock + dwell, shown);
            } else {
                machine.follow(most, stays * dwell);
                highest = std::max(tailBefore, machine.quick + machine.slow);
            }
        }
        analysis::SurveyReading reading;
        reading.point = static_cast<int>(p) + 1;
        reading.start = seconds(clock);
        reading.dwell = seconds(dwell);
        const double background = backgroundNow + tailBefore * std::exp(0.1 * chance.normal());
        const double peak =
            floor * (1.0 + 0.03 * chance.normal()) + highest * std::exp(readingNoise * chance.normal());
        reading.background = millibarLitresPerSecond(background);
        reading.peak = millibarLitresPerSecond(std::max(peak, backgroundNow));
        survey.readings.push_back(reading);
        const double wait = machine.response * waitIn * chance.from(0.8, 1.6);
        if (!powerTail)
            machine.follow(0.0, wait);
        clock += dwell + wait;
    }
    return world;
}

} // namespace sealwalk::tests
