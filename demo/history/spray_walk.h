// SPDX-License-Identifier: GPL-3.0-or-later
// The technician of the demo: walks with the probe, watches the display, writes down what it shows.
#pragma once

#include "core/model/job.h"
#include "demo/history/coater_truth.h"
#include "demo/history/detector.h"

#include <optional>
#include <string>

namespace sealwalk::demo {

/// How one point is sprayed.
struct Spray
{
    int point = 0;
    model::Condition condition = model::Condition::AtRest;
    double dwell = 8.0; ///< s
    double wait = 14.0; ///< s at least; longer until the background is back
};

/// The stretch of one point as places the probe passes.
struct Stroke
{
    geometry::Path path;
    double from = 0.0; ///< mm along the path
    double to = 0.0;
    [[nodiscard]] geometry::Point at(double share) const { return path.at(from + (to - from) * share).place; }
};

class SprayWalk
{
public:
    /// Readings go to `job`, in its first or a later round.
    SprayWalk(model::Job& job, std::vector<TrueLeak> leaks, Detector& detector, Chance& chance);

    void startRound(const model::RoundId& round, const Timestamp& at, std::string by);
    /// Sprays and stores a reading. The reference lives until the next one is stored.
    model::Reading& spray(const Spray& what);
    /// Nothing was sprayed, and why.
    void note(int point, model::Outcome outcome, const char* reason);
    /// Takes the place of the latest reading of the point, with what was meant.
    void correct(int point, const char* reason, const std::string& wrongText, double wrongRate);

    void rest(double seconds) { m_detector.advance(seconds, 0.0); }
    [[nodiscard]] Timestamp now() const;

private:
    struct Seen
    {
        double highest = 0.0;
        std::optional<double> delay; ///< s to the first clear rise
    };

    [[nodiscard]] double inflow(const TrueLeak& leak, geometry::Point probe, const Spray& what,
                                double since) const;
    [[nodiscard]] double inflow(geometry::Point probe, model::SheetId sheet, const Spray& what,
                                double since) const;
    /// Where on the stretch most comes in: that is where one lingers.
    [[nodiscard]] geometry::Point bestPlace(const Stroke& stroke, model::SheetId sheet,
                                            const Spray& what) const;
    Seen hold(const Spray& what, double background);
    double clearAway(const Spray& what, double background);
    model::Reading& store(model::Reading reading);

    model::Job& m_job;
    std::vector<TrueLeak> m_leaks;
    Detector& m_detector;
    Chance& m_chance;
    model::RoundId m_round;
    Timestamp m_zero; ///< of the detector's clock
    std::string m_by;
};

/// A rate as it is typed: two digits, "2.9e-4 mbar l/s".
std::string typed(double rate);

} // namespace sealwalk::demo
