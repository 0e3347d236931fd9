// SPDX-License-Identifier: GPL-3.0-or-later
// A signed job is worked out with the object it was approved with, whatever was changed or amended since.
#include "core/transfer/hand_out.h"
#include "core/transfer/judged_object.h"
#include "core/transfer/report_facts.h"
#include "tests/core/storage/opened_history.h"
#include "tests/core/storage/scratch_folder.h"
#include "tests/support/signed_job.h"

#include <gtest/gtest.h>

namespace sealwalk::tests {
namespace {

/// A history with one signed job, whose object was made three times as large since.
struct SignedAndChanged
{
    explicit SignedAndChanged(const ScratchFolder& folder)
        : store(openAt(folder / "a.sealwalk", storage::HistoryStore::Mode::Create))
        , file(exchange::signedFile(31, reviewer))
    {
        file.record.object.volume = Volume::fromSi(0.48);
        file.record.job.signatures.clear();
        file.record.job.signatures.push_back(exchange::signJob(file.record, exchange::namesOf(file.pictures),
                                                               reviewer, exchange::kTestPassphrase,
                                                               {"reviewer", "no response", moment(50)})
                                                 .value());
        EXPECT_TRUE(store.importJob(file.record.object, file.record.job, file.pictures));
        now = file.record.object;
        now.volume = Volume::fromSi(1.44);
        EXPECT_TRUE(store.changeObject(now));
    }

    /// A later insight, signed over the object as it is in `record`.
    void amendOver(exchange::JobRecord record)
    {
        model::ReviewEntry entry;
        entry.id = model::ReviewId::create();
        entry.step = model::ReviewStep::Amendment;
        entry.by = reviewer.name;
        entry.text = "the gauge was off by 5 %";
        entry.at = moment(90'000);
        record.job.review.push_back(entry);
        const auto signature =
            exchange::signJob(record, exchange::namesOf(file.pictures), reviewer, exchange::kTestPassphrase,
                              {std::string(model::kAmendmentRole), entry.text, entry.at});
        ASSERT_TRUE(signature) << signature.error().message;
        const Status added = store.amend(record.job.id, entry, *signature);
        ASSERT_TRUE(added) << added.error().message;
    }

    [[nodiscard]] model::JobId job() const { return file.record.job.id; }

    model::Person reviewer = exchange::testPerson("Rhea Quill", "reviewer");
    storage::HistoryStore store;
    exchange::JobFile file;
    model::TestObject now;
};

} // namespace

// Regression: only the report knew the volume a job was signed with; balance, table, map and comparison took
// today's.
TEST(JudgedObject, IsTheApprovedOneOfASignedJob)
{
    const ScratchFolder folder;
    const SignedAndChanged history(folder);
    const auto judged = transfer::loadJudged(history.store, history.job());
    ASSERT_TRUE(judged) << judged.error().message;
    EXPECT_EQ(judged->object, history.file.record.object);
    EXPECT_EQ(transfer::loadRecord(history.store, history.job())->object, history.now);
}

// Regression: an amendment carries the object as it was when it was signed; the report of the approved job
// then took that one, and the note that something was changed since went away.
TEST(JudgedObject, IsNotThatOfAnAmendment)
{
    const ScratchFolder folder;
    SignedAndChanged history(folder);
    history.amendOver({history.now, *history.store.job(history.job())});
    const auto judged = transfer::loadJudged(history.store, history.job());
    ASSERT_TRUE(judged) << judged.error().message;
    EXPECT_EQ(judged->object, history.file.record.object);
    const auto facts = transfer::reportFacts(history.store, history.job(), moment(100'000));
    ASSERT_TRUE(facts) << facts.error().message;
    EXPECT_EQ(facts->record.object, history.file.record.object);
    EXPECT_TRUE(facts->options.problems.empty());
    const auto verified = transfer::verifyIn(history.store, history.job());
    ASSERT_TRUE(verified) << verified.error().message;
    EXPECT_TRUE(verified->ok());
    EXPECT_TRUE(std::any_of(verified->notes.begin(), verified->notes.end(), [](const std::string& note) {
        return note.find("were changed since this was signed") != std::string::npos;
    }));
    const auto out = transfer::handOut(history.store, history.job());
    ASSERT_TRUE(out) << out.error().message;
    const auto read = exchange::readJobFile(out->bytes);
    ASSERT_TRUE(read) << read.error().message;
    EXPECT_EQ(read->record.object, history.file.record.object);
    EXPECT_TRUE(exchange::verifyJobFile(out->bytes)->ok());
}

// Property: what no holding signature vouches for is not taken from a signature's text; an open job has
// today's object.
TEST(JudgedObject, IsTodaysWhereNothingVouchesForAnother)
{
    const ScratchFolder folder;
    const SignedAndChanged history(folder);
    model::Job bent = *history.store.job(history.job());
    bent.readings.at(0).by = "somebody else";
    EXPECT_EQ(transfer::judgedObject(history.store, history.now, bent), history.now);
    model::Job open = *history.store.job(history.job());
    open.state = model::JobState::Open;
    EXPECT_EQ(transfer::judgedObject(history.store, history.now, open), history.now);
}

} // namespace sealwalk::tests
