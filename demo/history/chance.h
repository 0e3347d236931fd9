// SPDX-License-Identifier: GPL-3.0-or-later
// Chance that is the same in every run: noise and identities.
#pragma once

#include "core/base/uuid.h"

#include <cstdint>
#include <random>

namespace sealwalk::demo {

class Chance
{
public:
    explicit Chance(std::uint64_t seed)
        : m_engine(seed)
    {}

    /// Normally distributed, mean 0, standard deviation 1.
    double normal();
    /// Uniform in [0, 1).
    double uniform();

    /// A version-4 UUID (RFC 4122).
    template <class IdType>
    IdType id()
    {
        return IdType(uuid());
    }

private:
    Uuid uuid();

    std::mt19937_64 m_engine;
};

} // namespace sealwalk::demo
