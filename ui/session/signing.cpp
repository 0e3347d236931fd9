// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session/signing.h"

#include "core/analysis/claim.h"
#include "core/analysis/review_checks.h"
#include "core/analysis/round_summary.h"
#include "core/exchange/signing.h"
#include "core/storage/history_store.h"
#include "core/transfer/earlier_jobs.h"
#include "core/transfer/hand_out.h"
#include "ui/session/beside.h"
#include "ui/session/job_session.h"

#include <algorithm>

namespace sealwalk::ui {

namespace {

Result<model::Person> findPerson(const JobSession& session, model::PersonId id)
{
    const auto people = session.people();
    if (!people)
        return fail(people.error());
    const auto found =
        std::find_if(people->begin(), people->end(), [&](const model::Person& p) { return p.id == id; });
    if (found == people->end())
        return fail(ErrorCode::NotFound, "this person is not known in this history; add them first");
    return *found;
}

Result<std::vector<exchange::PictureName>> pictureNames(const JobSession& session)
{
    std::vector<exchange::PictureName> names;
    for (const std::string& sha256 : exchange::picturesOf(session.job())) {
        const auto picture = session.picture(sha256);
        if (!picture)
            return fail(picture.error());
        names.push_back({picture->sha256, picture->extension});
    }
    return names;
}

} // namespace

Signing::Signing(JobSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session)
{}

void Signing::run(Work kind, std::function<std::function<Status()>()> work)
{
    if (m_busy)
        return;
    m_busy = true;
    m_work = kind;
    emit busyChanged();
    runBeside<std::function<Status()>>(&m_owner, std::move(work),
                                       [this](const std::function<Status()>& store) { finish(store()); });
}

void Signing::finish(const Status& status)
{
    m_busy = false;
    emit busyChanged();
    emit finished(status ? std::nullopt : std::optional(status.error()));
}

void Signing::createPerson(const model::Person& person, const QString& passphrase,
                           std::optional<bool> onePersonHistory)
{
    run(Work::Key,
        [this, made = person, history = m_session.historyFile(), onePersonHistory,
         secret = passphrase.toStdString()]() mutable -> std::function<Status()> {
            const auto key = exchange::createKey(secret);
            if (!key)
                return [error = key.error()]() -> Status { return fail(error); };
            if (made.id.isNil())
                made.id = model::PersonId::create();
            if (!made.since.isSet())
                made.since = Timestamp::now();
            made.publicKey = key->publicKey.text();
            made.sealedKey = key->text();
            return [this, made, history, onePersonHistory] {
                return keep(made, history).and_then([&] {
                    return onePersonHistory ? setOnePersonHistory(*onePersonHistory) : Status();
                });
            };
        });
}

void Signing::changePassphrase(model::PersonId id, const QString& old, const QString& passphrase)
{
    const auto person = findPerson(m_session, id);
    if (!person) {
        finish(fail(person.error()));
        return;
    }
    run(Work::Key,
        [this, changed = *person, history = m_session.historyFile(), was = old.toStdString(),
         secret = passphrase.toStdString()]() mutable -> std::function<Status()> {
            const auto key = exchange::SealedKey::parse(changed.sealedKey)
                                 .and_then([&](const exchange::SealedKey& sealed) {
                                     return exchange::changePassphrase(sealed, was, secret);
                                 });
            if (!key)
                return [error = key.error()]() -> Status { return fail(error); };
            changed.sealedKey = key->text();
            return [this, changed, history] { return keep(changed, history); };
        });
}

Status Signing::keep(const model::Person& person, const std::filesystem::path& history)
{
    if (!m_session.hasHistory() || m_session.historyFile() != history)
        return fail(ErrorCode::Conflict,
                    "another history was opened meanwhile; nothing of " + person.name + " was kept");
    return m_session.putPerson(person);
}

void Signing::approve(model::PersonId id, const QString& passphrase)
{
    const auto person = findPerson(m_session, id);
    if (!person) {
        finish(fail(person.error()));
        return;
    }
    if (!m_session.hasJob()) {
        finish(fail(ErrorCode::NotAllowed, "no job is open"));
        return;
    }
    if (m_session.isWorkingOut()) {
        finish(fail(ErrorCode::NotAllowed,
                    "the findings are still being worked out; wait until they are shown"));
        return;
    }
    if (const auto why = analysis::whyNotApprove(m_session.job(), *person, isOnePersonHistory())) {
        finish(fail(ErrorCode::NotAllowed, *why));
        return;
    }
    model::ReviewEntry entry;
    entry.step = model::ReviewStep::Approved;
    seal(*person, passphrase, std::move(entry), std::string(model::kApprovalRole), &JobSession::sign);
}

void Signing::amend(model::PersonId id, const QString& passphrase, const std::string& text)
{
    const auto person = findPerson(m_session, id);
    if (!person) {
        finish(fail(person.error()));
        return;
    }
    if (!m_session.hasJob() || m_session.job().state != model::JobState::Signed) {
        finish(fail(ErrorCode::NotAllowed, "amendments are for signed jobs; change the record itself"));
        return;
    }
    model::ReviewEntry entry;
    entry.step = model::ReviewStep::Amendment;
    entry.text = text;
    seal(*person, passphrase, std::move(entry), std::string(model::kAmendmentRole), &JobSession::amend);
}

void Signing::seal(const model::Person& person, const QString& passphrase, model::ReviewEntry entry,
                   const std::string& role, Store store)
{
    auto look = m_session.lookAtWhatIsShown();
    if (!look) {
        finish(fail(look.error()));
        return;
    }
    const auto names = pictureNames(m_session);
    if (!names) {
        finish(fail(names.error()));
        return;
    }
    entry.id = model::ReviewId::create();
    entry.by = person.name;
    entry.at = Timestamp::now();

    run(Work::Seal,
        [session = &m_session, record = exchange::JobRecord{m_session.object(), std::move(look->job)}, entry,
         names = *names, person, role, store, secret = passphrase.toStdString(), mark = look->mark,
         carried = transfer::carriedRepairs(m_session.history(), m_session.job()),
         onePerson = isOnePersonHistory()]() mutable -> std::function<Status()> {
            const auto seen = exchange::jobDigest(record.object, record.job, names);
            if (!seen)
                return [error = seen.error()]() -> Status { return fail(error); };
            entry.digest = *seen;
            if (entry.step == model::ReviewStep::Approved)
                // Of the record that is signed, not of what a window happened to show.
                entry.text = analysis::approvalStatement(
                    record.job, analysis::summarise(record.job, record.object, analysis::Standing::AsLeft),
                    carried, onePerson);
            record.job.review.push_back(entry);
            const auto signature = exchange::signJob(record, names, person, secret,
                                                     {.role = role, .statement = entry.text, .at = entry.at});
            if (!signature)
                return [error = signature.error()]() -> Status { return fail(error); };
            return [session, job = record.job.id, entry, signature = *signature, mark, store] {
                return (session->*store)(job, entry, signature, mark);
            };
        });
}

bool Signing::isOnePersonHistory() const
{
    return m_session.isOnePersonHistory();
}

Status Signing::setOnePersonHistory(bool one)
{
    return m_session.history().putSetting(kOnePersonSetting, one ? kOnePersonYes : "");
}

Result<exchange::Verification> Signing::verify() const
{
    if (!m_session.hasJob())
        return fail(ErrorCode::NotAllowed, "no job is open");
    return transfer::verifyIn(m_session.history(), m_session.job().id);
}

} // namespace sealwalk::ui
