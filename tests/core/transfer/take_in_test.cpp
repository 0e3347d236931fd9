// SPDX-License-Identifier: GPL-3.0-or-later
// What comes with the jobs of another history: traces of the detector, what was said of points; and what not.
#include "core/storage/trace_name.h"
#include "core/transfer/hand_out.h"
#include "core/transfer/take_in.h"
#include "tests/core/storage/scratch_folder.h"
#include "tests/support/signed_job.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace sealwalk::tests {
namespace {

using exchange::JobFile;
using storage::HistoryStore;
using storage::NamedTrace;
using transfer::Outcome;
using transfer::TakenIn;

constexpr std::uint64_t kSeed = 31;

bool hasNote(const TakenIn& taken, const char* said)
{
    return std::any_of(taken.result.notes.begin(), taken.result.notes.end(),
                       [&](const std::string& note) { return note.find(said) != std::string::npos; });
}

class TakingIn : public testing::Test
{
protected:
    TakingIn()
        : m_here(HistoryStore::open(m_folder / "here.sealwalk", HistoryStore::Mode::Create).value())
        , m_there(HistoryStore::open(m_folder / "there.sealwalk", HistoryStore::Mode::Create).value())
    {
        m_file.record.job.review.clear();
        m_file.record.job.state = model::JobState::Open; // still worked on
        for (std::size_t i = 0; i < 2; ++i) {
            const storage::Trace trace{{0.0, 0.5}, {1e-9F, 3e-9F + static_cast<float>(i) * 1e-9F}};
            m_traces.push_back({storage::tellingName("7", trace), trace});
            m_file.record.job.readings[i].trace = m_traces.back().name;
        }
    }

    static Status import(HistoryStore& store, const JobFile& file, const std::vector<NamedTrace>& traces)
    {
        return store.importJob(file.record.object, file.record.job, file.pictures, traces);
    }
    std::vector<TakenIn> merge() { return transfer::takeInAll(m_here, m_there).value(); }

    ScratchFolder m_folder;
    HistoryStore m_here;
    HistoryStore m_there;
    JobFile m_file = exchange::unsignedFile(kSeed);
    std::vector<NamedTrace> m_traces;
};

} // namespace

// Regression: a trace that somebody bent came along, and the history it came into was not sound for ever.
TEST_F(TakingIn, LeavesTracesOutThatDoNotHoldWhatTheyAreCalled)
{
    std::vector<NamedTrace> bent = m_traces;
    bent[1].trace.values[1] *= 2;
    ASSERT_TRUE(import(m_there, m_file, bent));
    const std::vector<TakenIn> answers = merge();
    ASSERT_EQ(answers.size(), 1U);
    EXPECT_EQ(answers[0].outcome, Outcome::Came);
    EXPECT_TRUE(hasNote(answers[0], "does not hold what its name says and was left out"));
    EXPECT_EQ(m_here.traces(m_file.record.job.id), std::vector{m_traces[0]});
    const auto problems = transfer::problemsOf(m_here).value();
    for (const std::string& problem : problems)
        EXPECT_EQ(problem.find("trace"), std::string::npos) << problem;
}

// Regression: a job that had come in a file, which has no traces, never got them.
TEST_F(TakingIn, LetsTracesInThatWereMissing)
{
    ASSERT_TRUE(import(m_there, m_file, m_traces));
    ASSERT_TRUE(import(m_here, m_file, {}));
    const std::vector<TakenIn> answers = merge();
    EXPECT_EQ(answers.at(0).outcome, Outcome::Known);
    EXPECT_TRUE(hasNote(answers[0], "2 of the detector's traces came along"));
    EXPECT_EQ(m_here.traces(m_file.record.job.id), m_traces);
    EXPECT_FALSE(hasNote(merge().at(0), "came along")) << "once";
}

// Property: a signed job takes nothing more, by the history's own rules; that is said.
TEST_F(TakingIn, SaysThatASignedJobTakesNoTraces)
{
    JobFile file = exchange::signedFile(kSeed, exchange::testPerson("Rhea Quill", "reviewer"));
    file.record.job.readings[0].trace = m_traces[0].name;
    file.record.job.signatures.clear();
    file.record.job.signatures.push_back(
        exchange::signJob(file.record, exchange::namesOf(file.pictures),
                          exchange::testPerson("Rhea Quill", "reviewer"), exchange::kTestPassphrase,
                          {"reviewer", "no response above the limit", file.record.job.opened})
            .value());
    ASSERT_TRUE(import(m_there, file, {m_traces[0]}));
    ASSERT_TRUE(import(m_here, file, {}));
    const std::vector<TakenIn> answers = merge();
    EXPECT_EQ(answers.at(0).outcome, Outcome::Known) << answers[0].done;
    EXPECT_TRUE(hasNote(answers[0], "submitted or signed and takes no more"));
    EXPECT_TRUE(m_here.traces(file.record.job.id)->empty());
}

// Regression: one bad line about points made the whole answer an error, after every job had come.
TEST_F(TakingIn, TellsWhatWasSaidOfPointsAndCannotBeTaken)
{
    ASSERT_TRUE(import(m_there, m_file, {}));
    ASSERT_TRUE(m_there.putSetting("same points a b", "no pair"));
    const std::vector<TakenIn> answers = merge();
    ASSERT_EQ(answers.size(), 2U);
    EXPECT_EQ(answers[0].outcome, Outcome::Came);
    EXPECT_FALSE(answers[1].isOfJob());
    EXPECT_EQ(answers[1].outcome, Outcome::NotTaken);
    EXPECT_EQ(answers[1].result.problems.size(), 1U);
}

// Property: stopped, the jobs that came stay, and nothing that belongs to the whole is taken.
TEST_F(TakingIn, StopsBetweenJobs)
{
    const JobFile other = exchange::unsignedFile(kSeed + 1);
    for (const JobFile& file : {m_file, other})
        ASSERT_TRUE(import(m_there, file, {}));
    const std::string pair = model::PointId::create().text() + " " + model::PointId::create().text();
    ASSERT_TRUE(m_there.putSetting("same points a b", pair));
    std::stop_source stop;
    const auto answers =
        transfer::takeInAll(m_here, m_there, stop.get_token(), [&](std::size_t done, std::size_t) {
            if (done == 0)
                stop.request_stop();
        });
    ASSERT_TRUE(answers);
    EXPECT_EQ(answers->size(), 1U);
    EXPECT_EQ(m_here.jobs()->size(), 1U);
    EXPECT_TRUE(m_here.settingsNamed("same points")->empty());
}

} // namespace sealwalk::tests
