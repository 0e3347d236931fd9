// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/history/spray_walk.h"

#include "core/analysis/slow_rise.h"
#include "core/base/contract.h"
#include "demo/history/helium_cloud.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>

namespace sealwalk::demo {

using namespace model;

namespace {

constexpr double kStep = 0.25;         // s
constexpr double kSweep = 5.0;         // s in which the probe passes over the whole stretch
constexpr double kResponds = 3.0;      // noises above the background
constexpr double kLongestWait = 420.0; // s
constexpr double kDiffusivity = 1e-9;  // m²/s, helium in fluoroelastomer

double roundedAsTyped(double rate)
{
    const std::string text = fmt::format("{:.1e}", rate);
    double value = 0.0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

LeakRate asTyped(double rate)
{
    return millibarLitresPerSecond(roundedAsTyped(rate));
}

Stroke strokeOf(const Sketch& sketch, const TestPoint& point)
{
    Stroke stroke;
    stroke.path = geometry::outline(sketch.joint(point.joint)->shape);
    for (const Stretch& stretch : stretches(sketch, point.joint))
        if (stretch.point == point.id) {
            stroke.from = stretch.from;
            stroke.to = stretch.to;
        }
    return stroke;
}

} // namespace

std::string typed(double rate)
{
    std::string text = fmt::format("{:.1e}", rate);
    // "2.9e-04" is not how people write it
    if (const std::size_t zero = text.find("e-0"); zero != std::string::npos)
        text.erase(zero + 2, 1);
    return text + " mbar l/s";
}

SprayWalk::SprayWalk(Job& job, std::vector<TrueLeak> leaks, Detector& detector, Chance& chance)
    : m_job(job)
    , m_leaks(std::move(leaks))
    , m_detector(detector)
    , m_chance(chance)
{}

void SprayWalk::startRound(const RoundId& round, const Timestamp& at, std::string by)
{
    m_round = round;
    m_by = std::move(by);
    m_zero = at;
    m_zero.utcMilliseconds -= std::llround(m_detector.time() * 1000.0);
}

Timestamp SprayWalk::now() const
{
    Timestamp at = m_zero;
    at.utcMilliseconds += std::llround(m_detector.time() * 1000.0);
    return at;
}

double SprayWalk::inflow(const TrueLeak& leak, geometry::Point probe, const Spray& what, double since) const
{
    if (leak.onlyFlexed && what.condition != Condition::Flexed)
        return 0.0;
    const Sheet* sheet = m_job.sketch.sheet(leak.sheet);
    const double share = heliumAt(probe, leak.place, !sheet->seenFromAbove);
    if (leak.permeates <= 0.0)
        return leak.rate * share;
    return leak.rate * share *
           analysis::permeationBuildUp(millimetres(leak.permeates), kDiffusivity, seconds(since));
}

double SprayWalk::inflow(geometry::Point probe, SheetId sheet, const Spray& what, double since) const
{
    double sum = 0.0;
    for (const TrueLeak& leak : m_leaks)
        if (leak.sheet == sheet)
            sum += inflow(leak, probe, what, since);
    return sum;
}

geometry::Point SprayWalk::bestPlace(const Stroke& stroke, SheetId sheet, const Spray& what) const
{
    constexpr int kPlaces = 40;
    geometry::Point best = stroke.at(0.5);
    double most = inflow(best, sheet, what, what.dwell);
    for (int i = 0; i <= kPlaces; ++i) {
        const geometry::Point place = stroke.at(static_cast<double>(i) / kPlaces);
        if (const double now = inflow(place, sheet, what, what.dwell); now > most) {
            most = now;
            best = place;
        }
    }
    return best;
}

/// The probe passes over the stretch and then stays where it answers most, as one does.
SprayWalk::Seen SprayWalk::hold(const Spray& what, double background)
{
    const TestPoint* point = m_job.sketch.pointNumbered(what.point);
    const Stroke stroke = strokeOf(m_job.sketch, *point);
    const SheetId sheet = m_job.sketch.joint(point->joint)->sheet;
    const geometry::Point best = bestPlace(stroke, sheet, what);
    Seen seen;
    for (double since = 0.0; since < what.dwell; since += kStep) {
        const geometry::Point probe = since < kSweep ? stroke.at(since / kSweep) : best;
        m_detector.advance(kStep, inflow(probe, sheet, what, since));
        const double level = m_detector.level();
        seen.highest = std::max(seen.highest, level);
        if (!seen.delay && level - background > kResponds * m_detector.day().noise)
            seen.delay = since + kStep;
    }
    return seen;
}

/// Waits for the background; @return seconds until it was back
double SprayWalk::clearAway(const Spray& what, double background)
{
    constexpr double kBack = 1.0; // noises
    double waited = 0.0;
    double back = -1.0;
    while (waited < what.wait || (back < 0.0 && waited < kLongestWait)) {
        m_detector.advance(kStep, 0.0);
        waited += kStep;
        if (back < 0.0 && m_detector.level() < background + kBack * m_detector.day().noise)
            back = waited;
    }
    return back < 0.0 ? waited : back;
}

Reading& SprayWalk::store(Reading reading)
{
    reading.id = m_chance.id<ReadingId>();
    reading.sequence = static_cast<std::int64_t>(m_job.readings.size()) + 1;
    reading.round = m_round;
    reading.by = m_by;
    return m_job.readings.emplace_back(std::move(reading));
}

Reading& SprayWalk::spray(const Spray& what)
{
    const TestPoint* point = m_job.sketch.pointNumbered(what.point);
    SEALWALK_EXPECT(point != nullptr);
    Reading reading;
    reading.point = point->id;
    reading.condition = what.condition;
    reading.at = now();
    const double background = m_detector.level();
    const Seen seen = hold(what, background);
    const double shownBackground = m_detector.readOff(background);
    const double shown = m_detector.readOff(seen.highest);
    reading.background = asTyped(shownBackground);
    reading.dwell = seconds(what.dwell);
    if (seen.delay && shown - shownBackground > kResponds * m_detector.day().noise) {
        reading.outcome = Outcome::Value;
        reading.peak = asTyped(shown);
        reading.entered = typed(shown);
        reading.delay = seconds(*seen.delay);
    } else {
        reading.outcome = Outcome::NoResponse;
    }
    const double cleared = clearAway(what, background);
    if (reading.outcome == Outcome::Value)
        reading.cleanUp = seconds(cleared);
    return store(std::move(reading));
}

void SprayWalk::note(int point, Outcome outcome, const char* reason)
{
    Reading reading;
    reading.point = m_job.sketch.pointNumbered(point)->id;
    reading.at = now();
    reading.outcome = outcome;
    reading.reason = reason;
    store(std::move(reading));
    rest(5.0);
}

void SprayWalk::correct(int point, const char* reason, const std::string& wrongText, double wrongRate)
{
    const PointId id = m_job.sketch.pointNumbered(point)->id;
    const auto latest = std::find_if(m_job.readings.rbegin(), m_job.readings.rend(),
                                     [&](const Reading& r) { return r.point == id; });
    SEALWALK_EXPECT(latest != m_job.readings.rend());
    Reading meant = *latest;
    latest->outcome = Outcome::Value;
    latest->entered = wrongText;
    latest->peak = millibarLitresPerSecond(wrongRate);
    meant.corrects = latest->id;
    meant.reason = reason;
    store(std::move(meant));
}

} // namespace sealwalk::demo
