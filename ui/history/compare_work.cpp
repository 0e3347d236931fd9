// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/compare_work.h"

#include "core/analysis/round_summary.h"
#include "core/storage/history_store.h"

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
    result.job = std::move(job);
    return result;
}

void addStops(const ComparedJob& compared, Course& course)
{
    const model::Job& job = compared.job;
    course.push_back({job.number, job.opened, compared.asFound, compared.detectable});
    if (job.repairs.empty())
        return;
    const Timestamp last = job.rounds.empty() ? job.opened : job.rounds.back().opened;
    course.push_back({job.number, std::max(last, job.opened), compared.asLeft, compared.detectable});
}

void sortByTime(Course& course)
{
    std::stable_sort(course.begin(), course.end(), [](const auto& a, const auto& b) { return a.at < b.at; });
}

} // namespace

Result<std::shared_ptr<const ComparedJobs>> workOutComparison(const std::filesystem::path& history,
                                                              model::JobId before, model::JobId after)
{
    const auto store = HistoryStore::open(history, HistoryStore::Mode::ReadOnly);
    if (!store)
        return fail(store.error());
    auto first = store->job(before);
    if (!first)
        return fail(first.error());
    auto second = store->job(after);
    if (!second)
        return fail(second.error());
    auto object = store->object(second->object);
    if (!object)
        return fail(object.error());
    auto result = std::make_shared<ComparedJobs>();
    result->object = std::move(*object);
    std::jthread other([&] { result->before = worked(std::move(*first), result->object); });
    result->after = worked(std::move(*second), result->object);
    other.join();
    return std::shared_ptr<const ComparedJobs>(std::move(result));
}

Course courseOf(const ComparedJobs& compared)
{
    Course course;
    addStops(compared.before, course);
    addStops(compared.after, course);
    sortByTime(course);
    return course;
}

Result<Course> workOutCourse(const std::filesystem::path& history, const ComparedJobs& compared,
                             const std::stop_token& stop)
{
    Course course = courseOf(compared);
    const auto store = HistoryStore::open(history, HistoryStore::Mode::ReadOnly);
    if (!store)
        return fail(store.error());
    auto rows = store->jobsOf(compared.object.id);
    if (!rows)
        return fail(rows.error());
    if (rows->size() > kLongestCourse)
        rows->resize(kLongestCourse);
    for (const storage::JobRow& row : *rows) {
        if (stop.stop_requested())
            break;
        if (row.id == compared.before.job.id || row.id == compared.after.job.id)
            continue;
        auto job = store->job(row.id);
        if (!job)
            return fail(job.error());
        addStops(worked(std::move(*job), compared.object), course);
    }
    sortByTime(course);
    return course;
}

} // namespace sealwalk::ui
