// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/person_word.h"

#include "core/analysis/answered.h"
#include "core/analysis/job_view.h"

#include <fmt/format.h>

#include <algorithm>

namespace sealwalk::analysis {

namespace {

void dropRate(PointFinding& finding)
{
    finding.rate.reset();
    finding.low.reset();
    finding.high.reset();
    finding.surelyAbove.reset();
    finding.surelyBelow.reset();
    finding.conformance.reset();
    finding.atLeast.reset();
}

void sizeByReading(const model::Job& job, const model::TestObject& object, PointFinding& finding)
{
    const model::Reading* reading = finding.reading ? job.reading(*finding.reading) : nullptr;
    if (reading == nullptr)
        return;
    const CorrectedReading alone = correctedReading(job, object, *reading);
    dropRate(finding);
    finding.rate = alone.rate;
    finding.low = alone.low;
    finding.high = alone.high;
    finding.conformance = alone.conformance;
    if (alone.atLeast && *alone.atLeast > LeakRate())
        finding.atLeast = alone.atLeast;
}

/// The figures that go with `word`, from those that were worked out.
void setFigures(const model::Job& job, const model::TestObject& object, Finding word, PointFinding& finding)
{
    finding.finding = word;
    if (isLeakWord(word)) {
        if (!finding.rate && !finding.atLeast)
            sizeByReading(job, object, finding);
        finding.bound.reset();
        return;
    }
    dropRate(finding);
    if (!hasAnswer(finding))
        finding.bound.reset();
}

} // namespace

void applyJudgements(const model::Job& job, const model::TestObject& object, model::RoundId round,
                     std::vector<PointFinding>& findings)
{
    for (PointFinding& finding : findings) {
        const Overruled computed{finding.finding, finding.verdict, {}, {}, {}};
        const model::Judgement* last = nullptr;
        for (const model::Judgement& judgement : job.judgements) {
            if (judgement.round != round || judgement.point != finding.point ||
                !model::fromName<Finding>(judgement.finding) || !model::fromName<Verdict>(judgement.verdict))
                continue;
            last = &judgement;
            finding.because.push_back(fmt::format("{} judged {}, {}: {}; computed was {}, {}", judgement.by,
                                                  judgement.finding, judgement.verdict, judgement.reason,
                                                  model::name(computed.finding),
                                                  model::name(computed.verdict)));
        }
        if (last == nullptr)
            continue;
        finding.overruled = computed;
        finding.overruled->by = last->by;
        finding.overruled->at = last->at;
        finding.overruled->reason = last->reason;
        finding.judgedByPerson = true;
        setFigures(job, object, *model::fromName<Finding>(last->finding), finding);
        finding.verdict = *model::fromName<Verdict>(last->verdict);
        if (finding.verdict == Verdict::NotCounted &&
            !(finding.finding == Finding::OtherSource && job.sketch.isOfSetup(finding.point))) {
            finding.verdict = Verdict::CannotSay;
            finding.because.emplace_back("only what leaks in the test set-up can be left uncounted");
        }
        if (isOwedWord(finding.finding) && !last->of.empty())
            finding.of = last->of;
    }
}

} // namespace sealwalk::analysis
