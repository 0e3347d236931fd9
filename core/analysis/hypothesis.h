// SPDX-License-Identifier: GPL-3.0-or-later
// One supposition about a survey - these leaks, this state of the air - and how well the readings bear it
// out.
#pragma once

#include "core/analysis/exposure.h"
#include "core/analysis/spread.h"
#include "core/analysis/survey_scene.h"

#include <cstddef>
#include <memory>
#include <optional>
#include <unordered_map>
#include <vector>

namespace sealwalk::analysis {

/// What the readings of one view see of one supposed leak, side by side so that sums over leaks run fast.
/// Readings of other views see nothing of it.
struct Sights
{
    std::size_t first = 0;     ///< the view's first reading
    std::vector<double> share; ///< of its rate; see visibleShare
    std::vector<double> stray; ///< variance of that part, relative: it grows with dilution
    std::vector<double> most;  ///< the share that freak air may bring there; see freakShare

    [[nodiscard]] bool covers(std::size_t reading) const { return reading - first < share.size(); }
    [[nodiscard]] double shareAt(std::size_t reading) const
    {
        return covers(reading) ? share[reading - first] : 0.0;
    }
    [[nodiscard]] double mostAt(std::size_t reading) const
    {
        return covers(reading) ? most[reading - first] : 0.0;
    }
};

struct SupposedLeak
{
    std::size_t point = 0; ///< home: the stretch it lies on
    std::size_t place = 0; ///< index into Stretch::places
    std::size_t condition = 0;
    std::size_t witness = 0;  ///< the reading that called for it
    double rate = 0.0;        ///< Pa·m³/s at pure helium
    double spreadOfLog = 0.0; ///< standard deviation of ln(rate) by the fit alone
    /// Shared, because thousands of hypotheses differ in one leak and copy the others.
    std::shared_ptr<const Sights> sights;

    [[nodiscard]] double part(std::size_t reading) const { return rate * sights->shareAt(reading); }
};

/// A state of the air with what follows from it alone, worked out once.
struct Air
{
    Spread spread;
    std::vector<double> left;         ///< Scene::leftBehind for this spread
    std::vector<double> restVariance; ///< of each reading, from noise and what is left behind
    std::vector<std::optional<double>>
        quiet; ///< evidence of the readings of a view without leaks, once asked for
    /// Sights already worked out, by LeakSpot.
    std::unordered_map<std::size_t, std::shared_ptr<const Sights>> seen;
};

struct Hypothesis
{
    std::shared_ptr<Air> air; ///< shared among the hypotheses of one state of the air, as above
    std::vector<SupposedLeak> leaks;
    double evidence = 0.0;          ///< natural logarithm, up to a constant of the scene
    std::vector<double> ofReadings; ///< the part of it that the readings of each view give
    double total = 0.0;             ///< of the rates, for which those parts hold
    bool isSettled = false;         ///< looked over, and no single change makes it better

    [[nodiscard]] const Spread& spread() const { return air->spread; }
};

/// What a reading is expected to show, and how far it may stray.
struct Expectation
{
    double value = 0.0;
    double variance = 0.0;
    double most = 0.0;    ///< what freak air could bring on top
    bool ownLeak = false; ///< a leak is supposed on the stretch that was sprayed

    void add(double rate, const Sights& sights, std::size_t reading);
};

/// The same for all readings of a view, and for some of its leaks.
struct Outlook
{
    ReadingRange range;
    std::vector<double> value;
    std::vector<double> variance;
    std::vector<double> most;
    std::vector<char> ownLeak;

    void add(double rate, const Sights& sights);
};

/// Weighs hypotheses about one scene. Keeps work space, so one thread at a time may use it.
class Judge
{
public:
    explicit Judge(const Scene& scene);

    [[nodiscard]] const Scene& scene() const { return m_scene; }

    /// A hypothesis without leaks.
    [[nodiscard]] Hypothesis empty(const Spread& spread) const;
    /// A leak at a place of a stretch, of the size its own reading asks for.
    [[nodiscard]] SupposedLeak suppose(const Hypothesis& so, std::size_t reading, std::size_t place) const;
    /// Puts a leak of `so` elsewhere; its rate is scaled so that its new home's reading stays explained.
    void move(const Hypothesis& so, SupposedLeak& leak, std::size_t point, std::size_t place) const;

    /// Fits the rates by `rounds` Gauss-Newton steps in their logarithms and sets the evidence.
    void fit(Hypothesis& so, int rounds) const;
    /// The same where only leaks on `point`'s view have changed since the evidence was set.
    void fitAround(Hypothesis& so, std::size_t point, int rounds) const;
    /// Recomputes what depends on the spread, keeps the leaks, fits.
    [[nodiscard]] Hypothesis under(const Spread& spread, const Hypothesis& so, int rounds) const;

    [[nodiscard]] Expectation expected(const Hypothesis& so, std::size_t reading) const;
    /// Tail and room air at a reading that its background did not show.
    [[nodiscard]] double carried(const Hypothesis& so, std::size_t reading) const;
    /// Logarithm of the likelihood of one reading.
    [[nodiscard]] double likelihood(std::size_t reading, const Expectation& expectation) const;
    /// How many standard deviations the reading lies above what is expected.
    [[nodiscard]] double surprise(std::size_t reading, const Expectation& expectation) const;
    /// Logarithm of the prior odds that a point leaks at all.
    [[nodiscard]] double priorOdds() const { return m_priorOdds; }
    /// What the readings of its view see of a leak at a place of a stretch.
    [[nodiscard]] std::shared_ptr<const Sights> look(Air& air, std::size_t point, std::size_t place,
                                                     std::size_t condition) const;

    /// The logarithm of the range leak rates are supposed to span.
    static constexpr double kLogRange = 9.2;

private:
    /// A leak's place and condition in one number.
    [[nodiscard]] std::size_t spotOf(std::size_t point, std::size_t place, std::size_t condition) const
    {
        return (condition * m_scene.stretches.size() + point) * Stretch::kPlaces + place;
    }
    [[nodiscard]] const std::vector<Bearing>& bearingsOf(std::size_t point, std::size_t place,
                                                         std::size_t condition) const;
    [[nodiscard]] std::shared_ptr<Air> breathe(const Spread& spread) const;
    [[nodiscard]] Expectation background(const Air& air, std::size_t reading, double total) const;
    void layBackground(const Air& air, double total, std::size_t view, Outlook& outlook) const;
    [[nodiscard]] double viewEvidence(const Hypothesis& so, std::size_t view, double total) const;
    /// factor · exp(exponent)
    struct Density
    {
        double factor;
        double exponent;
    };
    [[nodiscard]] Density densityOf(std::size_t reading, const Expectation& expectation) const;
    [[nodiscard]] double evidenceOf(const Outlook& outlook) const;
    void fitView(Hypothesis& so, std::size_t view, int rounds) const;
    bool step(Hypothesis& so, std::size_t view, const std::vector<std::size_t>& leaks) const;
    void setEvidence(Hypothesis& so) const;
    [[nodiscard]] double prior(const Hypothesis& so) const;

    /// Work space of a fit, kept because thousands follow one another.
    struct Bench
    {
        std::vector<std::size_t> leaks;
        Outlook outlook;
        std::vector<double> parts; ///< of each leak in turn, of each reading
        std::vector<double> rest;
        std::vector<double> square; ///< column after column
        std::vector<double> slope;
    };

    const Scene& m_scene;
    std::vector<double> m_progress; ///< of each reading, 0 at the first … 1 at the last
    std::vector<double> m_onScale;  ///< each reading on the scale of the likelihood
    std::vector<double> m_logNoise; ///< logarithm of twice the noise of each reading
    double m_leastNoise = 0.0;
    double m_priorOdds = 0.0;
    mutable std::unordered_map<std::size_t, std::vector<Bearing>> m_bearings; ///< by spotOf
    mutable Bench m_bench;
};

} // namespace sealwalk::analysis
