// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/judged_object.h"

#include "core/exchange/job_file.h"
#include "core/exchange/job_signing.h"
#include "core/transfer/hand_out.h"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace sealwalk::transfer {

model::TestObject judgedObject(const storage::HistoryStore& store, const model::TestObject& now,
                               const model::Job& job)
{
    if (job.state != model::JobState::Signed)
        return now;
    auto approved = exchange::approvedObject(job);
    // The signatures are read again only where it would make a difference.
    if (!approved || *approved == now || approved->id != now.id)
        return now;
    std::vector<std::string> missing;
    const auto pictures = loadPictures(store, job, missing);
    const exchange::Verification checked = exchange::verifyRecord({now, job}, exchange::namesOf(pictures));
    const bool holds = std::any_of(checked.signatures.begin(), checked.signatures.end(),
                                   [](const exchange::CheckedSignature& one) {
                                       return one.ok && one.signature.role == model::kApprovalRole;
                                   });
    return holds ? *approved : now;
}

Result<exchange::JobRecord> loadJudged(const storage::HistoryStore& store, model::JobId job)
{
    auto record = loadRecord(store, job);
    if (record)
        record->object = judgedObject(store, record->object, record->job);
    return record;
}

} // namespace sealwalk::transfer
