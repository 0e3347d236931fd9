// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/object_totals.h"

#include "core/analysis/job_rise.h"

#include <algorithm>

namespace sealwalk::analysis {

namespace {

ObjectTotal totalOf(const WorkedJob& worked, const model::TestObject& object, Standing standing)
{
    const model::Job& job = worked.job;
    ObjectTotal total;
    total.job = job.number;
    total.standing = standing;
    total.at = standing == Standing::AsLeft ? leftAt(worked) : job.opened;
    total.leaks = leakSum(job, object, worked.findings(standing == Standing::AsLeft));
    if (const model::RiseTest* test = riseTestFor(job, standing)) {
        total.basePressure = test->basePressure;
        if (const auto rise = judgeRise(*test, job, object))
            total.rise = totalOf(*rise);
    }
    return total;
}

} // namespace

bool wasTestedAgain(const WorkedJob& worked, const PointFinding& left)
{
    const auto found = std::find_if(worked.asFound.begin(), worked.asFound.end(),
                                    [&](const PointFinding& other) { return other.point == left.point; });
    return isAnswer(left) && left.reading &&
           (found == worked.asFound.end() || found->reading != left.reading);
}

Timestamp leftAt(const WorkedJob& worked)
{
    Timestamp last = worked.job.opened;
    for (const model::Repair& repair : worked.job.repairs)
        last = std::max(last, repair.at);
    for (const PointFinding& left : worked.asLeft)
        if (wasTestedAgain(worked, left))
            if (const model::Reading* reading = worked.job.reading(*left.reading))
                last = std::max(last, reading->at);
    return last;
}

std::vector<ObjectTotal> objectTotals(const WorkedJobs& jobs, const model::TestObject& object)
{
    std::vector<ObjectTotal> totals;
    for (const auto& worked : jobs) {
        totals.push_back(totalOf(*worked, object, Standing::AsFound));
        if (!worked->job.repairs.empty())
            totals.push_back(totalOf(*worked, object, Standing::AsLeft));
    }
    std::stable_sort(totals.begin(), totals.end(),
                     [](const ObjectTotal& a, const ObjectTotal& b) { return a.at < b.at; });
    return totals;
}

} // namespace sealwalk::analysis
