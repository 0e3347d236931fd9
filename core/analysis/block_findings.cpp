// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/block_findings.h"

#include "core/analysis/finding_words.h"
#include "core/analysis/posterior.h"
#include "core/analysis/slow_rise.h"
#include "core/analysis/spread_learnt.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <unordered_set>

namespace sealwalk::analysis {

namespace {

// Claimed from this probability on; below it, what could matter is masked.
constexpr double kClaimFrom = 0.85;
// Far below the limit nothing is lost by holding back: an echo there passes as well as a leak would.
constexpr double kClaimSmallFrom = 0.93;
// A pair names two points for one leak, and a mistake twice.
constexpr double kClaimPairFrom = 0.93;
// One leak, two stretches: both are named when neither can be claimed alone and each has this part of the
// chance.
constexpr double kShareFrom = 0.15;
// A leak that matters may be overlooked with less than this probability.
constexpr double kMaskFrom = 0.008;
// Smallest signal told from noise, in standard deviations, and the same with the chance of a low moment.
constexpr double kSeen = 3.0;
constexpr double kSurelySeen = 4.0;
// A debt below this part of the reading is not worth naming.
constexpr double kWorthNaming = 0.05;

struct Work
{
    const Survey& survey;
    const Scene& scene;
    const std::vector<PointPosterior>& points;
};

std::vector<Debt> debtsOf(const Work& work, std::size_t point)
{
    const PointPosterior& of = work.points[point];
    std::vector<Debt> debts;
    for (const auto& [source, share] : of.owes) {
        if (share > kWorthNaming)
            debts.push_back({work.survey.points[source].number, share});
    }
    std::ranges::stable_sort(debts, std::greater<>(), &Debt::share);
    if (of.owesCarried > kWorthNaming)
        debts.push_back({0, of.owesCarried});
    return debts;
}

/// The last response before a reading that can have left a tail in it.
std::optional<int> tailSource(const Work& work, std::size_t reading)
{
    const SceneReading& at = work.scene.readings[reading];
    double worst = 0.0;
    std::optional<int> from;
    for (const SceneReading& earlier : work.scene.everyReading) {
        if (earlier.survey >= at.survey || earlier.point == at.point)
            continue;
        const double clearing = std::max(10.0 * work.scene.response, 1e-9);
        const double left = earlier.rawNet * std::exp(-(at.start - earlier.end) / clearing);
        if (left > worst) {
            worst = left;
            from = work.survey.points[earlier.point].number;
        }
    }
    return from;
}

FindingFacts factsOf(const Work& work, std::size_t point, const SourceFinding& finding)
{
    const PointPosterior& of = work.points[point];
    const SceneReading& shown = work.scene.readings[of.reading];
    FindingFacts facts;
    facts.read = LeakRate::fromSi(std::max(shown.rate, 0.0));
    facts.explained = LeakRate::fromSi(std::clamp(of.explained, 0.0, facts.read.si()));
    facts.mayHide = finding.high;
    facts.exposure = shown.exposure;
    facts.whom = finding.others;
    if (shown.condition != work.scene.usualCondition)
        facts.condition = work.scene.conditions[shown.condition];
    double direct = 0.0;
    for (const auto& [source, share] : of.owes)
        direct += share;
    facts.mostlyTail = of.owesCarried > direct;
    if (facts.mostlyTail || finding.others.empty())
        return facts;
    const SurveyPoint& here = work.survey.points[point];
    const SurveyPoint& there = work.survey.points[*work.survey.indexOf(finding.others.front())];
    if (here.view == there.view) {
        facts.above = inMillimetres(there.up - here.up);
        facts.beside = inMillimetres(there.x - here.x);
    }
    return facts;
}

/// Whom an echo or a masked point owes to.
std::vector<int> creditors(const Work& work, std::size_t point, const std::vector<Debt>& debts)
{
    constexpr std::size_t kMostNamed = 3;
    const PointPosterior& of = work.points[point];
    double direct = 0.0;
    for (const auto& [source, share] : of.owes)
        direct += share;
    std::vector<int> whom;
    if (of.owesCarried > direct || debts.empty()) {
        // Where nothing worth naming is owed, nobody is named.
        if (const auto from = of.owesCarried > kWorthNaming ? tailSource(work, of.reading) : std::nullopt;
            from)
            whom.push_back(*from);
        return whom;
    }
    for (const Debt& debt : debts) {
        if (debt.toPoint != 0 && debt.share > 0.2 * debts.front().share && whom.size() < kMostNamed)
            whom.push_back(debt.toPoint);
    }
    return whom;
}

/// What a leak has to show at the least to be told from noise, beside what was shown.
double fromNoise(const SceneReading& shown)
{
    return std::max(shown.rate, 0.0) + kSeen * shown.noise;
}

/// What may be at a point without showing, poor sprays allowed for.
LeakRate upperBound(const Work& work, std::size_t point)
{
    const PointPosterior& of = work.points[point];
    const SceneReading& shown = work.scene.readings[of.reading];
    constexpr double kPoorSpray = 1.5;
    if (of.rates.empty())
        return LeakRate::fromSi(fromNoise(shown));
    return LeakRate::fromSi(std::clamp(std::exp(quantileOf(of.rates, 0.975)), kSeen * shown.noise,
                                       fromNoise(shown) * kPoorSpray));
}

/// What bounds a silent point: of each condition the spray that would have shown least, of the conditions the
/// blindest. Another spray without an answer takes nothing back.
LeakRate wouldHaveShown(const Work& work, std::size_t point)
{
    std::map<std::size_t, double> byCondition;
    for (const std::size_t i : work.scene.readingsAt[point]) {
        const SceneReading& shown = work.scene.readings[i];
        const double least = std::max(fromNoise(shown), shown.detectable);
        const auto known = byCondition.try_emplace(shown.condition, least).first;
        known->second = std::min(known->second, least);
    }
    double blindest = 0.0;
    for (const auto& [condition, least] : byCondition)
        blindest = std::max(blindest, least);
    return LeakRate::fromSi(blindest);
}

void claim(SourceFinding& finding, const std::vector<PossibleRate>& rates)
{
    finding.rate = LeakRate::fromSi(std::exp(quantileOf(rates, 0.5)));
    finding.low = LeakRate::fromSi(std::exp(quantileOf(rates, 0.025)));
    finding.high = LeakRate::fromSi(std::exp(quantileOf(rates, 0.975)));
    finding.surelyAbove = LeakRate::fromSi(std::exp(quantileOf(rates, 0.05)));
    finding.surelyBelow = LeakRate::fromSi(std::exp(quantileOf(rates, 0.95)));
}

double claimFrom(const Work& work, std::size_t point)
{
    const SceneReading& shown = work.scene.readings[work.points[point].reading];
    return shown.rate > work.scene.limit ? kClaimFrom : kClaimSmallFrom;
}

/// @param bound  upperBound of the point
SourceVerdict decide(const Work& work, std::size_t point, LeakRate bound)
{
    const PointPosterior& of = work.points[point];
    const SceneReading& shown = work.scene.readings[of.reading];
    if (of.leak >= claimFrom(work, point))
        return SourceVerdict::Leak;
    // Never a worse answer than the plain reading: nothing that any hypothesis holds explains this one.
    constexpr double kFarAbove = 8.0;
    if (shown.rate > kFarAbove * of.mostExplained + kFarAbove * shown.noise &&
        shown.rate > kFarAbove * work.scene.typicalNoise)
        return SourceVerdict::Leak;
    const bool answered = shown.rate > kSeen * shown.noise;
    // Noise alone masks nothing: a point that is merely hard to read is clear, with its bound.
    const bool raised = shown.noise > 2.0 * work.scene.typicalNoise;
    const bool inShadow = answered || raised || of.explained > shown.noise;
    if (of.big > kMaskFrom && inShadow && bound.si() > work.scene.limit)
        return SourceVerdict::Masked;
    // Nor is a reading called an echo that has room for a leak well over the limit, unless the echo came out
    // far weaker than expected: a leak on top of it is a coincidence then, and anywhere else one is not.
    constexpr double kWellOver = 1.7; // a bound is not sharper than that below twice the limit
    constexpr double kFarWeaker = 2.0;
    if (answered && bound.si() > kWellOver * work.scene.limit && of.explained < kFarWeaker * shown.rate)
        return SourceVerdict::Masked;
    // An echo is a reading that the rule of the day explains. One far over the limit that only freak air or a
    // failed spray could bring to its size may as well be a leak of its own.
    constexpr double kFarOver = 2.0;
    constexpr double kExplainsLess = 0.2;
    constexpr double kExplainsMore = 20.0;
    if (shown.rate > kFarOver * work.scene.limit &&
        (of.explained < kExplainsLess * shown.rate || of.explained > kExplainsMore * shown.rate))
        return SourceVerdict::Masked;
    // A raised background hides what the survey would have shown on its floor.
    if (raised && !answered && kSurelySeen * shown.noise > 2.0 * work.scene.limit)
        return SourceVerdict::Masked;
    return answered ? SourceVerdict::Echo : SourceVerdict::Clear;
}

SourceFinding findingOf(const Work& work, std::size_t point)
{
    SourceFinding finding;
    finding.point = work.survey.points[point].number;
    const PointPosterior& of = work.points[point];
    const SceneReading& shown = work.scene.readings[of.reading];
    finding.probability = of.leak;
    const LeakRate bound = upperBound(work, point);
    finding.verdict = decide(work, point, bound);
    finding.owes = debtsOf(work, point);
    if (finding.verdict == SourceVerdict::Leak) {
        // A leak that only its towering reading speaks for is as large as that says.
        constexpr double kByReadingAlone = 0.5;
        const double own = std::log(std::max(shown.rate - of.explained, shown.noise));
        claim(finding, of.leak < kByReadingAlone || of.rates.empty()
                           ? std::vector<PossibleRate>{{1.0, own, kByReadingAlone}}
                           : of.rates);
        return finding;
    }
    const bool isClear = finding.verdict == SourceVerdict::Clear;
    // Answers that happen to agree do not make the detector see more than the watched background allows.
    finding.high =
        isClear ? wouldHaveShown(work, point) : std::max(bound, LeakRate::fromSi(shown.detectable));
    if (isClear)
        finding.tooBlind = kSeen * shown.noise > work.scene.limit;
    else
        finding.others = creditors(work, point, finding.owes);
    return finding;
}

/// Whether two stretches answer so much alike that one leak near their border may lie on either: the probe is
/// as near to it on both, so more than reading and aim can vary sets them apart.
bool answerAlike(const Work& work, std::size_t one, std::size_t other)
{
    constexpr double kAlike = 0.6;
    if (work.scene.readingsAt[one].empty() || work.scene.readingsAt[other].empty())
        return true; // nobody knows what a stretch that was not sprayed would answer
    const SceneReading& a = work.scene.readings[work.points[one].reading];
    const SceneReading& b = work.scene.readings[work.points[other].reading];
    return std::min(a.rate, b.rate) + kSeen * std::max(a.noise, b.noise) > kAlike * std::max(a.rate, b.rate);
}

/// Pairs of neighbours between which one leak cannot be placed.
void nameShared(const Work& work, std::vector<SourceFinding>& findings)
{
    for (std::size_t i = 0; i < work.points.size(); ++i) {
        for (const auto& [next, chance] : work.points[i].pairs) {
            // A leak that only its towering reading speaks for may still lie on the other side of the border.
            const auto isClaimed = [&](std::size_t point) {
                return findings[point].verdict == SourceVerdict::Leak &&
                       work.points[point].leak >= claimFrom(work, point);
            };
            const bool eitherClaimed = isClaimed(i) || isClaimed(next);
            if (eitherClaimed || chance < kClaimPairFrom)
                continue;
            const double both = work.points[i].leak + work.points[next].leak;
            const bool alike = answerAlike(work, i, next);
            const bool first = alike ? work.points[i].leak >= work.points[next].leak
                                     : work.scene.readings[work.points[i].reading].rate >
                                           work.scene.readings[work.points[next].reading].rate;
            const std::size_t likelier = first ? i : next;
            const std::vector<PossibleRate>& rates = work.points[likelier].rates;
            if (!alike || both - work.points[likelier].leak < kShareFrom * both) {
                // The leak is there for certain, and nearly for certain on this one of the two.
                findings[likelier].verdict = SourceVerdict::Leak;
                findings[likelier].others.clear();
                claim(findings[likelier], rates);
                continue;
            }
            for (const auto& [self, other] : {std::pair(i, next), std::pair(next, i)}) {
                SourceFinding& finding = findings[self];
                if (finding.verdict == SourceVerdict::Shared) {
                    finding.others.push_back(findings[other].point);
                    continue;
                }
                finding.verdict = SourceVerdict::Shared;
                finding.others = {findings[other].point};
                finding.tooBlind = false;
                claim(finding, rates);
            }
        }
    }
}

/// Leaks that some hypothesis supposes and no finding names explain nothing to a technician.
void keepRealCreditors(const Work& work, std::vector<SourceFinding>& findings)
{
    std::unordered_set<int> named;
    for (const SourceFinding& finding : findings) {
        if (finding.verdict == SourceVerdict::Leak || finding.verdict == SourceVerdict::Shared ||
            finding.verdict == SourceVerdict::Masked)
            named.insert(finding.point);
    }
    for (std::size_t i = 0; i < findings.size(); ++i) {
        SourceFinding& finding = findings[i];
        if (finding.verdict != SourceVerdict::Echo && finding.verdict != SourceVerdict::Masked)
            continue;
        double direct = 0.0;
        for (const auto& [source, share] : work.points[i].owes)
            direct += share;
        if (work.points[i].owesCarried <= direct)
            std::erase_if(finding.others, [&](int number) { return !named.contains(number); });
    }
}

/// Points with a larger leak that answered at once, the largest first, three at most.
std::vector<int> strongerThan(const Work& work, const SourceFinding& finding,
                              const std::vector<SourceFinding>& findings)
{
    constexpr std::size_t kNamed = 3;
    std::vector<const SourceFinding*> found;
    for (const SourceFinding& other : findings)
        if ((other.verdict == SourceVerdict::Leak || other.verdict == SourceVerdict::Shared) &&
            other.rate > finding.rate &&
            !isLate(longestDelay(work.survey, other.point), work.survey.response))
            found.push_back(&other);
    std::ranges::sort(found, std::greater<>(), [](const SourceFinding* each) { return each->rate; });
    std::vector<int> numbers;
    for (std::size_t i = 0; i < std::min(kNamed, found.size()); ++i)
        numbers.push_back(found[i]->point);
    return numbers;
}

void explain(const Work& work, std::size_t point, SourceFinding& finding,
             const std::vector<SourceFinding>& findings)
{
    const FindingFacts facts = factsOf(work, point, finding);
    const std::string& unit = work.survey.unit;
    const LeakRate noise = LeakRate::fromSi(work.scene.readings[work.points[point].reading].noise *
                                            work.scene.readings[work.points[point].reading].exposure);
    switch (finding.verdict) {
    case SourceVerdict::Leak:
    case SourceVerdict::Shared: {
        finding.because =
            finding.verdict == SourceVerdict::Leak ? leakWords(facts, unit) : sharedWords(facts, unit);
        const SlowRise rise = slowRise(work.survey, finding.point, noise);
        if (rise == SlowRise::Permeation)
            finding.verdict = SourceVerdict::Permeation;
        if (rise != SlowRise::Prompt)
            finding.because.push_back(slowRiseWords(
                rise, longestDelay(work.survey, finding.point),
                rise == SlowRise::SlowPath ? strongerThan(work, finding, findings) : std::vector<int>()));
        break;
    }
    case SourceVerdict::Echo:
    case SourceVerdict::Masked:
        finding.because =
            finding.verdict == SourceVerdict::Echo ? echoWords(facts, unit) : maskedWords(facts, unit);
        if (const std::string late = lateEchoWords(slowRise(work.survey, finding.point, noise),
                                                   longestDelay(work.survey, finding.point));
            !late.empty())
            finding.because.push_back(late);
        break;
    case SourceVerdict::Clear:
        finding.because = clearWords(facts, unit, finding.tooBlind);
        break;
    default:
        break;
    }
}

SourceFinding unread(const Survey& survey, int number)
{
    SourceFinding finding;
    finding.point = number;
    const auto count = std::ranges::count(survey.readings, number, &SurveyReading::point);
    finding.verdict = count > 0 ? SourceVerdict::Void : SourceVerdict::NotSprayed;
    finding.because.emplace_back(count > 1   ? "All its readings are void."
                                 : count > 0 ? "Its reading is void."
                                             : "It has no reading.");
    return finding;
}

} // namespace

Sources blockFindings(const Survey& survey, const SearchEffort& effort)
{
    const Scene scene = makeScene(survey);
    Sources sources;
    if (scene.readings.empty()) {
        for (const SurveyPoint& point : survey.points)
            sources.findings.push_back(unread(survey, point.number));
        return sources;
    }
    const Judge judge(scene);
    const std::vector<Hypothesis> sample = searchSources(judge, effort);
    const std::vector<PointPosterior> points = posteriorOf(judge, sample, effort);
    const Work work{survey, scene, points};
    for (std::size_t i = 0; i < survey.points.size(); ++i)
        sources.findings.push_back(scene.readingsAt[i].empty() ? unread(survey, survey.points[i].number)
                                                               : findingOf(work, i));
    nameShared(work, sources.findings);
    keepRealCreditors(work, sources.findings);
    for (std::size_t i = 0; i < survey.points.size(); ++i) {
        if (!scene.readingsAt[i].empty())
            explain(work, i, sources.findings[i], sources.findings);
    }
    sources.spread = spreadLearnt(scene, sample);
    return sources;
}

} // namespace sealwalk::analysis
