// SPDX-License-Identifier: GPL-3.0-or-later
// An invented job with one point in every state a map can show.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/model/job.h"
#include "core/model/test_object.h"
#include "core/report/map_builder.h"

#include <memory>

namespace sealwalk::test {

struct SampleJob
{
    model::TestObject object;
    model::Job job;
    std::vector<analysis::PointFinding> findings;

    [[nodiscard]] model::PointId point(int number) const { return job.sketch.pointNumbered(number)->id; }
    [[nodiscard]] std::shared_ptr<const report::MapContent> map(std::size_t sheet = 0,
                                                                report::MapOptions options = {}) const;
};

/// A door with seal (24), viewport (4) and gland (1), and a rear wall with ports, weld and hose (30 … 46).
SampleJob sampleJob();

/// A sheet crowded with `points` points on rings, every state in turn.
SampleJob crowdedJob(int points);

} // namespace sealwalk::test
