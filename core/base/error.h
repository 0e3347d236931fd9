// SPDX-License-Identifier: GPL-3.0-or-later
// Expected failures as values: what went wrong, told in one sentence, and who can mend it.
#pragma once

#include <string>
#include <string_view>

namespace sealwalk {

enum class ErrorCode
{
    BadInput,        ///< the caller's text, number or file is not acceptable
    NotFound,        ///< a job, object, point or file that does not exist
    NewerVersion,    ///< written by a newer Sealwalk
    ForeignFile,     ///< not one of our files
    DamagedFile,     ///< ours, but truncated or altered
    ReadOnly,        ///< may not be written
    Busy,            ///< locked by another program
    Conflict,        ///< somebody else changed it meanwhile
    NotAllowed,      ///< the state forbids it: signed job, missing check, same person
    WrongPassphrase, ///< the signing key did not open
    NoAnswer,        ///< a computation has no defensible result for these data
    Cancelled,       ///< stopped by the user; nothing is shown for it
    MachineFailed,   ///< disk full, no permission, out of memory
};

/// Process exit status of the command line for a failure: 3 when the machine failed, otherwise 2.
int exitStatus(ErrorCode code);

/// A failure. `message` is one English sentence: what was wrong, where, and what would be right.
struct Error
{
    ErrorCode code = ErrorCode::BadInput;
    std::string message;

    bool operator==(const Error&) const = default;

    /// The same error with "`where`: " in front, for callers that know the file, line or field.
    [[nodiscard]] Error in(std::string_view where) const;
};

} // namespace sealwalk
