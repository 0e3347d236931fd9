// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/history.h"

#include "core/exchange/digest.h"

namespace sealwalk::cli {

Result<storage::HistoryStore> openHistory(const Console& console, storage::HistoryStore::Mode mode)
{
    const std::filesystem::path file =
        console.history.empty() ? storage::defaultHistoryFile() : std::filesystem::path(console.history);
    return storage::HistoryStore::open(file, mode);
}

Result<exchange::JobRecord> loadJob(const storage::HistoryStore& store, const std::string& numberOrUuid)
{
    const Result<model::JobId> id = store.findJob(numberOrUuid);
    if (!id)
        return fail(id.error());
    Result<model::Job> job = store.job(*id);
    if (!job)
        return fail(job.error());
    Result<model::TestObject> object = store.object(job->object);
    if (!object)
        return fail(object.error());
    return exchange::JobRecord{std::move(*object), std::move(*job)};
}

std::vector<model::Picture> loadPictures(const storage::HistoryStore& store, const model::Job& job,
                                         std::vector<std::string>& problems)
{
    std::vector<model::Picture> pictures;
    for (const std::string& name : exchange::picturesOf(job)) {
        Result<model::Picture> picture = store.picture(name);
        if (!picture) {
            problems.push_back("picture " + name + " is missing: " + picture.error().message);
            continue;
        }
        const std::string_view bytes(reinterpret_cast<const char*>(picture->bytes.data()),
                                     picture->bytes.size());
        if (exchange::sha256Hex(bytes) != name) {
            problems.push_back("picture " + name + " was changed: its bytes do not match its name");
            continue;
        }
        pictures.push_back(std::move(*picture));
    }
    return pictures;
}

} // namespace sealwalk::cli
