// SPDX-License-Identifier: GPL-3.0-or-later
// A history of many jobs of 200 readings each, for measuring how things grow with it.
#pragma once

#include "core/storage/history_store.h"
#include "tests/core/storage/samples.h"

#include <fmt/format.h>

#include <cstdlib>

namespace sealwalk::tests {

inline constexpr int kGeneratedReadings = 200; ///< of a job
inline constexpr int kGeneratedPoints = 62;
inline constexpr int kJobsPerObject = 5;

inline model::TestObject generatedObject(int n)
{
    static const char* const words[] = {"coater",  "furnace",  "beamline", "dryer",  "loadlock",
                                        "sputter", "annealer", "cryostat", "etcher", "airlock"};
    model::TestObject object;
    object.id = model::ObjectId::create();
    object.name = fmt::format("{} {}", words[n % 10], n);
    object.tag = fmt::format("T-{:05}", n * 7);
    object.place = fmt::format("hall {}", n % 23);
    object.created = moment(n);
    return object;
}

inline model::Job generatedJob(const model::TestObject& object, const model::Sketch& sketch, int n)
{
    static const char* const people[] = {"Ada", "Brook", "Cleo", "Dara", "Ede", "Finn", "Gale", "Hale"};
    model::Job job;
    job.id = model::JobId::create();
    job.number = n + 1;
    job.object = object.id;
    job.opened = moment(n * 600);
    job.setup.purpose = fmt::format("check {}", n);
    job.sketch = sketch;
    model::Round round;
    round.id = model::RoundId::create();
    round.by = people[n % 8];
    round.opened = job.opened;
    for (const model::TestPoint& point : sketch.points)
        round.points.push_back(point.id);
    job.rounds = {round};
    for (int i = 0; i < kGeneratedReadings; ++i) {
        model::Reading reading =
            sampleReading(round.id, sketch.points[static_cast<std::size_t>(i % kGeneratedPoints)].id);
        reading.sequence = i + 1;
        reading.by = round.by;
        job.readings.push_back(reading);
    }
    return job;
}

/// Writes jobs `from` to `to`, five to an object; ends the program where that is not possible.
inline void grow(storage::HistoryStore& store, int from, int to)
{
    const model::Sketch sketch = sampleSketch(kGeneratedPoints);
    model::TestObject object;
    for (int n = from; n < to; ++n) {
        if (n % kJobsPerObject == 0 || n == from)
            object = generatedObject(n);
        if (const Status taken = store.importJob(object, generatedJob(object, sketch, n), {}); !taken) {
            fmt::print(stderr, "{}\n", taken.error().message);
            std::exit(1);
        }
    }
}

} // namespace sealwalk::tests
