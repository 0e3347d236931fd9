// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/scenarios/technician.h"

#include "core/analysis/claim.h"
#include "core/analysis/round_summary.h"
#include "core/analysis/walk.h"
#include "core/base/contract.h"
#include "core/editing/joints.h"
#include "core/editing/points.h"
#include "core/editing/sheets.h"
#include "core/exchange/signing.h"
#include "core/transfer/earlier_jobs.h"
#include "core/transfer/hand_out.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace sealwalk::scenarios {

namespace {

constexpr const char* kTester = "T. Tester";
constexpr const char* kPassphrase = "a worked example";
constexpr double kPitch = 900.0; // mm; more than helium drifts between two sprays
constexpr int kInRow = 5;
constexpr int kRows = 4;

template <class T>
T must(Result<T> result)
{
    if (!result)
        fmt::print(stderr, "refused: {}\n", result.error().message);
    SEALWALK_EXPECT(result.has_value());
    return std::move(*result);
}

void must(const Status& status)
{
    if (!status)
        fmt::print(stderr, "refused: {}\n", status.error().message);
    SEALWALK_EXPECT(status.has_value());
}

LeakRate rate(double value)
{
    return millibarLitresPerSecond(value);
}

/// Sixty readings whose standard deviation about their line is `noise`.
model::BackgroundWatch quietWatch(double level, double noise)
{
    model::BackgroundWatch watch;
    watch.id = model::BackgroundId::create();
    watch.source = "typed";
    watch.by = kTester;
    constexpr double kPattern[] = {1.0, -1.0, -1.0, 1.0}; // equal squares and no slope about any line
    for (int i = 0; i < 60; ++i) {
        watch.times.push_back(i * 5.0);
        watch.values.push_back(rate(level + noise * std::sqrt(58.0 / 60.0) * kPattern[i % 4]));
    }
    return watch;
}

} // namespace

Technician::Technician(const std::string& object, const std::string& tag, const std::string& place,
                       double volume)
{
    m_store.emplace(must(
        storage::HistoryStore::open(m_folder / "scenario.sealwalk", storage::HistoryStore::Mode::Create)));
    m_object.id = model::ObjectId::create();
    m_object.name = object;
    m_object.tag = tag;
    m_object.place = place;
    m_object.volume = litres(volume);
    m_object.invented = true;
    m_object.created = m_now;
    must(m_store->addObject(m_object));
    m_reviewer.id = model::PersonId::create();
    m_reviewer.name = kReviewer;
    m_reviewer.role = "reviewer";
    m_reviewer.since = m_now;
    const exchange::SealedKey key = must(exchange::createKey(kPassphrase, exchange::GuessCost::minimum()));
    m_reviewer.publicKey = key.publicKey.text();
    m_reviewer.sealedKey = key.text();
    must(m_store->putPerson(m_reviewer));
    model::Person tester;
    tester.id = model::PersonId::create();
    tester.name = kTester;
    tester.role = "technician";
    tester.qualification = "level II";
    tester.since = m_now;
    must(m_store->putPerson(tester));
}

void Technician::later(double minutes)
{
    m_now.utcMilliseconds += std::llround(minutes * 60'000.0);
}

void Technician::openJob(const std::string& purpose, double pointLimit, double totalLimit)
{
    m_job = must(m_store->createJob(m_object.id, purpose, m_now)).id;
    m_sketch = job().sketch;
    m_revision = m_sketch.revision;
    changeSetup([&](model::Setup& setup) {
        setup.procedure = "LT-1 rev. 3";
        setup.pointLimit = rate(pointLimit);
        if (totalLimit > 0.0)
            setup.totalLimit = rate(totalLimit);
        setup.limitAgreedBy = "the owner";
        setup.detector = "D-1";
        setup.connection = "foreline";
        setup.objectState = "clean, drained";
        setup.dried = true;
    });
}

void Technician::changeSetup(const std::function<void(model::Setup&)>& change)
{
    model::Setup setup = job().setup;
    change(setup);
    must(m_store->saveSetup(m_job, setup));
}

void Technician::setUp(const SetUp& with, model::CalibrationMoment moment)
{
    m_setUp = with;
    model::BackgroundWatch watch = quietWatch(with.background, with.detectable * with.factor / 3.0);
    watch.at = m_now;
    later(5.0);
    must(m_store->addBackground(m_job, watch));
    model::Calibration check;
    check.id = model::CalibrationId::create();
    check.moment = moment;
    check.at = m_now;
    check.leak.serial = "RL-1";
    check.leak.certificate = "C-1";
    check.leak.certificateDate = m_now;
    check.leak.certificateTemperature = check.roomTemperature;
    // Large beside the noise, as a reference leak is chosen.
    check.leak.value = rate(300.0 * with.detectable);
    check.background = rate(with.background);
    check.shown = rate(with.background) + check.leak.value * with.factor;
    check.response = seconds(with.response);
    check.place = with.place;
    for (const int point : with.points)
        check.joints.push_back(m_sketch.pointNumbered(point)->joint);
    check.by = kTester;
    must(m_store->addCalibration(m_job, check));
    later(5.0);
}

void Technician::rise(model::TestMoment moment, const std::vector<double>& minutes,
                      const std::vector<double>& pascals)
{
    model::RiseTest test;
    test.id = model::RiseTestId::create();
    test.moment = moment;
    test.at = m_now;
    for (const double minute : minutes)
        test.times.push_back(minute * 60.0);
    test.pressures = pascals;
    test.gauge = "G-1";
    test.source = "typed";
    test.by = kTester;
    must(m_store->addRiseTest(m_job, test));
    later(minutes.back() + 5.0);
}

void Technician::sheet(const std::string& name, const std::string& seenFrom)
{
    model::Sheet sheet;
    sheet.id = model::SheetId::create();
    sheet.name = name;
    sheet.seenFrom = seenFrom;
    sheet.width = kPitch * kInRow;
    sheet.height = kPitch * kRows;
    m_sketch = must(editing::after(m_sketch, must(editing::addSheet(m_sketch, sheet))));
    m_sheet = sheet.id;
    m_onSheet = 0;
}

void Technician::joints(model::JointKind kind, const std::string& name, int first, int count,
                        const std::vector<std::string>& conditions)
{
    for (int i = 0; i < count; ++i) {
        if (m_onSheet == kInRow * kRows) {
            const model::Sheet* full = m_sketch.sheet(m_sheet);
            sheet(full->name + " again", full->seenFrom);
        }
        model::Joint joint;
        joint.id = model::JointId::create();
        joint.sheet = m_sheet;
        joint.kind = kind;
        joint.name = count == 1 ? name : fmt::format("{} {}", name, i + 1);
        joint.shape =
            geometry::Spot{{kPitch * (m_onSheet % kInRow + 0.5), kPitch * (m_onSheet / kInRow + 0.5)}};
        joint.requiredConditions = conditions;
        ++m_onSheet;
        const auto edit =
            editing::addJoint(m_sketch, joint, editing::Laying{.number = 1, .first = first + i});
        m_sketch = must(editing::after(m_sketch, must(edit)));
    }
}

void Technician::place(int point, const std::string& words)
{
    m_sketch = must(editing::after(m_sketch, must(editing::setPlace(m_sketch, idOf(point), words))));
}

void Technician::isSetup(int point)
{
    model::Joint joint = *m_sketch.joint(m_sketch.pointNumbered(point)->joint);
    joint.isSetup = true;
    m_sketch = must(editing::after(m_sketch, must(editing::changeJoint(m_sketch, joint))));
}

void Technician::redrawn(int point)
{
    const model::TestPoint* old = m_sketch.pointNumbered(point);
    model::Joint joint = *m_sketch.joint(old->joint);
    joint.id = model::JointId::create();
    joint.name += " anew";
    m_sketch = must(editing::after(m_sketch, must(editing::retire(m_sketch, old->id, {old->id}))));
    const auto edit = editing::addJoint(m_sketch, joint, editing::Laying{.number = 1, .first = {}});
    m_sketch = must(editing::after(m_sketch, must(edit)));
}

void Technician::drawn()
{
    m_revision = must(m_store->saveSketch(m_job, m_sketch, m_revision));
    m_sketch = job().sketch;
}

void Technician::round(model::RoundKind kind, const std::string& title, const std::vector<int>& points,
                       std::optional<model::RepairId> repair)
{
    model::Round round;
    round.id = model::RoundId::create();
    round.kind = kind;
    round.title = title;
    round.repair = repair;
    round.by = kTester;
    round.opened = m_now;
    for (const int point : points)
        round.points.push_back(idOf(point));
    if (points.empty())
        for (const model::TestPoint* point : m_sketch.activePoints())
            round.points.push_back(point->id);
    m_round = must(m_store->addRound(m_job, round)).id;
    later(1.0);
}

model::Reading Technician::blank(int point) const
{
    model::Reading reading;
    reading.id = model::ReadingId::create();
    reading.round = m_round;
    reading.point = idOf(point);
    reading.at = m_now;
    reading.by = kTester;
    return reading;
}

model::ReadingId Technician::spray(const Spray& spray)
{
    model::Reading reading = blank(spray.point);
    reading.condition = spray.condition;
    reading.conditionDetail = spray.detail;
    reading.background = rate(spray.background);
    reading.outcome = spray.shown ? model::Outcome::Value : model::Outcome::NoResponse;
    if (spray.shown) {
        reading.peak = rate(*spray.shown);
        reading.entered = fmt::format("{:.2g} mbar l/s", *spray.shown);
        reading.confirmed = spray.isSure && *spray.shown > spray.background;
    }
    const double dwell = spray.dwell > 0.0 ? spray.dwell : std::max(3.0, 5.0 * m_setUp.response);
    reading.dwell = seconds(dwell);
    if (spray.delay > 0.0)
        reading.delay = seconds(spray.delay);
    reading.remark = spray.remark;
    must(m_store->addReading(m_job, reading));
    // Until what was shown has decayed to a hundredth of the noise.
    const double noise = m_setUp.detectable * m_setUp.factor / 3.0;
    const double above = spray.shown.value_or(spray.background) - spray.background;
    const double wait = m_setUp.response * std::max(5.0, std::log(std::max(1.0, 100.0 * above / noise)));
    later((dwell + wait + 10.0) / 60.0);
    return reading.id;
}

void Technician::nothingAt(std::vector<int> points, double background)
{
    if (!points.empty()) {
        for (const int point : points)
            spray({point, background});
        return;
    }
    const model::Job before = job();
    for (const analysis::WalkStep& step : analysis::walk(before, m_round))
        if (!step.isDone())
            spray({.point = step.number, .background = background, .condition = step.condition});
}

void Technician::correct(model::ReadingId wrong, double shown, const std::string& reason)
{
    model::Reading right = *job().reading(wrong);
    right.id = model::ReadingId::create();
    right.peak = rate(shown);
    right.entered = fmt::format("{:.2g} mbar l/s", shown);
    right.corrects = wrong;
    right.reason = reason;
    must(m_store->addReading(m_job, right));
}

void Technician::makeVoid(const std::vector<int>& points, const std::string& reason)
{
    std::vector<model::VoidMark> marks;
    const model::Job stored = job();
    for (const model::Reading* reading : stored.standing(m_round))
        if (std::any_of(points.begin(), points.end(), [&](int p) { return idOf(p) == reading->point; }))
            marks.push_back({reading->id, reason, kTester, m_now});
    must(m_store->addVoid(m_job, marks));
}

model::RepairId Technician::repair(const Fix& fix)
{
    model::Repair repair;
    repair.id = model::RepairId::create();
    for (const int point : fix.points)
        repair.points.push_back(idOf(point));
    for (const int point : fix.disturbed)
        repair.disturbed.push_back(idOf(point));
    repair.defect = fix.defect;
    repair.action = fix.action;
    repair.material = fix.material;
    repair.permanent = fix.permanent;
    repair.owner = fix.owner;
    repair.by = kTester;
    later(30.0);
    repair.at = m_now;
    if (fix.dueInDays > 0)
        repair.due = Timestamp{m_now.utcMilliseconds + fix.dueInDays * 86'400'000LL, m_now.offsetMinutes};
    if (fix.cureHours > 0.0) {
        later(fix.cureHours * 60.0);
        repair.sprayableFrom = m_now;
    }
    must(m_store->putRepair(m_job, repair));
    later(5.0);
    std::vector<int> again = fix.points;
    again.insert(again.end(), fix.disturbed.begin(), fix.disturbed.end());
    round(model::RoundKind::AfterRepair, fix.action, again, repair.id);
    return repair.id;
}

void Technician::judge(int point, const std::string& finding, const std::string& verdict,
                       const std::string& reason)
{
    model::Judgement judgement;
    judgement.id = model::JudgementId::create();
    judgement.point = idOf(point);
    judgement.round = m_round;
    judgement.finding = finding;
    judgement.verdict = verdict;
    judgement.reason = reason;
    judgement.by = kTester;
    judgement.at = m_now;
    must(m_store->addJudgement(m_job, judgement));
}

void Technician::concede(int point, const std::string& grantedBy, int days, const std::string& reason)
{
    model::Concession concession;
    concession.id = model::ConcessionId::create();
    concession.points = {idOf(point)};
    concession.grantedBy = grantedBy;
    concession.until = Timestamp{m_now.utcMilliseconds + days * 86'400'000LL, m_now.offsetMinutes};
    concession.reason = reason;
    concession.by = kTester;
    concession.at = m_now;
    must(m_store->addConcession(m_job, concession));
}

void Technician::review(model::ReviewStep step, const std::string& by, const std::string& words,
                        const std::string& check)
{
    model::ReviewEntry entry;
    entry.id = model::ReviewId::create();
    entry.step = step;
    entry.by = by;
    entry.at = m_now;
    entry.text = words;
    entry.check = check;
    must(m_store->addReview(m_job, entry));
    later(2.0);
}

void Technician::submit(const std::string& words)
{
    review(model::ReviewStep::Submitted, kTester, words);
}

void Technician::sendBack(const std::string& words)
{
    review(model::ReviewStep::Returned, kReviewer, words);
}

std::vector<analysis::ReviewCheck> Technician::checks(std::optional<int> grown) const
{
    const model::Job stored = job();
    analysis::ReviewOptions options;
    options.people = must(m_store->people());
    options.lastJob = transfer::jobBefore(*m_store, stored);
    options.grownSinceLastJob = grown;
    options.carried = transfer::carriedRepairs(*m_store, stored);
    options.now = m_now;
    return analysis::reviewChecks(stored, m_object,
                                  analysis::summarise(stored, m_object, analysis::Standing::AsLeft), options);
}

void Technician::sign(const std::string& word, std::optional<int> grown)
{
    for (const analysis::ReviewCheck& check : checks(grown)) {
        if (check.state == analysis::CheckState::Stops)
            fmt::print(stderr, "check \"{}\" stops: {}\n", check.word, check.answer);
        SEALWALK_EXPECT(check.state != analysis::CheckState::Stops);
        if (!check.isSettled())
            review(model::ReviewStep::Remark, kReviewer, word, std::string(check.word));
    }
    SEALWALK_EXPECT(analysis::isReadyToSign(checks(grown)));
    exchange::JobRecord record = must(transfer::loadRecord(*m_store, m_job));
    SEALWALK_EXPECT(!analysis::whyNotApprove(record.job, m_reviewer, false));
    model::ReviewEntry entry;
    entry.id = model::ReviewId::create();
    entry.step = model::ReviewStep::Approved;
    entry.by = kReviewer;
    entry.at = m_now;
    entry.text = analysis::approvalStatement(
        record.job, analysis::summarise(record.job, m_object, analysis::Standing::AsLeft),
        transfer::carriedRepairs(*m_store, record.job), false);
    entry.digest = must(exchange::jobDigest(record.object, record.job, {}));
    record.job.review.push_back(entry);
    const auto signature = must(exchange::signJob(
        record, {}, m_reviewer, kPassphrase, {.role = "reviewer", .statement = entry.text, .at = m_now}));
    must(m_store->sign(m_job, entry, signature));
}

model::Job Technician::job() const
{
    return must(m_store->job(m_job));
}

std::string Technician::jobFile() const
{
    return must(transfer::handOut(*m_store, m_job)).bytes;
}

model::PointId Technician::idOf(int point) const
{
    const model::TestPoint* known = m_sketch.pointNumbered(point);
    if (known == nullptr)
        fmt::print(stderr, "there is no point {}\n", point);
    SEALWALK_EXPECT(known != nullptr);
    return known->id;
}

} // namespace sealwalk::scenarios
