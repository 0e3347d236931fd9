// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/error_text.h"

#include "ui/render/core_words.h"

#include <QCoreApplication>

namespace sealwalk::ui {

namespace {

QString tr(const char* text, const char* comment = nullptr, int count = -1)
{
    return QCoreApplication::translate("sealwalk::ui", text, comment, count);
}

QString remedyOf(ErrorCode code)
{
    switch (code) {
    case ErrorCode::BadInput:
        return tr("Correct the entry; nothing was stored.");
    case ErrorCode::NotFound:
        return tr("Check the name or look it up in History.");
    case ErrorCode::NewerVersion:
        return tr("Update this program; the file was left untouched.");
    case ErrorCode::ForeignFile:
        return tr("Choose a Sealwalk file; this one was left untouched.");
    case ErrorCode::DamagedFile:
        return tr("Take the last backup; the file was left untouched.");
    case ErrorCode::ReadOnly:
        return tr("Ask for the right to write there, or work on a copy.");
    case ErrorCode::Busy:
        return tr("Wait until the other program is done, then try again.");
    case ErrorCode::Conflict:
        return tr("Look at what changed meanwhile, then do it again.");
    case ErrorCode::NotAllowed:
        return {};
    case ErrorCode::WrongPassphrase:
        return tr("Type it again.");
    case ErrorCode::NoAnswer:
        return {};
    case ErrorCode::Cancelled:
        return tr("Everything is as it was.");
    case ErrorCode::MachineFailed:
        return tr("Free some room or check the disk; what was on disk before is safe.");
    }
    return {};
}

} // namespace

ErrorText errorText(const Error& error)
{
    return {render::inSentence(error), remedyOf(error.code), error.code == ErrorCode::MachineFailed};
}

QString errorSentence(const Error& error)
{
    const ErrorText text = errorText(error);
    return text.remedy.isEmpty() ? text.sentence : text.sentence + QLatin1Char(' ') + text.remedy;
}

} // namespace sealwalk::ui
