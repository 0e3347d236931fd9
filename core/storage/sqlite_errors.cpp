// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/sqlite_errors.h"

#include <sqlite3.h>

#include <string_view>

namespace sealwalk::storage {
namespace {

/// What our own triggers say before the colon.
constexpr std::string_view kKept = "kept: ";
constexpr std::string_view kSigned = "signed: ";

Error brokenConstraint(const SQLite::Exception& failure, const std::string& name)
{
    const std::string_view said = failure.what();
    if (said.starts_with(kSigned))
        return {ErrorCode::NotAllowed, name + ": " + std::string(said.substr(kSigned.size())) +
                                           "; what it says can only be added to by an amendment"};
    if (said.starts_with(kKept))
        return {ErrorCode::NotAllowed,
                name + ": " + std::string(said.substr(kKept.size())) + "; add one that corrects it"};
    if (failure.getExtendedErrorCode() == SQLITE_CONSTRAINT_FOREIGNKEY)
        return {ErrorCode::NotFound,
                name + ": the record names a joint, point, round or reading that the job does not have"};
    if (failure.getExtendedErrorCode() == SQLITE_CONSTRAINT_UNIQUE ||
        failure.getExtendedErrorCode() == SQLITE_CONSTRAINT_PRIMARYKEY)
        return {ErrorCode::Conflict, name + ": a record with this identity is stored already"};
    return {ErrorCode::BadInput, name + ": the record breaks a rule of the history (" + failure.what() + ")"};
}

} // namespace

Error translated(const SQLite::Exception& failure, const std::filesystem::path& file)
{
    const std::string name = file.string();
    switch (failure.getErrorCode()) {
    case SQLITE_CONSTRAINT:
        return brokenConstraint(failure, name);
    case SQLITE_FULL:
        return {ErrorCode::MachineFailed,
                name + ": the disk is full; nothing of this was stored, and everything before is safe"};
    case SQLITE_IOERR:
        return {ErrorCode::MachineFailed,
                name + ": the disk refused to write or read; nothing of this was stored (" + failure.what() +
                    ")"};
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return {ErrorCode::Busy, name + ": in use by another program; close it there, or try again"};
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
        return {ErrorCode::DamagedFile,
                name + ": the file is damaged; go back to its last backup (" + failure.what() + ")"};
    case SQLITE_READONLY:
    case SQLITE_PERM:
    case SQLITE_AUTH:
        return {ErrorCode::ReadOnly, name + ": may not be written; give it and its folder write permission"};
    case SQLITE_CANTOPEN:
        return {ErrorCode::MachineFailed,
                name + ": cannot be opened; the file and its folder need read and write permission"};
    case SQLITE_INTERRUPT:
        return {ErrorCode::Cancelled, name + ": not written"};
    case SQLITE_NOMEM:
        return {ErrorCode::MachineFailed, name + ": no memory left for this"};
    default:
        return {ErrorCode::MachineFailed, name + ": the database failed (" + failure.what() + ")"};
    }
}

} // namespace sealwalk::storage
