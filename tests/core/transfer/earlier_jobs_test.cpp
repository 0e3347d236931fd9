// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/earlier_jobs.h"
#include "tests/core/storage/opened_history.h"
#include "tests/core/storage/scratch_folder.h"

#include <gtest/gtest.h>

namespace sealwalk::tests {
namespace {

model::Job approvedAt(model::Job job, const Timestamp& at)
{
    model::ReviewEntry approval;
    approval.step = model::ReviewStep::Approved;
    approval.at = at;
    job.review.push_back(approval);
    job.state = model::JobState::Signed;
    return job;
}

// Regression: the report of a signed job lost a temporary repair when a later job made it good.
TEST(EarlierJobs, ASignedJobKeepsTheRepairsThatWereOpenWhenItWasApproved)
{
    const ScratchFolder folder;
    OpenedHistory opened(folder / "a.sealwalk");
    model::Repair patch;
    patch.id = model::RepairId::create();
    patch.points = {opened.job.sketch.points[0].id};
    patch.action = "filler";
    patch.permanent = false;
    patch.owner = "Cleo";
    patch.due = moment(90000);
    patch.at = moment(10);
    ASSERT_TRUE(opened.store.putRepair(opened.job.id, patch));
    const model::Job second = opened.store.createJob(sampleObject().id, "again", moment(1000)).value();
    const model::Job third = opened.store.createJob(sampleObject().id, "mended", moment(3000)).value();
    EXPECT_EQ(transfer::carriedRepairs(opened.store, second), std::vector{patch});
    model::Repair weld;
    weld.id = model::RepairId::create();
    weld.points = patch.points;
    weld.action = "re-weld";
    weld.makesGood = {patch.id};
    weld.at = moment(3010);
    ASSERT_TRUE(opened.store.putRepair(third.id, weld));
    EXPECT_EQ(transfer::carriedRepairs(opened.store, second).size(), 0U) << "not signed: as it is now";
    EXPECT_EQ(transfer::carriedRepairs(opened.store, approvedAt(second, moment(2000))), std::vector{patch});
    EXPECT_EQ(transfer::carriedRepairs(opened.store, approvedAt(second, moment(4000))).size(), 0U);
}

} // namespace
} // namespace sealwalk::tests
