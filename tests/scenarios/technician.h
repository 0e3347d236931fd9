// SPDX-License-Identifier: GPL-3.0-or-later
// One person at one chamber with a history of their own: enters a job through the calls the stages make, on a
// clock of its own. What a call refuses stops the test.
#pragma once

#include "core/analysis/point_finding.h"
#include "core/analysis/review_checks.h"
#include "core/exchange/job_json.h"
#include "core/storage/history_store.h"
#include "tests/core/storage/scratch_folder.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace sealwalk::scenarios {

/// One spray as it is called out: rates in mbar·l/s as shown.
struct Spray
{
    int point = 0;
    double background = 0.0;
    std::optional<double> shown = {}; ///< none: no response
    model::Condition condition = model::Condition::AtRest;
    std::string detail = {}; ///< "140°"
    double delay = 0.0;      ///< s; 0: not noted
    double dwell = 0.0;      ///< s; 0: five response times
    std::string remark = {};
    bool isSure = true; ///< a response was looked at twice
};

/// A set-up in which the reference leak was read.
struct SetUp
{
    double factor = 1.0;   ///< shown over true
    double response = 1.0; ///< s, to 63 %
    double background = 0.0;
    double detectable = 0.0; ///< on the chamber; three standard deviations of the display
    std::string place = "far flange";
    std::vector<int> points = {}; ///< that it serves; empty: all
};

struct Fix
{
    std::vector<int> points;
    std::string defect;
    std::string action;
    std::string material = {};
    bool permanent = true;
    std::string owner = {};
    int dueInDays = 0;
    double cureHours = 0.0;
    std::vector<int> disturbed = {};
};

class Technician
{
public:
    Technician(const std::string& object, const std::string& tag, const std::string& place, double litres);

    // The clock
    [[nodiscard]] Timestamp now() const { return m_now; }
    void later(double minutes);

    // Prepare. `limits` of one point and of all together (0: none); the state and who agreed are filled in.
    void openJob(const std::string& purpose, double pointLimit, double totalLimit);
    void changeSetup(const std::function<void(model::Setup&)>& change);
    void setUp(const SetUp& with, model::CalibrationMoment moment = model::CalibrationMoment::Before);
    void rise(model::TestMoment moment, const std::vector<double>& minutes,
              const std::vector<double>& pascals);

    // Sketch: a sheet, and joints of one point each in rows that helium does not bridge
    void sheet(const std::string& name, const std::string& seenFrom);
    void joints(model::JointKind kind, const std::string& name, int first, int count,
                const std::vector<std::string>& conditions = {});
    void place(int point, const std::string& words);
    void isSetup(int point);
    void redrawn(int point); ///< retired, and its joint drawn anew in the same place with the next number
    void drawn();            ///< stores the sketch

    // Spray
    void round(model::RoundKind kind, const std::string& title, const std::vector<int>& points = {},
               std::optional<model::RepairId> repair = {});
    model::ReadingId spray(const Spray& spray);
    /// "No response" at these, or with an empty list at every point and condition of the round without
    /// answer.
    void nothingAt(std::vector<int> points, double background);
    void correct(model::ReadingId wrong, double shown, const std::string& reason);
    void makeVoid(const std::vector<int>& points, const std::string& reason); ///< of the round, what stands

    // Judge and repair
    model::RepairId repair(const Fix& fix);
    void judge(int point, const std::string& finding, const std::string& verdict, const std::string& reason);
    void concede(int point, const std::string& grantedBy, int days, const std::string& reason);

    // Review: each by another person than the tester
    void submit(const std::string& words);
    void sendBack(const std::string& words);
    /// The checks as the sign-off page shows them.
    [[nodiscard]] std::vector<analysis::ReviewCheck> checks(std::optional<int> grown = {}) const;
    /// Gives a word to every check that needs one, then signs; a check that stops, stops the test.
    void sign(const std::string& word, std::optional<int> grown = {});

    [[nodiscard]] model::Job job() const;
    [[nodiscard]] const model::TestObject& object() const { return m_object; }
    [[nodiscard]] storage::HistoryStore& store() { return *m_store; }
    [[nodiscard]] model::JobId id() const { return m_job; }
    /// The job file of the job, as handed on.
    [[nodiscard]] std::string jobFile() const;

    static constexpr const char* kReviewer = "R. Reviewer";

private:
    [[nodiscard]] model::PointId idOf(int point) const;
    [[nodiscard]] model::Reading blank(int point) const;
    void review(model::ReviewStep step, const std::string& by, const std::string& words,
                const std::string& check = {});

    tests::ScratchFolder m_folder;
    std::optional<storage::HistoryStore> m_store;
    Timestamp m_now{1'772'434'800'000, 60}; // 2026-03-02, 08:00; any Monday
    model::TestObject m_object;
    model::JobId m_job;
    model::Sketch m_sketch;
    int m_revision = 0;
    model::SheetId m_sheet;
    int m_onSheet = 0;
    model::RoundId m_round;
    SetUp m_setUp;
    model::Person m_reviewer;
};

} // namespace sealwalk::scenarios
