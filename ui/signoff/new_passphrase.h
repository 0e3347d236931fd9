// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong with a passphrase that is to be a new one, typed twice.
#pragma once

#include <QString>

namespace sealwalk::ui {

/// One sentence for beneath the fields; empty: it will do.
QString complaintAboutNewPassphrase(const QString& passphrase, const QString& again);

} // namespace sealwalk::ui
