// SPDX-License-Identifier: GPL-3.0-or-later
// What is only ever added to a job.
#include "core/storage/connection.h"
#include "core/storage/trace_name.h"

#include <fmt/format.h>

namespace sealwalk::storage {
namespace {

bool jobHas(KeptStatements& in, JobKey key, const char* table, const Uuid& uuid)
{
    const auto select = in.lease(std::string("SELECT 1 FROM ") + table + " WHERE job = ? AND uuid = ?");
    select->bind(1, key);
    std::string bytes;
    packUuid(bytes, uuid);
    select->bind(2, bytes.data(), static_cast<int>(bytes.size()));
    return select->executeStep();
}

void requireKnown(KeptStatements& in, const JobHead& head, const char* table, const Uuid& uuid)
{
    if (!jobHas(in, head.key, table, uuid))
        throw Refusal(ErrorCode::NotFound,
                      fmt::format("job {} has no {} {}", head.number, table, uuid.text()));
}

void requireNotCorrectedYet(KeptStatements& in, const JobHead& head, model::ReadingId corrected)
{
    const auto select = in.lease("SELECT sequence FROM reading WHERE job = ? AND corrects = ?");
    select->bind(1, head.key);
    ColumnBinder bind(*select, 2);
    bind("corrects", corrected);
    if (select->executeStep())
        throw Refusal(
            ErrorCode::Conflict,
            fmt::format("job {}: that reading was corrected meanwhile by reading {}; correct that one",
                        head.number, select->getColumn(0).getInt64()));
}

std::int64_t nextSequence(KeptStatements& in, JobKey key)
{
    const auto select = in.lease("SELECT coalesce(max(sequence), 0) + 1 FROM reading WHERE job = ?");
    select->bind(1, key);
    select->executeStep();
    return select->getColumn(0).getInt64();
}

} // namespace

Result<model::Reading> HistoryStore::addReading(model::JobId job, const model::Reading& reading,
                                                const std::optional<Trace>& trace)
{
    return m_connection->write([&]() -> Result<model::Reading> {
        const JobHead head = m_connection->headFor(job, Allowed::WhileOpenForWork);
        requireKnown(m_connection->kept, head, "round", reading.round.uuid());
        requireKnown(m_connection->kept, head, "point", reading.point.uuid());
        for (const model::PointId& off : reading.shielded) {
            requireKnown(m_connection->kept, head, "point", off.uuid());
            if (off == reading.point)
                return fail(ErrorCode::BadInput, "a point cannot be sprayed and taped off at once");
        }
        if (reading.corrects) {
            requireKnown(m_connection->kept, head, "reading", reading.corrects->uuid());
            requireNotCorrectedYet(m_connection->kept, head, *reading.corrects);
        }
        model::Reading stored = reading;
        if (stored.id.isNil())
            stored.id = model::ReadingId::create();
        stored.sequence = nextSequence(m_connection->kept, head.key);
        if (trace) {
            stored.trace = tellingName(stored.trace, *trace);
            insertTrace(m_connection->database, head.key, {stored.trace, *trace});
        }
        insertWith(*m_connection->kept.lease(insertSql<model::Reading>()), head.key, stored);
        addReadingToSummary(m_connection->kept, head.key, stored.sequence);
        return stored;
    });
}

Status HistoryStore::addVoid(model::JobId job, const std::vector<model::VoidMark>& marks)
{
    return m_connection->write([&]() -> Status {
        const JobHead head = m_connection->headFor(job, Allowed::UntilSigned);
        for (const model::VoidMark& mark : marks) {
            requireKnown(m_connection->kept, head, "reading", mark.reading.uuid());
            if (mark.reason.empty())
                return fail(ErrorCode::BadInput, "a void mark needs a reason");
            insertRow(m_connection->database, head.key, mark);
            addWords(m_connection->kept, head.key, "void\n" + mark.reason);
        }
        return {};
    });
}

Status HistoryStore::addCalibration(model::JobId job, const model::Calibration& calibration)
{
    return m_connection->write([&]() -> Status {
        const JobHead head = m_connection->headFor(job, Allowed::WhileOpenForWork);
        insertRow(m_connection->database, head.key, calibration);
        addWords(m_connection->kept, head.key,
                 calibration.leak.serial + '\n' + calibration.place + '\n' + calibration.note);
        return {};
    });
}

Status HistoryStore::addBackground(model::JobId job, const model::BackgroundWatch& watch)
{
    return m_connection->write([&]() -> Status {
        const JobHead head = m_connection->headFor(job, Allowed::WhileOpenForWork);
        if (watch.times.size() != watch.values.size())
            return fail(ErrorCode::BadInput, fmt::format("the background has {} times and {} values",
                                                         watch.times.size(), watch.values.size()));
        if (watch.swing && watch.values.size() != 1)
            return fail(ErrorCode::BadInput, "a background read by eye has one value, its level");
        insertRow(m_connection->database, head.key, watch);
        return {};
    });
}

Status HistoryStore::addRiseTest(model::JobId job, const model::RiseTest& test)
{
    return m_connection->write([&]() -> Status {
        const JobHead head = m_connection->headFor(job, Allowed::WhileOpenForWork);
        if (test.times.size() != test.pressures.size() ||
            (!test.temperatures.empty() && test.temperatures.size() != test.times.size()))
            return fail(ErrorCode::BadInput,
                        fmt::format("the pressure-rise test has {} times, {} pressures and {} temperatures",
                                    test.times.size(), test.pressures.size(), test.temperatures.size()));
        insertRow(m_connection->database, head.key, test);
        addWords(m_connection->kept, head.key, test.note);
        return {};
    });
}

Status HistoryStore::addMeasurementVoid(model::JobId job, const model::MeasurementVoid& mark)
{
    return m_connection->write([&]() -> Status {
        const JobHead head = m_connection->headFor(job, Allowed::WhileOpenForWork);
        const Uuid& meant = mark.measurement.uuid();
        const auto has = [&](const char* table) {
            return jobHas(m_connection->kept, head.key, table, meant);
        };
        if (!has("calibration") && !has("background_watch") && !has("rise_test"))
            return fail(ErrorCode::NotFound,
                        fmt::format("job {} has no measurement {}", head.number, mark.measurement.text()));
        if (mark.reason.empty())
            return fail(ErrorCode::BadInput, "a void mark needs a reason");
        insertRow(m_connection->database, head.key, mark);
        addWords(m_connection->kept, head.key, "void\n" + mark.reason);
        return {};
    });
}

Status HistoryStore::addJudgement(model::JobId job, const model::Judgement& judgement)
{
    return m_connection->write([&]() -> Status {
        const JobHead head = m_connection->headFor(job, Allowed::UntilSigned);
        requireKnown(m_connection->kept, head, "point", judgement.point.uuid());
        requireKnown(m_connection->kept, head, "round", judgement.round.uuid());
        for (const model::PointId& leak : judgement.of)
            requireKnown(m_connection->kept, head, "point", leak.uuid());
        if (judgement.reason.empty())
            return fail(ErrorCode::BadInput, "a verdict over the computed one needs a reason");
        insertRow(m_connection->database, head.key, judgement);
        refreshSummary(m_connection->database, head.key);
        return {};
    });
}

Status HistoryStore::addConcession(model::JobId job, const model::Concession& concession)
{
    return m_connection->write([&]() -> Status {
        const JobHead head = m_connection->headFor(job, Allowed::UntilSigned);
        for (const model::PointId point : concession.points)
            requireKnown(m_connection->kept, head, "point", point.uuid());
        insertRow(m_connection->database, head.key, concession);
        refreshSummary(m_connection->database, head.key);
        return {};
    });
}

std::vector<NamedTrace> loadTraces(SQLite::Database& database, JobKey key)
{
    SQLite::Statement select(database, "SELECT name, times, rates FROM trace WHERE job = ? ORDER BY id");
    select.bind(1, key);
    std::vector<NamedTrace> traces;
    while (select.executeStep())
        traces.push_back({select.getColumn(0).getString(),
                          {unpackDoubles(select.getColumn(1).getString()),
                           unpackFloats(select.getColumn(2).getString())}});
    return traces;
}

void insertTrace(SQLite::Database& database, JobKey key, const NamedTrace& trace)
{
    if (trace.trace.times.size() != trace.trace.values.size())
        throw Refusal(ErrorCode::BadInput, fmt::format("the trace has {} times and {} values",
                                                       trace.trace.times.size(), trace.trace.values.size()));
    SQLite::Statement insert(database, "INSERT INTO trace (job, name, times, rates) VALUES (?, ?, ?, ?)");
    insert.bind(1, key);
    insert.bind(2, trace.name);
    const std::string times = packDoubles(trace.trace.times);
    const std::string values = packFloats(trace.trace.values);
    insert.bind(3, times.data(), static_cast<int>(times.size()));
    insert.bind(4, values.data(), static_cast<int>(values.size()));
    insert.exec();
}

Status HistoryStore::addTrace(model::JobId job, const std::string& name, const std::vector<double>& times,
                              const std::vector<float>& values)
{
    return m_connection->write([&]() -> Status {
        const JobHead head = m_connection->headFor(job, Allowed::WhileOpenForWork);
        insertTrace(m_connection->database, head.key, {name, {times, values}});
        return {};
    });
}

Result<Trace> HistoryStore::trace(model::JobId job, const std::string& name) const
{
    return m_connection->read([&]() -> Result<Trace> {
        const JobHead head = m_connection->head(job);
        SQLite::Statement select(m_connection->database,
                                 "SELECT times, rates FROM trace WHERE job = ? AND name = ?");
        select.bind(1, head.key);
        select.bind(2, name);
        if (!select.executeStep())
            return fail(ErrorCode::NotFound, fmt::format("job {} has no trace \"{}\"", head.number, name));
        Trace trace;
        trace.times = unpackDoubles(select.getColumn(0).getString());
        trace.values = unpackFloats(select.getColumn(1).getString());
        return trace;
    });
}

Result<std::vector<NamedTrace>> HistoryStore::traces(model::JobId job) const
{
    return m_connection->read([&]() -> Result<std::vector<NamedTrace>> {
        return loadTraces(m_connection->database, m_connection->head(job).key);
    });
}

Result<std::vector<model::Reading>> HistoryStore::readingsAfter(model::JobId job, std::int64_t sequence) const
{
    return m_connection->read([&]() -> Result<std::vector<model::Reading>> {
        const JobHead head = m_connection->head(job);
        return loadRows<model::Reading>(m_connection->database, head.key,
                                        fmt::format("AND sequence > {}", sequence));
    });
}

} // namespace sealwalk::storage
