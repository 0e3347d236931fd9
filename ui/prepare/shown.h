// SPDX-License-Identifier: GPL-3.0-or-later
// Figures of the job in the job's own unit.
#pragma once

#include "core/model/job.h"
#include "core/quantities/leak_rate_unit.h"

#include <QString>

#include <algorithm>
#include <vector>

namespace sealwalk::ui {

/// The unit shown everywhere in the job; mbar·l/s where the stored word is not known.
Unit shownUnit(const model::Setup& setup);
/// What the detector's display says.
Unit displayUnit(const model::Setup& setup);
FlowBasis basisOf(const model::Setup& setup);

/// The number of `rate` in `unit`.
double numberShown(LeakRate rate, const Unit& unit, const model::Setup& setup);
/// "4.6e<b>−4</b>" in `unit`, without the unit.
QString richRate(LeakRate rate, const Unit& unit, const model::Setup& setup);
/// "4.6e−4".
QString plainRate(LeakRate rate, const Unit& unit, const model::Setup& setup);
/// "mbar·l/s He".
QString unitText(const Unit& unit);

/// Measurements as they are chosen from: in order of time, void ones at their place.
template <class Measurement>
std::vector<const Measurement*> inOrderOfTime(const std::vector<Measurement>& measurements)
{
    std::vector<const Measurement*> ordered;
    for (const Measurement& each : measurements)
        ordered.push_back(&each);
    std::stable_sort(ordered.begin(), ordered.end(),
                     [](const Measurement* a, const Measurement* b) { return a->at < b->at; });
    return ordered;
}

/// One after the other: with a semicolon between phrases, a blank behind a sentence.
QString joinedNotes(const QStringList& notes);
QString secondsText(Duration time);
QString text(const std::string& utf8);

} // namespace sealwalk::ui
