// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/review_checks.h"
#include "core/analysis/round_summary.h"
#include "core/storage/history_store.h"
#include "demo/history/demo_history.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>

namespace sealwalk {
namespace {

// Regression: the invented job was signed although the program itself would not have let it be.
TEST(DemoReview, TheSignedJobCouldHaveBeenSigned)
{
    const std::filesystem::path file = std::filesystem::temp_directory_path() /
                                       ("sealwalk-review-" + std::to_string(::getpid()) + ".sealwalk");
    std::filesystem::remove(file);
    ASSERT_TRUE(demo::writeDemoHistory(file));
    {
        const auto store = storage::HistoryStore::open(file, storage::HistoryStore::Mode::ReadOnly);
        const model::Job job = store->job(store->findJob("118").value()).value();
        const model::TestObject object = store->object(job.object).value();
        analysis::ReviewOptions options;
        options.people = store->people().value();
        options.now = job.signatures.front().at;
        const auto left = analysis::summarise(job, object, analysis::Standing::AsLeft);
        const auto checks = analysis::reviewChecks(job, object, left, options);
        EXPECT_TRUE(analysis::isReadyToSign(checks));
        for (const analysis::ReviewCheck& check : checks)
            EXPECT_TRUE(check.state == analysis::CheckState::InOrder || !check.wordGiven.empty())
                << check.question << ' ' << check.answer;
    }
    std::filesystem::remove(file);
}

} // namespace
} // namespace sealwalk
