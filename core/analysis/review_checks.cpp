// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/review_checks.h"

#include "core/analysis/named_people.h"
#include "core/analysis/repair_note.h"
#include "core/analysis/review_ground.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <iterator>
#include <utility>

namespace sealwalk::analysis {

namespace detail {

std::vector<model::PointId>
ReviewGround::pointsWhere(const std::function<bool(const PointFinding&)>& wanted) const
{
    std::vector<model::PointId> points;
    for (const PointFinding& finding : findings)
        if (wanted(finding))
            points.push_back(finding.point);
    return points;
}

std::string ReviewGround::text(const std::vector<model::PointId>& points) const
{
    constexpr std::size_t kMostNamed = 24;
    std::string list;
    const std::size_t named = std::min(points.size(), kMostNamed);
    for (std::size_t i = 0; i < named; ++i) {
        const model::TestPoint* point = job.sketch.point(points[i]);
        const bool last = i + 1 == points.size();
        list += (i == 0 ? "" : last ? " and " : ", ") + std::to_string(point == nullptr ? 0 : point->number);
    }
    if (points.size() > named)
        list += fmt::format(" and {} more", points.size() - named);
    return (points.size() == 1 ? "point " : "points ") + list;
}

Answer answerOf(std::vector<Answer> open, Answer inOrder)
{
    if (open.empty())
        return inOrder;
    std::stable_sort(open.begin(), open.end(),
                     [](const Answer& a, const Answer& b) { return a.state < b.state; });
    Answer first = std::move(open.front());
    first.also.assign(std::make_move_iterator(open.begin() + 1), std::make_move_iterator(open.end()));
    return first;
}

} // namespace detail

namespace {

struct Question
{
    std::string_view word;
    const char* text;
    CheckPlace place;
    detail::Answer (*ask)(const detail::ReviewGround&);
};

constexpr std::array<Question, 24> kQuestions{{
    {"object", "Right object, drawing and procedure?", CheckPlace::Prepare, detail::rightObject},
    {"limit", "Limit set, with gas and unit, and agreed by name?", CheckPlace::Prepare, detail::limitAgreed},
    {"reference", "Reference leak in date, with value and temperature?", CheckPlace::Prepare,
     detail::referenceInDate},
    {"calibration", "System check before and after, and the change acceptable?", CheckPlace::Prepare,
     detail::checkedBeforeAndAfter},
    {"sensitivity", "Smallest detectable leak below the limit everywhere?", CheckPlace::Prepare,
     detail::sensitiveEnough},
    {"background", "Background watched, and quiet?", CheckPlace::Prepare, detail::backgroundQuiet},
    {"coverage", "Has every point a state?", CheckPlace::Spray, detail::everyPointHasState},
    {"kinds", "Joints present that are usually forgotten, the test set-up first?", CheckPlace::Sketch,
     detail::kindsPresent},
    {"whole", "Every reading with background and enough dwell?", CheckPlace::Spray, detail::readingsWhole},
    {"confirmed", "Every response over the limit confirmed or judged?", CheckPlace::Spray,
     detail::responsesConfirmed},
    {"permeation", "Permeation: elastomer, with a recorded delay?", CheckPlace::Judge,
     detail::permeationProven},
    {"corrected", "Corrected values, not shown ones, compared with the limit?", CheckPlace::Judge,
     detail::correctedCompared},
    {"outliers", "Any value a thousand times off its neighbours?", CheckPlace::Spray, detail::noOutliers},
    {"repairs", "Failed points repaired and sprayed again, or conceded?", CheckPlace::Judge,
     detail::failuresRepaired},
    {"temporary", "Temporary repairs with owner and date?", CheckPlace::Judge, detail::temporaryOwned},
    {"conditions", "Conditions covered that the joints ask for?", CheckPlace::Spray,
     detail::conditionsCovered},
    {"balance", "Located leaks add up to the total?", CheckPlace::Judge, detail::balanceMet},
    {"dry", "Object dry, nothing plugged?", CheckPlace::Prepare, detail::objectDry},
    {"concessions", "Concessions granted by someone with the right?", CheckPlace::Judge,
     detail::deviationsApproved},
    {kQualifiedCheck, "Tester qualified for this work?", CheckPlace::Prepare, detail::testerQualified},
    {"changes", "Anything changed or void, each with its reason?", CheckPlace::Spray,
     detail::changesReasoned},
    {kComparisonCheck, "Compared with the last job?", CheckPlace::History, detail::comparedWithLast},
    {"claim", "Does the statement claim no more than was tested?", CheckPlace::Judge, detail::claimsNoMore},
    {"sheets", "Sheets readable: side they are seen from, up direction?", CheckPlace::Sketch,
     detail::sheetsReadable},
}};

constexpr std::string_view kOn = "On \u201C";
constexpr std::string_view kOff = "\u201D: ";

constexpr std::string_view kNotAgreed = "Not agreed: ";

/// Whether these words were said on a stop that is another one by now.
bool isOfAnotherStop(const std::string& text, const std::string& answer)
{
    if (!text.starts_with(kOn))
        return false;
    const std::size_t end = text.find(kOff, kOn.size());
    return end != std::string::npos && text.substr(kOn.size(), end - kOn.size()) != answer;
}

/// The latest words given to a check since the job was last returned: what is sent back is worked on, and
/// what was said of it then settles nothing of what it has become. It is kept for who works on it.
void takeWords(ReviewCheck& check, const model::Job& job)
{
    for (const model::ReviewEntry& entry : job.review)
        if (entry.step == model::ReviewStep::Returned) {
            const GivenWord last = check.words.empty() ? GivenWord() : check.words.back();
            check.returnedWith = last.text;
            check.returnedBy = last.by;
            check.wasObjected = last.isObjection;
            check.words.clear();
        } else if (entry.check == check.word &&
                   (entry.step == model::ReviewStep::Answer || entry.step == model::ReviewStep::Remark)) {
            const auto objected = objectedIn(entry.text);
            if (!objected && isOfAnotherStop(entry.text, check.answer))
                continue;
            check.words.push_back({entry.by, objected.value_or(entry.text), objected.has_value()});
        }
    check.isObjected = !check.words.empty() && check.words.back().isObjection;
    if (!check.words.empty() && !check.isObjected)
        check.wordGiven = check.words.back().text;
    // Sent back it still wants an answer, from who works on it.
    const bool isOpen = check.isObjected || (check.wasObjected && check.words.empty());
    if (isOpen && check.state == CheckState::InOrder) {
        check.state = CheckState::NeedsWord;
        check.matters.insert(check.matters.begin(), {check.answer, check.state, check.points});
    }
}

/// Some answers are phrases of the analysis, made to stand behind a colon elsewhere.
std::string withCapital(std::string sentence)
{
    if (!sentence.empty())
        sentence.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(sentence.front())));
    return sentence;
}

} // namespace

std::string objection(const std::string& word)
{
    return word.empty() || objectedIn(word) ? word : std::string(kNotAgreed) + word;
}

std::optional<std::string> objectedIn(std::string_view word)
{
    return word.starts_with(kNotAgreed) && word.size() > kNotAgreed.size()
               ? std::optional(std::string(word.substr(kNotAgreed.size())))
               : std::nullopt;
}

std::string wordOnStop(const std::string& answer, const std::string& word)
{
    const std::string about = std::string(kOn) + answer + std::string(kOff);
    return word.starts_with(about) ? word : about + word; // said again as it stands
}

std::string reviewQuestion(std::string_view check)
{
    const auto* found = std::find_if(kQuestions.begin(), kQuestions.end(),
                                     [check](const Question& question) { return question.word == check; });
    return found == kQuestions.end() ? std::string(check) : found->text;
}

std::vector<ReviewCheck> reviewChecks(const model::Job& job, const model::TestObject& object,
                                      const std::vector<PointFinding>& asLeft, const ReviewOptions& options)
{
    const detail::ReviewGround ground{job, object, asLeft, options};
    std::vector<ReviewCheck> checks;
    int number = 0;
    for (const Question& question : kQuestions) {
        detail::Answer answer = question.ask(ground);
        ReviewCheck check;
        check.number = ++number;
        check.word = question.word;
        check.question = question.text;
        check.answer = withCapital(std::move(answer.sentence));
        check.state = answer.state;
        check.place = question.place;
        if (question.ask == detail::changesReasoned && !job.voidMeasurements.empty())
            check.place = CheckPlace::Prepare; // there they stand
        check.points = std::move(answer.points);
        if (check.state != CheckState::InOrder)
            check.matters.push_back({check.answer, check.state, check.points});
        for (detail::Answer& other : answer.also)
            check.matters.push_back(
                {withCapital(std::move(other.sentence)), other.state, std::move(other.points)});
        takeWords(check, job);
        checks.push_back(std::move(check));
    }
    return checks;
}

std::optional<std::string> whyNotApprove(const model::Job& job, const model::Person& person,
                                         bool onePersonHistory)
{
    if (!person.active)
        return person.name + " no longer signs in this history";
    if (person.publicKey.empty())
        return person.name + " has no signing key yet";
    if (onePersonHistory)
        return std::nullopt;
    const auto madeAny = [&](const auto& records) {
        return std::any_of(records.begin(), records.end(),
                           [&](const auto& record) { return namesPerson(record.by, person.name); });
    };
    if (madeAny(job.readings))
        return person.name + " made readings of this job; somebody else has to approve it";
    if (madeAny(job.calibrations) || madeAny(job.backgrounds) || madeAny(job.riseTests))
        return person.name + " made measurements for this job; somebody else has to approve it";
    if (madeAny(job.voids))
        return person.name + " declared readings of this job void; somebody else has to approve it";
    if (madeAny(job.voidMeasurements))
        return person.name + " declared measurements of this job void; somebody else has to approve it";
    if (madeAny(job.judgements))
        return person.name + " gave a verdict in this job; somebody else has to approve it";
    if (madeAny(job.concessions))
        return person.name + " entered a concession in this job; somebody else has to approve it";
    if (std::any_of(job.concessions.begin(), job.concessions.end(), [&](const model::Concession& concession) {
            return namesPerson(concession.grantedBy, person.name);
        }))
        return person.name + " granted a concession in this job; somebody else has to approve it";
    if (madeAny(job.repairs))
        return person.name + " logged a repair in this job; somebody else has to approve it";
    if (std::any_of(job.repairs.begin(), job.repairs.end(), [&](const model::Repair& repair) {
            return namesPerson(readNote(repair.note).doneBy, person.name);
        }))
        return person.name + " did a repair in this job; somebody else has to approve it";
    for (const model::ReviewEntry& entry : job.review)
        if (entry.step == model::ReviewStep::Submitted && namesPerson(entry.by, person.name))
            return person.name + " sent this job for review; somebody else has to approve it";
    return std::nullopt;
}

std::optional<std::string> whyNotSendBack(const model::Job& job, const std::string& name,
                                          bool onePersonHistory)
{
    const auto sent = std::find_if(job.review.rbegin(), job.review.rend(), [](const auto& entry) {
        return entry.step == model::ReviewStep::Submitted;
    });
    if (onePersonHistory || sent == job.review.rend() || !namesPerson(sent->by, name))
        return std::nullopt;
    return name + " sent this job for review; somebody else has to send it back";
}

std::string sentWithStops(const std::vector<ReviewCheck>& checks, const std::string& why)
{
    std::string text;
    for (const ReviewCheck& check : checks)
        for (const ReviewMatter& matter : check.matters)
            if (matter.state == CheckState::Stops)
                text += ' ' + matter.says;
    return text.empty() ? text : "Sent although a sign-off is stopped:" + text + " Because: " + why;
}

bool isReadyToSign(const std::vector<ReviewCheck>& checks)
{
    return std::all_of(checks.begin(), checks.end(),
                       [](const ReviewCheck& check) { return check.isSettled(); });
}

} // namespace sealwalk::analysis
