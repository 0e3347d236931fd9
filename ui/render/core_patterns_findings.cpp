// SPDX-License-Identifier: GPL-3.0-or-later
// Why a point is what it is, and what a correction was made of.
#include "ui/render/core_patterns.h"

#include <QtGlobal>

namespace sealwalk::render {

std::span<const char* const> findingPatterns()
{
    static constexpr const char* kAll[] = {
        QT_TRANSLATE_NOOP("Core", "only what leaks in the test set-up can be left uncounted"),
        QT_TRANSLATE_NOOP("Core", "It answered with %1, and no leak found elsewhere explains it."),
        QT_TRANSLATE_NOOP(
            "Core",
            "It answered with %1; helium that went elsewhere and earlier responses explain %2 of it."),
        QT_TRANSLATE_NOOP("Core", "It answers in the condition \"%1\"."),
        QT_TRANSLATE_NOOP(
            "Core",
            "Dwell and helium share let %1 % of the full signal through; the size is corrected for that."),
        QT_TRANSLATE_NOOP("Core",
                          "It answered with %1; one leak near the border to %2 explains both, and which "
                          "stretch it lies on cannot be told. The size is that of the one leak."),
        QT_TRANSLATE_NOOP("Core",
                          "Its %1 may be helium in the room, what earlier responses left, or a leak of "
                          "its own too small to matter."),
        QT_TRANSLATE_NOOP("Core",
                          "Its reading and checks alone would end the range at %1; it ends at %2 because a "
                          "probe that passed too fast or beside the leak shows less than there is."),
        QT_TRANSLATE_NOOP("Core", "Its %1 is left over from earlier responses and helium in the room."),
        QT_TRANSLATE_NOOP("Core", "Its %1 is the tail of the response at %2 that had not cleared yet."),
        QT_TRANSLATE_NOOP("Core", "Its %1 is explained by helium that reached the leak at %2."),
        QT_TRANSLATE_NOOP("Core", "A leak of its own above %1 would have shown."),
        QT_TRANSLATE_NOOP("Core",
                          "Its %1 is far more than helium from elsewhere explains today, yet an odd draught "
                          "could have brought it from a larger leak: %2 and spray it again by itself."),
        QT_TRANSLATE_NOOP("Core", "A leak of up to %1 could hide in what earlier responses and helium in the "
                                  "room left here: wait until the background is down and spray again."),
        QT_TRANSLATE_NOOP(
            "Core", "It was sprayed on the tail of the response at %1, in which a leak of up to %2 could "
                    "hide: wait until the background is down, or seal or bag %3, and spray again."),
        QT_TRANSLATE_NOOP("Core",
                          "Helium that reached the leak at %1 may explain its %2, but a leak of up to %3 "
                          "could hide in that: seal or bag %4 and spray again."),
        QT_TRANSLATE_NOOP("Core", "No response; a leak above %1 would have shown at that moment."),
        QT_TRANSLATE_NOOP("Core", "No response, but the spray was not timed and this point had answered %1 s "
                                  "after the helium: spray again for %2 s."),
        QT_TRANSLATE_NOOP("Core", "No response within %1 s proves nothing here: this point had answered %2 s "
                                  "after the helium. Spray again for %3 s."),
        QT_TRANSLATE_NOOP("Core", "No response; this point had answered %1 s after the helium, and the bound "
                                  "is for what was left of %2 s then."),
        QT_TRANSLATE_NOOP(
            "Core", "spray not timed: what would have shown is given for one response time of helium, 3 s at "
                    "most"),
        QT_TRANSLATE_NOOP("Core", "That is more than the limit, so this does not pass it: spray again with a "
                                  "lower background or a longer dwell."),
        QT_TRANSLATE_NOOP("Core", "All its readings are void."),
        QT_TRANSLATE_NOOP("Core", "Its reading is void."),
        QT_TRANSLATE_NOOP("Core", "It has no reading."),
        QT_TRANSLATE_NOOP("Core", "%1 judged %2, %3: %4; computed was %5, %6"),
        QT_TRANSLATE_NOOP("Core", "its concession ran out on %1"),
        QT_TRANSLATE_NOOP("Core", "no response"),
        QT_TRANSLATE_NOOP(
            "Core", "Its %1 does not stand out of the noise; a leak of its own above %2 would have shown."),
        QT_TRANSLATE_NOOP("Core", "the background was %1 times that of the last quiet watch"),
        QT_TRANSLATE_NOOP("Core", "no quiet watch of the background: what could have been seen is not known"),
        QT_TRANSLATE_NOOP("Core", "the helium share of the spray is not above zero"),
        QT_TRANSLATE_NOOP("Core", "what could have been seen at that moment, %1, is above the limit, %2"),
        QT_TRANSLATE_NOOP("Core", "more than the detector can show"),
        QT_TRANSLATE_NOOP("Core", "the reading has no value"),
        QT_TRANSLATE_NOOP("Core", "It answered at %1 and not at %2, with %3 taped or bagged off."),
        QT_TRANSLATE_NOOP("Core",
                          "It answered at %1 and not at %2, with %3 taped or bagged off; a leak of its "
                          "own, as large as that, would have shown."),
        QT_TRANSLATE_NOOP("Core",
                          "It answered at %1 and not at %2, with %3 taped or bagged off; a leak of its "
                          "own, as large as that, would have shown: the helium went in there."),
        QT_TRANSLATE_NOOP("Core",
                          "It answered at %1 and not when it was sprayed again at %2: a leak answers twice. "
                          "Judge it, or make void the reading that does not count."),
        QT_TRANSLATE_NOOP("Core", "the background just before was not recorded; zero is taken"),
        QT_TRANSLATE_NOOP("Core", "belongs to the test set-up, not to the object"),
        QT_TRANSLATE_NOOP("Core", "was found only in another condition"),
        QT_TRANSLATE_NOOP("Core", "void: %1"),
        QT_TRANSLATE_NOOP("Core",
                          "The first rise came %1 s after the helium, later than this system answers: a "
                          "leak in series behind a space, or helium that drifted to %2. Spray %3 again "
                          "with less flow, and bag this one, before it is taken apart."),
        QT_TRANSLATE_NOOP("Core",
                          "The first rise came %1 s after the helium, as late as permeation through an "
                          "elastomer: give it a short burst of 5 to 10 s; no answer means permeation."),
        QT_TRANSLATE_NOOP("Core",
                          "The first rise came %1 s after the helium and a short burst got no answer: "
                          "helium permeates through the seal, there is no open leak."),
        QT_TRANSLATE_NOOP("Core",
                          "The first rise came %1 s after the helium, as late as helium that has to drift."),
        QT_TRANSLATE_NOOP("Core", "probe, distance and speed from one spray to the next"),
        QT_TRANSLATE_NOOP("Core", "spray not timed: %1 s, what a hand gives at the least, prove nothing at a "
                                  "response time of %2 s"),
        QT_TRANSLATE_NOOP("Core", "dwell not recorded, full signal taken for the lower end"),
        QT_TRANSLATE_NOOP("Core", "dwell not recorded"),
        QT_TRANSLATE_NOOP("Core",
                          "spray not timed: a leak %1 times as large would have shown as much after %2 s"),
        QT_TRANSLATE_NOOP("Core", "response time not known, full signal assumed"),
        QT_TRANSLATE_NOOP("Core", "dwell not recorded, full signal assumed"),
        QT_TRANSLATE_NOOP("Core", "%1 s at a response time of %2 s, %3"),
        QT_TRANSLATE_NOOP("Core", "%1 % helium at the joint"),
        QT_TRANSLATE_NOOP("Core", "certificate, temperature and age of the reference leak"),
        QT_TRANSLATE_NOOP("Core", "system check at %1"),
        QT_TRANSLATE_NOOP("Core", "mean of the system checks before and after, at %1"),
        QT_TRANSLATE_NOOP("Core", "from one check to the next"),
        QT_TRANSLATE_NOOP("Core", "detector alone, taken from its inlet"),
        QT_TRANSLATE_NOOP(
            "Core", "speeds of detector and auxiliary pump; a reference leak on the object would measure it"),
        QT_TRANSLATE_NOOP("Core", "reference leak on the detector"),
        QT_TRANSLATE_NOOP("Core", "the check at %1 is not usable: %2"),
        QT_TRANSLATE_NOOP("Core",
                          "the reading is older than the first check; the check made afterwards is used"),
        QT_TRANSLATE_NOOP(
            "Core", "an auxiliary pump takes part of the helium and the detector's own speed is not known"),
        QT_TRANSLATE_NOOP("Core",
                          "the certificate of the reference leak has no date; its age is not corrected"),
        QT_TRANSLATE_NOOP("Core", "the reference leak was past its due date"),
        QT_TRANSLATE_NOOP(
            "Core",
            "no check with a reference leak on the object; the factor comes from the detector's inlet"),
        QT_TRANSLATE_NOOP(
            "Core", "no usable check with a reference leak: what the display shows is not yet a leak rate"),
    };
    return kAll;
}

} // namespace sealwalk::render
