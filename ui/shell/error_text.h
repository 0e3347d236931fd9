// SPDX-License-Identifier: GPL-3.0-or-later
// Failures of the core in words for people: what happened, and what to do now. The one place of translation.
#pragma once

#include "core/base/error.h"

#include <QString>

namespace sealwalk::ui {

struct ErrorText
{
    QString sentence;           ///< what happened, with the core's own detail
    QString remedy;             ///< what to do now
    bool threatensData = false; ///< work may be lost if this is overlooked: worth a modal box
};

ErrorText errorText(const Error& error);
/// Both halves in one line.
QString errorSentence(const Error& error);

} // namespace sealwalk::ui
