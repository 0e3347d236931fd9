// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/simulated_rise.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <numbers>

namespace sealwalk::tests {

namespace {

/// SplitMix64 (Steele, Lea, Flood 2014) and what is drawn from it: the same numbers with every library.
class Dice
{
public:
    Dice(std::uint64_t seed, std::uint64_t stream)
        : m_state(seed)
    {
        // Two rounds part the streams: neighbouring states would give the same numbers one draw later.
        m_state = bits() ^ (stream * 0xD1342543DE82EF95ull);
        m_state = bits();
    }
    double uniform() { return (static_cast<double>(bits() >> 11) + 0.5) / 9007199254740992.0; }
    double uniform(double from, double to) { return from + (to - from) * uniform(); }
    double logUniform(double from, double to) { return from * std::pow(to / from, uniform()); }
    double normal()
    {
        return std::sqrt(-2.0 * std::log(uniform())) * std::cos(2.0 * std::numbers::pi * uniform());
    }
    bool chance(double share) { return uniform() < share; }

private:
    std::uint64_t bits()
    {
        std::uint64_t z = (m_state += 0x9E3779B97F4A7C15ull);
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ull;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBull;
        return z ^ (z >> 31);
    }

    std::uint64_t m_state;
};

/// Gas released since the start of the record at each time, in any unit; scaled later.
using Released = std::vector<double>;

constexpr int kFine = 4000; // steps of the integration over the record

/// Integrates `rate(t, state)` on the fine grid of the record by the classical fourth-order rule.
template <std::size_t N>
std::vector<std::array<double, N>>
integrate(std::array<double, N> state, double length,
          const std::function<std::array<double, N>(const std::array<double, N>&)>& rate)
{
    std::vector<std::array<double, N>> path{state};
    const double h = length / kFine;
    const auto moved = [](std::array<double, N> a, const std::array<double, N>& b, double f) {
        for (std::size_t i = 0; i < N; ++i)
            a[i] += f * b[i];
        return a;
    };
    for (int i = 0; i < kFine; ++i) {
        const auto k1 = rate(state);
        const auto k2 = rate(moved(state, k1, 0.5 * h));
        const auto k3 = rate(moved(state, k2, 0.5 * h));
        const auto k4 = rate(moved(state, k3, h));
        for (std::size_t j = 0; j < N; ++j)
            state[j] += h / 6.0 * (k1[j] + 2.0 * k2[j] + 2.0 * k3[j] + k4[j]);
        path.push_back(state);
    }
    return path;
}

/// Up to four kinds of site; gas in the volume sticks again. State: gas, coverages.
Released wallSites(Dice& dice, double length)
{
    const int kinds = 2 + static_cast<int>(dice.uniform() * 3.0);
    std::array<double, 4> release = {};
    std::array<double, 4> uptake = {};
    std::array<double, 5> state = {};
    for (std::size_t i = 0; i < static_cast<std::size_t>(kinds); ++i) {
        release[i] = 1.0 / (length * dice.logUniform(0.02, 1.2));
        uptake[i] = dice.chance(0.5) ? release[i] * dice.logUniform(0.01, 0.5) : 0.0;
        state[i + 1] = dice.uniform(0.1, 1.0);
    }
    const auto path = integrate<5>(state, length, [&](const std::array<double, 5>& s) {
        std::array<double, 5> d = {};
        for (std::size_t i = 0; i < 4; ++i) {
            const double net = release[i] * s[i + 1] - uptake[i] * s[0];
            d[i + 1] = -net;
            d[0] += net;
        }
        return d;
    });
    Released released;
    for (const auto& s : path)
        released.push_back(s[0]);
    return released;
}

Released trappedMolecular(Dice& dice, double length)
{
    const double first = 1.0 / (length * dice.logUniform(0.05, 0.8));
    const double second = dice.chance(0.4) ? 1.0 / (length * dice.logUniform(0.05, 0.8)) : 0.0;
    // Two pockets in a row, the inner emptying through the outer, and a quick wall.
    const double wall = 1.0 / (length * dice.logUniform(0.02, 0.2));
    const double inner = second > 0.0 ? dice.uniform(0.2, 2.0) : 0.0;
    const double desorbing = dice.chance(0.5) ? dice.uniform(0.1, 0.6) : 0.0;
    // The pump had been running: what the outer pocket holds is at least what the inner one keeps feeding
    // into it.
    const double outer = std::max(dice.uniform(0.5, 1.0), second * inner / first);
    const std::array<double, 4> start = {0.0, outer, inner, desorbing};
    const auto path = integrate<4>(start, length, [&](const std::array<double, 4>& s) {
        const double out = first * s[1];
        const double through = second * s[2];
        const double desorbed = wall * s[3];
        return std::array<double, 4>{out + desorbed, through - out, -through, -desorbed};
    });
    Released released;
    for (const auto& s : path)
        released.push_back(s[0]);
    return released;
}

/// A pocket at pressure P empties as dP/dt = -k P^2: its channel's conductance grows with its pressure. Below
/// a tenth of its first pressure the channel turns molecular.
Released trappedLaminar(Dice& dice, double length)
{
    const double k = 1.0 / (length * dice.logUniform(0.03, 0.6));
    const double slip = dice.uniform(0.0, 0.15);
    const auto path = integrate<2>({0.0, 1.0}, length, [&](const std::array<double, 2>& s) {
        const double out = k * s[1] * (s[1] + slip);
        return std::array<double, 2>{out, -out};
    });
    Released released;
    for (const auto& s : path)
        released.push_back(s[0]);
    return released;
}

Released sumOfRates(double length, const std::function<double(double)>& rate)
{
    Released released{0.0};
    const double h = length / kFine;
    double before = rate(0.0);
    for (int i = 1; i <= kFine; ++i) {
        const double middle = rate((i - 0.5) * h);
        const double after = rate(i * h);
        released.push_back(released.back() + h / 6.0 * (before + 4.0 * middle + after));
        before = after;
    }
    return released;
}

Released powerLaw(Dice& dice, double length)
{
    const double pumped = length * dice.logUniform(0.02, 0.6);
    const double alpha = dice.uniform(0.6, 1.4);
    return sumOfRates(length, [=](double t) { return std::pow((t + pumped) / length, -alpha); });
}

/// First-order release over a continuous, bell-shaped spread of binding energies; the quick ones were pumped
/// away.
Released waterBroad(Dice& dice, double length)
{
    const double centre = std::log(length * dice.logUniform(0.02, 0.5));
    const double spread = dice.uniform(0.6, 2.0);
    const double pumped = length * dice.logUniform(0.01, 0.3);
    std::vector<double> rates;
    std::vector<double> amounts;
    for (double z = -3.0; z <= 3.0; z += 0.1) {
        const double tau = std::exp(centre + spread * z);
        rates.push_back(1.0 / tau);
        amounts.push_back(std::exp(-0.5 * z * z - pumped / tau));
    }
    return sumOfRates(length, [=](double t) {
        double sum = 0.0;
        for (std::size_t i = 0; i < rates.size(); ++i)
            sum += amounts[i] * rates[i] * std::exp(-t * rates[i]);
        return sum * length;
    });
}

/// Slab open on one side, filled evenly, pumped for a while: rate is the sum of exp(-(2n+1)^2 t/tau).
Released diffusion(Dice& dice, double length)
{
    const double tau = length * dice.logUniform(0.1, 1.0);
    const double pumped = length * dice.logUniform(0.01, 0.3);
    return sumOfRates(length, [=](double t) {
        double sum = 0.0;
        for (int n = 0; n < 40; ++n) {
            const double order = 2.0 * n + 1.0;
            const double term = std::exp(-order * order * (t + pumped) / tau);
            sum += term;
            if (term < 1e-12)
                break;
        }
        return sum;
    });
}

Released releasedBy(RisePhysics physics, Dice& dice, double length)
{
    switch (physics) {
    case RisePhysics::None:
        return Released(kFine + 1, 0.0);
    case RisePhysics::WallSites:
        return wallSites(dice, length);
    case RisePhysics::TrappedMolecular:
        return trappedMolecular(dice, length);
    case RisePhysics::TrappedLaminar:
        return trappedLaminar(dice, length);
    case RisePhysics::PowerLaw:
        return powerLaw(dice, length);
    case RisePhysics::WaterBroad:
        return waterBroad(dice, length);
    case RisePhysics::Diffusion:
        return diffusion(dice, length);
    case RisePhysics::Mixture: {
        const auto one = [&] { return static_cast<RisePhysics>(1 + static_cast<int>(dice.uniform() * 6.0)); };
        Released sum = releasedBy(one(), dice, length);
        const Released other = releasedBy(one(), dice, length);
        const double share = dice.uniform(0.2, 0.8);
        const double scaleA = (1.0 - share) / sum.back();
        const double scaleB = share / other.back();
        for (std::size_t i = 0; i < sum.size(); ++i)
            sum[i] = scaleA * sum[i] + scaleB * other[i];
        return sum;
    }
    }
    return {};
}

double at(const Released& released, double share)
{
    const double place = std::clamp(share, 0.0, 1.0) * kFine;
    const auto i = std::min<std::size_t>(static_cast<std::size_t>(place), kFine - 1);
    const double w = place - static_cast<double>(i);
    return (1.0 - w) * released[i] + w * released[i + 1];
}

std::vector<double> sampleTimes(Dice& dice, double length, std::string& faults)
{
    const int n = static_cast<int>(dice.logUniform(25.0, 1500.0));
    const double jitter = dice.chance(0.3) ? 0.4 : 0.0;
    const bool gap = dice.chance(0.2);
    const double gapFrom = dice.uniform(0.2, 0.7);
    const double gapTo = gapFrom + dice.uniform(0.05, 0.2);
    std::vector<double> times;
    for (int i = 0; i < n; ++i) {
        const double share = (i + (i > 0 && i + 1 < n ? jitter * dice.uniform(-1.0, 1.0) : 0.0)) / (n - 1);
        if (!gap || share < gapFrom || share > gapTo)
            times.push_back(share * length);
    }
    if (jitter > 0.0)
        faults += " jitter";
    if (gap)
        faults += " gap";
    return times;
}

} // namespace

const char* nameOf(RisePhysics physics)
{
    constexpr std::array<const char*, kRisePhysicsCount> names = {
        "leak alone", "wall sites",   "trapped, molecular", "trapped, laminar",
        "power law",  "water, broad", "diffusion",          "mixture"};
    return names[static_cast<std::size_t>(physics)];
}

SimulatedRise simulateRise(RisePhysics physics, std::uint64_t seed)
{
    Dice dice(seed, static_cast<std::uint64_t>(physics));
    SimulatedRise record;
    record.physics = physics;
    record.volume = dice.logUniform(0.005, 3.0);
    const double length = dice.logUniform(300.0, 20000.0);
    // Short records see only the beginning of what the sources were made for.
    const double seen = dice.chance(0.35) ? dice.uniform(0.15, 0.6) : 1.0;
    const Released released = releasedBy(physics, dice, length / seen);

    const double total = dice.logUniform(0.5, 200.0); // Pa over the record
    const double share = physics == RisePhysics::None ? 1.0
                         : dice.chance(0.1)           ? 0.0
                                                      : dice.uniform(0.08, 0.9);
    const double leakRise = share * total;
    const double amount = at(released, seen);
    const double sourceScale = amount > 0.0 ? (total - leakRise) / amount : 0.0;
    record.leak = leakRise / length * record.volume;
    record.outgassingEnd =
        sourceScale * (amount - at(released, 0.999 * seen)) / (0.001 * length) * record.volume;

    record.time = sampleTimes(dice, length, record.faults);
    const double start = total * dice.logUniform(0.005, 1.0);

    // The gauge and the room.
    const double white = total * (dice.chance(0.7) ? dice.logUniform(2e-4, 8e-3) : 5e-5);
    const double proportional = dice.chance(0.35) ? dice.logUniform(1e-3, 8e-3) : 0.0;
    const double digits = dice.chance(0.3) ? (dice.chance(0.5) ? 2.0 : 3.0) : 0.0; // after the first
    const double step = digits == 0.0 && dice.chance(0.25) ? total * dice.logUniform(1e-3, 2e-2) : 0.0;
    const double drift = dice.chance(0.3) ? total * 0.004 * dice.normal() : 0.0;
    const double wander = dice.chance(0.25) ? total * dice.logUniform(3e-4, 4e-3) : 0.0;
    const double warmUp = dice.chance(0.3) ? dice.uniform(-0.5, 1.5) : 0.0; // K
    const bool logged = warmUp != 0.0 && dice.chance(0.5);
    if (proportional > 0.0)
        record.faults += " proportional";
    if (digits > 0.0 || step > 0.0)
        record.faults += " rounded";
    if (drift != 0.0)
        record.faults += " drift";
    if (wander > 0.0)
        record.faults += " wander";
    if (warmUp != 0.0)
        record.faults += logged ? " warm-up logged" : " warm-up";

    double walk = 0.0;
    double last = 0.0;
    for (const double t : record.time) {
        const double x = t / length;
        const double clean = start + leakRise * x + sourceScale * at(released, x * seen);
        const double kelvin = 293.15 + warmUp * (1.0 - std::exp(-2.0 * x)) / 0.865;
        walk += wander * std::sqrt(std::max(0.0, x - last)) * dice.normal();
        last = x;
        double shown = clean * kelvin / 293.15 + drift * x + walk;
        shown += white * dice.normal() + proportional * shown * dice.normal();
        if (step > 0.0)
            shown = step * std::round(shown / step);
        if (digits > 0.0 && shown > 0.0) {
            const double decade = std::pow(10.0, std::floor(std::log10(shown)) - digits);
            shown = decade * std::round(shown / decade);
        }
        record.pressure.push_back(std::max(shown, 0.0));
        if (logged)
            record.temperature.push_back(0.1 * std::round(10.0 * (kelvin + 0.03 * dice.normal())));
    }

    // In principle: the outgassing left at the end is no more than half the leak, and the slope of the last
    // half is known to a tenth of the leak.
    const double n = static_cast<double>(record.time.size());
    const double one = std::hypot(white, proportional * (start + total)) +
                       0.3 * std::max(step, std::pow(10.0, -digits) * (digits > 0.0 ? start + total : 0.0));
    const double slope = one * std::sqrt(12.0 / (0.5 * n)) / 0.5;
    record.carried = share > 0.0 && record.outgassingEnd <= 0.5 * record.leak && slope <= 0.1 * leakRise;
    return record;
}

} // namespace sealwalk::tests
