// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/report_facts.h"

#include "core/analysis/approval.h"
#include "core/exchange/job_file.h"
#include "core/transfer/earlier_jobs.h"
#include "core/transfer/hand_out.h"
#include "core/transfer/judged_object.h"
#include "core/transfer/known_pairs.h"

#include <string>
#include <utility>

namespace sealwalk::transfer {

Result<ReportFacts> reportFacts(const storage::HistoryStore& store, model::JobId job, const Timestamp& now)
{
    auto record = loadJudged(store, job);
    if (!record)
        return fail(record.error());
    ReportFacts facts;
    facts.record = std::move(*record);
    facts.options.now = now;
    facts.options.asOf = analysis::approvalOf(facts.record.job).value_or(now);
    facts.options.lastJob = jobBefore(store, facts.record.job);
    auto known = knownPairs(store);
    if (!known)
        return fail(known.error());
    facts.options.known = std::move(*known);
    facts.options.carried = carriedRepairs(store, facts.record.job);
    auto people = store.people();
    if (!people)
        return fail(people.error());
    facts.options.people = std::move(*people);
    auto entries = store.personEntries();
    if (!entries) // or the report would say that nobody recorded who added them
        return fail(entries.error());
    facts.options.personEntries = std::move(*entries);
    std::vector<std::string> missing; // named by the check below as well
    facts.pictures = loadPictures(store, facts.record.job, missing);
    const auto checked = verifyIn(store, job);
    if (!checked)
        return fail(checked.error());
    if (const auto digest =
            exchange::jobDigest(facts.record.object, facts.record.job, exchange::namesOf(facts.pictures)))
        facts.options.digest = *digest;
    facts.options.problems = checked->problems;
    for (const exchange::CheckedSignature& signature : checked->signatures)
        facts.options.signatures.push_back({signature.signature.id, signature.ok, signature.says});
    return facts;
}

} // namespace sealwalk::transfer
