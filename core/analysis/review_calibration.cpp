// SPDX-License-Identifier: GPL-3.0-or-later
// Whether the checks with the reference leak stand around the readings that count, and agree.
#include "core/analysis/job_factor.h"
#include "core/analysis/job_view.h"
#include "core/analysis/review_ground.h"
#include "core/quantities/number_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace sealwalk::analysis::detail {

namespace {

bool hasCheck(const model::Job& job, model::CalibrationMoment moment)
{
    const auto standing = job.standingCalibrations();
    return std::any_of(standing.begin(), standing.end(),
                       [&](const model::Calibration* c) { return c->moment == moment; });
}

/// Readings that count between the same two checks.
struct Span
{
    const model::Calibration* opening = nullptr;
    const model::Calibration* closing = nullptr;
    std::vector<model::PointId> points;
};

struct Spans
{
    std::vector<Span> all; ///< in order of time
    std::vector<model::PointId> early;
};

Spans spansOf(const ReviewGround& ground)
{
    Spans spans;
    for (const PointFinding& finding : ground.findings) {
        const model::Reading* reading = finding.reading ? ground.job.reading(*finding.reading) : nullptr;
        const model::TestPoint* point = ground.job.sketch.point(finding.point);
        if (reading == nullptr || point == nullptr || finding.factors.empty())
            continue;
        const Bracket around = checksAround(ground.job, point->joint, reading->at);
        if (around.opening == nullptr)
            continue;
        if (around.early) {
            spans.early.push_back(finding.point);
            continue;
        }
        const auto same = std::find_if(spans.all.begin(), spans.all.end(), [&](const Span& span) {
            return span.opening == around.opening && span.closing == around.closing;
        });
        if (same == spans.all.end())
            spans.all.push_back({around.opening, around.closing, {finding.point}});
        else
            same->points.push_back(finding.point);
    }
    std::stable_sort(spans.all.begin(), spans.all.end(),
                     [](const Span& a, const Span& b) { return a.opening->at < b.opening->at; });
    return spans;
}

class Words
{
public:
    explicit Words(const model::Job& job)
        : m_job(job)
    {
        const auto standing = job.standingCalibrations();
        m_oneDay = std::all_of(standing.begin(), standing.end(), [&](const model::Calibration* check) {
            return check->at.date() == standing.front()->at.date();
        });
    }
    [[nodiscard]] std::string when(const model::Calibration& check) const
    {
        const std::string time = check.at.timeOfDay().substr(0, 5);
        return m_oneDay ? time : check.at.date() + ' ' + time;
    }
    [[nodiscard]] std::string factor(const model::Calibration& check) const
    {
        constexpr int kDigits = 3;
        const auto factor = factorOf(m_job, check);
        return factor ? trimmedText(factor->factor, kDigits) : "–";
    }
    /// "0.8 (10:31) and 0.788 (11:40)"
    [[nodiscard]] std::string pair(const Span& span, std::string_view between) const
    {
        return fmt::format("{} ({}){}{} ({})", factor(*span.opening), when(*span.opening), between,
                           factor(*span.closing), when(*span.closing));
    }

private:
    const model::Job& m_job;
    bool m_oneDay = true;
};

/// What stands before a set-up that no reading counts in: worth a name, since its factor is in the table.
std::string stepsWithoutReadings(const ReviewGround& ground, const Words& words, const Spans& spans)
{
    std::string text;
    const model::Calibration* before = nullptr;
    for (const CheckView& view : checks(ground.job)) {
        const auto check = std::find_if(ground.job.calibrations.begin(), ground.job.calibrations.end(),
                                        [&](const auto& each) { return each.id == view.calibration; });
        if (view.step && view.step->steadiness != Steadiness::Steady && before != nullptr) {
            const bool counts = std::any_of(spans.all.begin(), spans.all.end(), [&](const Span& span) {
                return span.opening == before || span.closing == before;
            });
            if (!counts)
                text += fmt::format(" No reading that counts lies before the step from {} to {} between {} "
                                    "and {}.",
                                    words.factor(*before), words.factor(*check), words.when(*before),
                                    words.when(*check));
        }
        if (view.factor)
            before = &*check;
    }
    return text;
}

/// All spans are closed by a check that is not far off.
Answer agreed(const ReviewGround& ground, const Words& words, const Spans& spans)
{
    if (spans.all.empty())
        return {CheckState::InOrder, "No reading that counts lies between the checks."};
    std::string steady;
    std::string moved;
    for (const Span& span : spans.all) {
        const auto opening = factorOf(ground.job, *span.opening);
        const auto closing = factorOf(ground.job, *span.closing);
        const bool agree =
            opening && closing && compareFactors(*opening, *closing).steadiness == Steadiness::Steady;
        std::string& list = agree ? steady : moved;
        list += (list.empty() ? "" : "; ") + words.pair(span, spans.all.size() == 1 ? " and " : ", ");
    }
    std::string says;
    if (!steady.empty())
        says = "The checks around the readings that count agree: factor " + steady + ".";
    if (!moved.empty())
        says += fmt::format("{}The factor moved between the checks around readings that count: {}; the "
                            "change widens their ranges.",
                            says.empty() ? "" : " ", moved);
    return {CheckState::InOrder, says + stepsWithoutReadings(ground, words, spans)};
}

} // namespace

Answer checkedBeforeAndAfter(const ReviewGround& ground)
{
    const model::Job& job = ground.job;
    if (!hasCheck(job, model::CalibrationMoment::Before))
        return {CheckState::Stops, "There is no check with a reference leak before the readings."};
    const bool isClosed = hasCheck(job, model::CalibrationMoment::After);
    if (!isClosed && job.setup.noCheckAfterReason.empty())
        return {CheckState::Stops,
                "The check afterwards is missing; make it, or give the reason in Prepare, Papers."};
    std::vector<Answer> found;
    if (!isClosed)
        found.push_back(
            {CheckState::NeedsWord, "No check afterwards: " + job.setup.noCheckAfterReason + "."});
    const auto views = checks(job);
    for (const CheckView& check : views) {
        if (!check.change)
            continue;
        if (check.change->steadiness == Steadiness::Lost || check.change->steadiness == Steadiness::Grown)
            found.push_back(
                {CheckState::NeedsWord, fmt::format("The factor changed by {:+.0f} %. {}",
                                                    check.change->change * 100.0, check.change->advice)});
    }
    for (const CheckView& check : views)
        if (!check.factor)
            found.push_back({CheckState::NeedsWord,
                             "A check is not usable: " + (check.notes.empty() ? std::string("no reason known")
                                                                              : check.notes.front())});
    const Spans spans = spansOf(ground);
    const Words words(job);
    if (!spans.early.empty())
        found.push_back({CheckState::NeedsWord,
                         "Read before the first check: " + ground.text(spans.early) + ".", spans.early});
    for (const Span& span : spans.all)
        if (span.closing == nullptr && isClosed)
            found.push_back(
                {CheckState::NeedsWord,
                 fmt::format("No check was made after what was read with the factor {} of {}: {}.",
                             words.factor(*span.opening), words.when(*span.opening),
                             ground.text(span.points)),
                 span.points});
    if (!found.empty())
        return answerOf(std::move(found), {});
    return agreed(ground, words, spans);
}

} // namespace sealwalk::analysis::detail
