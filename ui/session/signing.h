// SPDX-License-Identifier: GPL-3.0-or-later
// People, their keys and the signature that closes a job. Opening a key takes the better part of a second by
// intent, so it happens off the GUI thread.
#pragma once

#include "core/base/result.h"
#include "core/exchange/job_signing.h"
#include "core/model/review.h"

#include <QObject>
#include <QString>

#include <filesystem>
#include <functional>
#include <optional>

namespace sealwalk::ui {

class JobSession;

/// The setting of a history that one person keeps, and its value.
inline constexpr const char* kOnePersonSetting = "one person";
inline constexpr const char* kOnePersonYes = "yes";

class Signing : public QObject
{
    Q_OBJECT

public:
    explicit Signing(JobSession& session, QObject* parent = nullptr);

    /// Gives a person of this history a key under `passphrase`; finished() tells how it went.
    /// @param onePersonHistory  set with the person, or not at all; none: stays as it is
    void createPerson(const model::Person& person, const QString& passphrase,
                      std::optional<bool> onePersonHistory = std::nullopt);
    /// The same key under another passphrase.
    void changePassphrase(model::PersonId person, const QString& old, const QString& passphrase);
    /// Approves the submitted job as it is shown now, with the statement that follows from it
    /// (approvalStatement), and closes it. Refused when anything else was stored before or meanwhile, when
    /// another job is opened meanwhile, and while findings are still being worked out.
    void approve(model::PersonId person, const QString& passphrase);
    /// Adds a signed amendment to the signed job that is open.
    void amend(model::PersonId person, const QString& passphrase, const std::string& text);
    /// Whether the tester may approve too, because nobody else works in this history.
    [[nodiscard]] bool isOnePersonHistory() const;
    Status setOnePersonHistory(bool one);
    [[nodiscard]] bool isBusy() const { return m_busy; }
    enum class Work
    {
        Key,  ///< made or changed
        Seal, ///< an approval or amendment is signed
    };
    /// What it is, or was last, busy with.
    [[nodiscard]] Work work() const { return m_work; }

    /// Whether the open job is still what was signed.
    [[nodiscard]] Result<exchange::Verification> verify() const;

signals:
    void busyChanged();
    void finished(const std::optional<sealwalk::Error>& problem); ///< none: done and on disk

private:
    /// What is done with entry and signature once they are made.
    using Store = Status (JobSession::*)(model::JobId, const model::ReviewEntry&, const model::Signature&,
                                         std::int64_t);
    void seal(const model::Person& person, const QString& passphrase, model::ReviewEntry entry,
              const std::string& role, Store store);
    /// Runs `work` off the thread and gives its answer to `store`, whose status is announced.
    void run(Work kind, std::function<std::function<Status()>()> work);
    void finish(const Status& status);
    /// Stores `person`, unless another history was opened while the key was made.
    Status keep(const model::Person& person, const std::filesystem::path& history);

    JobSession& m_session;
    bool m_busy = false;
    Work m_work = Work::Seal;
    QObject m_owner; ///< of the work; the last member, so that it ends first and waits for it
};

} // namespace sealwalk::ui
