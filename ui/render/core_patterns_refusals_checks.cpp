// SPDX-License-Identifier: GPL-3.0-or-later
// Pressure rise, background and reference leak that cannot be used.
#include "ui/render/core_patterns.h"

#include <QtGlobal>

namespace sealwalk::render {

std::span<const char* const> checkRefusals()
{
    static constexpr const char* kAll[] = {
        QT_TRANSLATE_NOOP("Core", "the volume must be above 0"),
        QT_TRANSLATE_NOOP("Core", "the relative uncertainty of the volume must be from 0 to 0.5"),
        QT_TRANSLATE_NOOP("Core", "the gas temperature must be from -123 to 327 degC"),
        QT_TRANSLATE_NOOP("Core", "times, pressures and temperatures must be equally many"),
        QT_TRANSLATE_NOOP("Core", "a pressure-rise record needs at least %1 samples, this one has %2"),
        QT_TRANSLATE_NOOP("Core", "sample %1: time and pressure must be finite numbers"),
        QT_TRANSLATE_NOOP("Core", "sample %1: times must increase, %2 s follows %3 s"),
        QT_TRANSLATE_NOOP("Core", "sample %1: the temperature must be from -123 to 327 degC"),
        QT_TRANSLATE_NOOP("Core", "the pressure is the same in all samples, so the gauge does not resolve "
                                  "the rise; run on longer or use a finer gauge"),
        QT_TRANSLATE_NOOP("Core", "the pressure falls over the record, which no gas coming in can do: the "
                                  "gauge drifts, the chamber cools or a valve to the pump is open"),
        QT_TRANSLATE_NOOP("Core", "the numbers of this record lie outside what can be computed with"),
        QT_TRANSLATE_NOOP("Core", "the certified rate of the reference leak must be above zero"),
        QT_TRANSLATE_NOOP("Core",
                          "the temperature of a reference leak must be between -73 degC and 127 degC"),
        QT_TRANSLATE_NOOP(
            "Core",
            "the temperature coefficient of a reference leak must be between -10 % and 10 % per kelvin"),
        QT_TRANSLATE_NOOP("Core", "the yearly loss of a reference leak must be between 0 and 100 %"),
        QT_TRANSLATE_NOOP(
            "Core",
            "the certificate of a reference leak must not be dated after its use, nor a century before"),
        QT_TRANSLATE_NOOP("Core", "the uncertainties of a reference leak must be zero or above"),
        QT_TRANSLATE_NOOP("Core",
                          "so far from its certificate temperature a linear coefficient leaves nothing of "
                          "the reference leak; bring it nearer to its certificate temperature"),
        QT_TRANSLATE_NOOP("Core", "there are fewer samples than parameters to fit"),
        QT_TRANSLATE_NOOP("Core", "no time constant fits the record"),
        QT_TRANSLATE_NOOP("Core", "the rate of the reference leak must be above zero"),
        QT_TRANSLATE_NOOP(
            "Core", "the display with the reference leak open must be above the background with it closed"),
        QT_TRANSLATE_NOOP("Core", "noise and uncertainty must be zero or above"),
        QT_TRANSLATE_NOOP("Core", "the system factor must be above zero"),
        QT_TRANSLATE_NOOP("Core", "the noise factor must be between 1 and 10; 3 is usual"),
        QT_TRANSLATE_NOOP("Core", "the dwell must show between 20 % and 100 % of the signal"),
        QT_TRANSLATE_NOOP("Core", "the helium share must be above 0 and at most 100 %"),
        QT_TRANSLATE_NOOP("Core", "%1 has %2 numbers; right is a value, or seconds and a value"),
        QT_TRANSLATE_NOOP("Core", "every line needs a time, or none"),
        QT_TRANSLATE_NOOP("Core", "times must increase"),
        QT_TRANSLATE_NOOP("Core", "the time between two values must be above 0 s"),
        QT_TRANSLATE_NOOP("Core",
                          "a background read by eye is one level and a swing above zero, as 1e-7 +- 2e-8"),
        QT_TRANSLATE_NOOP("Core", "level and swing are one number each, as 1e-7 +- 2e-8, and all there is"),
        QT_TRANSLATE_NOOP("Core", "the swing of the background must be above zero"),
        QT_TRANSLATE_NOOP("Core",
                          "a background needs at least 5 values, better 20 over a minute; there are %1"),
        QT_TRANSLATE_NOOP("Core", "line %1"),
        QT_TRANSLATE_NOOP("Core", "line %1, column %2"),
        QT_TRANSLATE_NOOP("Core", "column \"%1\""),
        QT_TRANSLATE_NOOP("Core", "%1 is no column known here; %2"),
        QT_TRANSLATE_NOOP("Core", "the first line must name the columns, as in \"time_s,pressure_mbar\""),
        QT_TRANSLATE_NOOP("Core", "the column %1 comes twice"),
        QT_TRANSLATE_NOOP("Core", "pressure"),
        QT_TRANSLATE_NOOP("Core", "temperature"),
        QT_TRANSLATE_NOOP("Core", "a column for time or pressure is missing; %1"),
        QT_TRANSLATE_NOOP("Core", "%1 is not a number such as %2"),
        QT_TRANSLATE_NOOP("Core", "%1 is not a number such as 0.25 or 0,25"),
        QT_TRANSLATE_NOOP("Core", "%1 numbers where a time and a pressure are wanted"),
        QT_TRANSLATE_NOOP("Core", "%1 values where the header names %2 columns"),
        QT_TRANSLATE_NOOP("Core", "%1 values where the header names %2 columns; decimal commas need "
                                  "semicolons between the columns"),
        QT_TRANSLATE_NOOP("Core", "the time does not lie after that of the line before; times must increase"),
        QT_TRANSLATE_NOOP("Core", "the temperature must be from -123 to 327 degC"),
        QT_TRANSLATE_NOOP(
            "Core",
            "the record is empty; its first line must name the columns, as in \"time_s,pressure_mbar\""),
        QT_TRANSLATE_NOOP("Core",
                          "the record has a header but no samples; at least 3 lines of numbers must follow"),
    };
    return kAll;
}

} // namespace sealwalk::render
