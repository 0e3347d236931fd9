// SPDX-License-Identifier: GPL-3.0-or-later
// Repeatable random numbers: the same survey gives the same answer on every machine, which the standard
// library's distributions do not promise.
#pragma once

#include <cstdint>

namespace sealwalk::analysis {

/// Source: SplitMix64, Steele, Lea, Flood, "Fast splittable pseudorandom number generators" (2014).
class Random
{
public:
    explicit Random(std::uint64_t seed)
        : m_state(seed)
    {}

    std::uint64_t next()
    {
        m_state += 0x9E3779B97F4A7C15U;
        std::uint64_t z = m_state;
        z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
        z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
        return z ^ (z >> 31U);
    }

    /// In [0, 1).
    double uniform() { return static_cast<double>(next() >> 11U) * 0x1.0p-53; }
    /// Mean 0, standard deviation 1; the sum of four uniforms, so never beyond 3.5.
    double bell() { return (uniform() + uniform() + uniform() + uniform() - 2.0) * 1.7320508075688772; }

private:
    std::uint64_t m_state;
};

} // namespace sealwalk::analysis
