// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/spread.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::analysis {

namespace {

// The far field of a slow spray falls as 1/x to 1/x^(5/3) whatever its strength; widths and shares are what
// one meets between a bubble-rate spray (millimetres, little left over) and an over-spraying hose
// (decimetres).
constexpr std::array<SpreadBound, Spread::Count> kBounds{{
    {0.012, 0.15, true}, // NearWidth
    {0.8, 2.0, false},   // NearPower
    {1.0, 4.0, true},    // NearStretch
    {1e-3, 1.0, true},   // PlumeShare
    {0.02, 0.3, true},   // PlumeOrigin
    {0.08, 0.40, true},  // PlumeWidening
    {0.8, 2.5, false},   // PlumeExponent
    {-0.4, 0.4, false},  // Tilt
    {1e-5, 0.5, true},   // ScatterShare
    {0.015, 0.4, true},  // ScatterReach
    {1.0, 5.0, false},   // ScatterPower
    {0.0, 0.5, false},   // Sweep
    {0.12, 0.7, true},   // EchoScatter
    {1e-4, 0.12, true},  // TailShare
    {3.0, 60.0, true},   // TailTimes
    {1e-8, 3e-3, true},  // Room
}};

double fromUnit(const SpreadBound& bound, double u)
{
    if (bound.logarithmic)
        return bound.low * std::pow(bound.high / bound.low, u);
    return bound.low + u * (bound.high - bound.low);
}

double toUnit(const SpreadBound& bound, double value)
{
    if (bound.logarithmic)
        return std::log(value / bound.low) / std::log(bound.high / bound.low);
    return (value - bound.low) / (bound.high - bound.low);
}

/// Folded back into 0 … 1.
double reflected(double u)
{
    u = std::abs(u);
    return u > 1.0 ? std::max(0.0, 2.0 - u) : u;
}

} // namespace

double jetDilution(double distance, double core)
{
    return distance <= core ? 1.0 : core / distance;
}

double Spread::share(double across, double above) const
{
    // Asked for more often than anything else; single precision is far finer than any air is known.
    const auto of = [this](Index i) { return static_cast<float>(value[i]); };
    const auto side = static_cast<float>(across);
    const auto over = static_cast<float>(above);
    const float distance = std::sqrt(side * side + over * over); // hypot guards ranges we never meet
    const float width = of(NearWidth);
    const float stretched = over > 0.0F ? over / of(NearStretch) : over;
    const float cloud = std::sqrt(side * side + stretched * stretched) / width;
    // Beyond this the near cloud has ended in every power allowed.
    constexpr float kEnded = 120.0F;
    const float near = cloud < kEnded ? std::exp(-std::pow(cloud, of(NearPower))) : 0.0F;
    float plume = 0.0F;
    const float rise = std::max(over, 0.0F);
    const float off = (side - of(Tilt) * rise) / (width + of(PlumeWidening) * rise);
    const float below = std::min(over, 0.0F) / width;
    const float edge = off * off + below * below;
    if (edge < 40.0F) {
        const float thinned = rise > 0.0F ? plumeDilution(rise, of(PlumeOrigin), of(PlumeExponent)) : 1.0F;
        plume = thinned * std::exp(-edge);
    }
    const float scatter = std::pow(1.0F + distance / of(ScatterReach), -of(ScatterPower));
    const float sum = near + of(PlumeShare) * plume + of(ScatterShare) * scatter;
    return static_cast<double>(sum / (1.0F + of(PlumeShare) + of(ScatterShare)));
}

const std::array<SpreadBound, Spread::Count>& spreadBounds()
{
    return kBounds;
}

Spread usualSpread()
{
    Spread spread;
    spread.value = {0.03, 1.3, 1.5, 0.1, 0.06, 0.15, 1.5, 0.0, 0.01, 0.06, 2.5, 0.25, 0.35, 0.01, 12.0, 1e-5};
    return spread;
}

std::vector<Spread> startSpreads()
{
    struct Beyond
    {
        double plume;
        double scatter;
    };
    std::vector<Spread> starts{usualSpread()};
    for (const double width : {0.014, 0.022, 0.035, 0.055, 0.09}) {
        for (const double power : {1.0, 1.9}) {
            for (const Beyond beyond : {Beyond{0.002, 1e-4}, Beyond{0.1, 0.02}}) {
                Spread start = usualSpread();
                start[Spread::NearWidth] = width;
                start[Spread::NearPower] = power;
                start[Spread::PlumeShare] = beyond.plume;
                start[Spread::ScatterShare] = beyond.scatter;
                starts.push_back(start);
            }
        }
    }
    return starts;
}

Spread drawSpread(Random& random)
{
    Spread spread;
    for (std::size_t i = 0; i < Spread::Count; ++i)
        spread.value[i] = fromUnit(kBounds[i], random.uniform());
    // Still air is the rule; a strong draught is not.
    spread.value[Spread::Tilt] *= random.uniform();
    return spread;
}

Spread moveSpread(const Spread& spread, Random& random, double size)
{
    constexpr double kShareOfMembersMoved = 0.3;
    Spread moved = spread;
    for (std::size_t i = 0; i < Spread::Count; ++i) {
        if (random.uniform() < kShareOfMembersMoved)
            moved.value[i] =
                fromUnit(kBounds[i], reflected(toUnit(kBounds[i], spread.value[i]) + size * random.bell()));
    }
    return moved;
}

Spread crossSpread(const Spread& spread, const Spread& from, const Spread& to, double pace, Random& random)
{
    constexpr double kShareOfMembersMoved = 0.5;
    constexpr double kJitter = 0.01;
    Spread moved = spread;
    for (std::size_t i = 0; i < Spread::Count; ++i) {
        if (random.uniform() >= kShareOfMembersMoved)
            continue;
        const double way = toUnit(kBounds[i], to.value[i]) - toUnit(kBounds[i], from.value[i]);
        moved.value[i] = fromUnit(kBounds[i], reflected(toUnit(kBounds[i], spread.value[i]) + pace * way +
                                                        kJitter * random.bell()));
    }
    return moved;
}

} // namespace sealwalk::analysis
