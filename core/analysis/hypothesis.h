// SPDX-License-Identifier: GPL-3.0-or-later
// One supposition about a survey - these leaks, this state of the air - and how well the readings bear it
// out.
#pragma once

#include "core/analysis/spread.h"
#include "core/analysis/survey_scene.h"

#include <array>
#include <cstddef>
#include <map>
#include <memory>
#include <vector>

namespace sealwalk::analysis {

/// What one reading sees of one supposed leak.
struct Sight
{
    double share = 0.0;   ///< of its rate; see visibleShare
    double decades = 4.0; ///< -log10(share), 0 … 4: how far the reading may stray from the rule grows with it
    double most = 0.0;    ///< the share that freak air may bring there; see freakShare
};

struct SupposedLeak
{
    std::size_t point = 0; ///< home: the stretch it lies on
    std::size_t place = 0; ///< index into Stretch::places
    std::size_t condition = 0;
    std::size_t witness = 0;  ///< the reading that called for it
    double rate = 0.0;        ///< Pa·m³/s at pure helium
    double spreadOfLog = 0.0; ///< standard deviation of ln(rate) by the fit alone
    /// One for each reading. Shared, because thousands of hypotheses differ in one leak and copy the others.
    std::shared_ptr<const std::vector<Sight>> sights;

    [[nodiscard]] double part(std::size_t reading) const { return rate * (*sights)[reading].share; }
};

/// A state of the air with what follows from it alone, worked out once.
struct Air
{
    Spread spread;
    std::vector<double> left;  ///< Scene::leftBehind for this spread
    std::vector<double> quiet; ///< likelihood of each reading that sees no leak, once asked for
    /// Sights already worked out, by point, place and condition.
    std::map<std::array<std::size_t, 3>, std::shared_ptr<const std::vector<Sight>>> seen;
};

struct Hypothesis
{
    std::shared_ptr<Air> air; ///< shared among the hypotheses of one state of the air, as above
    std::vector<SupposedLeak> leaks;
    double evidence = 0.0; ///< natural logarithm, up to a constant of the scene

    [[nodiscard]] const Spread& spread() const { return air->spread; }
};

/// What a reading is expected to show, and how far it may stray.
struct Expectation
{
    double value = 0.0;
    double variance = 0.0;
    double most = 0.0;    ///< what freak air could bring on top
    bool ownLeak = false; ///< a leak is supposed on the stretch that was sprayed

    void add(double rate, const Sight& sight, double echoScatter);
};

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
    /// What every reading sees of a leak at a place of a stretch.
    [[nodiscard]] std::shared_ptr<const std::vector<Sight>>
    look(Air& air, std::size_t point, std::size_t place, std::size_t condition) const;

    /// The logarithm of the range leak rates are supposed to span.
    static constexpr double kLogRange = 9.2;

private:
    [[nodiscard]] std::shared_ptr<Air> breathe(const Spread& spread) const;
    [[nodiscard]] Expectation background(const Air& air, std::size_t reading, double total) const;
    [[nodiscard]] Expectation expected(const Hypothesis& so, std::size_t reading, double total) const;
    [[nodiscard]] double quiet(Air& air, std::size_t reading) const;
    void setEvidence(Hypothesis& so) const;

    const Scene& m_scene;
    std::vector<double> m_progress; ///< of each reading, 0 at the first … 1 at the last
    std::vector<double> m_onScale;  ///< each reading on the scale of the likelihood
    double m_priorOdds = 0.0;
};

/// The largest share of helium that odd draughts and pockets may bring to a leak `across` m to the side of
/// and `above` m over the probe: the upper end of what the far-field laws allow.
double freakShare(double across, double above);

} // namespace sealwalk::analysis
