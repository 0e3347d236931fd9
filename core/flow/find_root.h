// SPDX-License-Identifier: GPL-3.0-or-later
// Bracketed root search after Brent, Algorithms for Minimization without Derivatives (1973), chapter 4.
#pragma once

#include "core/base/contract.h"

#include <cmath>
#include <limits>
#include <utility>

namespace sealwalk::flow {

/// A zero of `f` between `low` and `high`, where its signs must differ (or one end be zero). Answers to
/// within `tolerance` (absolute, in the variable) or the spacing of doubles, whichever is larger.
template <class F>
double findRoot(F&& f, double low, double high, double tolerance)
{
    double a = low;
    double b = high;
    double fa = f(a);
    double fb = f(b);
    SEALWALK_EXPECT((fa <= 0.0) != (fb < 0.0) || fa == 0.0 || fb == 0.0);
    double c = a;
    double fc = fa;
    double step = b - a;
    double before = step;
    constexpr int kMost = 300; // bisection alone needs about 60
    for (int i = 0; i < kMost && fb != 0.0; ++i) {
        if ((fb > 0.0) == (fc > 0.0)) {
            c = a;
            fc = fa;
            step = b - a;
            before = step;
        }
        if (std::abs(fc) < std::abs(fb)) {
            a = std::exchange(b, c);
            c = a;
            fa = std::exchange(fb, fc);
            fc = fa;
        }
        const double enough = 2.0 * std::numeric_limits<double>::epsilon() * std::abs(b) + 0.5 * tolerance;
        const double half = 0.5 * (c - b);
        if (std::abs(half) <= enough)
            break;
        bool bisect = std::abs(before) < enough || std::abs(fa) <= std::abs(fb);
        if (!bisect) {
            double p = 0.0;
            double q = 0.0;
            const double s = fb / fa;
            if (a == c) {
                p = 2.0 * half * s;
                q = 1.0 - s;
            } else {
                const double r = fb / fc;
                const double t = fa / fc;
                p = s * (2.0 * half * t * (t - r) - (b - a) * (r - 1.0));
                q = (t - 1.0) * (r - 1.0) * (s - 1.0);
            }
            if (p > 0.0)
                q = -q;
            p = std::abs(p);
            bisect = 2.0 * p >= std::fmin(3.0 * half * q - std::abs(enough * q), std::abs(before * q));
            if (!bisect) {
                before = step;
                step = p / q;
            }
        }
        if (bisect) {
            step = half;
            before = half;
        }
        a = b;
        fa = fb;
        b += std::abs(step) > enough ? step : std::copysign(enough, half);
        fb = f(b);
    }
    return b;
}

} // namespace sealwalk::flow
