// SPDX-License-Identifier: GPL-3.0-or-later
// A survey prepared for the source search: stretches as short polylines, readings freed of helium share and
// dwell, the noise of the moment, and what earlier responses have left behind.
#pragma once

#include "core/analysis/survey.h"

#include <array>
#include <cstddef>
#include <vector>

namespace sealwalk::analysis {

struct Place
{
    double x = 0.0;  ///< m
    double up = 0.0; ///< m
};

/// The stretch of joint a point stands for.
struct Stretch
{
    static constexpr std::size_t kPlaces = 5; ///< where a leak is looked for
    static constexpr std::size_t kPasses = 7; ///< where the probe is followed
    std::size_t view = 0;
    std::size_t joint = 0;
    Place middle;
    double half = 0.0; ///< m
    bool isPlan = false;
    std::array<Place, kPlaces> places;
    std::array<Place, kPasses> passes;
    /// Neighbours on the same joint, one each way; the point itself where there is none.
    std::array<std::size_t, 2> neighbours{};

    /// The probe's position nearest to `leak`.
    [[nodiscard]] Place nearestTo(const Place& leak) const;
};

/// A reading ready for the search. Rates are Pa·m³/s at pure helium and full dwell.
struct SceneReading
{
    std::size_t survey = 0; ///< index in Survey::readings
    std::size_t point = 0;
    std::size_t condition = 0;
    double rate = 0.0;  ///< net over exposure; may be negative
    double noise = 0.0; ///< standard deviation of `rate` from background and elevation alone
    double exposure = 1.0;
    double detectable = 0.0; ///< known from a quiet watch of the background; 0: not known
    double keptPerPass =
        0.0;                 ///< what the detector keeps of its last value from one of the passes to the next
    double fullInPass = 1.0; ///< what it would reach by the end of them on a steady leak
    double elevated = 0.0;   ///< background above the survey's own floor, in the same rate
    double start = 0.0;      ///< s
    double end = 0.0;        ///< s
    double rawNet = 0.0;     ///< Pa·m³/s as shown
    bool late = false;       ///< its first rise came later than a leak where the helium went answers
    std::vector<std::size_t> shielded; ///< points that no helium reached meanwhile
    double beside = 0.0; ///< what the neighbours on the joint may have shown at most; infinite without any
};

/// Part of Scene::readings, from `first` up to but without `last`.
struct ReadingRange
{
    std::size_t first = 0;
    std::size_t last = 0;
    [[nodiscard]] std::size_t count() const { return last - first; }
};

struct Scene
{
    double response = 0.0;     ///< s
    double heliumShare = 1.0;  ///< of the spray
    double limit = 0.0;        ///< Pa·m³/s
    double typicalNoise = 0.0; ///< median of SceneReading::noise
    double offset = 0.0;       ///< what a highest value shows above the background with nothing there
    std::vector<Stretch> stretches;
    std::vector<SceneReading> readings;   ///< without void ones, view by view, each in order of time
    std::vector<ReadingRange> readingsIn; ///< by view
    std::vector<std::vector<std::size_t>> readingsAt; ///< by point
    std::vector<std::string> conditions;
    std::size_t usualCondition = 0;

    /// What clean-up has left at each reading, as a rate: the share `slow` of every earlier response clears
    /// in `slowTime` s, the rest in the response time; void readings count as responses too.
    [[nodiscard]] std::vector<double> leftBehind(double slow, double slowTime) const;

    /// Whether the point has a reading in this condition.
    [[nodiscard]] bool wasSprayed(std::size_t point, std::size_t condition) const;

    std::vector<SceneReading> everyReading; ///< void ones too: they fed the tail
    std::vector<std::size_t> placeInEvery;  ///< of each of `readings`
};

/// Prepares `survey`, which must be consistent (readings of known points only).
Scene makeScene(const Survey& survey);

} // namespace sealwalk::analysis
