// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/history_store.h"

#include "core/storage/connection.h"
#include "core/storage/object_entries.h"
#include "core/storage/opening.h"

#include <fmt/format.h>

#include <charconv>

namespace sealwalk::storage {

HistoryStore::HistoryStore(std::unique_ptr<Connection> connection)
    : m_connection(std::move(connection))
{}
HistoryStore::HistoryStore(HistoryStore&&) noexcept = default;
HistoryStore& HistoryStore::operator=(HistoryStore&&) noexcept = default;
HistoryStore::~HistoryStore() = default;

Result<HistoryStore> HistoryStore::open(const std::filesystem::path& file, Mode mode,
                                        std::chrono::milliseconds patience)
{
    OpeningOptions options;
    options.mode = mode;
    options.patience = patience;
    const std::lock_guard lookingAndOpening(openingMutex());
    Result<SQLite::Database> database = openDatabase(file, options);
    if (!database)
        return fail(database.error());
    // NOLINTNEXTLINE(modernize-make-unique): an aggregate
    std::unique_ptr<Connection> made(new Connection{file, mode, OwnFile(file), std::move(*database)});
    if (mode != Mode::ReadOnly)
        bringSearchListUpToDate(made->database, file);
    return HistoryStore(std::move(made));
}

void HistoryStore::setPatience(std::chrono::milliseconds patience)
{
    m_connection->database.setBusyTimeout(static_cast<int>(patience.count()));
}

const std::filesystem::path& HistoryStore::file() const
{
    return m_connection->file;
}

Result<ChangeMark> HistoryStore::changeMark() const
{
    return guarded(m_connection->file, [&]() -> Result<ChangeMark> { return m_connection->mark(); });
}

Result<ChangeMark> HistoryStore::othersMark() const
{
    return guarded(m_connection->file, [&]() -> Result<ChangeMark> { return m_connection->others(); });
}

ChangeMark HistoryStore::Connection::others() const
{
    return database.execAndGet("PRAGMA data_version").getInt64();
}

ChangeMark HistoryStore::Connection::mark() const
{
    // The first counts the others' commits, the second our own rows.
    constexpr int kHalf = 32;
    return (others() << kHalf) + database.getTotalChanges();
}

Result<model::TestObject> HistoryStore::object(model::ObjectId id) const
{
    return m_connection->read([&]() -> Result<model::TestObject> {
        return loadObject(m_connection->database, m_connection->objectKey(id));
    });
}

Status HistoryStore::addObject(const model::TestObject& object)
{
    return m_connection->write([&]() -> Status {
        if (object.id.isNil())
            return fail(ErrorCode::BadInput, "the test object has no identity");
        if (object.name.empty())
            return fail(ErrorCode::BadInput, "the test object has no name; give it one");
        insertObject(m_connection->database, object);
        return {};
    });
}

Status HistoryStore::changeObject(const model::TestObject& object,
                                  const std::optional<model::TestObject>& before)
{
    return m_connection->write([&]() -> Status {
        if (object.name.empty())
            return fail(ErrorCode::BadInput, "the test object has no name; give it one");
        SQLite::Database& database = m_connection->database;
        const std::int64_t key = m_connection->objectKey(object.id);
        if (before && loadObject(database, key) != *before)
            return fail(ErrorCode::Conflict,
                        before->name + " was changed in another window meanwhile; look again");
        {
            SQLite::Statement update(database, "UPDATE object SET " +
                                                   joined(columnNames<model::TestObject>(), " = ?") +
                                                   " WHERE id = ?");
            ColumnBinder bind(update);
            Rows<model::TestObject>::fields(bind, object);
            bind("id", key);
            update.exec();
        }
        std::vector<JobKey> jobs;
        {
            SQLite::Statement select(database, "SELECT id FROM job WHERE object = ?");
            select.bind(1, key);
            while (select.executeStep())
                jobs.push_back(select.getColumn(0).getInt64());
        }
        for (const JobKey job : jobs)
            refreshSummary(database, job);
        return {};
    });
}

void insertObject(SQLite::Database& database, const model::TestObject& object)
{
    const std::vector<std::string> names = columnNames<model::TestObject>();
    std::string marks;
    for (std::size_t i = 0; i < names.size(); ++i)
        marks += marks.empty() ? "?" : ", ?";
    SQLite::Statement insert(database, "INSERT INTO object (" + joined(names) + ") VALUES (" + marks + ")");
    ColumnBinder bind(insert);
    Rows<model::TestObject>::fields(bind, object);
    insert.exec();
}

model::TestObject loadObject(SQLite::Database& database, std::int64_t key)
{
    SQLite::Statement select(database, "SELECT " + joined(columnNames<model::TestObject>()) +
                                           " FROM object WHERE id = ?");
    select.bind(1, key);
    if (!select.executeStep())
        throw Refusal(ErrorCode::NotFound, "the test object is no longer there");
    model::TestObject object;
    ColumnReader read(select);
    Rows<model::TestObject>::fields(read, object);
    return object;
}

Result<model::Job> HistoryStore::job(model::JobId id) const
{
    return m_connection->read(
        [&]() -> Result<model::Job> { return loadJob(m_connection->database, m_connection->head(id).key); });
}

Result<JobLook> HistoryStore::look(model::JobId id) const
{
    return m_connection->read([&]() -> Result<JobLook> {
        SQLite::Database& database = m_connection->database;
        const JobHead head = m_connection->head(id);
        return JobLook{loadObject(database, head.object), loadJob(database, head.key), m_connection->mark(),
                       m_connection->others()};
    });
}

Result<model::JobId> HistoryStore::findJob(const std::string& numberOrUuid) const
{
    return m_connection->read([&]() -> Result<model::JobId> {
        if (const Result<model::JobId> id = model::JobId::parse(numberOrUuid); id) {
            m_connection->head(*id);
            return *id;
        }
        int number = 0;
        const char* end = numberOrUuid.data() + numberOrUuid.size();
        const auto parsed = std::from_chars(numberOrUuid.data(), end, number);
        if (parsed.ec != std::errc{} || parsed.ptr != end)
            return fail(ErrorCode::BadInput,
                        fmt::format("\"{}\" is not a job; give its number or its UUID", numberOrUuid));
        SQLite::Statement select(m_connection->database, "SELECT uuid FROM job WHERE number = ?");
        select.bind(1, number);
        if (!select.executeStep())
            return fail(ErrorCode::NotFound, fmt::format("{}: has no job {}", m_connection->name(), number));
        model::JobId id;
        ColumnReader read(select);
        read("uuid", id);
        return id;
    });
}

Result<model::Job> HistoryStore::createJob(model::ObjectId object, const std::string& purpose,
                                           const Timestamp& opened)
{
    return m_connection->write([&]() -> Result<model::Job> {
        SQLite::Database& database = m_connection->database;
        const std::int64_t objectKey = m_connection->objectKey(object);
        const model::TestObject parent = loadObject(database, objectKey);
        model::Job job;
        job.id = model::JobId::create();
        job.number = nextJobNumber(database);
        job.object = object;
        job.opened = opened;
        job.setup.purpose = purpose;
        job.setup.pointLimit = parent.pointLimit;
        job.setup.totalLimit = parent.totalLimit;
        SQLite::Statement latest(database, "SELECT id FROM job WHERE object IN " +
                                               ObjectEntries(database).listOf(objectKey) +
                                               " ORDER BY opened DESC, id DESC LIMIT 1");
        if (latest.executeStep())
            job.sketch = loadSketch(database, latest.getColumn(0).getInt64());
        latest.reset();
        job.sketch.lastNumber = std::max(job.sketch.lastNumber, highestPointNumber(database, objectKey));
        const JobKey key = insertJobHead(database, objectKey, job);
        insertSetup(database, key, job.setup);
        insertSketch(database, key, job.sketch);
        refreshSummary(database, key);
        return job;
    });
}

} // namespace sealwalk::storage
