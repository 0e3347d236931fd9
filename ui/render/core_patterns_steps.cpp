// SPDX-License-Identifier: GPL-3.0-or-later
// What to do next, and doubts about what was typed or measured.
#include "ui/render/core_patterns.h"

#include <QtGlobal>

namespace sealwalk::render {

std::span<const char* const> stepPatterns()
{
    static constexpr const char* kAll[] = {
        QT_TRANSLATE_NOOP("Core", "Points %1 and %2 answered alike: repeat %3 with less helium to see "
                                  "whether it is one leak or two."),
        QT_TRANSLATE_NOOP("Core", "Every point has its reading."),
        QT_TRANSLATE_NOOP("Core", "Next in order."),
        QT_TRANSLATE_NOOP("Core",
                          "Helium at point %1 would reach the leak at point %2: spray point %3 first."),
        QT_TRANSLATE_NOOP("Core",
                          "Every point left lies where helium reaches the leak at point %1: seal or bag "
                          "it, then spray point %2."),
        QT_TRANSLATE_NOOP("Core", "Seal or bag point %1, then spray %2 again."),
        QT_TRANSLATE_NOOP("Core", "Wait until the background is down, then spray %1 again."),
        QT_TRANSLATE_NOOP("Core",
                          "Spray points %1 and %2 again with less helium and a fine tip, each from the "
                          "side away from the other, to place the leak."),
        QT_TRANSLATE_NOOP("Core",
                          "The response at point %1 has not cleared: wait %2 s, then spray point %3."),
        QT_TRANSLATE_NOOP("Core", "Give %1 a short burst of 5 to 10 s: no answer means permeation."),
        QT_TRANSLATE_NOOP("Core", "Spray %1 again with a lower background or a dwell of at least %2 s."),
        QT_TRANSLATE_NOOP("Core",
                          "The background stood at up to %1 times its usual level from point %2 to point "
                          "%3: these readings may be voided together and sprayed again."),
        QT_TRANSLATE_NOOP("Core",
                          "connections of the set-up first: a leak there would spoil every later reading"),
        QT_TRANSLATE_NOOP("Core", "first of this view"),
        QT_TRANSLATE_NOOP("Core", "highest of this view: helium rises, so work from the top down"),
        QT_TRANSLATE_NOOP("Core", "%1 mm away from point %2 just sprayed"),
        QT_TRANSLATE_NOOP("Core", "%1 mm away from point %2 just sprayed, going down"),
        QT_TRANSLATE_NOOP("Core", "next below; %1 mm from point %2, so the wait before it is longer"),
        QT_TRANSLATE_NOOP("Core", "above point %1 just sprayed, whose helium rises into it"),
        QT_TRANSLATE_NOOP(
            "Core", "watch the background for a minute, and dwell long enough, to learn what can be seen"),
        QT_TRANSLATE_NOOP("Core", "set the limit before the first reading"),
        QT_TRANSLATE_NOOP(
            "Core",
            "the smallest detectable leak, %1, is above the limit: nothing can be passed with this set-up"),
        QT_TRANSLATE_NOOP("Core", "limit only %1 times what can be seen, 3 are needed"),
        QT_TRANSLATE_NOOP("Core", "good to start: limit %1 times what can be seen"),
        QT_TRANSLATE_NOOP("Core", "start with care: limit only %1 times what can be seen"),
        QT_TRANSLATE_NOOP("Core", "The limit was changed after %1 reading, %2."),
        QT_TRANSLATE_NOOP("Core", "The limit was changed after %1 readings, %2."),
        QT_TRANSLATE_NOOP("Core", "%1 is below the background of %2; is it right?"),
        QT_TRANSLATE_NOOP("Core", "%1 is more than the detector can show (%2); is it right?"),
        QT_TRANSLATE_NOOP("Core", "%1 is less than the detector can show (%2); is it right?"),
        QT_TRANSLATE_NOOP("Core", "%1 is far from the %2 this point showed before; is the exponent right?"),
        QT_TRANSLATE_NOOP("Core",
                          "%1 is a thousand times away from every other reading of this joint; is it right?"),
        QT_TRANSLATE_NOOP("Core",
                          "%1 is a thousand times away from the %2 usual in this round; is it right?"),
        QT_TRANSLATE_NOOP("Core", "no background before it"),
        QT_TRANSLATE_NOOP("Core", "spray not timed"),
        QT_TRANSLATE_NOOP("Core", "sprayed %1 s, shorter than the response of %2 s"),
        QT_TRANSLATE_NOOP("Core", "sprayed %1 s, but it had answered after %2 s and needs %3 s"),
        QT_TRANSLATE_NOOP("Core",
                          "level and swing of the background were read by eye; slow drift does not show"),
        QT_TRANSLATE_NOOP("Core", "only %1 readings of the background; the noise is uncertain below %2"),
        QT_TRANSLATE_NOOP("Core",
                          "the background was watched for less than a minute; slow drift does not show"),
        QT_TRANSLATE_NOOP("Core", "the background drifts by more than its noise; wait until it is steady"),
        QT_TRANSLATE_NOOP(
            "Core",
            "the response fell by %1: find the cause and spray again every point since the last good check"),
        QT_TRANSLATE_NOOP("Core", "the response rose by %1: find the cause; readings before it may be too "
                                  "low and need spraying again"),
        QT_TRANSLATE_NOOP(
            "Core",
            "the response moved by %1: the mean of both checks is used and the change widens every range"),
        QT_TRANSLATE_NOOP("Core", "the response did not move: steady"),
        QT_TRANSLATE_NOOP("Core", "the response moved by %1: steady"),
        QT_TRANSLATE_NOOP("Core", "the certificate of the reference leak is %1 years old"),
        QT_TRANSLATE_NOOP("Core", "the room is %1 K from the certificate temperature of the reference leak"),
        QT_TRANSLATE_NOOP("Core",
                          "The pressure rises in a straight line: a leak, or gas coming through seals. "
                          "Walls that give off gas evenly for much longer than %1 min would look the "
                          "same: where they may, run on or pump longer beforehand."),
        QT_TRANSLATE_NOOP("Core", "At the end of the record nearly all gas coming in is leak."),
        QT_TRANSLATE_NOOP("Core", "At the end of the record %1 % of the gas coming in is leak."),
        QT_TRANSLATE_NOOP(
            "Core",
            "The rise exhausts itself: outgassing or a trapped volume, no leak above the upper bound."),
        QT_TRANSLATE_NOOP("Core", "Not separable: run on for %1 min; until then the leak is only known to "
                                  "lie below the upper bound."),
        QT_TRANSLATE_NOOP("Core",
                          "Not separable: run on for %1 min and judge again, or pump longer beforehand; "
                          "until then the leak is only known to lie below the upper bound."),
        QT_TRANSLATE_NOOP("Core", "Only %1 samples: take at least 20."),
        QT_TRANSLATE_NOOP(
            "Core",
            "The room's temperature alone could make a good part of this rise: log it beside the pressure."),
        QT_TRANSLATE_NOOP("Core",
                          "The display rounds to %1 % of the whole rise: read one more digit or run on."),
        QT_TRANSLATE_NOOP("Core", "leak and outgassing"),
        QT_TRANSLATE_NOOP("Core", "no leak found"),
        QT_TRANSLATE_NOOP("Core", "not separable"),
        QT_TRANSLATE_NOOP("Core", "straight line"),
    };
    return kAll;
}

} // namespace sealwalk::render
