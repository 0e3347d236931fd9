// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/job_json.h"

#include <fmt/format.h>

#include <unordered_set>

namespace sealwalk::exchange {

namespace {

/// Goes over a record once; the first thing that does not fit is kept.
class Check
{
public:
    explicit Check(const JobRecord& record)
        : m_job(record.job)
        , m_object(record.object)
    {}

    Status run()
    {
        checkHead();
        checkNumbers();
        checkSketch();
        checkRepairs();
        checkRounds();
        checkReadings();
        checkMeasurements();
        checkVoidMeasurements();
        checkDecisions();
        if (m_wrong.empty())
            return {};
        return fail(ErrorCode::BadInput, m_wrong);
    }

private:
    void complain(std::string sentence)
    {
        if (m_wrong.empty())
            m_wrong = std::move(sentence);
    }

    template <class Tag>
    void takeId(const Id<Tag>& id, std::string_view list, std::size_t index)
    {
        if (id.isNil() || !m_ids.insert(id.uuid()).second)
            complain(
                fmt::format("job.{}[{}].id: this identity is empty or used twice in the job", list, index));
    }

    void needPoint(model::PointId id, std::string_view list, std::size_t index)
    {
        if (!m_points.contains(id))
            complain(fmt::format("job.{}[{}]: point {} is not in the sketch", list, index, id.text()));
    }

    void needRound(model::RoundId id, std::string_view list, std::size_t index)
    {
        if (!m_rounds.contains(id))
            complain(fmt::format("job.{}[{}]: round {} is not in the job", list, index, id.text()));
    }

    static constexpr int kHighestNumber = 1'000'000'000;

    void checkHead()
    {
        if (m_job.id.isNil())
            complain("job.id: a job needs an identity");
        if (m_object.id.isNil() || m_job.object != m_object.id)
            complain("job.object: the job belongs to another object than the one beside it");
        if (m_object.name.empty())
            complain("object.name: an object needs a name");
        if (m_job.number < 0)
            complain("job.number: a job's number is not negative");
        else // others are counted on from the highest
            needWithin(m_job.number, 0, kHighestNumber, "job.number");
    }

    void needWithin(double value, double low, double high, const char* what)
    {
        if (!(value >= low && value <= high))
            complain(fmt::format("{}: {} is outside {} to {}", what, value, low, high));
    }

    template <class Tag>
    void needNotNegative(const std::optional<Quantity<Tag>>& quantity, const char* what)
    {
        if (quantity && !(quantity->si() >= 0.0))
            complain(fmt::format("{}: {} is below zero", what, quantity->si()));
    }

    /// What is drawn or divided by must not be able to stop the program that draws it.
    void checkNumbers()
    {
        needWithin(m_object.scale.lowestDecade, -20, 10, "object.scale.lowest_decade");
        needWithin(m_object.scale.decades, 1, 20, "object.scale.decades");
        needNotNegative(m_object.volume, "object.volume_m3");
        needNotNegative(m_object.airSpeed, "object.air_speed_m3_per_s");
        needNotNegative(m_job.setup.volume, "job.setup.volume_m3");
        needNotNegative(m_job.setup.detectorSpeed, "job.setup.detector_speed_m3_per_s");
        needNotNegative(m_job.setup.hoseDiameter, "job.setup.hose_diameter_m");
        needNotNegative(m_job.setup.hoseLength, "job.setup.hose_length_m");
        needWithin(m_job.setup.heliumShare.si(), 0.0, 1.0, "job.setup.helium_share");
        constexpr double kLargestSheet = 1e7; // mm, ten kilometres
        for (const model::Sheet& sheet : m_job.sketch.sheets) {
            needWithin(sheet.width, 1e-3, kLargestSheet, "job.sketch.sheets.width");
            needWithin(sheet.height, 1e-3, kLargestSheet, "job.sketch.sheets.height");
            if (sheet.underlay)
                needWithin(sheet.underlay->millimetresPerPixel, 1e-9, kLargestSheet,
                           "job.sketch.sheets.underlay.mm_per_pixel");
        }
    }

    void checkSketch()
    {
        if (const std::string wrong = model::complaint(m_job.sketch); !wrong.empty())
            complain("job.sketch: " + wrong);
        for (const model::TestPoint& point : m_job.sketch.points)
            m_points.insert(point.id);
    }

    void checkRepairs()
    {
        std::unordered_set<model::RepairId> known;
        for (std::size_t i = 0; i < m_job.repairs.size(); ++i) {
            const model::Repair& repair = m_job.repairs[i];
            takeId(repair.id, "repairs", i);
            known.insert(repair.id);
            for (const model::PointId point : repair.points)
                needPoint(point, "repairs", i);
            for (const model::PointId point : repair.disturbed)
                needPoint(point, "repairs", i);
        }
        m_repairs = std::move(known);
    }

    void checkRounds()
    {
        for (std::size_t i = 0; i < m_job.rounds.size(); ++i) {
            const model::Round& round = m_job.rounds[i];
            takeId(round.id, "rounds", i);
            m_rounds.insert(round.id);
            for (const model::PointId point : round.points)
                needPoint(point, "rounds", i);
            if (round.repair && !m_repairs.contains(*round.repair))
                complain(fmt::format("job.rounds[{}]: the repair it proves is not in the job", i));
        }
    }

    void checkReadings()
    {
        std::unordered_set<model::ReadingId> earlier;
        for (std::size_t i = 0; i < m_job.readings.size(); ++i) {
            const model::Reading& reading = m_job.readings[i];
            takeId(reading.id, "readings", i);
            needRound(reading.round, "readings", i);
            needPoint(reading.point, "readings", i);
            if (reading.corrects && !earlier.contains(*reading.corrects))
                complain(fmt::format("job.readings[{}]: it corrects a reading that is not before it", i));
            for (const model::PointId point : reading.shielded) {
                needPoint(point, "readings", i);
                if (point == reading.point)
                    complain(fmt::format("job.readings[{}]: the point sprayed is said to be taped off", i));
            }
            earlier.insert(reading.id);
        }
        for (std::size_t i = 0; i < m_job.voids.size(); ++i)
            if (!earlier.contains(m_job.voids[i].reading))
                complain(fmt::format("job.voids[{}]: the reading it names is not in the job", i));
    }

    void checkMeasurements()
    {
        for (std::size_t i = 0; i < m_job.calibrations.size(); ++i)
            takeId(m_job.calibrations[i].id, "calibrations", i);
        for (std::size_t i = 0; i < m_job.backgrounds.size(); ++i) {
            const model::BackgroundWatch& watch = m_job.backgrounds[i];
            takeId(watch.id, "backgrounds", i);
            if (watch.values.size() != watch.times.size())
                complain(fmt::format("job.backgrounds[{}]: {} times but {} values", i, watch.times.size(),
                                     watch.values.size()));
            if (watch.swing && watch.values.size() != 1)
                complain(fmt::format("job.backgrounds[{}]: a swing read by eye goes with one value, not {}",
                                     i, watch.values.size()));
        }
        for (std::size_t i = 0; i < m_job.riseTests.size(); ++i) {
            const model::RiseTest& test = m_job.riseTests[i];
            takeId(test.id, "rise_tests", i);
            if (test.pressures.size() != test.times.size() ||
                (!test.temperatures.empty() && test.temperatures.size() != test.times.size()))
                complain(fmt::format("job.rise_tests[{}]: {} times but {} pressures and {} temperatures", i,
                                     test.times.size(), test.pressures.size(), test.temperatures.size()));
        }
    }

    void checkVoidMeasurements()
    {
        std::unordered_set<Uuid> known;
        for (const auto& check : m_job.calibrations)
            known.insert(check.id.uuid());
        for (const auto& watch : m_job.backgrounds)
            known.insert(watch.id.uuid());
        for (const auto& test : m_job.riseTests)
            known.insert(test.id.uuid());
        for (std::size_t i = 0; i < m_job.voidMeasurements.size(); ++i)
            if (known.erase(m_job.voidMeasurements[i].measurement.uuid()) == 0)
                complain(fmt::format(
                    "job.void_measurements[{}]: the measurement it names is not in the job, or void "
                    "already",
                    i));
    }

    void checkDecisions()
    {
        for (std::size_t i = 0; i < m_job.judgements.size(); ++i) {
            takeId(m_job.judgements[i].id, "judgements", i);
            needPoint(m_job.judgements[i].point, "judgements", i);
            needRound(m_job.judgements[i].round, "judgements", i);
            for (const model::PointId point : m_job.judgements[i].of)
                needPoint(point, "judgements", i);
        }
        for (std::size_t i = 0; i < m_job.concessions.size(); ++i) {
            takeId(m_job.concessions[i].id, "concessions", i);
            for (const model::PointId point : m_job.concessions[i].points)
                needPoint(point, "concessions", i);
        }
        for (std::size_t i = 0; i < m_job.review.size(); ++i) {
            takeId(m_job.review[i].id, "review", i);
            if (m_job.review[i].point)
                needPoint(*m_job.review[i].point, "review", i);
        }
    }

    const model::Job& m_job;
    const model::TestObject& m_object;
    std::unordered_set<Uuid> m_ids;
    std::unordered_set<model::PointId> m_points;
    std::unordered_set<model::RoundId> m_rounds;
    std::unordered_set<model::RepairId> m_repairs;
    std::string m_wrong;
};

} // namespace

Status checkRecord(const JobRecord& record)
{
    return Check(record).run();
}

} // namespace sealwalk::exchange
