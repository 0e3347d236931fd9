// SPDX-License-Identifier: GPL-3.0-or-later
// Whole jobs with every field filled at random, consistent in themselves: for round trips.
#pragma once

#include "core/model/job.h"
#include "core/model/picture.h"
#include "core/model/test_object.h"

#include <cstdint>
#include <vector>

namespace sealwalk::tests {

struct RandomJob
{
    model::TestObject object;
    model::Job job; ///< not signed; its state is what its review says; sequences run from 1
    std::vector<model::Picture> pictures; ///< those it refers to; names are not the SHA-256 of their bytes
};

/// The same seed gives the same job.
RandomJob randomJob(std::uint64_t seed);

} // namespace sealwalk::tests
