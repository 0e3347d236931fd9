// SPDX-License-Identifier: GPL-3.0-or-later
// The questions a reviewer asks before signing, each worked out from the record; none is ticked by hand.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/model/job.h"
#include "core/model/test_object.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sealwalk::analysis {

enum class CheckState
{
    Stops,     ///< no signature while it stands
    NeedsWord, ///< somebody must say why it may stand
    InOrder,
};

/// Where it is mended.
enum class CheckPlace
{
    Prepare,
    Sketch,
    Spray,
    Judge,
    History
};

/// One of several things that are open on one question.
struct ReviewMatter
{
    std::string says; ///< one sentence
    CheckState state = CheckState::NeedsWord;
    std::vector<model::PointId> points; ///< concerned, in order of number
};

/// What somebody said of a check.
struct GivenWord
{
    std::string by;
    std::string text;
    bool isObjection = false; ///< that it may not stand; `text` without its beginning
};

struct ReviewCheck
{
    int number = 0;        ///< 1 … 24
    std::string_view word; ///< stable; an answer to the check carries it
    std::string question;
    std::string answer;                ///< what the record says, one sentence: of the gravest matter
    std::vector<ReviewMatter> matters; ///< all that is open on it, the gravest first; empty: in order
    CheckState state = CheckState::InOrder;
    CheckPlace place = CheckPlace::Judge;
    std::vector<model::PointId> points; ///< concerned, in order of number
    std::string wordGiven; ///< the latest answer a person gave to it; empty: none, or objected to
    std::vector<GivenWord> words;       ///< all of them since it was last sent back, that one at the end
    bool isObjected = false;  ///< the latest word is an objection: it wants another one, whatever is computed
    std::string returnedWith; ///< what was said of it when the job was last sent back; empty: nothing
    std::string returnedBy;   ///< who said that
    bool wasObjected =
        false; ///< that was an objection: it cannot be said again as it stands, and wants an answer
    [[nodiscard]] bool isSettled() const
    {
        return state == CheckState::InOrder || (state == CheckState::NeedsWord && !wordGiven.empty());
    }
};

/// A word said on a check that stops, with what it was said of: it settles nothing, and must not settle what
/// the check complains of next.
std::string wordOnStop(const std::string& answer, const std::string& word);

/// The word of who does not agree that a question may stand as it is answered. It is kept as words, so that
/// every reader of the record sees it; without words of its own it says nothing.
std::string objection(const std::string& word);
/// What was objected; none when the word is no objection.
std::optional<std::string> objectedIn(std::string_view word);

struct ReviewOptions
{
    std::vector<model::Person> people;      ///< of the history, for qualifications
    std::optional<model::Job> lastJob;      ///< the latest earlier job of the object
    std::optional<int> grownSinceLastJob;   ///< points that leak more than then; none: not compared
    std::optional<int> comparedWithLastJob; ///< points that could be compared at all; none: not known
    std::vector<model::Repair> carried;     ///< temporary repairs of earlier jobs, not made good by then
    bool isComparing = false; ///< whether there is a last job, and what has grown, is still worked out
    Timestamp now;            ///< for due dates
};

/// The question that asks for the comparison with the last job.
inline constexpr std::string_view kComparisonCheck = "comparison";
/// The one that asks whether who tested is qualified.
inline constexpr std::string_view kQualifiedCheck = "qualified";

/// The question that a word given to `check` belongs to, as reviewers read it; `check` itself when it is
/// none.
std::string reviewQuestion(std::string_view check);

/// All 24, in order of number. The questions follow common practice of reviewers; no standard lists them.
std::vector<ReviewCheck> reviewChecks(const model::Job& job, const model::TestObject& object,
                                      const std::vector<PointFinding>& asLeft, const ReviewOptions& options);

/// Why this person may not approve this job; none: they may. Who had a hand in its record (readings,
/// measurements, voids, verdicts, concessions entered, repairs, its submission) does not approve it, unless
/// the history is kept by one person.
std::optional<std::string> whyNotApprove(const model::Job& job, const model::Person& person,
                                         bool onePersonHistory);

/// Why whoever is called `name` may not send the job back; none: they may. Who sent it for review does not,
/// unless the history is kept by one person.
std::optional<std::string> whyNotSendBack(const model::Job& job, const std::string& name,
                                          bool onePersonHistory);

/// What the record says of a job that is sent for review although something stops a sign-off: each of these,
/// and why it is sent all the same. Empty when nothing stops one.
std::string sentWithStops(const std::vector<ReviewCheck>& checks, const std::string& why);

/// Whether nothing stops a signature and every word that is needed was given.
bool isReadyToSign(const std::vector<ReviewCheck>& checks);

} // namespace sealwalk::analysis
