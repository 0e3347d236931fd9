// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/signoff/new_passphrase.h"

#include "core/exchange/signing.h"

#include <QCoreApplication>

namespace sealwalk::ui {

namespace {

struct NewPassphrase
{
    Q_DECLARE_TR_FUNCTIONS(sealwalk::ui::PersonDialog)
};

} // namespace

QString complaintAboutNewPassphrase(const QString& passphrase, const QString& again)
{
    if (!exchange::isLongEnough(passphrase.toStdString()))
        return NewPassphrase::tr("The passphrase needs at least %n characters.", nullptr,
                                 static_cast<int>(exchange::kShortestPassphrase));
    return passphrase == again ? QString() : NewPassphrase::tr("The two passphrases differ.");
}

} // namespace sealwalk::ui
