// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/continuation.h"

#include "core/exchange/filled_in.h"
#include "core/exchange/job_import.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <string_view>
#include <utility>

namespace sealwalk::exchange {
namespace {

using model::Job;

/// What a history gives is no difference: a reading's place in the list says its sequence, and the last point
/// number counts the points of other jobs too.
Job withoutPlace(Job job)
{
    if (job.openedAs > 0)
        job.number = job.openedAs;
    job.openedAs = 0;
    for (std::size_t i = 0; i < job.readings.size(); ++i)
        job.readings[i].sequence = static_cast<std::int64_t>(i) + 1;
    job.sketch.lastNumber = 0;
    return job;
}

Part partOf(model::ReviewStep step)
{
    switch (step) {
    case model::ReviewStep::Submitted:
        return Part::Submitted;
    case model::ReviewStep::Returned:
        return Part::Returned;
    case model::ReviewStep::Approved:
        return Part::Approved;
    case model::ReviewStep::Amendment:
        return Part::Amendments;
    case model::ReviewStep::Remark:
    case model::ReviewStep::Answer:
        break;
    }
    return Part::Remarks;
}

/// Goes over `less` and `more` once and looks for what keeps `more` from being `less`, gone on.
class Growth
{
public:
    Growth(const Job& less, const Job& more)
        : m_less(less)
        , m_more(more)
    {
        grown(less.readings, more.readings, Part::Readings);
        grown(less.voids, more.voids, Part::Voids);
        grown(less.calibrations, more.calibrations, Part::Calibrations);
        grown(less.backgrounds, more.backgrounds, Part::Backgrounds);
        grown(less.riseTests, more.riseTests, Part::RiseTests);
        grown(less.voidMeasurements, more.voidMeasurements, Part::VoidMeasurements);
        grown(less.judgements, more.judgements, Part::Judgements);
        grown(less.concessions, more.concessions, Part::Concessions);
        grown(less.signatures, more.signatures, Part::Signatures);
        lookAtRounds();
        lookAtRepairs();
        lookAtReview();
        if (less.opened != more.opened || less.object != more.object || less.number != more.number)
            differ(Part::Head);
        lookAtWork();
    }

    [[nodiscard]] bool fits() const { return m_differs.empty(); }
    [[nodiscard]] const std::vector<Part>& differs() const { return m_differs; }
    [[nodiscard]] const std::vector<Gain>& added() const { return m_added; }

private:
    void differ(Part what) { m_differs.push_back(what); }

    void gain(Part part, std::size_t count)
    {
        for (Gain& gain : m_added)
            if (gain.part == part) {
                gain.count += count;
                return;
            }
        m_added.push_back({part, count});
    }

    template <class T>
    void grown(const std::vector<T>& less, const std::vector<T>& more, Part part)
    {
        if (less.size() > more.size() || !std::equal(less.begin(), less.end(), more.begin()))
            differ(part);
        else if (more.size() > less.size())
            gain(part, more.size() - less.size());
    }

    void lookAtRounds()
    {
        const auto goesOn = [](const model::Round& before, model::Round after) {
            if (before.closed)
                return before == after;
            after.closed.reset();
            after.points = before.points; // see lookAtOrders()
            return before == after;
        };
        const auto& less = m_less.rounds;
        const auto& more = m_more.rounds;
        if (less.size() > more.size() || !std::equal(less.begin(), less.end(), more.begin(), goesOn)) {
            differ(Part::Rounds);
            return;
        }
        if (more.size() > less.size())
            gain(Part::Rounds, more.size() - less.size());
        const auto closedBefore =
            std::count_if(less.begin(), less.end(), [](const auto& r) { return r.closed; });
        const auto closed =
            std::count_if(more.begin(), more.begin() + static_cast<std::ptrdiff_t>(less.size()),
                          [](const auto& r) { return r.closed; });
        if (closed > closedBefore)
            gain(Part::ClosedRounds, static_cast<std::size_t>(closed - closedBefore));
    }

    void lookAtRepairs()
    {
        const auto& less = m_less.repairs;
        const auto& more = m_more.repairs;
        const auto isOne = [](const model::Repair& before, const model::Repair& after) {
            return before.id == after.id && isFilledIn(before, after);
        };
        if (less.size() > more.size() || !std::equal(less.begin(), less.end(), more.begin(), isOne))
            differ(Part::Repairs);
        else if (more.size() > less.size())
            gain(Part::Repairs, more.size() - less.size());
    }

    /// The order of an open round may be changed, and nothing tells when it was; points added at its end are
    /// more.
    void lookAtOrders()
    {
        for (std::size_t i = 0; i < std::min(m_less.rounds.size(), m_more.rounds.size()); ++i) {
            const auto& less = m_less.rounds[i].points;
            const auto& more = m_more.rounds[i].points;
            if (less.size() > more.size() || !std::equal(less.begin(), less.end(), more.begin()))
                differ(Part::RoundOrder);
        }
    }

    void lookAtWork()
    {
        lookAtOrders();
        if (!isFilledIn(m_less.setup, m_more.setup))
            differ(Part::Setup);
        if (!isFilledIn(m_less.sketch, m_more.sketch))
            differ(Part::Sketch);
    }

    void lookAtReview()
    {
        const auto& less = m_less.review;
        const auto& more = m_more.review;
        if (less.size() > more.size() || !std::equal(less.begin(), less.end(), more.begin())) {
            differ(Part::Review);
            return;
        }
        for (std::size_t i = less.size(); i < more.size(); ++i) {
            gain(partOf(more[i].step), 1);
            if (m_less.state == model::JobState::Signed && more[i].step != model::ReviewStep::Amendment)
                differ(Part::Review);
        }
        // Whatever follows a signature is signed too.
        const std::size_t signatures =
            m_more.signatures.size() - std::min(m_less.signatures.size(), m_more.signatures.size());
        if (m_less.state == model::JobState::Signed && signatures != more.size() - less.size())
            differ(Part::Signatures);
    }

    const Job& m_less;
    const Job& m_more;
    std::vector<Part> m_differs;
    std::vector<Gain> m_added;
};

/// What may change while one works, and differs.
std::vector<Part> workingDifferences(const Job& here, const Job& there)
{
    std::vector<Part> what;
    if (here.setup != there.setup)
        what.push_back(Part::Setup);
    if (here.sketch != there.sketch)
        what.push_back(Part::Sketch);
    const bool same =
        std::equal(here.repairs.begin(),
                   here.repairs.begin() +
                       static_cast<std::ptrdiff_t>(std::min(here.repairs.size(), there.repairs.size())),
                   there.repairs.begin());
    if (!same)
        what.push_back(Part::Repairs);
    const auto order = [](const Job& job, std::size_t count) {
        std::vector<std::vector<model::PointId>> points;
        for (std::size_t i = 0; i < count; ++i)
            points.push_back(job.rounds[i].points);
        return points;
    };
    const std::size_t rounds = std::min(here.rounds.size(), there.rounds.size());
    if (order(here, rounds) != order(there, rounds))
        what.push_back(Part::RoundOrder);
    return what;
}

bool isWork(Part part)
{
    return part == Part::Setup || part == Part::Sketch || part == Part::Repairs || part == Part::RoundOrder;
}

/// What a person is told: what cannot be right both ways, before what one of the two has more; and of that
/// what can be put right, before what was measured.
Part whatKeepsApart(const Growth& onward, const Growth& back)
{
    const auto& there = back.differs();
    for (const Part part : onward.differs())
        if (std::find(there.begin(), there.end(), part) != there.end())
            return part;
    for (const Growth* one : {&onward, &back})
        for (const Part part : one->differs())
            if (isWork(part))
                return part;
    return onward.differs().front();
}

Continuation forked(Part differs)
{
    return {Standing::Forked, {}, {}, differs};
}

} // namespace

std::string partWords(Part part, std::optional<std::size_t> count)
{
    struct Words
    {
        std::string_view one;
        std::string_view many;
    };
    const auto words = [part]() -> Words {
        switch (part) {
        case Part::Head:
            return {"", "number, object or day of opening"};
        case Part::Setup:
            return {"", "set-up"};
        case Part::Sketch:
            return {"", "sketch"};
        case Part::Rounds:
            return {"round", "rounds"};
        case Part::RoundOrder:
            return {"", "order of a round"};
        case Part::ClosedRounds:
            return {"round closed", "rounds closed"};
        case Part::Readings:
            return {"reading", "readings"};
        case Part::Voids:
            return {"void mark", "void marks"};
        case Part::Calibrations:
            return {"system check", "system checks"};
        case Part::Backgrounds:
            return {"background watch", "background watches"};
        case Part::RiseTests:
            return {"pressure-rise test", "pressure-rise tests"};
        case Part::VoidMeasurements:
            return {"void mark of a measurement", "void marks of measurements"};
        case Part::Repairs:
            return {"repair", "repairs"};
        case Part::Judgements:
            return {"judgement", "judgements"};
        case Part::Concessions:
            return {"concession", "concessions"};
        case Part::Submitted:
            return {"", "submitted"};
        case Part::Returned:
            return {"", "returned"};
        case Part::Approved:
            return {"", "approved"};
        case Part::Remarks:
            return {"remark", "remarks"};
        case Part::Amendments:
            return {"amendment", "amendments"};
        case Part::Review:
            return {"", "turns of the review"};
        case Part::Signatures:
            return {"signature", "signatures"};
        }
        return {};
    }();
    if (!count || words.one.empty())
        return std::string(words.many);
    return fmt::format("{} {}", *count, *count == 1 ? words.one : words.many);
}

Continuation compareRecords(const JobRecord& one, const JobRecord& other)
{
    if (isSameJob(one, other))
        return {};
    const Job here = withoutPlace(one.job);
    const Job there = withoutPlace(other.job);
    const Growth onward(here, there);
    const Growth back(there, here);
    if (onward.fits() && back.fits()) // all that differs is a history's business
        return {};
    if (!onward.fits() && !back.fits())
        return forked(whatKeepsApart(onward, back));
    const Job& less = onward.fits() ? here : there;
    std::vector<Part> replaced = workingDifferences(here, there);
    // Nothing but amendments follows a signature, so nothing of the work can be another.
    if (less.state == model::JobState::Signed && !replaced.empty())
        return forked(replaced.front());
    return {onward.fits() ? Standing::Further : Standing::Behind,
            onward.fits() ? onward.added() : back.added(),
            std::move(replaced),
            {}};
}

} // namespace sealwalk::exchange
