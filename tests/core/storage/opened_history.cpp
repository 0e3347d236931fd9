// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/storage/opened_history.h"

#include "core/base/contract.h"

#include <iostream>

namespace sealwalk::tests {

using storage::HistoryStore;

HistoryStore openAt(const std::filesystem::path& file, HistoryStore::Mode mode)
{
    auto store = HistoryStore::open(file, mode);
    if (!store)
        std::cerr << store.error().message << '\n';
    SEALWALK_EXPECT(store.has_value());
    return std::move(*store);
}

OpenedHistory::OpenedHistory(const std::filesystem::path& file)
    : store(openAt(file, HistoryStore::Mode::Create))
{
    SEALWALK_EXPECT(store.addObject(sampleObject()).has_value());
    job = *store.createJob(sampleObject().id, "yearly", moment(0));
    job.sketch = sampleSketch(4);
    job.sketch.revision = *store.saveSketch(job.id, job.sketch, 1);
    model::Round wanted;
    wanted.points = {job.sketch.points[0].id, job.sketch.points[1].id};
    wanted.by = "Ada";
    wanted.opened = moment(5);
    round = *store.addRound(job.id, wanted);
}

model::Reading OpenedHistory::add(int number)
{
    const auto stored =
        store.addReading(job.id, sampleReading(round.id, job.sketch.pointNumbered(number)->id));
    SEALWALK_EXPECT(stored.has_value());
    return *stored;
}

void OpenedHistory::sign()
{
    SEALWALK_EXPECT(store.addReview(job.id, reviewEntry(model::ReviewStep::Submitted)).has_value());
    SEALWALK_EXPECT(
        store.sign(job.id, reviewEntry(model::ReviewStep::Approved), sampleSignature()).has_value());
}

} // namespace sealwalk::tests
