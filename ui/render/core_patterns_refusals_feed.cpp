// SPDX-License-Identifier: GPL-3.0-or-later
// The set-up of the detector feed, and the lines it sends.
#include "ui/render/core_patterns.h"

#include <QtGlobal>

namespace sealwalk::render {

std::span<const char* const> feedRefusals()
{
    static constexpr const char* kAll[] = {
        QT_TRANSLATE_NOOP("Core", "the serial port is missing, such as ttyUSB0"),
        QT_TRANSLATE_NOOP("Core", "%1 baud is no speed of a serial port; right is for instance 9600"),
        QT_TRANSLATE_NOOP("Core", "%1 data bits do not exist; right is 5 to 8"),
        QT_TRANSLATE_NOOP("Core", "%1 stop bits do not exist; right is 1 or 2"),
        QT_TRANSLATE_NOOP("Core", "the recorded file is missing"),
        QT_TRANSLATE_NOOP("Core", "a file is played 0.01 to %1 times as fast as recorded"),
        QT_TRANSLATE_NOOP("Core", "a file without times is played at up to %1 lines per second"),
        QT_TRANSLATE_NOOP("Core", "the network address is missing, such as 192.0.2.7"),
        QT_TRANSLATE_NOOP("Core", "%1 is no port of a network address; right is 1 to %2"),
        QT_TRANSLATE_NOOP("Core", "the pipe is missing, such as /tmp/detector"),
        QT_TRANSLATE_NOOP("Core", "the kind of source is not known"),
        QT_TRANSLATE_NOOP("Core", "the feed needs a name, such as the detector's"),
        QT_TRANSLATE_NOOP("Core", "the column of the %1 is %2; right is 1 to %3"),
        QT_TRANSLATE_NOOP("Core", "value"),
        QT_TRANSLATE_NOOP("Core", "time"),
        QT_TRANSLATE_NOOP("Core", "the factor must say how much leak rate a volt is, such as 1e-6"),
        QT_TRANSLATE_NOOP("Core", "the leak rate at 0 V must be a number, such as 0"),
        QT_TRANSLATE_NOOP("Core", "the decades per volt must not be 0 and at most %1, such as 1"),
        QT_TRANSLATE_NOOP("Core", "the decade at 0 V must lie between -%1 and %2, such as -12 for 1e-12"),
        QT_TRANSLATE_NOOP("Core", "value and time stand in the same column; each needs its own"),
        QT_TRANSLATE_NOOP("Core", "the pattern has %1 characters; right is at most %2"),
        QT_TRANSLATE_NOOP(
            "Core", "the pattern \"%1\" must hold one # where the number stands, as in \"now # mbar*\""),
        QT_TRANSLATE_NOOP("Core", "no column %1"),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is not a time"),
        QT_TRANSLATE_NOOP("Core", "does not fit the pattern"),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is damaged"),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is not a number"),
        QT_TRANSLATE_NOOP("Core", "\"%1\" is not one number"),
        QT_TRANSLATE_NOOP("Core", "%1 is written, volts are set up"),
        QT_TRANSLATE_NOOP("Core", "%1 is written, %2 is set up"),
        QT_TRANSLATE_NOOP("Core", "%1 is too much for a leak rate"),
    };
    return kAll;
}

} // namespace sealwalk::render
