// SPDX-License-Identifier: GPL-3.0-or-later
// What signing asks of the session: the record as it is on disk, the step that closes it, and who signs.
#include "core/storage/history_store.h"
#include "ui/session/job_session.h"
#include "ui/session/signing.h"

namespace sealwalk::ui {

Result<storage::JobLook> JobSession::lookAtWhatIsShown()
{
    if (!m_job)
        return fail(ErrorCode::NotAllowed, "no job is open; open or start one first");
    auto look = history().look(m_job->id);
    if (look && (look->job != recordedJob() || look->object != *m_object)) {
        m_isBehind = true;
        lookForOthers();
        return fail(ErrorCode::Conflict,
                    "the job was changed in another window since it was shown here; look again");
    }
    return look;
}

Status JobSession::requireOpen(model::JobId job, const char* done) const
{
    if (!m_job || m_job->id != job)
        return fail(ErrorCode::Conflict, std::string("another job was opened meanwhile; nothing was ") +
                                             done + ". Open the job again and repeat it");
    return {};
}

Status JobSession::sign(model::JobId job, const model::ReviewEntry& entry, const model::Signature& signature,
                        std::int64_t seen)
{
    Status stored = requireOpen(job, "approved").and_then([&] {
        return lookAgainOnConflict(history().sign(job, entry, signature, seen));
    });
    if (stored)
        announceSigned();
    return stored;
}

Status JobSession::amend(model::JobId job, const model::ReviewEntry& entry, const model::Signature& signature,
                         std::int64_t seen)
{
    Status stored = requireOpen(job, "added").and_then([&] {
        return lookAgainOnConflict(history().amend(job, entry, signature, seen));
    });
    if (stored)
        announceSigned();
    return stored;
}

void JobSession::announceSigned()
{
    reloadAfterOwnStep();
    emit storedOnDisk(Timestamp::now());
    emit recordsChanged();
    emit stateChanged();
    emit historyChanged();
}

Status JobSession::putPerson(const model::Person& person)
{
    Status stored = history().putPerson(person, logger().toStdString());
    if (stored)
        emit storedOnDisk(Timestamp::now());
    return stored;
}

Result<std::vector<model::PersonEntry>> JobSession::personEntries() const
{
    return history().personEntries();
}

bool JobSession::isOnePersonHistory() const
{
    return history().setting(kOnePersonSetting).value_or("") == kOnePersonYes;
}

Result<std::vector<model::Person>> JobSession::people() const
{
    return history().people();
}

} // namespace sealwalk::ui
