// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers, units, dates and quantities that cannot be read.
#include "ui/render/core_patterns.h"

#include <QtGlobal>

namespace sealwalk::render {

std::span<const char* const> numberRefusals()
{
    static constexpr const char* kAll[] = {
        QT_TRANSLATE_NOOP("Core", "\"%1\" is not a time with its offset; write 2026-03-01T14:05:09+01:00"),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is not a date; write year-month-day, such as 2026-03-01"),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is not a UUID; it has 32 hexadecimal digits in five groups, such "
                                  "as 1b4e28ba-2fa1-41d2-883f-0016d3cca427"),
        QT_TRANSLATE_NOOP("Core", "%1 in %2 cannot be converted to %3 (%4)"),
        QT_TRANSLATE_NOOP("Core", "a leak rate must be a finite number"),
        QT_TRANSLATE_NOOP("Core", "%1 %2 is too large to be written in %3"),
        QT_TRANSLATE_NOOP(
            "Core", "\"%1\" is the unit of %2, but a leak rate is asked for, such as \"1e-9 mbar l/s\""),
        QT_TRANSLATE_NOOP("Core", "the gas and standard temperatures must be above 0 K"),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is a mass flow and needs the gas named, such as helium"),
        QT_TRANSLATE_NOOP("Core", "the molar mass of the gas must be above zero"),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is a unit of leak rate, but not one a job can report in; right "
                                  "would be for instance \"mbar l/s\", \"Pa m3/s\" or \"sccm\""),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is not a number; right would be for instance 2.5e-7 or 120"),
        QT_TRANSLATE_NOOP("Core",
                          "\"%1\" has more than one decimal mark; write it without thousands separators"),
        QT_TRANSLATE_NOOP(
            "Core", "\"%1\" is outside the numbers a computer can hold; about 1e-300 to 1e300 is right"),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is not a share; right is 0 to 100 %, written \"25 %\" or \"0.25\""),
        QT_TRANSLATE_NOOP(
            "Core", "\"%1\" does not start with a number; right would be for instance \"2.5e-7 mbar l/s\""),
        QT_TRANSLATE_NOOP(
            "Core",
            "\"%1\" does not hold one number and its unit; right would be for instance \"2.5e-7 mbar l/s\""),
        QT_TRANSLATE_NOOP("Core", "\"%1\" has no unit; right would be for instance \"%2 mbar l/s\""),
        QT_TRANSLATE_NOOP("Core", "%1 must be a finite number"),
        QT_TRANSLATE_NOOP("Core",
                          "%1 %2 is below absolute zero; a temperature is at least 0 K (-273.15 degC)"),
        QT_TRANSLATE_NOOP("Core", "\"%1\" has no unit; %2 is asked for, such as \"%3\""),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is %2, but %3 is asked for, such as \"%4\""),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is %2, but a leak rate is asked for, such as \"%3\""),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is not a unit known here; right would be for instance \"mbar "
                                  "l/s\", \"Pa m3/s\", \"sccm\", \"mbar\", \"l\", \"mm\" or \"degC\""),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is not a unit known here; %2 is asked for, such as \"%3\""),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is the unit of %2, but %3 is asked for, such as \"%4\""),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is not a %2; known are %3"),
        QT_TRANSLATE_NOOP("Core", "%1 %2 is below zero; %3 is at least 0 %4"),
        QT_TRANSLATE_NOOP("Core", "%1 %2 is below zero; %3 is at least 0 %4, counted from vacuum"),
        QT_TRANSLATE_NOOP("Core", "a leak rate"),
        QT_TRANSLATE_NOOP("Core", "a pressure"),
        QT_TRANSLATE_NOOP("Core", "a volume"),
        QT_TRANSLATE_NOOP("Core", "a volume flow"),
        QT_TRANSLATE_NOOP("Core", "a length"),
        QT_TRANSLATE_NOOP("Core", "a time"),
        QT_TRANSLATE_NOOP("Core", "a temperature"),
        QT_TRANSLATE_NOOP("Core", "a temperature difference"),
        QT_TRANSLATE_NOOP("Core", "a share"),
    };
    return kAll;
}

std::span<const char* const> typedRefusals()
{
    static constexpr const char* kAll[] = {
        QT_TRANSLATE_NOOP("Core", "\"%1\" can be read as %2 or as %3; write %4 or %5"),
    };
    return kAll;
}

} // namespace sealwalk::render
