// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session/signing.h"

#include "core/analysis/review_checks.h"
#include "core/exchange/signing.h"
#include "core/storage/history_store.h"
#include "core/transfer/hand_out.h"
#include "ui/session/job_session.h"

#include <QtConcurrent>

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr const char* kOnePersonSetting = "one person";
constexpr const char* kYes = "yes";

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
{
    connect(&m_watcher, &QFutureWatcherBase::finished, this, [this] { finish(m_watcher.result()()); });
}

Signing::~Signing()
{
    m_watcher.disconnect();
    m_watcher.waitForFinished();
}

void Signing::run(std::function<std::function<Status()>()> work)
{
    if (m_busy)
        return;
    m_busy = true;
    emit busyChanged();
    m_watcher.setFuture(QtConcurrent::run(std::move(work)));
}

void Signing::finish(const Status& status)
{
    m_busy = false;
    emit busyChanged();
    emit finished(status ? std::nullopt : std::optional(status.error()));
}

void Signing::createPerson(const model::Person& person, const QString& passphrase)
{
    run([this, made = person, secret = passphrase.toStdString()]() mutable -> std::function<Status()> {
        const auto key = exchange::createKey(secret);
        if (!key)
            return [error = key.error()]() -> Status { return fail(error); };
        if (made.id.isNil())
            made.id = model::PersonId::create();
        if (!made.since.isSet())
            made.since = Timestamp::now();
        made.publicKey = key->publicKey.text();
        made.sealedKey = key->text();
        return [this, made] { return m_session.putPerson(made); };
    });
}

void Signing::changePassphrase(model::PersonId id, const QString& old, const QString& passphrase)
{
    const auto person = findPerson(m_session, id);
    if (!person) {
        finish(fail(person.error()));
        return;
    }
    run([this, changed = *person, was = old.toStdString(),
         secret = passphrase.toStdString()]() mutable -> std::function<Status()> {
        const auto key =
            exchange::SealedKey::parse(changed.sealedKey).and_then([&](const exchange::SealedKey& sealed) {
                return exchange::changePassphrase(sealed, was, secret);
            });
        if (!key)
            return [error = key.error()]() -> Status { return fail(error); };
        changed.sealedKey = key->text();
        return [this, changed] { return m_session.putPerson(changed); };
    });
}

void Signing::approve(model::PersonId id, const QString& passphrase, const std::string& statement)
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
    if (const auto why = analysis::whyNotApprove(m_session.job(), *person, isOnePersonHistory())) {
        finish(fail(ErrorCode::NotAllowed, *why));
        return;
    }
    model::ReviewEntry entry;
    entry.step = model::ReviewStep::Approved;
    entry.text = statement;
    seal(*person, passphrase, std::move(entry), person->role, &JobSession::sign);
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
    const auto names = pictureNames(m_session);
    const auto mark = m_session.history().changeMark();
    if (!names || !mark) {
        finish(fail(!names ? names.error() : mark.error()));
        return;
    }
    exchange::JobRecord record{m_session.object(), m_session.job()};
    entry.id = model::ReviewId::create();
    entry.by = person.name;
    entry.at = Timestamp::now();
    const auto seen = exchange::jobDigest(record.object, record.job, *names);
    if (!seen) {
        finish(fail(seen.error()));
        return;
    }
    entry.digest = *seen;
    record.job.review.push_back(entry);

    run([this, record = std::move(record), entry, names = *names, person, role, store,
         secret = passphrase.toStdString(), mark = *mark]() -> std::function<Status()> {
        const auto signature = exchange::signJob(record, names, person, secret,
                                                 {.role = role, .statement = entry.text, .at = entry.at});
        if (!signature)
            return [error = signature.error()]() -> Status { return fail(error); };
        return [this, entry, signature = *signature, mark, store] {
            return (m_session.*store)(entry, signature, mark);
        };
    });
}

bool Signing::isOnePersonHistory() const
{
    return m_session.history().setting(kOnePersonSetting).value_or("") == kYes;
}

Status Signing::setOnePersonHistory(bool one)
{
    return m_session.history().putSetting(kOnePersonSetting, one ? kYes : "");
}

Result<exchange::Verification> Signing::verify() const
{
    if (!m_session.hasJob())
        return fail(ErrorCode::NotAllowed, "no job is open");
    return transfer::verifyIn(m_session.history(), m_session.job().id);
}

} // namespace sealwalk::ui
