// SPDX-License-Identifier: GPL-3.0-or-later
// The history: one SQLite file with every object and job. What a call here has answered is on disk.
#pragma once

#include "core/base/result.h"
#include "core/model/job.h"
#include "core/model/picture.h"
#include "core/model/test_object.h"

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <map>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

namespace sealwalk::storage {

/// A job in a list, without its records.
struct JobRow
{
    model::JobId id;
    int number = 0;
    model::ObjectId object;
    std::string objectName;
    std::string objectTag;
    std::string purpose;
    Timestamp opened;
    model::JobState state = model::JobState::Open;
    int points = 0;
    int readings = 0;
    bool operator==(const JobRow&) const = default;
};

/// An object as somebody entered it.
struct ObjectEntry
{
    model::ObjectId id;
    std::string name;
    std::string tag;
    std::string place;
    bool operator==(const ObjectEntry&) const = default;
};

/// An object in a list; jobs and repairs are those under all its entries.
struct ObjectRow
{
    model::ObjectId id;
    std::string name;
    std::string tag;
    std::string place;
    int jobs = 0;
    std::optional<Timestamp> lastOpened; ///< of its latest job
    int openTemporaryRepairs = 0;
    std::vector<ObjectEntry> others = {};                ///< entries said to be the same object
    [[nodiscard]] bool has(model::ObjectId entry) const; ///< by its own identity or that of another entry
    bool operator==(const ObjectRow&) const = default;
};

/// A temporary repair that nothing has made good yet.
struct OpenRepair
{
    model::JobId job;
    int jobNumber = 0;
    model::Repair repair;
    bool operator==(const OpenRepair&) const = default;
};

/// Leave to accept points above their limit that ends on a day; `concession.points` are those that nothing
/// has dealt with since (concessions.cpp): a repair alone does not, before the point was sprayed again.
struct EndingConcession
{
    model::JobId job;
    int jobNumber = 0;
    std::string objectName;
    model::Concession concession;
    bool operator==(const EndingConcession&) const = default;
};

/// What the detector feed showed during one spray.
struct Trace
{
    std::vector<double> times; ///< seconds from the reading's start
    std::vector<float> values; ///< Pa·m³/s as shown, one per time
    bool operator==(const Trace&) const = default;
};

struct NamedTrace
{
    std::string name;
    Trace trace;
    bool operator==(const NamedTrace&) const = default;
};

/// Counts every change another connection may have made, cheap to ask ten times a second.
using ChangeMark = std::int64_t;

/// One moment of a job: the whole record with its object, and the marks of that very moment.
struct JobLook
{
    model::TestObject object;
    model::Job job;
    ChangeMark mark = 0;   ///< as changeMark() would have answered
    ChangeMark others = 0; ///< as othersMark() would have answered
};

/// One connection to one history file. Not for use from two threads; open one per thread.
/// Every call that writes is one durable transaction; on failure the file is as it was.
/// A signed job refuses every change with ErrorCode::NotAllowed, except remarks, answers and amendments. A
/// submitted one takes void marks, judgements, concessions, remarks and signatures, but no new measurements.
class HistoryStore
{
public:
    enum class Mode
    {
        ReadOnly,  ///< never writes, not even side files that outlive it
        ReadWrite, ///< the file must exist
        Create,    ///< made when it does not exist
    };

    /// @param patience  how long a call waits for another program's lock before it answers ErrorCode::Busy
    static Result<HistoryStore> open(const std::filesystem::path& file, Mode mode,
                                     std::chrono::milliseconds patience = std::chrono::seconds(5));
    /// From now on a call waits this long for another program's lock.
    void setPatience(std::chrono::milliseconds patience);
    HistoryStore(HistoryStore&&) noexcept;
    HistoryStore& operator=(HistoryStore&&) noexcept;
    ~HistoryStore();

    [[nodiscard]] const std::filesystem::path& file() const;
    /// Differs from an earlier answer when anything was committed since, by this or any other connection.
    [[nodiscard]] Result<ChangeMark> changeMark() const;
    /// Differs from an earlier answer only when another connection committed since.
    [[nodiscard]] Result<ChangeMark> othersMark() const;

    // Objects and jobs
    [[nodiscard]] Result<std::vector<ObjectRow>> objects(const std::string& typed = {}) const;
    /// Jobs whose object, tag, place, purpose, people, findings or date contain every typed word; newest
    /// first.
    [[nodiscard]] Result<std::vector<JobRow>> jobs(const std::string& typed = {}) const;
    /// Where in the job's record words stand that the row itself does not show: one line each, as recorded,
    /// in the order typed. Of several ways to search, the first whose words all stand in row or record.
    /// Nothing where the row shows them all, or where none is found any more: the list that searches use
    /// keeps words that were changed since.
    [[nodiscard]] Result<std::vector<std::string>> foundIn(const JobRow& row,
                                                           const std::vector<std::string>& typed) const;
    [[nodiscard]] Result<std::vector<JobRow>> jobsOf(model::ObjectId object) const;
    /// Points of an object that have a reading in any of its jobs.
    [[nodiscard]] Result<std::vector<model::PointId>> pointsRead(model::ObjectId object) const;
    [[nodiscard]] Result<model::TestObject> object(model::ObjectId id) const;
    /// Of all jobs on the object, the oldest first.
    [[nodiscard]] Result<std::vector<OpenRepair>> openTemporaryRepairs(model::ObjectId object) const;
    /// Concessions that have ended by `day` or end on it, of one object or (none) of all, the earliest end
    /// first.
    [[nodiscard]] Result<std::vector<EndingConcession>>
    concessionsEndingBy(const Timestamp& day, const std::optional<model::ObjectId>& object = {}) const;
    Status addObject(const model::TestObject& object);
    /// @param before  what the change was made to; ErrorCode::Conflict when the stored object is another by
    /// now
    Status changeObject(const model::TestObject& object,
                        const std::optional<model::TestObject>& before = std::nullopt);
    /// Says that two entries are one object, say after it was entered on two computers: from now on every
    /// list and question about `object` takes the jobs of `entry` too. Entries and jobs stay as they are.
    /// Nothing happens when it was said already. ErrorCode::BadInput when both are the same entry.
    Status sayOneObject(model::ObjectId entry, model::ObjectId object);
    [[nodiscard]] Result<bool> areOneObject(model::ObjectId one, model::ObjectId other) const;
    /// Whether it was ever said here that the entry is one with another, or that it is not.
    [[nodiscard]] Result<bool> saidOfEntry(model::ObjectId entry) const;
    /// Takes that back for `entry`; the others stay together.
    Status sayTwoObjects(model::ObjectId entry);
    /// The whole record of one job.
    [[nodiscard]] Result<model::Job> job(model::JobId id) const;
    /// The same with its object and the marks that belong to it, in one look at the file.
    [[nodiscard]] Result<JobLook> look(model::JobId id) const;
    /// By number ("118") or UUID.
    [[nodiscard]] Result<model::JobId> findJob(const std::string& numberOrUuid) const;
    /// A new open job on `object`, with the sketch of its latest job (or an empty one) and the object's
    /// limits; the next free number is given.
    Result<model::Job> createJob(model::ObjectId object, const std::string& purpose, const Timestamp& opened);
    /// Takes in a whole job with its object from elsewhere, under the number it was opened under where that
    /// is free. Same job already here: ErrorCode::Conflict. When its number is taken here it gets the next
    /// free one, and `openedAs` keeps the one it came with. An object that is here already stays as it is
    /// here. `traces` come along from another history; a job file has none.
    Status importJob(const model::TestObject& object, const model::Job& job,
                     const std::vector<model::Picture>& pictures, const std::vector<NamedTrace>& traces = {});

    /// A job that is here and went on elsewhere: adds what `further` has more than `before`, the job as it is
    /// here (ErrorCode::Conflict when it is another by now), and takes its set-up, sketch, repairs and round
    /// orders, which the caller knows to be the later ones (exchange/continuation.h); number and object stay,
    /// and the last point number never goes back. A signed job takes amendments only. What would not become
    /// `further` changes nothing.
    Status continueJob(const model::Job& before, const model::Job& further,
                       const std::vector<model::Picture>& pictures,
                       const std::vector<NamedTrace>& traces = {});

    // What is edited while a job is open. `expectedRevision` guards against two windows drawing at once:
    // ErrorCode::Conflict when the stored sketch's revision differs; on success it is one higher.
    Result<int> saveSketch(model::JobId job, const model::Sketch& sketch, int expectedRevision);
    /// @param before  as for changeObject()
    Status saveSetup(model::JobId job, const model::Setup& setup,
                     const std::optional<model::Setup>& before = std::nullopt);
    Result<model::Round> addRound(model::JobId job, const model::Round& round); ///< number is given
    Status closeRound(model::JobId job, model::RoundId round, const Timestamp& at);
    Status orderRound(model::JobId job, model::RoundId round, const std::vector<model::PointId>& points);
    /// New, or changed.
    /// @param before  as for changeObject(); none for a new one
    Status putRepair(model::JobId job, const model::Repair& repair,
                     const std::optional<model::Repair>& before = std::nullopt);

    // What is only ever added. A round or point unknown to the job is ErrorCode::NotFound.
    /// The sequence is given. `trace` is stored with it, both or neither, under `reading.trace` and the
    /// digest of what it holds (trace_name.h); the answer has that name.
    Result<model::Reading> addReading(model::JobId job, const model::Reading& reading,
                                      const std::optional<Trace>& trace = std::nullopt);
    Status addVoid(model::JobId job, const std::vector<model::VoidMark>& marks);
    Status addCalibration(model::JobId job, const model::Calibration& calibration);
    Status addBackground(model::JobId job, const model::BackgroundWatch& watch);
    Status addRiseTest(model::JobId job, const model::RiseTest& test);
    /// Of a calibration, a background watch or a pressure rise of this job.
    Status addMeasurementVoid(model::JobId job, const model::MeasurementVoid& mark);
    Status addJudgement(model::JobId job, const model::Judgement& judgement);
    Status addConcession(model::JobId job, const model::Concession& concession);
    /// Adds the entry and moves the job's state with it: submitted (from open or returned), returned (from
    /// submitted), approved → signed (from submitted, with a signature stored before). Amendments are for
    /// signed jobs.
    Status addReview(model::JobId job, const model::ReviewEntry& entry);
    Status addSignature(model::JobId job, const model::Signature& signature);
    /// Approval in one transaction: the entry, the signature, the state.
    /// @param seen  the mark when the job to sign was read; ErrorCode::Conflict when anything was stored
    /// since
    Status sign(model::JobId job, const model::ReviewEntry& entry, const model::Signature& signature,
                std::optional<ChangeMark> seen = std::nullopt);

    /// A later insight on a signed job, in one transaction: the entry and the signature over the job with it.
    /// @param seen  as for sign()
    Status amend(model::JobId job, const model::ReviewEntry& entry, const model::Signature& signature,
                 std::optional<ChangeMark> seen = std::nullopt);

    /// Readings stored after `sequence`, by whichever window.
    [[nodiscard]] Result<std::vector<model::Reading>> readingsAfter(model::JobId job,
                                                                    std::int64_t sequence) const;

    // Pictures and traces
    Result<std::string> addPicture(const std::vector<std::uint8_t>& bytes, const std::string& extension);
    [[nodiscard]] Result<model::Picture> picture(const std::string& sha256) const;
    Status addTrace(model::JobId job, const std::string& name, const std::vector<double>& times,
                    const std::vector<float>& values);
    [[nodiscard]] Result<Trace> trace(model::JobId job, const std::string& name) const;
    [[nodiscard]] Result<std::vector<NamedTrace>> traces(model::JobId job) const;

    // People and settings of the history
    [[nodiscard]] Result<std::vector<model::Person>> people() const;
    Status
    putPerson(const model::Person& person,
              const std::string& by = {}); ///< new, or changed; keys of signers are never replaced silently
    /// What was done with the people, and by whom, oldest first. Histories of before version 3 begin without.
    [[nodiscard]] Result<std::vector<model::PersonEntry>> personEntries() const;
    [[nodiscard]] Result<std::string> setting(const std::string& name) const; ///< empty when never set
    /// All settings whose name begins so, by name.
    [[nodiscard]] Result<std::map<std::string, std::string>>
    settingsNamed(const std::string& beginning) const;
    Status putSetting(const std::string& name, const std::string& value);

    // Soundness
    /// Every problem found, one sentence each; empty when sound.
    [[nodiscard]] Result<std::vector<std::string>> check() const;
    /// Problems of what the history keeps of one job beside its record: the traces and the number. The list
    /// that searches use says nothing of a job: it is check()'s, and made anew by search_list.h.
    [[nodiscard]] Result<std::vector<std::string>> checkBeside(model::JobId job) const;
    /// Takes what SQLite keeps beside the file (-wal) into it, as far as no other window reads it just now:
    /// who carries the file alone to another computer has it all. Nothing is safer for it, nor less safe
    /// without.
    Status checkpoint();
    /// A consistent copy of the live file; the target must not exist. Stopped, nothing is left of it.
    Status backup(const std::filesystem::path& target, const std::stop_token& stop = {}) const;

private:
    struct Connection;
    explicit HistoryStore(std::unique_ptr<Connection> connection);
    std::unique_ptr<Connection> m_connection;
};

/// The user's own history file: $XDG_DATA_HOME/sealwalk/history.sealwalk, or the same below ~/.local/share.
std::filesystem::path defaultHistoryFile();

} // namespace sealwalk::storage
