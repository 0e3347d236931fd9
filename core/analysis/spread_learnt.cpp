// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/spread_learnt.h"

#include "core/analysis/posterior.h"

#include <algorithm>
#include <cmath>

namespace sealwalk::analysis {

namespace {

/// Distance at which the share has fallen to a hundredth, sideways or with the leak above, in m.
double reach(const Spread& spread, bool upwards)
{
    constexpr double kHundredth = 0.01;
    double near = 1e-3;
    double far = 10.0;
    for (int i = 0; i < 40; ++i) {
        const double middle = std::sqrt(near * far);
        const double share =
            upwards ? spread.share(spread[Spread::Tilt] * middle, middle) : spread.share(middle, 0.0);
        (share > kHundredth ? near : far) = middle;
    }
    return near;
}

} // namespace

SpreadLearnt spreadLearnt(const Scene& scene, const std::vector<Hypothesis>& sample)
{
    SpreadLearnt learnt;
    const std::vector<double> weights = weightsOf(sample);
    double width = 0.0;
    double sideways = 0.0;
    double upwards = 0.0;
    double tail = 0.0;
    double room = 0.0;
    double stray = 0.0;
    for (std::size_t i = 0; i < sample.size(); ++i) {
        const Hypothesis& so = sample[i];
        const double w = weights[i];
        width += w * std::log(so.spread()[Spread::NearWidth]);
        sideways += w * std::log(reach(so.spread(), false));
        upwards += w * std::log(reach(so.spread(), true));
        tail += w * std::log(so.spread()[Spread::TailShare]);
        room += w * std::log(so.spread()[Spread::Room]);
        stray += w * so.spread()[Spread::EchoScatter];
        // An echo ten times over the noise is something to learn from.
        for (const SupposedLeak& leak : so.leaks) {
            for (std::size_t r = 0; r < scene.readings.size(); ++r)
                learnt.known = learnt.known || (scene.readings[r].point != leak.point &&
                                                leak.part(r) > 10.0 * scene.readings[r].noise);
        }
    }
    learnt.nearWidth = metres(std::exp(width));
    learnt.reachSideways = metres(std::exp(sideways));
    learnt.reachUpwards = metres(std::exp(upwards));
    learnt.echoFactor = std::exp(stray * std::sqrt(2.0)); // at a hundredth
    learnt.tail = fraction(std::exp(tail));
    learnt.room = fraction(std::exp(room));
    return learnt;
}

} // namespace sealwalk::analysis
