// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/job_findings.h"

#include "core/analysis/answered.h"
#include "core/analysis/approval.h"
#include "core/analysis/finding_figures.h"
#include "core/analysis/finding_words.h"
#include "core/analysis/job_sources.h"
#include "core/analysis/job_view.h"
#include "core/analysis/person_word.h"
#include "core/analysis/rate_range.h"
#include "core/analysis/repair_progress.h"
#include "core/base/calendar_day.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <unordered_map>
#include <unordered_set>

namespace sealwalk::analysis {

namespace {

Finding wordFor(const CorrectedReading& corrected)
{
    switch (corrected.outcome) {
    case model::Outcome::NotAccessible:
        return Finding::NotAccessible;
    case model::Outcome::NotTested:
        return Finding::NotTested;
    case model::Outcome::NoResponse:
        return corrected.verdict == Verdict::CannotSay ? Finding::BelowDetectable : Finding::Clear;
    case model::Outcome::Value:
    case model::Outcome::AboveRange:
        break;
    }
    if (!corrected.below)
        return Finding::Leak;
    return corrected.verdict == Verdict::CannotSay ? Finding::BelowDetectable : Finding::Clear;
}

/// Order of standing: the worst reading of a point counts.
bool isWorse(const PointFinding& a, const PointFinding& b)
{
    if (a.atLeast.has_value() != b.atLeast.has_value()) { // the lower end of both
        const auto least = [](const PointFinding& f) {
            return f.atLeast ? f.atLeast : f.low ? f.low : f.asRead;
        };
        return least(a) > least(b); // none is less than any
    }
    if (a.asRead.has_value() != b.asRead.has_value())
        return a.asRead.has_value();
    return a.asRead && *a.asRead > *b.asRead;
}

struct ReadFinding
{
    PointFinding finding;
    const model::Reading* reading = nullptr;
};

/// A spray without an answer that could not be sized - cut short, or before the reference leak - says nothing
/// beside one in the same condition that could; nor does a silent one that lacks its time, or only its
/// background, beside a silent one that does not.
bool isMadeGood(const ReadFinding& lacking, const ReadFinding& other)
{
    const auto isSized = [](const PointFinding& f) { return f.rate || f.bound || f.asRead; };
    const auto wholeness = [](const model::Reading& r) {
        return 2 * (r.dwell ? 1 : 0) + (r.background ? 1 : 0);
    };
    if (lacking.finding.condition != other.finding.condition || !isSized(other.finding))
        return false;
    const bool areSilent = !lacking.finding.asRead && !other.finding.asRead;
    return !isSized(lacking.finding) ||
           (areSilent && wholeness(*lacking.reading) < wholeness(*other.reading));
}

void addRepairs(const model::Job& job, std::vector<PointFinding>& findings)
{
    for (const model::Repair& repair : job.repairs) {
        if (repair.madeGoodBy)
            continue;
        const auto sprayed = sprayedSince(job, provableFrom(repair));
        for (PointFinding& finding : findings) {
            if (std::find(repair.points.begin(), repair.points.end(), finding.point) == repair.points.end())
                continue;
            finding.temporaryRepair = finding.temporaryRepair || !repair.permanent;
            finding.awaitsRetest = finding.awaitsRetest || !sprayed.contains(finding.point);
        }
    }
}

std::vector<int> numbersIn(const model::Job& job, const std::vector<model::PointId>& points)
{
    std::vector<int> numbers;
    for (const model::PointId id : points)
        if (const model::TestPoint* point = job.sketch.point(id))
            numbers.push_back(point->number);
    return numbers;
}

/// What was taped off for `later` and not yet for `earlier`.
std::vector<model::PointId> newlyShielded(const model::Reading& earlier, const model::Reading& later)
{
    std::vector<model::PointId> points = later.shielded;
    std::erase_if(points, [&](model::PointId point) {
        return std::ranges::find(earlier.shielded, point) != earlier.shielded.end();
    });
    return points;
}

/// A point that answered once and not again, with what was taped off in between.
struct SilentRepeat
{
    PointFinding* finding = nullptr;
    const model::Reading* counts = nullptr;
    const model::Reading* again = nullptr;
    std::vector<model::PointId> taped;
    LeakRate hidden; ///< what a leak of its own may be without having shown then
    bool wouldHaveShown = false;
    std::vector<model::PointId> sources; ///< whose echo it was; empty: it is not settled
};

/// Of the points taped off since, those that leak enough for the reading.
std::vector<model::PointId> mayHaveTakenIt(const SilentRepeat& repeat, const std::vector<PointFinding>& all)
{
    std::vector<model::PointId> sources;
    for (const PointFinding& other : all) {
        const bool isOff = std::ranges::find(repeat.taped, other.point) != repeat.taped.end();
        const bool isEnough =
            other.atLeast || (other.high && repeat.finding->low && *other.high >= *repeat.finding->low);
        if (isOff && isLeakWord(other.finding) && isEnough)
            sources.push_back(other.point);
    }
    return sources;
}

/// Whether the point answered, in that condition, while all of these were taped off: then it leaks itself.
bool answeredAllTheSame(const model::Job& job, const model::Reading& like,
                        const std::vector<model::PointId>& off)
{
    const auto standing = job.standing(like.round);
    return std::ranges::any_of(standing, [&](const model::Reading* reading) {
        const bool isAnswer =
            reading->outcome == model::Outcome::Value || reading->outcome == model::Outcome::AboveRange;
        return isAnswer && reading->point == like.point && reading->condition == like.condition &&
               std::ranges::all_of(off, [&](model::PointId point) {
                   return std::ranges::find(reading->shielded, point) != reading->shielded.end();
               });
    });
}

/// Told from one another as they were found: whose source is an echo itself, or of which each was silent with
/// the other taped off, is left to a person.
void settleByTape(const model::Job& job, const std::vector<PointFinding>& findings,
                  std::vector<SilentRepeat>& repeats)
{
    std::unordered_set<model::PointId> settled;
    for (SilentRepeat& repeat : repeats) {
        if (!repeat.wouldHaveShown || !isLeakWord(repeat.finding->finding))
            continue;
        repeat.sources = mayHaveTakenIt(repeat, findings);
        if (!repeat.sources.empty() && answeredAllTheSame(job, *repeat.counts, repeat.sources))
            repeat.sources.clear();
        if (!repeat.sources.empty())
            settled.insert(repeat.finding->point);
    }
    for (SilentRepeat& repeat : repeats)
        if (std::ranges::any_of(repeat.sources,
                                [&](model::PointId source) { return settled.contains(source); }))
            repeat.sources.clear();
}

/// What the search could not know, because the place lies far off on the sheet or on another one: with these
/// points taped off nothing answered, so the helium of the reading went in there.
void makeEcho(const model::Job& job, const model::TestObject& object, const SilentRepeat& repeat)
{
    PointFinding& finding = *repeat.finding;
    PointFinding echo = readingFinding(job, object, *repeat.counts);
    echo.point = finding.point;
    echo.number = finding.number;
    echo.finding = Finding::Echo;
    echo.rate.reset();
    echo.low.reset();
    echo.high.reset();
    echo.conformance.reset();
    echo.bound = repeat.hidden;
    echo.verdict = verdictOf({{}, {}, repeat.hidden, repeat.hidden}, job.limitOf(finding.point));
    echo.of = repeat.sources;
    if (echo.of.size() == 1)
        echo.owes.push_back({echo.of.front(), 1.0});
    finding = std::move(echo);
}

void sayRepeat(const model::Job& job, const SilentRepeat& repeat)
{
    const std::string first = repeat.counts->at.timeOfDay().substr(0, 5);
    const std::string second = repeat.again->at.timeOfDay().substr(0, 5);
    const std::vector<int> off = numbersIn(job, repeat.taped);
    auto& because = repeat.finding->because;
    because.insert(
        because.begin() + std::min<std::ptrdiff_t>(1, std::ssize(because)),
        off.empty()
            ? fmt::format("It answered at {} and not when it was sprayed again at {}: a leak answers twice. "
                          "Judge it, or make void the reading that does not count.",
                          first, second)
            : fmt::format("It answered at {} and not at {}, with {} taped or bagged off{}{}.", first, second,
                          pointsWords(off),
                          repeat.wouldHaveShown ? "; a leak of its own, as large as that, would have shown"
                                                : "",
                          repeat.sources.empty() ? "" : ": the helium went in there"));
}

/// A leak answers twice: that a later spray of the round, in the same condition, got no answer is said beside
/// the answer that counts.
void addSilentRepeats(const model::Job& job, const model::TestObject& object, model::RoundId round,
                      std::vector<PointFinding>& findings)
{
    std::unordered_map<model::PointId, std::vector<const model::Reading*>> silent;
    for (const model::Reading* reading : job.standing(round))
        if (reading->outcome == model::Outcome::NoResponse)
            silent[reading->point].push_back(reading);
    std::vector<SilentRepeat> found;
    for (PointFinding& finding : findings) {
        const auto sprayed = silent.find(finding.point);
        if (sprayed == silent.end() ||
            !finding.asRead) // asked first: finding a reading goes through them all
            continue;
        const model::Reading* counts = finding.reading ? job.reading(*finding.reading) : nullptr;
        if (counts == nullptr || counts->outcome == model::Outcome::NoResponse)
            continue;
        const auto isAgain = [&](const model::Reading* r) {
            return r->at > counts->at && r->condition == counts->condition &&
                   r->conditionDetail == counts->conditionDetail;
        };
        // Silent with the same joints open says more than silent with one of them taped off since, and of
        // those the longest spray says most.
        const auto saysLess = [&](const model::Reading* a, const model::Reading* b) {
            const auto weight = [&](const model::Reading* r) {
                return std::pair(newlyShielded(*counts, *r).empty(), r->dwell.value_or(Duration()));
            };
            return weight(a) < weight(b);
        };
        std::vector<const model::Reading*> repeats;
        std::ranges::copy_if(sprayed->second, std::back_inserter(repeats), isAgain);
        const auto best = std::ranges::max_element(repeats, saysLess);
        if (best == repeats.end())
            continue;
        const model::Reading& again = **best;
        const bool hadTime = !counts->delay || (again.dwell && *again.dwell > *counts->delay);
        const auto hidden = readingFinding(job, object, again).bound;
        found.push_back({&finding,
                         counts,
                         &again,
                         newlyShielded(*counts, again),
                         hidden.value_or(LeakRate()),
                         hadTime && hidden && finding.low && *hidden < *finding.low,
                         {}});
    }
    settleByTape(job, findings, found);
    for (const SilentRepeat& repeat : found) {
        if (!repeat.sources.empty())
            makeEcho(job, object, repeat);
        sayRepeat(job, repeat);
    }
}

void addConcessions(const model::Job& job, std::vector<PointFinding>& findings, const Timestamp& now)
{
    // What was conceded when a job was signed stays so.
    const Timestamp judged = approvalOf(job).value_or(now);
    std::unordered_map<model::PointId, std::string> ranOut;
    for (const model::Concession& concession : job.concessions)
        for (PointFinding& finding : findings) {
            if (std::find(concession.points.begin(), concession.points.end(), finding.point) ==
                concession.points.end())
                continue;
            if (concession.until && isPast(*concession.until, judged)) {
                ranOut[finding.point] = concession.until->date();
                continue;
            }
            const bool endless = !concession.until || (finding.concession && !finding.concededUntil);
            finding.concededUntil =
                endless ? std::nullopt
                        : std::max(finding.concededUntil, concession.until); // none is less than any
            finding.concession = true;
        }
    for (PointFinding& finding : findings)
        if (const auto date = ranOut.find(finding.point); date != ranOut.end() && !finding.concession)
            finding.because.push_back("its concession ran out on " + date->second);
}

} // namespace

PointFinding readingFinding(const model::Job& job, const model::TestObject& object,
                            const model::Reading& reading)
{
    const CorrectedReading corrected = correctedReading(job, object, reading);
    PointFinding finding;
    finding.point = reading.point;
    finding.condition = reading.condition;
    finding.reading = reading.id;
    finding.finding = corrected.isVoid ? Finding::Void : wordFor(corrected);
    finding.verdict = corrected.verdict;
    finding.rate = corrected.rate;
    finding.low = corrected.low;
    finding.high = corrected.high;
    finding.bound = corrected.below;
    if (corrected.atLeast && *corrected.atLeast > LeakRate())
        finding.atLeast = corrected.atLeast;
    finding.because = corrected.because;
    finding.factors = corrected.factors;
    finding.smallestDetectable = corrected.smallestDetectable;
    finding.conformance = corrected.conformance;
    if (corrected.rate)
        finding.asRead = corrected.rate;
    else if (finding.atLeast)
        finding.asRead = finding.atLeast;
    else if (reading.outcome != model::Outcome::NoResponse && corrected.net && corrected.net->si() > 0.0)
        finding.asRead = corrected.net; // not calibrated, or below what could be sized: as shown
    return finding;
}

std::vector<PointFinding> jobFindings(const model::Job& job, const model::TestObject& object,
                                      model::RoundId roundId, const Timestamp& now)
{
    const model::Round* round = job.round(roundId);
    if (round == nullptr)
        return {};
    std::unordered_map<model::PointId, ReadFinding> worst;
    for (const model::Reading* reading : job.standing(roundId)) {
        ReadFinding read{readingFinding(job, object, *reading), reading};
        const auto known = worst.find(reading->point);
        if (known == worst.end() || isMadeGood(known->second, read) ||
            (isWorse(read.finding, known->second.finding) && !isMadeGood(read, known->second)))
            worst[reading->point] = std::move(read);
    }
    std::unordered_map<model::PointId, std::string> voided;
    for (const model::VoidMark& mark : job.voids)
        if (const model::Reading* reading = job.reading(mark.reading);
            reading != nullptr && reading->round == roundId)
            voided[reading->point] = mark.reason;
    const std::unordered_set<model::PointId> called(round->points.begin(), round->points.end());

    std::vector<PointFinding> findings;
    for (const model::TestPoint* point : job.sketch.activePoints()) {
        if (!called.contains(point->id))
            continue;
        PointFinding finding;
        if (const auto found = worst.find(point->id); found != worst.end()) {
            finding = found->second.finding;
        } else if (const auto mark = voided.find(point->id); mark != voided.end()) {
            finding.finding = Finding::Void;
            finding.because.push_back(mark->second);
        }
        finding.point = point->id;
        finding.number = point->number;
        findings.push_back(std::move(finding));
    }
    applySources(
        job, object, roundId, [&job](const model::Reading& reading) { return chamberFactor(job, reading); },
        findings);
    addSilentRepeats(job, object, roundId, findings);
    addFigures(job, object, findings);
    addRepairs(job, findings);
    addConcessions(job, findings, now);
    applyJudgements(job, object, roundId, findings);
    return findings;
}

} // namespace sealwalk::analysis
