// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/connection.h"

#include <fmt/format.h>

namespace sealwalk::storage {

void HistoryStore::Connection::requireWritable() const
{
    if (mode == Mode::ReadOnly)
        throw Refusal(ErrorCode::ReadOnly, name() + ": opened to be read only; nothing can be stored in it");
    // SQLite would go on writing to a file that nobody finds again.
    if (!own.isStill(file))
        throw Refusal(ErrorCode::NotFound,
                      name() + ": moved, deleted or replaced by another file while it was open; nothing was "
                               "stored; put it back under this name, or back up what is shown and open that");
}

JobHead HistoryStore::Connection::head(model::JobId job) const
{
    const auto select =
        kept.lease("SELECT id, number, object, state, sketch_revision FROM job WHERE uuid = ?");
    ColumnBinder bind(*select);
    bind("uuid", job);
    if (!select->executeStep())
        throw Refusal(ErrorCode::NotFound, fmt::format("{}: has no job {}", name(), job.text()));
    JobHead head;
    ColumnReader read(*select);
    read("id", head.key);
    read("number", head.number);
    read("object", head.object);
    read("state", head.state);
    read("sketch_revision", head.sketchRevision);
    return head;
}

JobHead HistoryStore::Connection::headFor(model::JobId job, Allowed allowed) const
{
    const JobHead found = head(job);
    if (found.state == model::JobState::Signed && allowed != Allowed::Always)
        throw Refusal(
            ErrorCode::NotAllowed,
            fmt::format("job {} is signed and stays as it is; add an amendment to it", found.number));
    if (found.state == model::JobState::Submitted && allowed == Allowed::WhileOpenForWork)
        throw Refusal(ErrorCode::NotAllowed,
                      fmt::format("job {} is submitted and waits for its review; have it sent back first",
                                  found.number));
    return found;
}

std::int64_t HistoryStore::Connection::objectKey(model::ObjectId object) const
{
    SQLite::Statement select(database, "SELECT id FROM object WHERE uuid = ?");
    ColumnBinder bind(select);
    bind("uuid", object);
    if (!select.executeStep())
        throw Refusal(ErrorCode::NotFound, fmt::format("{}: has no test object {}", name(), object.text()));
    return select.getColumn(0).getInt64();
}

} // namespace sealwalk::storage
