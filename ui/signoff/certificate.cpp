// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/signoff/certificate.h"

#include "core/report/rate_text.h"
#include "core/storage/history_store.h"
#include "core/transfer/hand_out.h"
#include "ui/render/core_words.h"

#include <QCoreApplication>

#include <vector>

namespace sealwalk::ui {

namespace {

struct Words
{
    Q_DECLARE_TR_FUNCTIONS(Certificate)
};

/// The check and the signatures it went over, of one and the same record.
Result<exchange::Verification> check(const std::filesystem::path& history, model::JobId job)
{
    return storage::HistoryStore::open(history, storage::HistoryStore::Mode::ReadOnly)
        .and_then([&](const storage::HistoryStore& store) { return transfer::verifyIn(store, job); });
}

QString text(const std::string& words)
{
    return QString::fromStdString(words);
}

} // namespace

Certificate readCertificate(const std::filesystem::path& history, model::JobId job)
{
    Certificate certificate;
    certificate.job = job;
    const auto checked = check(history, job);
    if (!checked) {
        certificate.says = render::inWords(checked.error());
        return certificate;
    }
    certificate.holds = checked->ok();
    if (!certificate.holds) {
        certificate.says =
            Words::tr("Changed since it was signed: %1").arg(render::inWords(checked->problems.front()));
        return certificate;
    }
    for (const exchange::CheckedSignature& one : checked->signatures) {
        const model::Signature& signature = one.signature;
        if (signature.role == model::kAmendmentRole) {
            certificate.says +=
                Words::tr(", amended %1 by %2").arg(text(signature.at.date()), text(signature.name));
            certificate.claim += Words::tr("\nAmendment: “%1”").arg(text(signature.statement));
            continue;
        }
        certificate.says =
            Words::tr("Signed by %1, %2 %3, unchanged")
                .arg(text(signature.name), text(signature.at.date()), text(signature.at.timeOfDay()));
        certificate.claim =
            Words::tr("“%1”\nFingerprint %2 …")
                .arg(text(report::onScreen(signature.statement)), text(signature.digest.substr(0, 16)));
    }
    for (const std::string& note : checked->notes)
        certificate.claim += QLatin1Char('\n') + render::inSentence(note);
    return certificate;
}

} // namespace sealwalk::ui
