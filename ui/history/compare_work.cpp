// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/compare_work.h"

#include "core/analysis/round_summary.h"
#include "core/report/shown_unit.h"
#include "core/storage/history_store.h"
#include "core/transfer/judged_object.h"

#include <algorithm>
#include <thread>

namespace sealwalk::ui {

namespace {

using storage::HistoryStore;

constexpr std::size_t kLongestCourse = 20; // jobs; older ones are found by comparing with them

ComparedJob worked(model::Job job, const model::TestObject& object)
{
    ComparedJob result;
    const auto byRound = analysis::findingsByRound(job, object);
    result.asFound = analysis::summarise(job, byRound, analysis::Standing::AsFound);
    result.asLeft = analysis::summarise(job, byRound, analysis::Standing::AsLeft);
    result.detectable = report::worstDetectable(job, object);
    result.detectableAtWorst = report::worstDetectable(job, object, result.asLeft);
    result.job = std::move(job);
    return result;
}

/// With the facts of the object that it was signed with, or those of the entry it was done on.
Result<ComparedJob> workedOf(const HistoryStore& store, model::JobId id)
{
    auto record = transfer::loadJudged(store, id);
    if (!record)
        return fail(record.error());
    return worked(std::move(record->job), record->object);
}

void sortByTime(analysis::WorkedJobs& jobs)
{
    std::stable_sort(jobs.begin(), jobs.end(),
                     [](const auto& a, const auto& b) { return a->job.opened < b->job.opened; });
}

} // namespace

Result<std::shared_ptr<const ComparedJobs>> workOutComparison(const std::filesystem::path& history,
                                                              model::JobId before, model::JobId after)
{
    const auto store = HistoryStore::open(history, HistoryStore::Mode::ReadOnly);
    if (!store)
        return fail(store.error());
    auto first = transfer::loadJudged(*store, before);
    if (!first)
        return fail(first.error());
    auto second = transfer::loadJudged(*store, after);
    if (!second)
        return fail(second.error());
    auto result = std::make_shared<ComparedJobs>();
    result->object = std::move(second->object);
    std::jthread other([&] { result->before = worked(std::move(first->job), first->object); });
    result->after = worked(std::move(second->job), result->object);
    other.join();
    return std::shared_ptr<const ComparedJobs>(std::move(result));
}

ComparedYears yearsOf(const std::shared_ptr<const ComparedJobs>& compared)
{
    using Shared = std::shared_ptr<const ComparedJob>;
    ComparedYears years;
    years.jobs.push_back(Shared(compared, &compared->before));
    if (compared->before.job.id != compared->after.job.id)
        years.jobs.push_back(Shared(compared, &compared->after));
    sortByTime(years.jobs);
    return years;
}

Result<ComparedYears> workOutYears(const std::filesystem::path& history,
                                   const std::shared_ptr<const ComparedJobs>& compared,
                                   const std::vector<model::JobId>& asked, const std::stop_token& stop)
{
    ComparedYears years = yearsOf(compared);
    const auto store = HistoryStore::open(history, HistoryStore::Mode::ReadOnly);
    if (!store)
        return fail(store.error());
    const auto rows = store->jobsOf(compared->object.id);
    if (!rows)
        return fail(rows.error());
    std::size_t room = kLongestCourse;
    for (const storage::JobRow& row : *rows) {
        if (stop.stop_requested())
            break;
        const bool isAsked = std::find(asked.begin(), asked.end(), row.id) != asked.end();
        const bool isIn = row.id == compared->before.job.id || row.id == compared->after.job.id;
        if (room == 0 && !isAsked && !isIn) {
            ++years.leftOut;
            continue;
        }
        room -= room == 0 ? 0 : 1;
        if (isIn)
            continue;
        auto job = workedOf(*store, row.id);
        if (!job)
            return fail(job.error());
        years.jobs.push_back(std::make_shared<const ComparedJob>(std::move(*job)));
    }
    sortByTime(years.jobs);
    if (!stop.stop_requested())
        years.totals = analysis::objectTotals(years.jobs, compared->object);
    return years;
}

} // namespace sealwalk::ui
