// SPDX-License-Identifier: GPL-3.0-or-later
// The open history and the open job: the one QObject over the core. Stages read values here and call verbs;
// what a verb has answered is on disk. Never holds pixels, texts for people or thresholds.
#pragma once

#include "core/analysis/job_moved_backgrounds.h"
#include "core/analysis/job_next_step.h"
#include "core/analysis/point_finding.h"
#include "core/base/result.h"
#include "core/editing/edit_history.h"
#include "core/model/job.h"
#include "core/model/picture.h"
#include "core/model/test_object.h"
#include "core/storage/history_store.h"

#include <QObject>
#include <QString>
#include <QTimer>

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <unordered_set>
#include <vector>

namespace sealwalk::ui {

/// What the technician gave for one point; the session adds who, when and the round.
struct ReadingDraft
{
    model::PointId point;
    model::Outcome outcome = model::Outcome::Value;
    model::Condition condition = model::Condition::AtRest;
    std::string conditionDetail;
    std::optional<LeakRate> background;
    std::optional<LeakRate> peak;
    std::string entered;
    std::optional<Duration> dwell;
    std::optional<Duration> delay;
    std::optional<Duration> cleanUp;
    bool gentle = false;
    bool confirmed = false;
    bool outOfTurn = false;
    model::Entry entry = model::Entry::Typed;
    std::string reason;
    std::string remark;
    std::optional<model::ReadingId> corrects;
    std::optional<Timestamp> sprayedAt; ///< none: now
    std::string trace;
    std::vector<model::PointId> shielded;  ///< taped or bagged off meanwhile
    std::optional<storage::Trace> samples; ///< stored with the reading, under the name `trace`
};

template <class Result>
class NewestWins;

class JobSession : public QObject
{
    Q_OBJECT

public:
    explicit JobSession(QObject* parent = nullptr);
    ~JobSession() override;

    // History
    Status openHistory(const std::filesystem::path& file, bool createWhenMissing);
    void closeHistory();
    [[nodiscard]] bool hasHistory() const { return m_store != nullptr; }
    /// For lists and searches; only with a history.
    [[nodiscard]] storage::HistoryStore& history() const;
    [[nodiscard]] std::filesystem::path historyFile() const;

    // Objects and jobs
    Status createObject(const model::TestObject& object); ///< id and date are given when missing
    /// Refused when the stored object is no longer `before`, what the change was made to.
    Status changeObject(const model::TestObject& before, const model::TestObject& object);
    /// As the history's (storage/history_store.h).
    Status sayOneObject(model::ObjectId entry, model::ObjectId object);
    Status sayTwoObjects(model::ObjectId entry);
    /// @param begun  for work that is entered afterwards, which a remark then tells
    Result<model::JobId> createJob(model::ObjectId object, const std::string& purpose,
                                   std::optional<Timestamp> begun = {});
    Status openJob(model::JobId job);
    void closeJob();
    [[nodiscard]] bool hasJob() const { return m_job.has_value(); }
    [[nodiscard]] const model::Job& job() const; ///< only with a job
    /// Only with a job. A signed one keeps the object it was approved with.
    [[nodiscard]] const model::TestObject& object() const;

    // Who is logging; the window keeps it for the next start
    [[nodiscard]] QString logger() const { return m_logger; }
    void setLogger(const QString& name);

    // Sketch: one gesture, one edit, one durable step
    Status edit(const editing::Edit& edit);
    Status undo();
    Status redo();
    [[nodiscard]] const editing::EditHistory& edits() const { return m_edits; }

    // Prepare
    Status changeSetup(const model::Setup& setup);
    /// Shows the job in this unit and gas: stored with the set-up while the job is open for work; otherwise
    /// only here, and the record keeps its own.
    Status showIn(const std::string& unit, model::GasBasis gas);
    /// The open job as its record is, whatever it is shown in.
    [[nodiscard]] model::Job recordedJob() const;
    Status addCalibration(model::Calibration calibration);
    Status addBackground(model::BackgroundWatch watch);
    Status addRiseTest(model::RiseTest test);
    /// Of a calibration, a background watch or a pressure rise; whoever logs has to be named.
    Status voidMeasurement(const Uuid& measurement, const std::string& reason);

    // Rounds and readings
    [[nodiscard]] const model::Round* currentRound() const; ///< nullptr when none is open
    void setCurrentRound(model::RoundId round);
    /// Opens a round over `points` (empty: all active points in the planned order).
    Status openRound(model::RoundKind kind, const std::string& title, std::vector<model::PointId> points = {},
                     std::optional<model::RepairId> repair = std::nullopt);
    Status orderRound(const std::vector<model::PointId>& points);
    enum class Waiting
    {
        Shortly, ///< a moment, for another program's lock
        NotAtAll
    };
    /// ErrorCode::Busy while another program holds the history: nothing was stored, to be tried again.
    Result<model::Reading> store(const ReadingDraft& draft, Waiting waiting = Waiting::Shortly);
    /// What store() would make of `draft`, without an identity of its own.
    [[nodiscard]] model::Reading readingOf(const ReadingDraft& draft) const;
    Status voidReadings(const std::vector<model::ReadingId>& readings, const std::string& reason);
    /// The latest stored reading of this round that stands; nullptr when there is none.
    [[nodiscard]] const model::Reading* lastReading() const;
    /// Points that have a reading in any round of this or another job of the object: their numbers stand in
    /// records and reports.
    [[nodiscard]] std::unordered_set<model::PointId> pointsWithReadings() const;

    // Judge and repair
    /// Worked out in the background for the current round; empty until the first answer.
    [[nodiscard]] const std::vector<analysis::PointFinding>& findings() const { return m_findings.round; }
    /// Over all rounds of the job.
    [[nodiscard]] const std::vector<analysis::PointFinding>& asFound() const { return m_findings.asFound; }
    [[nodiscard]] const std::vector<analysis::PointFinding>& asLeft() const { return m_findings.asLeft; }
    [[nodiscard]] const analysis::PointFinding* finding(model::PointId point) const;
    /// What to spray next in the current round, as of the last findings.
    [[nodiscard]] const analysis::JobNextStep& nextStep() const { return m_findings.next; }
    /// Runs of the current round that were taken while the background moved, as of the last findings.
    [[nodiscard]] const std::vector<analysis::MovedRun>& movedRuns() const { return m_findings.moved; }
    /// Whether newer findings are on their way.
    [[nodiscard]] bool isWorkingOut() const;
    Status judge(model::Judgement judgement);
    Status concede(model::Concession concession);
    /// @param before  what a dialog began with; none: as it is shown now. Refused when the stored one is
    /// another
    Result<model::RepairId> putRepair(model::Repair repair,
                                      std::optional<model::Repair> before = std::nullopt);

    // Review
    Status submit(const std::string& text);
    /// Refused when `by` is who sent it for review, unless one person keeps the history.
    Status sendBack(const std::string& by, const std::string& remark);
    /// A remark on a point, or the answer to a check of the sign-off list (its word), or both empty.
    Status remark(const std::string& by, const std::string& text, std::optional<model::PointId> point,
                  const std::string& check);
    /// The open job as it is on disk now. Refused (Conflict) when that is not what is shown here; what is
    /// shown then follows.
    Result<storage::JobLook> lookAtWhatIsShown();
    /// Stores an approval of `job` made elsewhere (Signing) and closes the job; refused when another job is
    /// open by now, or anything was stored since `seen`.
    Status sign(model::JobId job, const model::ReviewEntry& entry, const model::Signature& signature,
                std::int64_t seen);
    /// The same for an amendment to a signed job.
    Status amend(model::JobId job, const model::ReviewEntry& entry, const model::Signature& signature,
                 std::int64_t seen);
    /// The object's job before the open one; none when there is none. Read from the history each time.
    [[nodiscard]] std::optional<model::Job> jobBefore() const;
    [[nodiscard]] bool jobBeforeExists() const;
    /// Temporary repairs of earlier jobs of the object that nothing has made good yet.
    [[nodiscard]] const std::vector<storage::OpenRepair>& repairsLeftOpen() const { return m_leftOpen; }
    /// Whether who tested may approve here, and who sent a job may send it back: one person keeps the
    /// history.
    [[nodiscard]] bool isOnePersonHistory() const;
    [[nodiscard]] Result<std::vector<model::Person>> people() const;
    /// In the name of who is logging; that stands in the history.
    Status putPerson(const model::Person& person);
    [[nodiscard]] Result<std::vector<model::PersonEntry>> personEntries() const;

    // Pictures
    Result<std::string> addPicture(const std::vector<std::uint8_t>& bytes, const std::string& extension);
    [[nodiscard]] Result<model::Picture> picture(const std::string& sha256) const;

    // What is looked at; shared by the stages, not part of the record
    [[nodiscard]] model::PointId selectedPoint() const { return m_selected; }
    void select(model::PointId point);

signals:
    void historyChanged(); ///< opened, closed, or its list of objects and jobs changed
    void jobChanged();     ///< another job, or none
    void sketchChanged();
    void setupChanged();
    void roundChanged(); ///< another current round, or its order
    void readingStored(sealwalk::model::PointId point);
    void recordsChanged(); ///< voids, calibrations, repairs, reviews, another window's readings
    void stateChanged();   ///< open, submitted, returned, signed
    void findingsChanged();
    void workingOut(); ///< newer findings are on their way; findingsChanged follows
    void selectionChanged(sealwalk::model::PointId point);
    void loggerChanged();
    void storedOnDisk(const sealwalk::Timestamp& at);

private:
    struct Findings
    {
        std::vector<analysis::PointFinding> round;
        std::vector<analysis::PointFinding> asFound;
        std::vector<analysis::PointFinding> asLeft;
        analysis::JobNextStep next;
        std::vector<analysis::MovedRun> moved;
    };
    void takeJob(model::Job job);
    void takeLook(storage::JobLook look);
    Status reloadJob();
    void reloadAfterOwnStep();
    Status lookAgainOnConflict(Status stored);
    void checkpoint();
    Status requireOpen(model::JobId job, const char* done) const;
    void announceSigned();
    Status takeSketchStep(const editing::Edit& edit, void (editing::EditHistory::*remember)(editing::Edit));
    void takeReadElsewhere();
    Status addReview(model::ReviewEntry entry);
    Status afterStoring(Status status, void (JobSession::*changed)());
    void lookForOthers();
    enum class Since
    {
        AnyChange,
        ReadingAdded, ///< at the end of the job's readings, and nothing else
    };
    void requestFindings(Since since = Since::AnyChange);
    void startFindings();
    [[nodiscard]] std::function<Findings()> findingsOfNow();
    [[nodiscard]] static Findings findingsOf(const model::Job& job, const model::TestObject& object,
                                             model::RoundId round);
    void forgetFindings();

    std::unique_ptr<storage::HistoryStore> m_store;
    std::optional<model::Job> m_job;
    std::optional<model::TestObject> m_object; ///< as it is now
    model::TestObject m_judged;                ///< as a signed job was approved with
    struct ShownAs
    {
        std::string unit;
        model::GasBasis gas;
    };
    std::optional<ShownAs> m_recorded; ///< what the record says while m_job is shown in something else
    std::vector<storage::OpenRepair> m_leftOpen;
    editing::EditHistory m_edits;
    std::unordered_set<model::PointId> m_readElsewhere; ///< in other jobs of the object
    model::RoundId m_round;
    model::PointId m_selected;
    QString m_logger;
    Findings m_findings;
    /// The job but for readings added since; none once anything else has changed.
    std::shared_ptr<const model::Job> m_workedFrom;
    std::unique_ptr<NewestWins<Findings>> m_findingsWork;
    std::int64_t m_mark = 0;
    bool m_isBehind = false; ///< something stored could not be read back yet
    QTimer m_watch;          ///< looks for another window's changes
    QTimer m_checkpoint;     ///< when nothing was stored for a while
    QTimer m_findingsTimer;  ///< gathers changes of a large job before work starts
};

} // namespace sealwalk::ui
