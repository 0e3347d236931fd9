// SPDX-License-Identifier: GPL-3.0-or-later
// The turns of a review and the state they move a job to.
#include "core/storage/connection.h"

#include <fmt/format.h>

namespace sealwalk::storage {
namespace {

using model::JobState;
using model::ReviewStep;

[[noreturn]] void refuseStep(const JobHead& head, std::string_view why)
{
    throw Refusal(ErrorCode::NotAllowed,
                  fmt::format("job {} is {}: {}", head.number, model::name(head.state), why));
}

/// The state after `step`; a Refusal when the step does not belong to the present state.
JobState after(const JobHead& head, ReviewStep step)
{
    const bool working = head.state == JobState::Open || head.state == JobState::Returned;
    switch (step) {
    case ReviewStep::Submitted:
        if (!working)
            refuseStep(head, "it cannot be submitted again");
        return JobState::Submitted;
    case ReviewStep::Returned:
        if (head.state != JobState::Submitted)
            refuseStep(head, "only a submitted job can be sent back");
        return JobState::Returned;
    case ReviewStep::Approved:
        if (head.state != JobState::Submitted)
            refuseStep(head, "only a submitted job can be approved");
        return JobState::Signed;
    case ReviewStep::Amendment:
        if (head.state != JobState::Signed)
            refuseStep(head, "amendments are for signed jobs; change the record itself");
        return JobState::Signed;
    case ReviewStep::Remark:
    case ReviewStep::Answer:
        // The schema would let them through, but nobody has signed them: words of later are amendments.
        if (head.state == JobState::Signed)
            refuseStep(head, "what is known since goes in as an amendment, which is signed too");
        break;
    }
    return head.state;
}

bool hasSignature(SQLite::Database& database, JobKey key)
{
    SQLite::Statement select(database, "SELECT 1 FROM signature WHERE job = ?");
    select.bind(1, key);
    return select.executeStep();
}

/// The state is set last: from then on the database refuses the other rows.
void store(SQLite::Database& database, const JobHead& head, const model::ReviewEntry& entry)
{
    const JobState next = after(head, entry.step);
    insertRow(database, head.key, entry);
    if (next != head.state)
        setState(database, head.key, next);
    refreshSummary(database, head.key);
}

} // namespace

Status HistoryStore::addReview(model::JobId job, const model::ReviewEntry& entry)
{
    return m_connection->write([&]() -> Status {
        const JobHead head = m_connection->headFor(job, Allowed::Always);
        if (entry.step == ReviewStep::Approved && !hasSignature(m_connection->database, head.key))
            return fail(ErrorCode::NotAllowed,
                        fmt::format("job {} has no signature yet; an approval is signed", head.number));
        store(m_connection->database, head, entry);
        return {};
    });
}

Status HistoryStore::addSignature(model::JobId job, const model::Signature& signature)
{
    return m_connection->write([&]() -> Status {
        const JobHead head = m_connection->headFor(job, Allowed::UntilSigned);
        insertRow(m_connection->database, head.key, signature);
        refreshSummary(m_connection->database, head.key);
        return {};
    });
}

Status HistoryStore::sign(model::JobId job, const model::ReviewEntry& entry,
                          const model::Signature& signature, std::optional<ChangeMark> seen)
{
    return m_connection->write([&]() -> Status {
        const JobHead head = m_connection->headFor(job, Allowed::UntilSigned);
        if (entry.step != ReviewStep::Approved)
            return fail(ErrorCode::BadInput, "a signature that closes a job goes with an approval");
        if (seen && *seen != m_connection->mark())
            return fail(
                ErrorCode::Conflict,
                fmt::format("something was stored in the history since job {} was looked at; look again",
                            head.number));
        after(head, entry.step);
        insertRow(m_connection->database, head.key, signature);
        store(m_connection->database, head, entry);
        return {};
    });
}

Status HistoryStore::amend(model::JobId job, const model::ReviewEntry& entry,
                           const model::Signature& signature, std::optional<ChangeMark> seen)
{
    return m_connection->write([&]() -> Status {
        const JobHead head = m_connection->headFor(job, Allowed::Always);
        if (entry.step != ReviewStep::Amendment || signature.role != model::kAmendmentRole)
            return fail(ErrorCode::BadInput, "a signed job takes amendments and their signatures only");
        if (entry.text.empty())
            return fail(ErrorCode::BadInput, "an amendment says what is known now");
        if (seen && *seen != m_connection->mark())
            return fail(
                ErrorCode::Conflict,
                fmt::format("something was stored in the history since job {} was looked at; look again",
                            head.number));
        store(m_connection->database, head, entry);
        insertRow(m_connection->database, head.key, signature);
        refreshSummary(m_connection->database, head.key);
        return {};
    });
}

} // namespace sealwalk::storage
