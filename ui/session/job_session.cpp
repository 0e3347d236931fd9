// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session/job_session.h"

#include "core/analysis/limit_change.h"
#include "core/analysis/round_summary.h"
#include "core/base/contract.h"
#include "core/transfer/earlier_jobs.h"
#include "core/transfer/judged_object.h"
#include "ui/session/newest_wins.h"
#include "ui/session/record_identity.h"

#include <algorithm>

namespace sealwalk::ui {

namespace {

constexpr int kQuietMilliseconds = 20'000; // nobody stores anything meanwhile
constexpr int kLookForOthersMilliseconds = 1000;
constexpr const char* kLoggerSetting = "logger"; // of files written before the window kept the name itself
/// For another program's lock: what stands behind a dialog or a signature is not tried again by itself. Other
/// windows of ours are done in a few milliseconds.
constexpr std::chrono::milliseconds kPatience(900); // longer would want a bar and Cancel
/// An entry is tried again by the page that took it: the window must not stand still under it.
constexpr std::chrono::milliseconds kEntryPatience(250);

} // namespace

JobSession::JobSession(QObject* parent)
    : QObject(parent)
    , m_findingsWork(std::make_unique<NewestWins<Findings>>(
          [this](Findings findings) {
              m_findings = std::move(findings);
              emit findingsChanged();
          },
          // While readings come faster than they are worked out the map still follows.
          NewestWins<Findings>::Overtaken::Delivered))
{
    m_watch.setInterval(kLookForOthersMilliseconds);
    connect(&m_watch, &QTimer::timeout, this, &JobSession::lookForOthers);
    m_checkpoint.setSingleShot(true);
    m_checkpoint.setInterval(kQuietMilliseconds);
    connect(this, &JobSession::storedOnDisk, &m_checkpoint, qOverload<>(&QTimer::start));
    connect(&m_checkpoint, &QTimer::timeout, this, &JobSession::checkpoint);
    m_findingsTimer.setSingleShot(true);
    connect(&m_findingsTimer, &QTimer::timeout, this, &JobSession::startFindings);
}

JobSession::~JobSession() = default;

// History

Status JobSession::openHistory(const std::filesystem::path& file, bool createWhenMissing)
{
    using storage::HistoryStore;
    auto opened = HistoryStore::open(file, createWhenMissing ? HistoryStore::Mode::Create
                                                             : HistoryStore::Mode::ReadWrite);
    if (!opened)
        return fail(opened.error());
    closeHistory();
    m_store = std::make_unique<HistoryStore>(std::move(*opened));
    m_store->setPatience(kPatience);
    if (const auto logger = m_store->setting(kLoggerSetting);
        m_logger.isEmpty() && logger && !logger->empty())
        setLogger(QString::fromStdString(*logger));
    m_mark = m_store->othersMark().value_or(0);
    m_watch.start();
    emit historyChanged();
    return {};
}

/// Beside the window: a slow disk must not hold a key up. What was stored is on disk either way; a file that
/// is carried away alone has it all afterwards.
void JobSession::checkpoint()
{
    if (m_store == nullptr)
        return;
    runBeside<Status>(
        this,
        [file = m_store->file()]() -> Status {
            auto beside = storage::HistoryStore::open(file, storage::HistoryStore::Mode::ReadWrite);
            return beside ? beside->checkpoint() : Status(fail(beside.error()));
        },
        [](const Status&) {});
}

void JobSession::closeHistory()
{
    if (m_store == nullptr)
        return;
    closeJob();
    m_watch.stop();
    m_checkpoint.stop();
    m_store.reset();
    emit historyChanged();
}

storage::HistoryStore& JobSession::history() const
{
    SEALWALK_EXPECT(m_store != nullptr);
    return *m_store;
}

std::filesystem::path JobSession::historyFile() const
{
    return m_store == nullptr ? std::filesystem::path() : m_store->file();
}

// Objects and jobs

Result<model::JobId> JobSession::createJob(model::ObjectId object, const std::string& purpose,
                                           std::optional<Timestamp> begun)
{
    const Timestamp now = Timestamp::now();
    const auto made = history().createJob(object, purpose, begun.value_or(now));
    if (!made)
        return fail(made.error());
    emit storedOnDisk(Timestamp::now());
    emit historyChanged();
    if (const Status opened = openJob(made->id); !opened)
        return fail(opened.error());
    if (begun && begun->date() != now.date()) {
        model::ReviewEntry remark;
        remark.step = model::ReviewStep::Remark;
        remark.text =
            "The job was entered on " + now.date() + " for work that began on " + begun->date() + ".";
        if (const Status told = addReview(std::move(remark)); !told)
            return fail(told.error());
    }
    return made->id;
}

Status JobSession::openJob(model::JobId id)
{
    auto look = history().look(id);
    if (!look)
        return fail(look.error());
    m_recorded.reset();
    takeLook(std::move(*look));
    m_isBehind = false;
    m_edits.clear();
    takeReadElsewhere();
    m_selected = {};
    forgetFindings();
    // The round goes on where it stopped: the last one opened.
    m_round = m_job->rounds.empty() ? model::RoundId() : m_job->rounds.back().id;
    emit jobChanged();
    requestFindings();
    return {};
}

void JobSession::closeJob()
{
    if (!m_job)
        return;
    m_job.reset();
    m_object.reset();
    m_edits.clear();
    m_round = {};
    m_selected = {};
    forgetFindings();
    emit jobChanged();
}

const model::Job& JobSession::job() const
{
    SEALWALK_EXPECT(m_job.has_value());
    return *m_job;
}

const model::TestObject& JobSession::object() const
{
    SEALWALK_EXPECT(m_object.has_value());
    return m_job->state == model::JobState::Signed ? m_judged : *m_object;
}

void JobSession::setLogger(const QString& name)
{
    if (name == m_logger)
        return;
    m_logger = name; // not in the history: a commit there makes every other window read its job again
    emit loggerChanged();
}

// Prepare

Status JobSession::changeSetup(const model::Setup& setup)
{
    if (!m_job)
        return noJob();
    if (setup == m_job->setup)
        return {};
    const auto told = analysis::limitChangeWords(*m_job, setup);
    Status stored = lookAgainOnConflict(history().saveSetup(m_job->id, setup, m_job->setup));
    if (stored)
        m_job->setup = setup;
    stored = afterStoring(std::move(stored), &JobSession::setupChanged);
    if (!stored || !told)
        return stored;
    model::ReviewEntry remark;
    remark.step = model::ReviewStep::Remark;
    remark.check = analysis::kLimitChange;
    remark.text = *told;
    return addReview(std::move(remark));
}

Status JobSession::addCalibration(model::Calibration calibration)
{
    if (!m_job)
        return noJob();
    giveIdentity(calibration, m_logger);
    Status stored = history().addCalibration(m_job->id, calibration);
    if (stored)
        m_job->calibrations.push_back(std::move(calibration));
    return afterStoring(std::move(stored), &JobSession::recordsChanged);
}

Status JobSession::addBackground(model::BackgroundWatch watch)
{
    if (!m_job)
        return noJob();
    giveIdentity(watch, m_logger);
    Status stored = history().addBackground(m_job->id, watch);
    if (stored)
        m_job->backgrounds.push_back(std::move(watch));
    return afterStoring(std::move(stored), &JobSession::recordsChanged);
}

Status JobSession::addRiseTest(model::RiseTest test)
{
    if (!m_job)
        return noJob();
    giveIdentity(test, m_logger);
    Status stored = history().addRiseTest(m_job->id, test);
    if (stored)
        m_job->riseTests.push_back(std::move(test));
    return afterStoring(std::move(stored), &JobSession::recordsChanged);
}

// Rounds and readings

const model::Round* JobSession::currentRound() const
{
    return m_job ? m_job->round(m_round) : nullptr;
}

void JobSession::setCurrentRound(model::RoundId round)
{
    if (round == m_round)
        return;
    m_round = round;
    forgetFindings();
    emit roundChanged();
    requestFindings();
}

namespace {

/// Every point by number; those of the test set-up first, for helium that gets in there is read anywhere.
std::vector<model::PointId> wholeWalk(const model::Sketch& sketch)
{
    std::vector<const model::TestPoint*> points = sketch.activePoints();
    std::stable_partition(points.begin(), points.end(), [&](const model::TestPoint* point) {
        const model::Joint* joint = sketch.joint(point->joint);
        return joint != nullptr && joint->isSetup;
    });
    std::vector<model::PointId> walk;
    for (const model::TestPoint* point : points)
        walk.push_back(point->id);
    return walk;
}

} // namespace

Status JobSession::openRound(model::RoundKind kind, const std::string& title,
                             std::vector<model::PointId> points, std::optional<model::RepairId> repair)
{
    if (!m_job)
        return noJob();
    model::Round round;
    round.id = model::RoundId::create();
    round.kind = kind;
    round.title = title;
    round.points = std::move(points);
    round.repair = repair;
    round.by = m_logger.toStdString();
    round.opened = Timestamp::now();
    if (round.points.empty())
        round.points = wholeWalk(m_job->sketch);
    const auto stored = history().addRound(m_job->id, round);
    if (!stored)
        return fail(stored.error());
    m_job->rounds.push_back(*stored);
    m_round = stored->id;
    forgetFindings();
    return afterStoring({}, &JobSession::roundChanged);
}

Status JobSession::orderRound(const std::vector<model::PointId>& points)
{
    const model::Round* round = currentRound();
    if (round == nullptr)
        return fail(ErrorCode::NotAllowed, "no round is open; open one in Spray first");
    Status stored = history().orderRound(m_job->id, m_round, points);
    if (stored)
        for (model::Round& kept : m_job->rounds)
            if (kept.id == m_round)
                kept.points = points;
    return afterStoring(std::move(stored), &JobSession::roundChanged);
}

model::Reading JobSession::readingOf(const ReadingDraft& draft) const
{
    model::Reading reading;
    reading.round = m_round;
    reading.point = draft.point;
    reading.at = draft.sprayedAt.value_or(Timestamp::now());
    reading.outcome = draft.outcome;
    reading.condition = draft.condition;
    reading.conditionDetail = draft.conditionDetail;
    reading.background = draft.background;
    reading.peak = draft.peak;
    reading.entered = draft.entered;
    reading.dwell = draft.dwell;
    reading.delay = draft.delay;
    reading.cleanUp = draft.cleanUp;
    reading.gentle = draft.gentle;
    reading.confirmed = draft.confirmed;
    reading.outOfTurn = draft.outOfTurn;
    reading.entry = draft.entry;
    reading.by = m_logger.toStdString();
    reading.reason = draft.reason;
    reading.remark = draft.remark;
    reading.corrects = draft.corrects;
    reading.trace = draft.trace;
    reading.shielded = draft.shielded;
    return reading;
}

Result<model::Reading> JobSession::store(const ReadingDraft& draft, Waiting waiting)
{
    if (!m_job)
        return noJob();
    if (currentRound() == nullptr)
        return fail(ErrorCode::NotAllowed, "no round is open; open one before the first reading");
    history().setPatience(waiting == Waiting::Shortly ? kEntryPatience : std::chrono::milliseconds(0));
    model::Reading reading = readingOf(draft);
    reading.id = model::ReadingId::create();
    auto stored = history().addReading(m_job->id, reading, draft.samples);
    history().setPatience(kPatience);
    if (!stored)
        return stored;
    m_job->readings.push_back(*stored);
    emit storedOnDisk(Timestamp::now());
    emit readingStored(draft.point);
    requestFindings(Since::ReadingAdded);
    return stored;
}

const model::Reading* JobSession::lastReading() const
{
    if (!m_job)
        return nullptr;
    const auto standing = m_job->standing(m_round);
    return standing.empty() ? nullptr : standing.back();
}

// Pictures

Result<std::string> JobSession::addPicture(const std::vector<std::uint8_t>& bytes,
                                           const std::string& extension)
{
    auto stored = history().addPicture(bytes, extension);
    if (stored)
        emit storedOnDisk(Timestamp::now());
    return stored;
}

Result<model::Picture> JobSession::picture(const std::string& sha256) const
{
    return history().picture(sha256);
}

void JobSession::select(model::PointId point)
{
    if (point == m_selected)
        return;
    m_selected = point;
    emit selectionChanged(point);
}

// Behind the verbs

void JobSession::takeLook(storage::JobLook look)
{
    m_judged = transfer::judgedObject(history(), look.object, look.job);
    takeJob(std::move(look.job));
    m_object = std::move(look.object);
    m_leftOpen = transfer::repairsLeftOpen(history(), *m_job);
    m_mark = look.others;
}

Status JobSession::reloadJob()
{
    auto look = history().look(m_job->id);
    m_isBehind = !look;
    if (!look)
        return fail(look.error());
    takeLook(std::move(*look));
    return {};
}

/// The step is on disk whether or not it can be read back at once; when not, the next look does.
void JobSession::reloadAfterOwnStep()
{
    (void)reloadJob();
}

/// Whoever is told to look again finds the newer record on the screen.
Status JobSession::lookAgainOnConflict(Status stored)
{
    if (!stored && stored.error().code == ErrorCode::Conflict && m_job) {
        m_isBehind = true;
        lookForOthers();
    }
    return stored;
}

Status JobSession::afterStoring(Status status, void (JobSession::*changed)())
{
    if (!status)
        return status;
    emit storedOnDisk(Timestamp::now());
    emit(this->*changed)();
    if (m_job)
        requestFindings();
    return status;
}

void JobSession::lookForOthers()
{
    const auto mark = history().othersMark();
    if (!mark || (*mark == m_mark && !m_isBehind))
        return;
    if (!m_job) {
        m_mark = *mark;
        emit historyChanged();
        return;
    }
    const model::Job before = *m_job;
    const model::TestObject objectBefore = *m_object;
    if (!reloadJob())
        return; // seen again at the next look: the mark stays as it was
    emit historyChanged();
    if (*m_job == before && *m_object == objectBefore)
        return;
    if (m_job->sketch != before.sketch) {
        m_edits.clear(); // steps of ours no longer fit a drawing that another window changed
        emit sketchChanged();
    }
    if (m_job->setup != before.setup || *m_object != objectBefore)
        emit setupChanged();
    // Another round, or another's order, is no business of the one that is walked here.
    if (m_round.isNil() && !m_job->rounds.empty())
        m_round = m_job->rounds.back().id;
    const model::Round* walkedBefore = before.round(m_round);
    const model::Round* walked = currentRound();
    if ((walkedBefore == nullptr) != (walked == nullptr) ||
        (walked != nullptr && walked->points != walkedBefore->points))
        emit roundChanged();
    if (m_job->state != before.state)
        emit stateChanged();
    emit recordsChanged();
    requestFindings();
}

} // namespace sealwalk::ui
