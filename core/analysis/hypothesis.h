// SPDX-License-Identifier: GPL-3.0-or-later
// One supposition about a survey - these leaks, this state of the air - and how well the readings bear it
// out.
#pragma once

#include "core/analysis/spread.h"
#include "core/analysis/survey_scene.h"

#include <cstddef>
#include <vector>

namespace sealwalk::analysis {

struct SupposedLeak
{
    std::size_t point = 0; ///< home: the stretch it lies on
    std::size_t place = 0; ///< index into Stretch::places
    std::size_t condition = 0;
    double rate = 0.0;          ///< Pa·m³/s at pure helium
    double spreadOfLog = 0.0;   ///< standard deviation of ln(rate) by the fit alone
    std::vector<double> shares; ///< what each reading sees of it; see visibleShares
};

struct Hypothesis
{
    Spread spread;
    std::vector<SupposedLeak> leaks;
    std::vector<double> left; ///< Scene::leftBehind for this spread
    double evidence = 0.0;    ///< natural logarithm, up to a constant of the scene
};

/// What a reading is expected to show, and how far it may stray.
struct Expectation
{
    double value = 0.0;
    double variance = 0.0;
    bool ownLeak = false; ///< a leak is supposed on the stretch that was sprayed
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

    /// Fits the rates by `rounds` Gauss-Newton steps in their logarithms and sets the evidence.
    void fit(Hypothesis& so, int rounds) const;
    /// Recomputes what depends on the spread, keeps the leaks, fits.
    [[nodiscard]] Hypothesis under(const Spread& spread, const Hypothesis& so, int rounds) const;

    [[nodiscard]] Expectation expected(const Hypothesis& so, std::size_t reading) const;
    /// Tail and room air at a reading that its background did not show.
    [[nodiscard]] double carried(const Hypothesis& so, std::size_t reading, double total) const;
    /// Logarithm of the likelihood of one reading.
    [[nodiscard]] double likelihood(std::size_t reading, const Expectation& expectation) const;
    /// How many standard deviations the reading lies above what is expected.
    [[nodiscard]] double surprise(std::size_t reading, const Expectation& expectation) const;
    /// Logarithm of the prior odds that a point leaks at all.
    [[nodiscard]] double priorOdds() const { return m_priorOdds; }
    /// Relative standard deviation, squared, of what a reading sees through this share.
    [[nodiscard]] static double strayOf(double share, double echoScatter);

    /// The logarithm of the range leak rates are supposed to span.
    static constexpr double kLogRange = 9.2;

private:
    void setEvidence(Hypothesis& so) const;
    [[nodiscard]] double totalOf(const Hypothesis& so) const;

    const Scene& m_scene;
    std::vector<double> m_progress; ///< of each reading, 0 at the first … 1 at the last
    double m_priorOdds = 0.0;
};

} // namespace sealwalk::analysis
