// SPDX-License-Identifier: GPL-3.0-or-later
// What cannot be computed: leak channels, hoses, response, corrections, decisions.
#include "ui/render/core_patterns.h"

#include <QtGlobal>

namespace sealwalk::render {

std::span<const char* const> flowRefusals()
{
    static constexpr const char* kAll[] = {
        QT_TRANSLATE_NOOP("Core", "the length of the leak channel is %1 m; right is 0.1 um to 10 m"),
        QT_TRANSLATE_NOOP("Core", "the upstream pressure is %1 Pa; right is 1 Pa to 20 bar"),
        QT_TRANSLATE_NOOP(
            "Core", "the downstream pressure is %1 Pa; right is 0 to below the upstream pressure, %2 Pa"),
        QT_TRANSLATE_NOOP("Core", "a leak rate of %1 Pa m3/s has no channel; right is a rate above zero"),
        QT_TRANSLATE_NOOP("Core", "no round channel of %1 mm length passes %2 mbar l/s; channels from 0.1 nm "
                                  "to 50 mm pass %3 to %4"),
        QT_TRANSLATE_NOOP("Core", "a hole can be worked out for a leak rate above zero only"),
        QT_TRANSLATE_NOOP("Core", "the upstream pressure must be above zero"),
        QT_TRANSLATE_NOOP("Core", "no hole between 0.1 nm and 50 mm passes this leak rate"),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is not a gas known here; known are %2"),
        QT_TRANSLATE_NOOP(
            "Core",
            "a gas temperature of %1 degC is outside -23 degC to 77 degC, where the viscosities hold"),
        QT_TRANSLATE_NOOP("Core", "the pumping speed must be above zero"),
        QT_TRANSLATE_NOOP("Core", "the pressure must be zero or above"),
        QT_TRANSLATE_NOOP("Core", "the inner diameter of the hose must be between 0.1 mm and 1 m"),
        QT_TRANSLATE_NOOP("Core", "the length of the hose must be between 1 mm and 1 km"),
        QT_TRANSLATE_NOOP("Core", "the dwell must be above zero"),
        QT_TRANSLATE_NOOP("Core", "the dwell of %1 s is too short for a response time of %2 s; at least %3 s "
                                  "is needed to size a leak"),
        QT_TRANSLATE_NOOP("Core", "the volume must be above zero"),
        QT_TRANSLATE_NOOP("Core", "the pumping speed of the detector must be above zero"),
        QT_TRANSLATE_NOOP("Core", "the pumping speed of the auxiliary pump must be zero or above"),
        QT_TRANSLATE_NOOP("Core", "a hose needs both its inner diameter and its length"),
        QT_TRANSLATE_NOOP("Core", "the pressure in the hose must be zero or above"),
        QT_TRANSLATE_NOOP("Core", "the share of the signal to wait for must be between 20 % and 99.9 %"),
        QT_TRANSLATE_NOOP("Core",
                          "the share of the last signal that may be left must be between 0.1 % and 80 %"),
        QT_TRANSLATE_NOOP("Core",
                          "the background has %1 times and %2 values; right is one time for each value"),
        QT_TRANSLATE_NOOP("Core", "the background has %1 readings; at least %2 are needed, 20 are usual"),
        QT_TRANSLATE_NOOP("Core", "background reading %1 is not a finite number"),
        QT_TRANSLATE_NOOP("Core", "background reading %1 is not later than the one before it"),
        QT_TRANSLATE_NOOP("Core", "peak and background must be finite numbers"),
        QT_TRANSLATE_NOOP("Core", "noise and drift of the background must be zero or above"),
        QT_TRANSLATE_NOOP("Core", "the dwell must be zero or above"),
        QT_TRANSLATE_NOOP("Core", "the repeatability must be zero or above"),
        QT_TRANSLATE_NOOP("Core", "the %1 must be above zero, with an uncertainty of zero or above"),
        QT_TRANSLATE_NOOP("Core", "the leak rate must be a finite number"),
        QT_TRANSLATE_NOOP("Core", "the uncertainty of a leak rate must be zero or above"),
        QT_TRANSLATE_NOOP("Core", "the limit must be above zero"),
        QT_TRANSLATE_NOOP("Core", "the risk of a wrong decision must be between 0 and 50 %"),
        QT_TRANSLATE_NOOP("Core", "a point that is not in the sketch cannot be ticked for repair"),
        QT_TRANSLATE_NOOP(
            "Core", "a pressure rise says nothing without the volume; type it under Object and purpose"),
        QT_TRANSLATE_NOOP(
            "Core",
            "the total of the pressure-rise test and its range must be finite, in order and not below zero"),
        QT_TRANSLATE_NOOP("Core", "the uncertainty must be zero or above"),
        QT_TRANSLATE_NOOP("Core", "there are fewer observations than parameters to fit"),
        QT_TRANSLATE_NOOP("Core", "the data do not determine all parameters of the fit"),
        QT_TRANSLATE_NOOP("Core", "the fit cannot begin at its starting values"),
        QT_TRANSLATE_NOOP("Core", "the fit did not settle within its allowed number of steps"),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is not one of the located leaks"),
        QT_TRANSLATE_NOOP("Core", "point %1: its place must be finite"),
        QT_TRANSLATE_NOOP("Core", "point %1 is there twice"),
        QT_TRANSLATE_NOOP("Core", "a reading names point %1, which does not exist"),
        QT_TRANSLATE_NOOP("Core", "reading %1 (point %2): rates and times must be finite, the dwell above 0"),
        QT_TRANSLATE_NOOP("Core", "reading %1 (point %2) starts before the one above it"),
    };
    return kAll;
}

} // namespace sealwalk::render
